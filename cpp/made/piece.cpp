// SPDX-License-Identifier: MIT
#include "made/piece.h"

#include <cmath>

namespace matside {
namespace {

Length diagonalBeside(const Six &six)
{
    const auto &[a, b, c, d, p, q] = six;
    const double left = a * a + b * b + c * c + d * d - p * p;
    return left > 0 ? toLength(std::sqrt(left)) : Length();
}

} // namespace

PieceFinding judgePiece(const Readings &readings, const Tolerances &tolerances, Marks marks)
{
    PieceFinding finding;
    const Length mark = stepOf(Round::Nearest, marks);
    const Fit fit = fitTo(readings, {mark, mark});
    if (!fit.settled)
        return finding;
    const Six six = inTicks(readings);
    finding.K = toLength(quickCheck(six));
    finding.otherDiagonal = diagonalBeside(six);
    // A tape is trusted half as far as a ruler: twice the disagreement is still none.
    const auto most = static_cast<double>((tolerances.doubtful * 2).count());
    if (finding.K.magnitude() > tolerances.doubtful * 2 || std::abs(fit.disagreement) > most)
        return finding;
    finding.measureAgain = false;
    finding.shape = fit.shape;
    const auto &[top, right, bottom, left] = readings.sides;
    finding.ends = top - bottom;
    finding.flanks = right - left;
    finding.diagonals = readings.diagonals[0] - readings.diagonals[1];
    finding.order = trimOrder(fit.shape);
    finding.within = toLength(mostWander(fit.shape, turnOf(fit.shape, finding.order.front())));
    finding.trueSize = trueLargest(fit.shape, false).size;
    const Length longest = max(max(top, bottom), max(right, left));
    finding.oppositeLimit = longest > tolerances.large ? tolerances.oppositeLarge : tolerances.opposite;
    const Length perLarge = longest.scaled(tolerances.finishedDiagonals.count(), tolerances.large.count());
    finding.diagonalLimit = max(perLarge, finding.oppositeLimit);
    finding.good = max(finding.ends.magnitude(), finding.flanks.magnitude()) <= finding.oppositeLimit &&
                   finding.diagonals.magnitude() <= finding.diagonalLimit;
    return finding;
}

} // namespace matside
