// SPDX-License-Identifier: MIT
#include "plan/parts.h"

#include <algorithm>

namespace matside {

namespace {

/// Places listed one by one; a strip with more is counted but not drawn out.
constexpr std::int64_t mostPlaces = 1000;

std::int64_t placesOn(Length usable, Length end, Length sent, Length gap)
{
    const Length room = usable - end * 2 + gap;
    const Length pitch = sent + gap;
    if (!room.valid() || !pitch.valid() || pitch <= Length() || room < pitch)
        return 0;
    return room.floorDiv(pitch);
}

/// What a gap must be at the least to come apart into sashing of either face (F3).
Length yieldingGap(const Basis &basis, const SashingPlan &sashing, const Measures &m)
{
    const Length widest = max(sashing.cutFront, sashing.cutBack.value_or(Length()));
    return basis.seam * 2 + widest + m.truing;
}

/// Front-and-back pairs of shorts the gaps yield, counted strip by strip (F3).
std::int64_t harvested(const Project &project, const StripPlan &strip, const Basis &basis,
                       const SashingPlan &sashing, const Measures &m)
{
    const bool wide = strip.gapAfter(1) >= yieldingGap(basis, sashing, m);
    if (!project.strip.harvest || !wide || strip.perStrip < 2 ||
        strip.width - m.fray * 2 < sashing.shortLength)
        return 0;
    const bool shared = onSharedStrips(project);
    const std::int64_t onStrips = shared ? blocksInAll(project) : blocksOfKit(project);
    const std::int64_t full = onStrips / strip.perStrip;
    const std::int64_t last = std::max<std::int64_t>(onStrips % strip.perStrip - 1, 0);
    std::int64_t pairs = full * strip.yielding() + std::min(last, strip.yielding());
    if (!shared)
        pairs *= project.kits;
    return std::min(pairs, sashing.shorts * project.kits);
}

/// Widens as many of the first gaps as are asked for and as the strip has room for beside its blocks (F3).
void widenSome(StripPlan &strip, const Project &project, const Basis &basis, const SashingPlan &sashing,
               const Measures &m)
{
    strip.wideGap = strip.gap;
    if (!project.strip.harvest || project.strip.harvestGaps == 0 || strip.perStrip < 2)
        return;
    strip.wideGap = max(strip.gap, yieldingGap(basis, sashing, m).upTo(m.eighth));
    const Length wider = strip.wideGap - strip.gap;
    if (wider <= Length())
        return; // every gap is wide enough as it is
    const Length used = strip.end * 2 + strip.advance * strip.perStrip - strip.gap;
    const std::int64_t room = (strip.usable - used).floorDiv(wider);
    strip.wideGaps = std::min({project.strip.harvestGaps, room, strip.perStrip - 1});
}

} // namespace

Length endMargin(const Project &project, const Basis &basis, Length reach, bool tails, const Measures &m)
{
    const Length least = basis.seam + m.fray;
    return tails ? least : max(least, (reach + project.strip.tail).upTo(m.eighth));
}

Length reckonedGap(const Project &project, const Basis &basis, const SashingPlan &sashing, Length reach,
                   const Measures &m)
{
    Length gap = basis.seam * 2 + project.strip.sliver;
    if (!project.strip.frameMayOverlap)
        gap = max(gap, reach);
    gap = gap.upTo(m.eighth);
    const bool all = project.strip.harvest && project.strip.harvestGaps == 0;
    return all ? max(gap, yieldingGap(basis, sashing, m).upTo(m.eighth)) : gap;
}

StripPlan planStrip(const Project &project, const Basis &basis, const BlockPlan &block,
                    const SashingPlan &sashing, const Measures &m)
{
    StripPlan strip;
    strip.usable = basis.usable;
    strip.width = max(basis.hoopOutside.across + project.strip.margin * 2,
                      block.sent.across + (basis.seam + m.fray) * 2);
    strip.reach = (basis.hoopOutside.along - block.outline.along).scaled(1, 2);
    strip.gap = project.strip.gap.value_or(reckonedGap(project, basis, sashing, strip.reach, m));
    strip.end = endMargin(project, basis, strip.reach, project.strip.tails, m);
    strip.advance = block.sent.along + strip.gap;
    strip.perStrip = placesOn(strip.usable, strip.end, block.sent.along, strip.gap);
    widenSome(strip, project, basis, sashing, m);

    // Each place is reckoned from the one zero end, never from the place before.
    for (std::int64_t place = 0; place < std::min(strip.perStrip, mostPlaces); ++place) {
        const Length start = strip.end + strip.advance * place + strip.widened(place);
        strip.starts.push_back(start);
        strip.centres.push_back(start + block.sent.along.scaled(1, 2));
        strip.drawn.push_back(strip.end + (block.outline.along + strip.gap) * place + strip.widened(place));
    }
    if (strip.perStrip == 0)
        return strip;
    strip.used =
        strip.end * 2 + strip.advance * strip.perStrip - strip.gap + strip.widened(strip.perStrip - 1);
    strip.remainder = strip.usable - strip.used;

    const auto stripsFor = [&](std::int64_t count) { return (count + strip.perStrip - 1) / strip.perStrip; };
    strip.strips = onSharedStrips(project) ? stripsFor(blocksInAll(project))
                                           : stripsFor(blocksOfKit(project)) * project.kits;
    strip.harvestedPairs = harvested(project, strip, basis, sashing, m);
    return strip;
}

} // namespace matside
