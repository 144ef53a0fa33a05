// SPDX-License-Identifier: MIT
#pragma once

#include "made/truesquare.h"

#include <array>

namespace matside {

/// How the four cuts are laid on a measured figure: a true rectangle, centred on it.
///
/// The first cut is laid by both of its setbacks; the second square to it, its setback at mid-side the mean
/// of its two; the third and the fourth fall at `size` from the two before, by the ruler's long line.
struct Laying {
    Pair size; ///< of the rectangle that is cut
    std::array<Side, 4> order{Side::Bottom, Side::Right, Side::Top, Side::Left};
    /// From the figure's corner outward to the cut, for each side (top, right, bottom, left) at its two ends,
    /// clockwise: the line of the ruler that lies on the stitches there. Minus: the cut falls inside.
    std::array<std::array<Length, 2>, 4> setback;
};

/// Lays a rectangle of `size` centred on the figure: squared off the first side of `order`, or turned.
[[nodiscard]] Laying layAt(const Shape &shape, double turn, const Pair &size,
                           const std::array<Side, 4> &order);
/// The same midway between the innermost corners, so that a rectangle that fits inside does lie inside.
[[nodiscard]] Laying layWithin(const Shape &shape, double turn, const Pair &size,
                               const std::array<Side, 4> &order);

/// Moved, not turned, so that the first cut and the middle of the second fall on marks of `fine` from the
/// line: by half of `fine` at most.
[[nodiscard]] Laying onMarks(Laying laying, Length fine);

/// What a laying leaves for certain, when each reading is within half a mark of the truth, each of the first
/// two cuts within half of 1/32 in | 0.5 mm of its setbacks, and the rest is cut to size.
struct Assured {
    Length farthest;                  ///< the largest setback anywhere
    Length nearest;                   ///< the smallest
    std::array<Length, 4> farthestOf; ///< the largest on each side
};
/// `fine` is the step the setbacks are shown in.
[[nodiscard]] Assured assuredBy(const Laying &laying, const Readings &readings, Precision precision,
                                Length fine);

} // namespace matside
