// SPDX-License-Identifier: MIT
#include "plan/curves.h"

#include <cmath>

namespace matside {

namespace {

constexpr long double root2 = 1.41421356237309504880L;

Length rounded(long double ticks)
{
    constexpr long double most = 1e15L;
    if (!(std::abs(ticks) < most))
        return Length::overflow();
    return Length::ticks(std::llround(ticks));
}

long double inTicks(Length length)
{
    return static_cast<long double>(length.count());
}

Length either(System system, Length inch, Length metric)
{
    return system == System::Inch ? inch : metric;
}

} // namespace

Length cornersSave(Length radius)
{
    return radius.scaled(194, 113); // 8 − 2·355/113
}

Length roundEdge(Length diameter)
{
    return diameter.scaled(355, 113);
}

std::optional<Scallop> scallop(Length chord, Length depth)
{
    const bool arched = depth > Length() && chord > Length() && depth * 2 <= chord;
    if (!arched || chord > Length::inches(1000))
        return std::nullopt;
    const long double q = inTicks(chord);
    const long double y = inTicks(depth);
    const long double radius = (q * q / 4 + y * y) / (2 * y);
    // The root of rounding errors: a half circle must not ask for the sine beyond 1.
    const long double sine = std::fmin(1.0L, q / (2 * radius));
    return Scallop{rounded(radius), rounded(2 * radius * std::asin(sine))};
}

Length scallopBorder(Length depth, Length edgeSeam, System system)
{
    return depth + edgeSeam + either(system, Length::inches(0, 1, 2), Length::mm(12));
}

Length leastRadius(Length edgeSeam)
{
    return edgeSeam * 10;
}

Length cornerBite(Length radius, Length outside)
{
    if (!radius.valid() || !outside.valid())
        return Length::overflow();
    return max(Length(), rounded(inTicks(radius) * (root2 - 1) - inTicks(outside) * root2));
}

Length radiusThatClears(Length outside)
{
    if (!outside.valid())
        return Length::overflow();
    return Length::ticks(static_cast<std::int64_t>(std::floor(inTicks(outside) * (2 + root2))));
}

Length biasSquare(Length length, Length width, System system)
{
    if (!length.valid() || !width.valid() || length < Length() || width < Length())
        return Length::overflow();
    const Length root = rounded(std::sqrt(inTicks(length) * inTicks(width)));
    const Length seams = either(system, Length::inches(3), Length::mm(75));
    return (root + seams).upTo(either(system, Length::inches(1), Length::mm(10)));
}

BiasStrips biasStrips(Length height, Length usable, Length width, System system)
{
    BiasStrips strips;
    if (height <= Length() || width <= Length() || usable <= height || !usable.valid())
        return strips;
    strips.each = rounded(inTicks(height) * root2);
    strips.number =
        static_cast<std::int64_t>(std::floor(inTicks(usable - height) / (inTicks(width) * root2)));
    if (strips.number <= 0)
        return {};
    const Length seam = either(system, Length::inches(0, 1, 4), Length::mm(6));
    const Length cost = rounded(inTicks(seam) * 2 * root2);
    strips.joined = strips.each * strips.number - cost * (strips.number - 1);
    return strips;
}

std::optional<LeastBias> leastBiasStrips(Length length, Length usable, Length width, System system)
{
    const Length step = either(system, Length::inches(9), Length::mm(250));
    if (!length.valid() || !usable.valid() || length <= Length() || usable > Length::inches(1000))
        return std::nullopt;
    for (Length height = step; height < usable; height += step) {
        BiasStrips strips = biasStrips(height, usable, width, system);
        if (strips.number <= 0 || strips.joined < length)
            continue;
        // Each strip but the first loses as much to its join.
        const Length lost = strips.each * strips.number - strips.joined;
        const Length cost = strips.number > 1 ? lost.scaled(1, strips.number - 1) : Length();
        strips.number = (length - cost).ceilDiv(strips.each - cost);
        strips.joined = strips.each * strips.number - cost * (strips.number - 1);
        return LeastBias{height, strips};
    }
    return std::nullopt;
}

Sleeve hangingSleeve(Length along, System system)
{
    Sleeve sleeve;
    sleeve.wideLeast = either(system, Length::inches(8, 1, 2), Length::mm(215));
    sleeve.wideMost = either(system, Length::inches(9), Length::mm(230));
    const Length least = either(system, Length::inches(2), Length::mm(50));
    const Length most = either(system, Length::inches(1), Length::mm(25));
    sleeve.longLeast = max(Length(), along - least);
    sleeve.longMost = max(Length(), along - most);
    return sleeve;
}

Pillow envelopePillow(const Pair &cover, Length allowance, System system)
{
    const Length inch = either(system, Length::inches(1), Length::mm(25));
    const Length overlap = either(system, Length::inches(4), Length::mm(100));
    Pillow pillow;
    pillow.form = {cover.along + inch, cover.across + inch};
    pillow.back = {(cover.along + overlap).scaled(1, 2) + allowance + inch, cover.across + allowance * 2};
    return pillow;
}

} // namespace matside
