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

/// Front-and-back pairs of shorts the gaps yield, counted strip by strip (F3).
std::int64_t harvested(const Project &project, const StripPlan &strip, Length shortLength,
                       std::int64_t shorts, const Measures &m)
{
    if (!project.strip.harvest || strip.perStrip < 2 || strip.width - m.fray * 2 < shortLength)
        return 0;
    const std::int64_t blocks = project.blocks.columns * project.blocks.rows + project.blocks.spare;
    const bool shared = project.kitsShareStrips || project.kits == 1;
    const std::int64_t onStrips = shared ? blocks * project.kits : blocks;
    const std::int64_t full = onStrips / strip.perStrip;
    const std::int64_t last = onStrips % strip.perStrip;
    std::int64_t pairs = full * (strip.perStrip - 1) + std::max<std::int64_t>(last - 1, 0);
    if (!shared)
        pairs *= project.kits;
    return std::min(pairs, shorts * project.kits);
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
    if (project.strip.harvest) {
        const Length widest = max(sashing.cutFront, sashing.cutBack.value_or(Length()));
        gap = max(gap, basis.seam * 2 + widest + m.truing);
    }
    return gap.upTo(m.eighth);
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

    // Each place is reckoned from the one zero end, never from the place before.
    for (std::int64_t place = 0; place < std::min(strip.perStrip, mostPlaces); ++place) {
        const Length start = strip.end + strip.advance * place;
        strip.starts.push_back(start);
        strip.centres.push_back(start + block.sent.along.scaled(1, 2));
        strip.drawn.push_back(strip.end + (block.outline.along + strip.gap) * place);
    }
    if (strip.perStrip == 0)
        return strip;
    strip.used = strip.end * 2 + strip.advance * strip.perStrip - strip.gap;
    strip.remainder = strip.usable - strip.used;

    const std::int64_t blocks = project.blocks.columns * project.blocks.rows + project.blocks.spare;
    const auto stripsFor = [&](std::int64_t count) { return (count + strip.perStrip - 1) / strip.perStrip; };
    const bool shared = project.kitsShareStrips || project.kits == 1;
    strip.strips = shared ? stripsFor(blocks * project.kits) : stripsFor(blocks) * project.kits;
    strip.harvestedPairs = harvested(project, strip, sashing.shortLength, sashing.shorts, m);
    return strip;
}

} // namespace matside
