// SPDX-License-Identifier: MIT
#include "app/departure.h"

#include <QVariantMap>

#include <algorithm>
#include <array>
#include <cmath>

namespace matside {

namespace {

/// A corner as it is drawn, in parts of the longer side.
struct Drawn {
    Point square; ///< of the rectangle it should be
    Point off;    ///< how far the figure's is from it
};

/// Less than so much of the longer side, the departure drawn several times over still looks as planned; more
/// than so much of it, it is seen as it was measured; up to so much, it is drawn oftener.
constexpr double leastSeen = 0.01;
constexpr double mostDrawn = 0.2;
constexpr double mostOften = 0.055;

Point fromSize(const Pair &size, std::size_t corner)
{
    const auto w = static_cast<double>(size.along.count()), h = static_cast<double>(size.across.count());
    return {(corner == 0 || corner == 3 ? -w : w) / 2, (corner < 2 ? -h : h) / 2};
}

/// The rectangle of a size about its middle, its corners from the top left.
Shape rectangleOf(const Pair &size)
{
    return {{fromSize(size, 0), fromSize(size, 1), fromSize(size, 2), fromSize(size, 3)}};
}

Shape aboutItsMiddle(Shape shape)
{
    Point middle;
    for (const Point &corner : shape.corner) {
        middle.x += corner.x / 4;
        middle.y += corner.y / 4;
    }
    for (Point &corner : shape.corner)
        corner = {corner.x - middle.x, corner.y - middle.y};
    return shape;
}

double longest(const Pair &size)
{
    return std::max(1.0, static_cast<double>(max(size.along, size.across).count()));
}

/// The corners of the size it should have, and how far the figure's are from them; readings that make no
/// shape leave them where they should be.
std::array<Drawn, 4> drawnOf(const Departing &departing)
{
    const Shape shape = aboutItsMiddle(departing.shape.value_or(rectangleOf(departing.wanted)));
    const double part = longest(departing.wanted);
    std::array<Drawn, 4> corners;
    for (std::size_t i = 0; i < 4; ++i) {
        const Point square = fromSize(departing.wanted, i);
        const Point &corner = shape.corner[i];
        corners[i] = {{square.x / part, square.y / part},
                      {(corner.x - square.x) / part, (corner.y - square.y) / part}};
    }
    return corners;
}

QVariantMap pointMap(const Point &point)
{
    return {{QStringLiteral("x"), point.x}, {QStringLiteral("y"), point.y}};
}

} // namespace

Shape turnedBy(const Shape &shape, double radians)
{
    Shape laid = shape;
    for (Point &corner : laid.corner)
        corner = {corner.x * std::cos(radians) - corner.y * std::sin(radians),
                  corner.x * std::sin(radians) + corner.y * std::cos(radians)};
    return laid;
}

Shape laidOn(const Shape &shape, Side side)
{
    return turnedBy(shape, -turnOf(shape, side));
}

Departing departingOf(const Finding &finding)
{
    Departing departing{finding.shape, finding.wanted, finding.kind == FindingKind::Plain};
    // Where it is the size that is spoken of, the size is what is seen: whether it tilts is judged at the
    // common one.
    if (finding.shape && finding.kind == FindingKind::CommonSize)
        departing.shape = rectangleOf(finding.own);
    else if (finding.shape && finding.side)
        departing.shape =
            laidOn(*finding.shape, static_cast<Side>((static_cast<std::size_t>(*finding.side) + 2) % 4));
    return departing;
}

double timesDrawn(const Departing &departing)
{
    if (!departing.shape)
        return 1;
    double most = 0;
    for (const Drawn &corner : drawnOf(departing))
        most = std::max({most, std::abs(corner.off.x), std::abs(corner.off.y)});
    if (most * timesCrooked < leastSeen || most * timesCrooked > mostDrawn)
        return 1;
    double times = timesCrooked;
    while (!departing.good && most * times * 2 <= mostOften)
        times *= 2;
    return times;
}

QVariantList cornersOf(const Departing &departing, double times)
{
    QVariantList list;
    if (!departing.shape)
        return list;
    for (const Drawn &corner : drawnOf(departing))
        list.append(
            pointMap({corner.square.x + corner.off.x * times, corner.square.y + corner.off.y * times}));
    return list;
}

QVariantList plannedCorners(const Departing &departing)
{
    QVariantList list;
    for (const Drawn &corner : drawnOf(departing))
        list.append(pointMap(corner.square));
    return list;
}

QVariantList cornersOff(const Shape &shape, const Pair &from, double times, int quarters)
{
    const Shape about = aboutItsMiddle(shape);
    QVariantList list;
    for (std::size_t i = 0; i < 4; ++i) {
        // A quarter clockwise brings the corner at the bottom left to the top left.
        const std::size_t own = (i + 4 - static_cast<std::size_t>(quarters % 4)) % 4;
        const Point square = fromSize(from, own);
        Point off{about.corner[own].x - square.x, about.corner[own].y - square.y};
        for (int turn = 0; turn < quarters % 4; ++turn)
            off = {-off.y, off.x};
        const double mm = Length::inches(1).asMm() / Length::ticksPerInch * times;
        list.append(pointMap({off.x * mm, off.y * mm}));
    }
    return list;
}

QVariantList mirrored(const QVariantList &off)
{
    QVariantList list;
    for (const qsizetype from : {1, 0, 3, 2}) {
        const QVariantMap corner = off[from].toMap();
        list.append(pointMap(
            {-corner.value(QStringLiteral("x")).toDouble(), corner.value(QStringLiteral("y")).toDouble()}));
    }
    return list;
}

} // namespace matside
