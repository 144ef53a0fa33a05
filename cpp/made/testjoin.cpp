// SPDX-License-Identifier: MIT
#include "made/testjoin.h"

#include <algorithm>

namespace matside {

Length gapLeft(Length strip, Length seam, Length bulk)
{
    return strip - seam * 4 - bulk;
}

Length visibleWidth(Length strip, Length seam)
{
    return strip - seam * 2;
}

Length pitch(Length trimmed, Length gap)
{
    return trimmed + gap;
}

Length rowLength(std::int64_t columns, Length trimmed, Length gap)
{
    return trimmed * columns + gap * (columns - 1);
}

std::optional<JoinAnswer> answerOf(const TestJoin &join, const Basis &basis, Length cutStrip,
                                   const Tolerances &tolerances, Length filler)
{
    if (!join.gap)
        return std::nullopt;
    const Length sewn = join.seam.value_or(basis.seam);
    JoinAnswer answer;
    answer.gap = *join.gap;
    answer.wanted = basis.gapWanted;
    const Length off = answer.gap - max(Length(), basis.gapWanted - tolerances.gapWanted);
    answer.good = off <= tolerances.gapMost && -off <= tolerances.overlapMost;
    answer.newSeam = sewn + (answer.gap - answer.wanted).scaled(1, 4);
    answer.newStrip = cutStrip + answer.wanted - answer.gap;
    answer.visible = answer.newSeam * 2 + filler + answer.wanted;
    answer.outlineShows = max(Length(), basis.seam - answer.newSeam);
    answer.trimInside = min(basis.seam, answer.newSeam);
    answer.pare = max(Length(), -answer.gap).scaled(1, 2);
    answer.allowanceLeft = sewn - answer.pare;
    answer.mayPare = answer.allowanceLeft >= leastAllowance(basis.seam, basis.system).pare;
    answer.between = join.between.value_or(visibleWidth(cutStrip, sewn));
    if (join.between) // the same sum as the plan's: 1.5 t + 0.24 H with t = 0.012 in, rounded once
        answer.turn = (Length::inches(18) + join.loft.value_or(basis.loft) * 240).scaled(1, 1000);
    return answer;
}

namespace {

constexpr std::int64_t whole = 1'000'000;
constexpr Share mostDrawUp{150'000};

void check(Share share, const char *way, DrawUpAnswer &answer)
{
    if (share >= Share{} && share <= mostDrawUp)
        return;
    const Share nearest = std::clamp(share, Share{}, mostDrawUp);
    const std::string at = std::string("/drawUp/") + way;
    answer.problems.push_back(
        {at, "draw-up-out-of-range", {share, mostDrawUp}, {{"set-draw-up", at, nearest, {nearest}, {}}}});
}

} // namespace

DrawUpAnswer drawUpOf(const TestBlock &test, const Pair &outline)
{
    DrawUpAnswer answer;
    answer.drawUp.along = drawUp(test.sent[0], test.outline[0]);
    answer.drawUp.across = drawUp(test.sent[1], test.outline[1]);
    check(answer.drawUp.along, "along", answer);
    check(answer.drawUp.across, "across", answer);
    if (!answer.problems.empty())
        return answer;
    answer.sendNext = {outline.along.scaled(whole, whole - answer.drawUp.along.millionths),
                       outline.across.scaled(whole, whole - answer.drawUp.across.millionths)};
    return answer;
}

} // namespace matside
