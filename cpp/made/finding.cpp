// SPDX-License-Identifier: MIT
#include "made/finding.h"

#include "made/verdict.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace matside {

namespace {

double value(Length length)
{
    return static_cast<double>(length.count());
}

Pair wantedSize(Measured what, const Target &target)
{
    const Length both = what == Measured::Trimmed ? target.allowance * 2 : Length();
    return {target.outline.along + both, target.outline.across + both};
}

Agreement agreementOf(const Fit &fit, const Six &six, const Tolerances &tolerances)
{
    // The quick form and the exact one differ only for figures far from a rectangle; both must agree.
    const double off = std::max(std::abs(quickCheck(six)), std::abs(fit.disagreement));
    if (off <= value(tolerances.agree))
        return Agreement::Good;
    return off <= value(tolerances.doubtful) ? Agreement::Doubtful : Agreement::None;
}

/// Squared departure of six lengths from the wanted rectangle.
double farFrom(const Six &six, const Pair &wanted)
{
    const double w = value(wanted.along), h = value(wanted.across), diagonal = std::hypot(w, h);
    const Six plan{w, h, w, h, diagonal, diagonal};
    double sum = 0;
    for (std::size_t i = 0; i < 6; ++i)
        sum += (six[i] - plan[i]) * (six[i] - plan[i]);
    return sum;
}

/// One check cannot tell which of six readings is wrong; the likeliest is the one without which the block
/// comes out nearest to what was planned.
std::size_t likeliestMisread(const Readings &readings, Precision precision, const Pair &wanted)
{
    std::size_t suspect = 0;
    double best = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < 6; ++i) {
        const Fit without = fitWithout(readings, precision, i);
        const double far = farFrom(lengthsOf(without.shape), wanted);
        if (without.settled && far < best) {
            best = far;
            suspect = i;
        }
    }
    return suspect;
}

constexpr std::array kinds{"plain", "split", "common-size", "tilted", "taper", "remake", "measure-again"};
constexpr std::array remedies{"cut-plainly",   "cut-split",        "use-as-is",       "trim-to-size",
                              "trim-true",     "take-common-size", "hide-in-seam",    "hide-both-sides",
                              "restitch-line", "block-wet",        "patch-allowance", "make-again",
                              "measure-first", "read-the-rest"};

} // namespace

std::string_view nameOf(FindingKind kind)
{
    return kinds.at(static_cast<std::size_t>(kind));
}

std::string_view nameOf(Remedy remedy)
{
    return remedies.at(static_cast<std::size_t>(remedy));
}

Length offBy(const Finding &finding)
{
    if (finding.does == Remedy::BlockWet)
        return finding.figures.lean.magnitude();
    return max(finding.figures.tilt.magnitude(),
               max((finding.own.along - finding.wanted.along).magnitude(),
                   (finding.own.across - finding.wanted.across).magnitude()));
}

Finding judge(const Readings &readings, Measured what, const Target &target, const Tolerances &tolerances,
              Marks marks, const Taken &taken)
{
    const Precision precision = halfMark(stepOf(Round::Nearest, marks));
    const Fit fit = fitTo(readings, precision);
    Finding again;
    if (!fit.settled)
        return again;
    const Six six = inTicks(readings);
    const Pair wanted = wantedSize(what, target);
    const Agreement agreement = agreementOf(fit, six, tolerances);
    again.agreement = agreement;
    again.figures.K = toLength(quickCheck(six));
    // Readings that agree but doubtfully are taken as good to a whole mark only: the promise grows with it.
    const Precision trusted =
        agreement == Agreement::Good ? precision : Precision{precision.side * 2, precision.diagonal * 2};
    Finding finding = again;
    if (agreement != Agreement::None)
        finding = verdict({fit.shape, readings, what, target, wanted, tolerances, marks, trusted});
    finding.agreement = agreement;
    finding.figures.K = again.figures.K;
    finding.wanted = wanted;
    if (finding.kind != FindingKind::MeasureAgain)
        return finding;
    for (std::size_t i = 0; i < taken.size(); ++i)
        if (!taken[i])
            finding.missing.push_back(i);
    if (finding.missing.empty())
        finding.suspect = likeliestMisread(readings, precision, wanted);
    else
        finding.does = Remedy::ReadTheRest;
    return finding;
}

std::optional<Readings> readingsOf(const MadeBlock &block)
{
    if (!block.sides || !block.diagonals)
        return std::nullopt;
    return Readings{*block.sides, *block.diagonals};
}

Measured measuredOn(const MadeBlock &block)
{
    return block.state == BlockState::Stitched ? Measured::Outline : Measured::Trimmed;
}

Measured measuredOn(const MadeBlock &block, const Target &target, const Tolerances &tolerances)
{
    const Measured noted = measuredOn(block);
    if (!block.sides)
        return noted;
    const auto &[top, right, bottom, left] = *block.sides;
    const Pair own{(top + bottom).scaled(1, 2), (right + left).scaled(1, 2)};
    const auto near = [&](Measured what) {
        const Pair size = wantedSize(what, target);
        return (own.along - size.along).magnitude() <= tolerances.over &&
               (own.across - size.across).magnitude() <= tolerances.over;
    };
    const Measured other = noted == Measured::Outline ? Measured::Trimmed : Measured::Outline;
    return near(other) && !near(noted) ? other : noted;
}

} // namespace matside
