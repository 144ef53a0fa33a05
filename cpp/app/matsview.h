// SPDX-License-Identifier: MIT
#pragma once

#include "plan/mats.h"

#include <QVariantList>

namespace matside {

/// A set of mats on its table, for drawing: each as {x, y, turn}, mm from the table's middle and degrees
/// clockwise. Empty for one piece, which lies in the middle.
[[nodiscard]] QVariantList matsView(const Project &project, const Plan &plan);

/// The same of mats of a size, wherever they were laid.
[[nodiscard]] QVariantList placesView(const MatsLaid &laid, const Pair &size);

} // namespace matside
