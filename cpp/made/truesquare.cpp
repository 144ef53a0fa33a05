// SPDX-License-Identifier: MIT
#include "made/truesquare.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace matside {

namespace {

constexpr double quarterTurn = std::numbers::pi / 2;

std::size_t at(Side side)
{
    return static_cast<std::size_t>(side);
}

/// The corners as a frame at that turn sees them.
std::array<Point, 4> seenAt(const Shape &shape, double turn)
{
    const double c = std::cos(turn), s = std::sin(turn);
    std::array<Point, 4> seen;
    for (std::size_t i = 0; i < 4; ++i) {
        const Point p = shape.corner[i];
        seen[i] = {p.x * c + p.y * s, p.y * c - p.x * s};
    }
    return seen;
}

/// The rectangle between the innermost corners of opposite sides. For a figure near a rectangle it lies
/// wholly inside, and a larger one at the same turn exceeds it by less than lean²/side.
Pair insideAt(const Shape &shape, double turn, bool square)
{
    const auto [a, b, c, d] = seenAt(shape, turn);
    const double width = std::min(b.x, c.x) - std::max(a.x, d.x);
    const double height = std::min(c.y, d.y) - std::max(a.y, b.y);
    const auto down = [](double ticks) {
        const double noise = 1e-6; // what the fit leaves behind must not cost a tick
        return Length::ticks(static_cast<std::int64_t>(std::floor(std::max(ticks, 0.0) + noise)));
    };
    Pair size{down(width), down(height)};
    if (square)
        size.along = size.across = min(size.along, size.across);
    return size;
}

double areaOf(const Pair &size)
{
    return static_cast<double>(size.along.count()) * static_cast<double>(size.across.count());
}

/// The larger opening of a side's two corners, as radians from square.
double openingAt(const Shape &shape, Side side)
{
    const Side before = static_cast<Side>((at(side) + 3) % 4), after = static_cast<Side>((at(side) + 1) % 4);
    const double here = turnOf(shape, side);
    return std::max(std::abs(here - turnOf(shape, before)), std::abs(here - turnOf(shape, after)));
}

} // namespace

double turnOf(const Shape &shape, Side side)
{
    const Point from = shape.corner[at(side)], to = shape.corner[(at(side) + 1) % 4];
    const double direction = std::atan2(to.y - from.y, to.x - from.x);
    return std::remainder(direction - quarterTurn * static_cast<double>(at(side)), 2 * std::numbers::pi);
}

double splitTurn(const Shape &shape)
{
    double sum = 0;
    for (const Side side : {Side::Top, Side::Right, Side::Bottom, Side::Left})
        sum += turnOf(shape, side);
    return sum / 4;
}

std::array<double, 4> wanderAt(const Shape &shape, double turn)
{
    const auto [a, b, c, d] = seenAt(shape, turn);
    return {std::abs(b.y - a.y) / 2, std::abs(c.x - b.x) / 2, std::abs(d.y - c.y) / 2,
            std::abs(a.x - d.x) / 2};
}

double mostWander(const Shape &shape, double turn)
{
    const std::array<double, 4> wander = wanderAt(shape, turn);
    return *std::max_element(wander.begin(), wander.end());
}

TrueSize trueOffSide(const Shape &shape, Side base, bool square)
{
    const double turn = turnOf(shape, base);
    return {insideAt(shape, turn, square), turn};
}

TrueSize trueSplit(const Shape &shape, bool square)
{
    const double turn = splitTurn(shape);
    return {insideAt(shape, turn, square), turn};
}

TrueSize trueLargest(const Shape &shape, bool square)
{
    TrueSize best = trueSplit(shape, square);
    for (const Side side : {Side::Bottom, Side::Top, Side::Left, Side::Right}) {
        const TrueSize off = trueOffSide(shape, side, square);
        if (areaOf(off.size) > areaOf(best.size))
            best = off;
    }
    return best;
}

std::array<Side, 4> trimOrder(const Shape &shape)
{
    constexpr double alike = Length::ticksPerInch / 128.0;
    Side base = Side::Bottom;
    for (const Side side : {Side::Top, Side::Left, Side::Right}) {
        const double gain = mostWander(shape, turnOf(shape, base)) - mostWander(shape, turnOf(shape, side));
        const bool squarer = openingAt(shape, side) < openingAt(shape, base) - 1e-9;
        if (gain > alike || (gain > -alike && squarer))
            base = side;
    }
    const std::array<double, 4> wander = wanderAt(shape, turnOf(shape, base));
    std::array<Side, 4> order{base, static_cast<Side>((at(base) + 1) % 4),
                              static_cast<Side>((at(base) + 2) % 4), static_cast<Side>((at(base) + 3) % 4)};
    // Last the worst; of the two neighbours the truer comes second.
    std::stable_sort(order.begin() + 1, order.end(),
                     [&](Side x, Side y) { return std::lround(wander[at(x)]) < std::lround(wander[at(y)]); });
    const bool opposite = at(order[1]) == (at(base) + 2) % 4;
    if (opposite)
        std::swap(order[1], order[2]);
    return order;
}

} // namespace matside
