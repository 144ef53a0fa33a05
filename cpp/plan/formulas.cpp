// SPDX-License-Identifier: MIT
#include "plan/formulas.h"

#include "project/basis.h"

#include <cmath>

namespace matside {

namespace {

Measures inchMeasures()
{
    const auto sixteenths = [](std::int64_t n) { return Length::inches(0, n, 16); };
    const auto thirtySeconds = [](std::int64_t n) { return Length::inches(0, n, 32); };
    Measures m;
    m.fray = m.leastFold = m.magnetMargin = m.tight = m.parElse = sixteenths(4);
    m.eighth = m.truing = m.foldOver = m.usualCatch = m.bindingStep = sixteenths(2);
    m.bindingMachine = m.bagLess = m.webLess = sixteenths(2);
    m.gapOpen = gapLeftOpen(System::Inch);
    m.leastCatch = thirtySeconds(3);
    m.mostCatch = sixteenths(3);
    m.cutStep = m.bindingHand = sixteenths(1);
    m.bindingTurn = thirtySeconds(1);
    m.shortSpare = m.joinSeam = m.ringMargin = m.halfSeam = sixteenths(8);
    m.parAtHalf = sixteenths(6);
    m.longSpare = Length::inches(1);
    m.backingOver = Length::inches(2);
    m.stiffLip = Length::inches(3);
    m.openClose = Length::inches(6);
    return m;
}

Measures metricMeasures()
{
    Measures m;
    m.fray = m.leastFold = m.magnetMargin = m.tight = m.parElse = Length::mm(6);
    m.eighth = Length::mm(2);
    m.gapOpen = gapLeftOpen(System::Metric);
    m.truing = m.foldOver = m.usualCatch = m.bindingMachine = m.bagLess = m.webLess = Length::mm(3);
    m.leastCatch = Length::mmTenths(24);
    m.mostCatch = Length::mmTenths(48);
    m.cutStep = m.bindingStep = Length::mm(1);
    m.bindingHand = Length::mmTenths(15);
    m.bindingTurn = Length::mmTenths(8);
    m.shortSpare = m.joinSeam = m.ringMargin = m.halfSeam = Length::mm(12);
    m.parAtHalf = Length::mm(9);
    m.longSpare = Length::mm(25);
    m.backingOver = Length::mm(50);
    m.stiffLip = Length::mm(75);
    m.openClose = Length::mm(150);
    return m;
}

} // namespace

Measures measures(System system)
{
    return system == System::Inch ? inchMeasures() : metricMeasures();
}

Length sentFor(Length outline, Share drawUp)
{
    constexpr std::int64_t whole = 1'000'000;
    if (drawUp.millionths >= whole)
        return Length::overflow();
    return outline.scaled(whole, whole - drawUp.millionths);
}

Length overTheBulk(Length loft)
{
    // 3 t = 36/1000 in; both terms over one denominator so that the sum is rounded once.
    const Length thousandInches = Length::inches(36) + loft * 240;
    return thousandInches.scaled(1, 1000);
}

Length bindingWidth(Length seam, Length loft, Length reach, Length turn, Binding binding)
{
    const Length round = loft + reach + turn;
    return binding == Binding::Double ? seam * 6 + round * 2 : seam * 4 + round;
}

Length diagonalOf(Length a, Length b)
{
    if (!a.valid() || !b.valid())
        return Length::overflow();
    const auto x = static_cast<long double>(a.count());
    const auto y = static_cast<long double>(b.count());
    return Length::ticks(std::llround(std::hypot(x, y)));
}

} // namespace matside
