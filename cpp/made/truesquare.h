// SPDX-License-Identifier: MIT
#pragma once

#include "made/quadrilateral.h"
#include "project/project.h"

#include <array>

namespace matside {

/// A true rectangle that fits into a figure, and how it lies: `turned` radians clockwise from the top side
/// as the fit places it.
struct TrueSize {
    Pair size; ///< along and across, to a tick down
    double turned = 0;
};

/// Squared off one side: (w − |λ|) × h off the bottom of a leaning block (F23).
[[nodiscard]] TrueSize trueOffSide(const Shape &shape, Side base, bool square);
/// Turned half the lean: (w − h|θ|/2) × (h − w|θ|/2); min side − |λ|/2 on a square (F23).
[[nodiscard]] TrueSize trueSplit(const Shape &shape, bool square);
/// The larger of the two, by its area; off the side that yields most.
[[nodiscard]] TrueSize trueLargest(const Shape &shape, bool square);

/// How a side is turned against a frame, radians, + clockwise.
[[nodiscard]] double turnOf(const Shape &shape, Side side);
/// Halfway between how the level and how the upright sides lie: where a split lean is laid.
[[nodiscard]] double splitTurn(const Shape &shape);
/// How far each side wanders to either side of a straight cut laid at a turn through its middle, ticks.
[[nodiscard]] std::array<double, 4> wanderAt(const Shape &shape, double turn);
/// The most of the four.
[[nodiscard]] double mostWander(const Shape &shape, double turn);

/// The order of trimming: first the side squared off which the others wander least (between sides alike to
/// 1/128 in, the one whose two corners are nearest to square, F23), second a neighbour of it, and the side
/// with the worst tilt last.
[[nodiscard]] std::array<Side, 4> trimOrder(const Shape &shape);

} // namespace matside
