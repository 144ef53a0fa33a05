// SPDX-License-Identifier: MIT
#include "made/verdict.h"

#include <algorithm>
#include <cmath>

namespace matside {

namespace {

/// What the fit may move a length that was read right on a limit: 1/1024 in. It never decides.
constexpr double moved = Length::ticksPerInch / 1024.0;

bool beyond(double ticks, Length limit)
{
    return ticks > static_cast<double>(limit.count()) + moved;
}

bool isSquare(const Case &about)
{
    return about.wanted.along == about.wanted.across;
}

Length diagonalsDiffer(const Case &about)
{
    return (about.readings.diagonals[0] - about.readings.diagonals[1]).magnitude();
}

Tilt tiltIn(const Case &about, const Departure &departure)
{
    return tiltOf(departure, static_cast<double>(about.limits.tiltLeast.count()) + moved);
}

Finding measured(const Case &about, const Departure &departure, const Tilt &tilt)
{
    Finding finding;
    finding.shape = about.shape;
    const auto &[top, right, bottom, left] = about.readings.sides;
    finding.own = {(top + bottom).scaled(1, 2), (right + left).scaled(1, 2)};
    finding.figures.lean = toLength(departure.lean);
    finding.figures.trueSize = trueLargest(about.shape, isSquare(about)).size;
    if (tilt.what == Crooked::OneSide || tilt.what == Crooked::Taper) {
        finding.figures.tilt = toLength(tilt.tilt);
        finding.side = tilt.side;
    }
    return finding;
}

Finding saying(Finding finding, FindingKind kind, Remedy does)
{
    finding.kind = kind;
    finding.does = does;
    return finding;
}

/// The sides whose stitches are unpicked where they show.
std::array<bool, 4> unpicked(const Tilt &tilt)
{
    std::array<bool, 4> sides{};
    if (tilt.what != Crooked::OneSide && tilt.what != Crooked::Taper)
        return sides;
    const auto side = static_cast<std::size_t>(tilt.side);
    if (tilt.what == Crooked::OneSide) {
        sides[side] = true;
    } else { // the two sides between the wide end and the narrow one
        sides[(side + 1) % 4] = true;
        sides[(side + 3) % 4] = true;
    }
    return sides;
}

/// Advises cuts along the outline, and what they leave.
Finding cutBy(Finding finding, const Case &about, const Laying &laying, const std::array<bool, 4> &unpick)
{
    finding.cut = laying;
    const Assured leaves =
        assuredBy(laying, about.readings, about.precision, stepOf(Round::Fine, about.marks));
    Promise promise{{}, leaves.nearest, {}};
    for (std::size_t side = 0; side < 4; ++side) {
        Length &shows = unpick[side] ? promise.unpick : promise.shows;
        shows = max(shows, leaves.farthestOf[side] - about.target.allowance);
    }
    finding.promise = promise;
    return finding;
}

Pair trimmedSize(const Case &about)
{
    const Length both = about.target.allowance * 2;
    return {about.target.outline.along + both, about.target.outline.across + both};
}

/// Squared off the base, the ruler's line on a mark.
Finding cutOffBase(const Finding &finding, const Case &about, double base, const std::array<bool, 4> &unpick)
{
    const Laying laying = layAt(about.shape, base, trimmedSize(about), trimOrder(about.shape));
    return cutBy(finding, about, onMarks(laying, stepOf(Round::Fine, about.marks)), unpick);
}

/// Turned half the lean: it straddles the line, so its setbacks fall where they fall.
Finding cutSplit(const Finding &finding, const Case &about)
{
    const double turn = splitTurn(about.shape);
    return cutBy(finding, about, layAt(about.shape, turn, trimmedSize(about), trimOrder(about.shape)), {});
}

/// How far a size lies outside what can be used: −1 too small, 1 too large, 0 neither.
int offSize(const Pair &own, const Pair &wanted, Length under, Length over)
{
    if (wanted.along - own.along > under || wanted.across - own.across > under)
        return -1;
    return own.along - wanted.along > over || own.across - wanted.across > over ? 1 : 0;
}

bool plainly(const Case &about, double turn)
{
    return !beyond(mostWander(about.shape, turn), about.limits.plainWander) &&
           (!isSquare(about) || diagonalsDiffer(about) <= about.limits.plainDiagonals);
}

bool splitHelps(const Case &about)
{
    return !beyond(mostWander(about.shape, splitTurn(about.shape)), about.limits.splitWander) &&
           (!isSquare(about) || diagonalsDiffer(about) <= about.limits.splitDiagonals);
}

Finding onOutline(const Case &about, const Departure &departure)
{
    const Tolerances &limits = about.limits;
    const Tilt tilt = tiltIn(about, departure);
    const Finding found = measured(about, departure, tilt);
    const bool hides = tilt.what == Crooked::OneSide || tilt.what == Crooked::Taper;
    if (offSize(found.own, about.wanted, limits.under, limits.over) != 0 ||
        (hides && beyond(tilt.tilt, limits.tiltMost)))
        return saying(found, FindingKind::Remake, Remedy::RestitchLine);
    const double base = turnOf(about.shape, trimOrder(about.shape).front());
    const bool plain = plainly(about, base);
    if (!hides && !plain && !splitHelps(about))
        return saying(found, FindingKind::Remake, Remedy::BlockWet);
    const Length over = about.target.common ? limits.over : limits.size;
    if (offSize(found.own, about.wanted, limits.size, over) != 0)
        return saying(found, FindingKind::CommonSize, Remedy::TakeCommonSize);
    if (hides) {
        const bool one = tilt.what == Crooked::OneSide;
        return saying(cutOffBase(found, about, base, unpicked(tilt)),
                      one ? FindingKind::Tilted : FindingKind::Taper,
                      one ? Remedy::HideInSeam : Remedy::HideBothSides);
    }
    if (plain)
        return saying(cutOffBase(found, about, base, {}), FindingKind::Plain, Remedy::CutPlainly);
    return saying(cutSplit(found, about), FindingKind::Split, Remedy::CutSplit);
}

/// A trimmed block cut smaller, or to size: the stitched line is taken to lie one allowance inside the old
/// edges.
Finding trimAgain(const Finding &found, const Case &about, FindingKind kind, Remedy does)
{
    const TrueSize best = trueLargest(about.shape, isSquare(about));
    const Pair size{min(best.size.along, about.wanted.along), min(best.size.across, about.wanted.across)};
    Finding finding = found;
    finding.cut = layWithin(about.shape, best.turned, size, trimOrder(about.shape));
    const Assured leaves =
        assuredBy(*finding.cut, about.readings, about.precision, stepOf(Round::Fine, about.marks));
    finding.promise = Promise{max(Length(), leaves.farthest), about.target.allowance + leaves.nearest, {}};
    // Whether enough is left is judged on what was measured, as every other limit is.
    Length pared;
    for (const auto &ends : finding.cut->setback)
        pared = min(pared, min(ends[0], ends[1]));
    const LeastAllowance least = leastAllowance(about.target.allowance, about.marks.system);
    if (about.target.allowance + pared >= least.pare)
        return saying(finding, kind, does);
    const bool patch = about.target.allowance + pared >= least.remake;
    return saying(found, FindingKind::Remake, patch ? Remedy::PatchAllowance : Remedy::MakeAgain);
}

Finding onTrimmed(const Case &about, const Departure &departure)
{
    const Tilt tilt = tiltIn(about, departure);
    const Finding found = measured(about, departure, tilt);
    const LeastAllowance least = leastAllowance(about.target.allowance, about.marks.system);
    const Length left =
        min(found.own.along - about.target.outline.along, found.own.across - about.target.outline.across)
            .scaled(1, 2);
    if (left < least.pare)
        return saying(found, FindingKind::Remake,
                      left < least.remake ? Remedy::MakeAgain : Remedy::PatchAllowance);
    if (tilt.what == Crooked::OneSide)
        return trimAgain(found, about, FindingKind::Tilted, Remedy::TrimTrue);
    if (tilt.what == Crooked::Taper)
        return trimAgain(found, about, FindingKind::Taper, Remedy::TrimTrue);
    if (tilt.what == Crooked::LeanToo || diagonalsDiffer(about) > about.limits.trimmedDiagonals)
        return trimAgain(found, about, FindingKind::Split, Remedy::TrimTrue);
    switch (offSize(found.own, about.wanted, about.limits.size, about.limits.size)) {
    case -1:
        return saying(found, FindingKind::CommonSize, Remedy::TakeCommonSize);
    case 1:
        return trimAgain(found, about, FindingKind::Plain, Remedy::TrimToSize);
    default:
        return saying(found, FindingKind::Plain, Remedy::UseAsIs);
    }
}

} // namespace

Finding verdict(const Case &about)
{
    const Departure departure = departureOf(lengthsOf(about.shape));
    return about.what == Measured::Outline ? onOutline(about, departure) : onTrimmed(about, departure);
}

} // namespace matside
