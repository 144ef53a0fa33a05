// SPDX-License-Identifier: MIT
#pragma once

#include "bench/shopping.h"
#include "plan/plan.h"

#include <QString>

#include <vector>

namespace matside {

/// What is said of the shopping list, on the screen and on paper; lengths in braces.

/// A cloth's name, and what it is for where another is called the same; numbered where that is the same too.
[[nodiscard]] QString clothAmongAll(const Project &project, const std::string &id);
/// "3 × {11 3/4 in}, and {2 in} to straighten".
[[nodiscard]] QString clothCutSays(const Project &project, const Buy &buy);
/// What goes into the basket: "1 1/8 yd", "2 of 45 in × 60 in", or both.
[[nodiscard]] QString clothToBuy(const Project &project, const Buy &buy);
/// The same with its lengths in braces.
[[nodiscard]] QString clothToBuyLine(const Project &project, const Buy &buy);
/// How near the bought length is to the least possible, and how much is waste.
[[nodiscard]] QString clothProofSays(const Project &project, const Buy &buy);
/// What it costs: the length still to buy, and with what is there; nothing while the price is unknown.
[[nodiscard]] QString clothCostSays(const Project &project, const Buy &buy);
/// What all cloths with a price cost together; empty when none has one.
[[nodiscard]] QString shopTotalSays(const std::vector<Buy> &list);
/// Thread, bobbins and needles for all kits; nothing but blocks where no thread can be reckoned.
struct Sundries {
    std::int64_t blocks = 0;
    std::int64_t thread = 0; ///< yards | metres
    std::int64_t bobbins = 0, needles = 0;
};
/// "380 yd" or "347 m".
[[nodiscard]] QString threadText(const Project &project, std::int64_t thread);
[[nodiscard]] Sundries sundriesOf(const Project &project, const Plan &plan);
[[nodiscard]] QString needlesText(std::int64_t needles);
/// The same as a sentence.
[[nodiscard]] QString sundriesSays(const Project &project, const Plan &plan);

/// A length as it is sold, "{2 3/8 yd}".
[[nodiscard]] QString bracedSold(Length length, Length step, System system);

} // namespace matside
