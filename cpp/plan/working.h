// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace matside {

/// One term of a sum: its name in the trade's words (a stable code the app words, e.g. "seam"), its
/// value, and where it comes from: a figure with its own working, or what the maker entered.
struct Term {
    std::string name;
    std::variant<Length, std::int64_t, Share> value;
    std::string figure;  ///< key of the figure behind it ("strip.gap"), or empty
    std::string entered; ///< JSON pointer of the field behind it ("/seam"), or empty
};

/// The sum behind a figure. `formula` is an expression over the terms' names, with + − × ÷, max(), and
/// up(x, step) / near(x, step) / floor(x) / ceil(x); evaluating it over `terms` gives `value`.
struct Working {
    std::string figure;  ///< its key as in the plan file: "strip.width", "block.sent.along"
    std::string rule;    ///< the rule's number in the trade notes: "F1"
    std::string formula; ///< "max(hoop + 2*margin, sent + 2*(seam + fray))"
    std::variant<Length, std::int64_t> value;
    Round round = Round::Nearest;
    std::vector<Term> terms;
};

/// The working of a figure by its key, or nothing when the plan has no such figure. Costs nothing until
/// asked.
[[nodiscard]] std::optional<Working> workingOf(const Project &project, const Plan &plan,
                                               std::string_view figure);

/// Every figure key that has a working in this plan, in reading order.
[[nodiscard]] std::vector<std::string> figuresWithWorking(const Plan &plan);

/// True when the figure hangs on the trial (test block or test join) and that part was not made yet.
[[nodiscard]] bool notTriedYet(const Plan &plan, std::string_view figure);

} // namespace matside
