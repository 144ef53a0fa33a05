// SPDX-License-Identifier: MIT
#include "made/tolerances.h"

namespace matside {

namespace {

Tolerances inchTolerances()
{
    const Length thirtySecond = Length::inches(0, 1, 32);
    const Length sixteenth = thirtySecond * 2, eighth = thirtySecond * 4, quarter = thirtySecond * 8;
    Tolerances t;
    t.agree = t.under = t.tiltMost = t.trimmedDiagonals = t.gapMost = t.opposite = eighth;
    t.doubtful = t.plainDiagonals = sixteenth * 3;
    t.splitDiagonals = sixteenth * 5;
    t.plainWander = Length::ticks(9 * Length::ticksPerInch / 128);
    t.splitWander = t.size = t.tiltLeast = t.overlapMost = t.visible = sixteenth;
    t.crossing = t.rowPerColumn = t.easePerBlock = sixteenth;
    t.over = t.oppositeLarge = t.finishedDiagonals = quarter;
    t.trim = t.gapWanted = thirtySecond;
    t.large = Length::inches(60);
    return t;
}

Tolerances metricTolerances()
{
    const Length slight = Length::mmTenths(15);
    Tolerances t;
    t.agree = t.under = t.tiltMost = t.trimmedDiagonals = t.gapMost = t.opposite = Length::mm(3);
    t.doubtful = t.plainDiagonals = Length::mm(5);
    t.splitDiagonals = Length::mm(8);
    t.plainWander = Length::mmTenths(18);
    t.splitWander = Length::mmTenths(16);
    t.size = t.tiltLeast = t.overlapMost = t.visible = slight;
    t.crossing = t.rowPerColumn = t.easePerBlock = slight;
    t.over = t.oppositeLarge = t.finishedDiagonals = Length::mm(6);
    t.trim = t.gapWanted = Length::mmTenths(8);
    t.large = Length::mm(1500);
    return t;
}

} // namespace

Tolerances usualTolerances(System system)
{
    return system == System::Inch ? inchTolerances() : metricTolerances();
}

LeastAllowance leastAllowance(Length seam, System system)
{
    const bool inch = system == System::Inch;
    const Length half = inch ? Length::inches(0, 1, 2) : Length::mm(12);
    const Length quarter = inch ? Length::inches(0, 1, 4) : Length::mm(6);
    const Length most = inch ? Length::inches(0, 3, 8) : Length::mm(9);
    return {min(seam >= half ? most : quarter, seam.scaled(3, 4)), min(quarter, seam.scaled(1, 2))};
}

} // namespace matside
