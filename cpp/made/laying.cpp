// SPDX-License-Identifier: MIT
#include "made/laying.h"

#include <algorithm>
#include <cmath>

namespace matside {

namespace {

using Setbacks = std::array<std::array<double, 2>, 4>;

std::size_t at(Side side)
{
    return static_cast<std::size_t>(side);
}

/// A cut as the line of points with n · p = far, n pointing out of the block.
struct Cut {
    Point out;
    double far = 0;
};

double reach(Point out, Point p)
{
    return out.x * p.x + out.y * p.y;
}

/// The way out of the block over a side, for a frame at a turn.
Point outOver(Side side, double turn)
{
    const double c = std::cos(turn), s = std::sin(turn);
    switch (side) {
    case Side::Top:
        return {s, -c};
    case Side::Right:
        return {c, s};
    case Side::Bottom:
        return {-s, c};
    case Side::Left:
        break;
    }
    return {-c, -s};
}

Setbacks setbacksOf(const Shape &shape, const std::array<Cut, 4> &cuts)
{
    Setbacks setbacks{};
    for (std::size_t side = 0; side < 4; ++side)
        for (std::size_t end = 0; end < 2; ++end)
            setbacks[side][end] = cuts[side].far - reach(cuts[side].out, shape.corner[(side + end) % 4]);
    return setbacks;
}

/// The three numbers the maker sets: both ends of the first cut, the middle of the second.
using Settings = std::array<double, 3>;

/// Carries a laying out on a figure.
Setbacks carriedOut(const Shape &shape, const Laying &laying, const Settings &set)
{
    const Side first = laying.order[0], second = laying.order[1];
    const auto corner = [&](Side side, std::size_t end) { return shape.corner[(at(side) + end) % 4]; };
    const Point from = corner(first, 0), to = corner(first, 1);
    const double span = std::hypot(to.x - from.x, to.y - from.y);
    // Clockwise along the side, a setback that grows turns the cut anticlockwise.
    const double lean = std::clamp((set[1] - set[0]) / span, -1.0, 1.0);
    const double turn = turnOf(shape, first) - std::asin(lean);
    std::array<Cut, 4> cuts;
    const auto lay = [&](Side side, double far) { cuts[at(side)] = {outOver(side, turn), far}; };
    lay(first, reach(outOver(first, turn), from) + set[0]);
    const Point out = outOver(second, turn);
    lay(second, (reach(out, corner(second, 0)) + reach(out, corner(second, 1))) / 2 + set[2]);
    for (const Side side : {first, second}) {
        const Side across = static_cast<Side>((at(side) + 2) % 4);
        const bool upright = side == Side::Top || side == Side::Bottom;
        const Length size = upright ? laying.size.across : laying.size.along;
        lay(across, static_cast<double>(size.count()) - cuts[at(side)].far);
    }
    return setbacksOf(shape, cuts);
}

double value(Length length)
{
    return static_cast<double>(length.count());
}

/// Gathers by how much each setback may differ from what the fit says.
class Spread {
public:
    explicit Spread(const Setbacks &middle) : m_middle(middle) {}
    /// Two outcomes of the same uncertain thing, either way.
    void add(const Setbacks &less, const Setbacks &more)
    {
        for (std::size_t side = 0; side < 4; ++side)
            for (std::size_t end = 0; end < 2; ++end)
                m_sum[side][end] += std::max(std::abs(less[side][end] - m_middle[side][end]),
                                             std::abs(more[side][end] - m_middle[side][end]));
    }
    [[nodiscard]] double of(std::size_t side, std::size_t end) const { return m_sum[side][end]; }

private:
    Setbacks m_middle;
    Setbacks m_sum{};
};

Readings changed(Readings readings, std::size_t which, Length by)
{
    (which < 4 ? readings.sides[which] : readings.diagonals[which - 4]) += by;
    return readings;
}

} // namespace

namespace {

/// Lays a rectangle midway between two opposite places, told as how far out each side's own place lies.
template <class Place>
Laying layBetween(const Shape &shape, double turn, const Pair &size, const std::array<Side, 4> &order,
                  Place placeOf)
{
    std::array<Cut, 4> cuts;
    for (const Side side : {Side::Top, Side::Right}) {
        const Side across = static_cast<Side>((at(side) + 2) % 4);
        const Point out = outOver(side, turn), back = outOver(across, turn);
        const auto place = [&](Side s, Point way) {
            return placeOf(reach(way, shape.corner[at(s)]), reach(way, shape.corner[(at(s) + 1) % 4]));
        };
        const double centre = (place(side, out) - place(across, back)) / 2;
        const double half = value(side == Side::Top ? size.across : size.along) / 2;
        cuts[at(side)] = {out, half + centre};
        cuts[at(across)] = {back, half - centre};
    }
    Laying laying{size, order, {}};
    const Setbacks setbacks = setbacksOf(shape, cuts);
    for (std::size_t side = 0; side < 4; ++side)
        for (std::size_t end = 0; end < 2; ++end)
            laying.setback[side][end] = toLength(setbacks[side][end]);
    return laying;
}

} // namespace

Laying layAt(const Shape &shape, double turn, const Pair &size, const std::array<Side, 4> &order)
{
    return layBetween(shape, turn, size, order, [](double a, double b) { return (a + b) / 2; });
}

Laying layWithin(const Shape &shape, double turn, const Pair &size, const std::array<Side, 4> &order)
{
    return layBetween(shape, turn, size, order, [](double a, double b) { return std::min(a, b); });
}

Laying onMarks(Laying laying, Length fine)
{
    for (const Side side : {laying.order[0], laying.order[1]}) {
        auto &ends = laying.setback[at(side)];
        auto &across = laying.setback[(at(side) + 2) % 4];
        const Length middle = (ends[0] + ends[1]).scaled(1, 2);
        const Length by = middle.nearestTo(fine) - middle;
        for (Length &end : ends)
            end += by;
        for (Length &end : across)
            end -= by;
    }
    return laying;
}

Assured assuredBy(const Laying &laying, const Readings &readings, Precision precision, Length fine)
{
    const Shape shape = fitTo(readings, precision).shape;
    const auto &first = laying.setback[at(laying.order[0])];
    const auto &second = laying.setback[at(laying.order[1])];
    const Settings set{value(first[0]), value(first[1]), value(second[0] + second[1]) / 2};
    const Setbacks middle = carriedOut(shape, laying, set);
    Spread spread(middle);
    for (std::size_t i = 0; i < 6; ++i) {
        const Length by = i < 4 ? precision.side : precision.diagonal;
        spread.add(carriedOut(fitTo(changed(readings, i, -by), precision).shape, laying, set),
                   carriedOut(fitTo(changed(readings, i, by), precision).shape, laying, set));
    }
    for (std::size_t i = 0; i < set.size(); ++i) {
        Settings less = set, more = set;
        less[i] -= value(fine) / 2;
        more[i] += value(fine) / 2;
        spread.add(carriedOut(shape, laying, less), carriedOut(shape, laying, more));
    }
    // Errors that meet add a little more than each alone: 1/1024 in covers it for blocks of any sane size.
    constexpr double meeting = Length::ticksPerInch / 1024.0;
    Assured assured{Length::ticks(std::numeric_limits<std::int64_t>::min() / 2),
                    Length::ticks(std::numeric_limits<std::int64_t>::max() / 2),
                    {}};
    for (std::size_t side = 0; side < 4; ++side) {
        const auto far = [&](std::size_t end) { return middle[side][end] + spread.of(side, end) + meeting; };
        const auto near = [&](std::size_t end) { return middle[side][end] - spread.of(side, end) - meeting; };
        assured.farthestOf[side] = toLength(std::ceil(std::max(far(0), far(1))));
        assured.farthest = max(assured.farthest, assured.farthestOf[side]);
        assured.nearest = min(assured.nearest, toLength(std::floor(std::min(near(0), near(1)))));
    }
    return assured;
}

} // namespace matside
