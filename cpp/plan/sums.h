// SPDX-License-Identifier: MIT
#pragma once

#include "plan/formulas.h"
#include "plan/working.h"

#include <span>

namespace matside {

/// What a sum is made from: the project, its plan, and which of many (a place on the strip, a mark).
struct Sums {
    const Project &project;
    const Plan &plan;
    Measures m;
    std::int64_t index = -1;
};

/// One figure's sum: its key, whether it is there, how many of it there are, and how it is reckoned.
struct Sum {
    std::string_view figure;
    std::optional<Working> (*reckon)(const Sums &about);
    bool (*there)(const Plan &plan) = nullptr;
    std::size_t (*many)(const Plan &plan) = nullptr;
};

/// Every sum in reading order.
[[nodiscard]] std::span<const Sum> allSums();

/// Builds a working term by term.
class Tell {
public:
    Tell(std::string rule, std::string formula, std::variant<Length, std::int64_t> value,
         Round round = Round::Nearest)
    {
        m_working.rule = std::move(rule);
        m_working.formula = std::move(formula);
        m_working.value = value;
        m_working.round = round;
    }
    /// A term that is itself a figure.
    Tell &from(std::string name, std::variant<Length, std::int64_t, Share> value, std::string figure)
    {
        m_working.terms.push_back({std::move(name), value, std::move(figure), {}});
        return *this;
    }
    /// A term the maker entered, at its pointer.
    Tell &given(std::string name, std::variant<Length, std::int64_t, Share> value, std::string pointer)
    {
        m_working.terms.push_back({std::move(name), value, {}, std::move(pointer)});
        return *this;
    }
    /// A fixed measure of the trade.
    Tell &fixed(std::string name, std::variant<Length, std::int64_t, Share> value)
    {
        m_working.terms.push_back({std::move(name), value, {}, {}});
        return *this;
    }
    operator std::optional<Working>() const { return m_working; }

private:
    Working m_working;
};

/// The sums of each part of the plan, in files of their own.
[[nodiscard]] std::span<const Sum> blockSums();
[[nodiscard]] std::span<const Sum> stripSums();
[[nodiscard]] std::span<const Sum> sashingSums();
[[nodiscard]] std::span<const Sum> edgeSums();

} // namespace matside
