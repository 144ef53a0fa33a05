// SPDX-License-Identifier: MIT
//
// How a measured block, or the whole piece, is drawn: its departure so many times over.
#pragma once

#include "made/finding.h"

#include <QVariantList>

namespace matside {

/// A measured figure as it lies, and the size it should have. Corners are told as {x, y} from the middle, in
/// parts of the wanted longer side; top left first, clockwise.
struct Departing {
    std::optional<Shape> shape; ///< nothing where readings make none
    Pair wanted;
    bool good = true; ///< as good as wanted: drawn no further off than is said of such a one
};
/// A block by its finding: a tilted side is seen to tilt. Straight is the one across from it, or the narrower
/// end of a taper; any other lies on its top as it was fitted.
[[nodiscard]] Departing departingOf(const Finding &finding);
/// The shape turned, clockwise; and so that one side lies straight.
[[nodiscard]] Shape turnedBy(const Shape &shape, double radians);
[[nodiscard]] Shape laidOn(const Shape &shape, Side side);

/// How many times a departure is drawn where it can be seen only then; a slight one that is too much,
/// oftener.
inline constexpr double timesCrooked = 5;
[[nodiscard]] double timesDrawn(const Departing &departing);
[[nodiscard]] QVariantList cornersOf(const Departing &departing, double times);
/// Those of the size it should have.
[[nodiscard]] QVariantList plannedCorners(const Departing &departing);

/// How far the corners lie off a size about the same middle, {x, y} in millimetres so many times over, the
/// shape turned by a quarter clockwise so often and told from the top left as it then lies.
[[nodiscard]] QVariantList cornersOff(const Shape &shape, const Pair &from, double times, int quarters);

/// The same seen in a mirror: again from the top left clockwise.
[[nodiscard]] QVariantList mirrored(const QVariantList &off);

} // namespace matside
