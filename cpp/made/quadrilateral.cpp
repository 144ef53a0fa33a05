// SPDX-License-Identifier: MIT
#include "made/quadrilateral.h"

#include <algorithm>
#include <cmath>

namespace matside {

namespace {

double squared(double x)
{
    return x * x;
}

double distance(Point a, Point b)
{
    return std::hypot(b.x - a.x, b.y - a.y);
}

} // namespace

Precision halfMark(Length finest)
{
    const Length half = finest.scaled(1, 2);
    return {half, half};
}

Length toLength(double ticks)
{
    constexpr double most = 9.0e18;
    if (!std::isfinite(ticks) || std::abs(ticks) > most)
        return Length::overflow();
    return Length::ticks(std::llround(ticks));
}

Six inTicks(const Readings &readings)
{
    Six six{};
    for (std::size_t i = 0; i < 6; ++i) {
        const Length length = i < 4 ? readings.sides[i] : readings.diagonals[i - 4];
        six[i] = length.valid() ? static_cast<double>(length.count()) : -1;
    }
    return six;
}

Six lengthsOf(const Shape &shape)
{
    const auto &[a, b, c, d] = shape.corner;
    return {distance(a, b), distance(b, c), distance(c, d), distance(d, a), distance(a, c), distance(b, d)};
}

double areaOf(const Shape &shape)
{
    double twice = 0;
    for (std::size_t i = 0; i < 4; ++i) {
        const Point from = shape.corner[i], to = shape.corner[(i + 1) % 4];
        twice += from.x * to.y - to.x * from.y;
    }
    return twice / 2;
}

double quickCheck(const Six &six)
{
    const auto &[a, b, c, d, p, q] = six;
    const double mean = (a + b + c + d) / 4;
    return (squared(p) + squared(q) - squared(a) - squared(b) - squared(c) - squared(d)) / (2 * mean);
}

double cayleyMenger(const Six &six)
{
    const auto &[a, b, c, d, p, q] = six;
    // Seen from the top left corner, 288 V² = 8 · (Gram determinant of the three edges out of it): the
    // bordered 5 × 5 determinant with its border cleared.
    const double ab = squared(a), ac = squared(p), ad = squared(d);
    const double bc = (ab + ac - squared(b)) / 2, bd = (ab + ad - squared(q)) / 2,
                 cd = (ac + ad - squared(c)) / 2;
    return 8 * (ab * (ac * ad - cd * cd) - bc * (bc * ad - cd * bd) + bd * (bc * cd - ac * bd));
}

Departure departureOf(const Six &six)
{
    const auto &[a, b, c, d, p, q] = six;
    Departure departure;
    departure.width = (a + c) / 2;
    departure.height = (b + d) / 2;
    departure.lean = (squared(p) - squared(q)) / (4 * departure.width);
    departure.opening = {
        (squared(q) - squared(a) - squared(d)) / (2 * a), (squared(p) - squared(a) - squared(b)) / (2 * a),
        (squared(q) - squared(b) - squared(c)) / (2 * b), (squared(p) - squared(c) - squared(d)) / (2 * d)};
    departure.ends = a - c;
    departure.flanks = b - d;
    return departure;
}

Tilt tiltOf(const Departure &departure, double least)
{
    const bool ends = std::abs(departure.ends) >= std::abs(departure.flanks);
    const double difference = ends ? departure.ends : departure.flanks;
    if (std::abs(difference) <= least)
        return {};
    // One tilted side by t makes the opposite ends differ by t and leans the block by t/2; a taper leans it
    // not at all. The lean is told over the height: for tilted top and bottom it is taken over the width.
    const double lean = ends ? departure.lean : departure.lean * departure.width / departure.height;
    const double share = 2 * lean / difference;
    if (std::abs(share) > 1.5)
        return {Crooked::LeanToo, Side::Top, std::abs(difference)};
    if (std::abs(share) < 0.5) {
        const Side wider =
            ends ? (difference > 0 ? Side::Top : Side::Bottom) : (difference > 0 ? Side::Right : Side::Left);
        return {Crooked::Taper, wider, std::abs(difference) / 2};
    }
    // A bottom pushed right beside a longer top comes from a left side tilted inward, and so on round.
    const Side side = ends ? (share > 0 ? Side::Left : Side::Right) : (share > 0 ? Side::Bottom : Side::Top);
    return {Crooked::OneSide, side, std::abs(difference)};
}

} // namespace matside
