// SPDX-License-Identifier: MIT
#pragma once

#include "madehelp.h"

/// Advice carried out on the true figure: written apart from the room that gives the advice.
namespace madehelp {

struct Leftover {
    double shows = 0;     ///< line outside the seam, inches, on sides that are not unpicked
    double unpick = 0;    ///< the same on sides that are
    double allowance = 9; ///< least distance from a corner of the line to the cut
};

inline Point minus(Point a, Point b)
{
    return {a.x - b.x, a.y - b.y};
}
inline double dot(Point a, Point b)
{
    return a.x * b.x + a.y * b.y;
}

/// The four cuts on the true figure, by points and lines; ticks. Returns each side's two setbacks.
inline std::array<std::array<double, 2>, 4> cutOut(const Shape &shape, const Laying &laying,
                                                   const std::array<double, 3> &slips)
{
    const auto first = std::size_t(laying.order[0]), second = std::size_t(laying.order[1]);
    const auto corner = [&](std::size_t side, std::size_t end) { return shape.corner[(side + end) % 4]; };
    const Point along = minus(corner(first, 1), corner(first, 0));
    const double length = std::hypot(along.x, along.y);
    const Point u{along.x / length, along.y / length}, out{u.y, -u.x};
    const double near = double(laying.setback[first][0].count()) + slips[0];
    const double far = double(laying.setback[first][1].count()) + slips[1];
    // The cut's own outward way: tilted so that the two corners lie `near` and `far` under it.
    const double sine = (far - near) / length, cosine = std::sqrt(1 - sine * sine);
    const Point normal{out.x * cosine - u.x * sine, out.y * cosine - u.y * sine};
    std::array<Point, 4> way;
    std::array<double, 4> place{};
    way[first] = normal;
    for (std::size_t k = 1; k < 4; ++k) // clockwise by quarter turns
        way[(first + k) % 4] = {-way[(first + k + 3) % 4].y, way[(first + k + 3) % 4].x};
    place[first] = dot(normal, corner(first, 0)) + near;
    const double mid =
        (double(laying.setback[second][0].count()) + double(laying.setback[second][1].count())) / 2;
    place[second] =
        (dot(way[second], corner(second, 0)) + dot(way[second], corner(second, 1))) / 2 + mid + slips[2];
    for (const std::size_t side : {first, second}) {
        const Length size = side % 2 == 0 ? laying.size.across : laying.size.along;
        place[(side + 2) % 4] = double(size.count()) - place[side];
    }
    std::array<std::array<double, 2>, 4> setbacks{};
    for (std::size_t side = 0; side < 4; ++side)
        for (std::size_t end = 0; end < 2; ++end)
            setbacks[side][end] = place[side] - dot(way[side], corner(side, end));
    return setbacks;
}

inline Leftover leftOf(const Shape &truth, const Finding &finding, Length allowance,
                       const std::array<double, 3> &slips)
{
    Leftover left;
    const auto setbacks = cutOut(truth, *finding.cut, slips);
    for (std::size_t side = 0; side < 4; ++side) {
        bool unpicked = false;
        if (finding.kind == FindingKind::Tilted)
            unpicked = side == std::size_t(*finding.side);
        if (finding.kind == FindingKind::Taper)
            unpicked = side % 2 != std::size_t(*finding.side) % 2;
        for (const double setback : setbacks[side]) {
            const double shows = asInches(setback) - allowance.asInches();
            (unpicked ? left.unpick : left.shows) = std::max(unpicked ? left.unpick : left.shows, shows);
            left.allowance = std::min(left.allowance, asInches(setback));
        }
    }
    return left;
}

} // namespace madehelp
