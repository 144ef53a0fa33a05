// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"

namespace matside {

/// The problems and cautions of a plan with every remedy that comes to mind, tried or not.
[[nodiscard]] std::vector<Problem> remarkProblems(const Project &project, const Plan &plan);
[[nodiscard]] std::vector<Problem> remarkCautions(const Project &project, const Plan &plan);

/// Short forms for building a remark.
[[nodiscard]] inline Argument told(Length length, Round round = Round::Nearest)
{
    return Told{length, round};
}
[[nodiscard]] inline Offer offer(std::string code, std::string at, Length value)
{
    return {std::move(code), std::move(at), value, {told(value)}, {}};
}
[[nodiscard]] inline Offer offer(std::string code, std::string at, OfferValue value)
{
    return {std::move(code), std::move(at), std::move(value), {}, {}};
}

/// Pointer of the `usable` that decides a band's length: its own cloth's, else the strip's.
[[nodiscard]] std::string usablePointer(const Project &project, ClothRole role);

} // namespace matside
