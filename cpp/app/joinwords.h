// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"

#include <QString>

namespace matside {

/// What is said of trimming and joining, on the screen and on paper; lengths in braces.

/// A length that is laid with the ruler, in braces: on its marks, and finer only where nothing would be left
/// of it on them.
[[nodiscard]] QString laidByRuler(Length length, Marks marks);
/// Which way the strips of a join are pressed.
[[nodiscard]] QString stripsPressed(const Plan &plan);
/// What is laid into sashings wider than two allowances, when and how (F7); empty where nothing is.
[[nodiscard]] QString sashingsFilled(const Plan &plan, Marks marks);
/// What is pared where a long sashing crosses the short ones; empty where there are none.
[[nodiscard]] QString crossingsThinned(const Project &project, const Plan &plan);

/// What the ruler's lines lie on while a block's side 1…4 is trimmed; the second only for sides 3 and 4.
[[nodiscard]] QString trimLineLies(int side);
[[nodiscard]] QString trimSecondLies(int side);
[[nodiscard]] QString trimCheck(int side);

} // namespace matside
