// SPDX-License-Identifier: MIT
#pragma once

#include "made/finding.h"

namespace matside {

/// A block whose readings agree, ready to be judged.
struct Case {
    Shape shape;
    Readings readings;
    Measured what = Measured::Outline;
    Target target;
    Pair wanted; ///< size of what was measured, as it should be
    Tolerances limits;
    Marks marks;
    Precision precision;
};

/// The finding on a shape taken for true (F23–F25); `agreement`, K and `suspect` are the caller's.
[[nodiscard]] Finding verdict(const Case &about);

} // namespace matside
