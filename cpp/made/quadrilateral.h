// SPDX-License-Identifier: MIT
#pragma once

#include "length/length.h"

#include <array>
#include <cstddef>

namespace matside {

/// The sides of a block seen from the front, clockwise.
enum class Side { Top, Right, Bottom, Left };

/// What was read off a ruler: sides top, right, bottom, left; diagonals from top left, from top right.
struct Readings {
    std::array<Length, 4> sides;
    std::array<Length, 2> diagonals;
    friend bool operator==(const Readings &, const Readings &) = default;
};

/// How near a reading is to the truth: half a mark of the ruler it was read with.
struct Precision {
    Length side;
    Length diagonal;
};
[[nodiscard]] Precision halfMark(Length finest);

/// The six readings in ticks, in the order of `Readings`: a, b, c, d, p, q.
using Six = std::array<double, 6>;
[[nodiscard]] Six inTicks(const Readings &readings);

/// A place on the block in ticks: x to the right, y down.
struct Point {
    double x = 0;
    double y = 0;
};

/// Four corners from the top left, clockwise.
struct Shape {
    std::array<Point, 4> corner;
};
[[nodiscard]] Six lengthsOf(const Shape &shape);
/// Area in square ticks, positive for a block the right way round.
[[nodiscard]] double areaOf(const Shape &shape);

/// The plane figure nearest to six readings. Five readings fix a shape; the sixth checks them.
struct Fit {
    Shape shape;
    Six residual{};          ///< reading − fitted length, ticks
    double disagreement = 0; ///< the residuals told as one length, ticks: K without its small error m (F23)
    double misfit = 0;       ///< √Σ(residual/precision)²
    bool settled = false;    ///< false for a reading that is none (zero, minus, overflowed)
};

/// Weighted least squares on the corners' coordinates (Levenberg–Marquardt).
[[nodiscard]] Fit fitTo(const Readings &readings, Precision precision);
/// The same with one reading (0…5, in the order of `Six`) left out: the five others are met exactly, and
/// `lengthsOf` then tells what the sixth should have been.
[[nodiscard]] Fit fitWithout(const Readings &readings, Precision precision, std::size_t left);

/// F23's quick form of the check: K = (p² + q² − a² − b² − c² − d²) / (2 · mean side).
[[nodiscard]] double quickCheck(const Six &six);
/// The exact form: the Cayley–Menger determinant of the four corners, 288 V² (Sommerville 1958), in the
/// sixth power of the unit given. Zero when the six lengths close in the plane, negative when they cannot
/// close at all.
[[nodiscard]] double cayleyMenger(const Six &six);

/// How a figure departs from a true rectangle, told apart. All in ticks.
struct Departure {
    double width = 0;  ///< mean of top and bottom
    double height = 0; ///< mean of right and left
    double lean = 0;   ///< λ = (p² − q²) / (4 · width): + when the bottom is pushed to the right (F23)
    /// Each corner's opening over a side, + for more than 90° (F23): top left and top right over the top,
    /// bottom right over the right, bottom left over the left side.
    std::array<double, 4> opening{};
    double ends = 0;   ///< top − bottom: the left or the right side, or both, tilt by as much in all
    double flanks = 0; ///< right − left: the same of top and bottom
};
[[nodiscard]] Departure departureOf(const Six &six);

/// Which of the three it is, when opposite sides differ by more than `least` ticks.
enum class Crooked {
    No,      ///< opposite sides agree: a true rectangle or a lean
    OneSide, ///< two good corners, the others + and −: the side between those is tilted (F23)
    Taper,   ///< +, +, −, −: two sides tilt, one end is wider (F23)
    LeanToo  ///< more lean than one tilted side explains
};
struct Tilt {
    Crooked what = Crooked::No;
    Side side = Side::Top; ///< the tilted side, or the wider end of a taper
    double tilt = 0;       ///< how far a tilted side is out of square over its length, ticks
};
[[nodiscard]] Tilt tiltOf(const Departure &departure, double least);

/// A length in ticks brought back to a `Length`, half away from zero.
[[nodiscard]] Length toLength(double ticks);

} // namespace matside
