// SPDX-License-Identifier: MIT
#pragma once

#include "length/length.h"

#include <nlohmann/json.hpp>

#include <cstdint>
#include <map>
#include <string>
#include <vector>

// This program checks the plan from outside: it must not even be able to see how a plan is made.
#if __has_include("plan/plan.h") || __has_include("bench/step.h") || __has_include("project/project.h")
#error "The assembly test has a way to the rooms it is to check."
#endif

namespace workroom {

using Json = nlohmann::ordered_json;
using matside::Length;

/// A piece of cloth or work: along × across.
struct Rectangle {
    Length along;
    Length across;
    friend bool operator==(const Rectangle &, const Rectangle &) = default;
};

/// What went wrong first; thrown inside the workroom only.
struct Wrong {
    std::string what;
};
/// Goes on when it holds.
void must(bool holds, const std::string &what);

/// Alike but for the six decimal places of the plan file, summed over a few dozen pieces: 1/127 in.
[[nodiscard]] bool near(Length a, Length b);
/// At least as long, within the same.
[[nodiscard]] bool reaches(Length a, Length b);

/// Reads a length of the plan file from its exact inches.
[[nodiscard]] Length lengthOf(const Json &told);
/// The size of a step's piece.
[[nodiscard]] Rectangle sizeOf(const Json &step);
/// The lengths of a step's `at`; none when it has none.
[[nodiscard]] std::vector<Length> placesOf(const Json &step);
[[nodiscard]] std::string idOf(const Json &step);
/// The name of what a step makes first.
[[nodiscard]] std::string makes(const Json &step);

/// The pieces made and not used yet, by name.
class Shelf {
public:
    using Hand = std::map<std::string, std::vector<Rectangle>>;

    void put(const std::string &name, std::int64_t count, Rectangle piece);
    /// Everything a step takes, so many times over. A piece of which it takes none must only be there.
    [[nodiscard]] Hand take(const Json &step, std::int64_t times);
    [[nodiscard]] bool has(const std::string &name) const;
    /// All that were ever made of a name, used or not.
    [[nodiscard]] std::int64_t made(const std::string &name) const;
    [[nodiscard]] const Hand &held() const { return m_held; }

private:
    Hand m_held;
    std::map<std::string, std::int64_t> m_made;
};

} // namespace workroom
