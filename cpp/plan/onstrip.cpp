// SPDX-License-Identifier: MIT
#include "plan/onstrip.h"

#include "plan/parts.h"

#include <algorithm>
#include <set>

namespace matside {

namespace {

constexpr std::int64_t mostStrips = 1000;
constexpr std::int64_t mostPlaces = 1000;
constexpr char spareMark = '+';

/// The layout's places of one kit; 26 letters, then AA, AB…
std::string rowName(std::int64_t row)
{
    std::string name;
    for (std::int64_t n = row; n >= 0; n = n / 26 - 1)
        name.insert(name.begin(), static_cast<char>('A' + n % 26));
    return name;
}

const MadeStrip *madeStrip(const Project &project, std::int64_t strip)
{
    const auto found = std::find_if(project.made.strips.begin(), project.made.strips.end(),
                                    [&](const MadeStrip &made) { return made.strip == strip; });
    return found == project.made.strips.end() ? nullptr : &*found;
}

/// What was stitched on a strip, in order of places.
std::vector<const MadeBlock *> stitchedOn(const Project &project, std::int64_t strip)
{
    std::vector<const MadeBlock *> blocks;
    for (const MadeBlock &block : project.made.blocks)
        if (block.strip == strip && block.place > 0)
            blocks.push_back(&block);
    std::stable_sort(blocks.begin(), blocks.end(),
                     [](const MadeBlock *a, const MadeBlock *b) { return a->place < b->place; });
    return blocks;
}

/// Where the start after so many blocks is expected on cloth already drawn in.
Length drawnStart(const Plan &plan, std::int64_t blocks)
{
    return plan.strip.end + (plan.block.outline.along + plan.strip.gap) * blocks + plan.strip.widened(blocks);
}

/// Where the far edge of the last of so many blocks, 1 or more, is expected.
Length drawnEnd(const Plan &plan, std::int64_t blocks)
{
    return drawnStart(plan, blocks - 1) + plan.block.outline.along;
}

NextPlace nextOn(const StripWork &work, const Project &project, const Plan &plan, std::int64_t stitched)
{
    const StripPlan &strip = plan.strip;
    const Length sent = plan.block.sent.along;
    NextPlace next;
    next.place = stitched + 1;
    next.first = stitched == 0;
    next.gap = next.first ? strip.end : strip.gapAfter(stitched);
    next.start = next.first ? strip.end : work.far + next.gap;
    next.centre = next.start + sent.scaled(1, 2);
    next.expected = drawnStart(plan, stitched);
    const Length over = next.start + sent + strip.end - work.end;
    next.missing = max(over, Length());
    next.fits = over <= Length();
    const Measures m = measures(project.system);
    const Length shorter = strip.end - endMargin(project, plan.basis, strip.reach, true, m);
    next.fitsWithTail = over <= shorter;
    const Length smaller = next.gap - over;
    const bool clear = project.strip.frameMayOverlap || smaller >= strip.reach;
    if (!next.first && !next.fits && smaller >= plan.basis.seam * 2 && clear)
        next.fitsWithGap = smaller;
    return next;
}

/// Blocks that still go on a strip behind those stitched there.
std::int64_t roomFor(const StripWork &work, const Plan &plan, std::int64_t stitched)
{
    const StripPlan &strip = plan.strip;
    const Length from = stitched == 0 ? strip.end : work.far + strip.gapAfter(stitched);
    const Length pitch = plan.block.sent.along + strip.gap;
    Length room = work.end - strip.end - from + strip.gap;
    if (!room.valid() || !pitch.valid() || pitch <= Length() || room < pitch)
        return 0;
    std::int64_t more = std::min(room.floorDiv(pitch), mostPlaces);
    // The wider gaps still to come take their part.
    while (more > 0 && pitch * more + strip.widened(stitched + more - 1) - strip.widened(stitched) > room)
        --more;
    return more;
}

/// The number of blocks, 1 or more, whose far edge is expected nearest to where the last one ended.
std::int64_t countEndingAt(const Plan &plan, Length ended)
{
    if (plan.block.outline.along + plan.strip.gap <= Length())
        return 1;
    std::int64_t count = 1;
    while (count < mostPlaces && drawnEnd(plan, count) + drawnEnd(plan, count + 1) <= ended * 2)
        ++count;
    return count;
}

/// How many outlines stand on a strip: blocks logged, outlines measured, or told by where the last ended.
std::int64_t countOn(const MadeStrip *made, std::size_t logged, const Plan &plan)
{
    const std::size_t told = made ? std::max(made->outlines.size(), logged) : logged;
    if (told > 0 || !made || !made->ended)
        return static_cast<std::int64_t>(told);
    return countEndingAt(plan, *made->ended);
}

/// Where the last of the stitched outlines ends: as it was measured; by the outlines as they were logged
/// since an earlier one was measured, or since the zero end; else as the plan expects it.
void takeFarEdge(StripWork &work, const std::optional<Length> &measured,
                 const std::vector<const MadeBlock *> &blocks, const Plan &plan, std::int64_t stitched)
{
    if (stitched == 0)
        return;
    // A re-zero is of the outline it lies nearest to, which need not be the last any more.
    const std::int64_t from = measured ? std::min(countEndingAt(plan, *measured), stitched) : 0;
    if (from == stitched)
        work.ended = measured;
    work.far =
        from > 0 ? *measured + (drawnEnd(plan, stitched) - drawnEnd(plan, from)) : drawnEnd(plan, stitched);
    for (auto i = static_cast<std::size_t>(from); i < static_cast<std::size_t>(stitched); ++i)
        if (i < blocks.size() && blocks[i]->outline)
            work.far += (*blocks[i]->outline)[0] - plan.block.outline.along;
}

/// Cloth the blocks of a strip have drawn in, each by its measured outline where there is one.
Length drawnIn(const MadeStrip *made, const std::vector<const MadeBlock *> &blocks, const Plan &plan,
               std::int64_t stitched)
{
    Length in;
    for (std::size_t i = 0; i < static_cast<std::size_t>(stitched); ++i) {
        Length outline = plan.block.outline.along;
        if (made && i < made->outlines.size())
            outline = made->outlines[i].to - made->outlines[i].from;
        else if (i < blocks.size() && blocks[i]->outline)
            outline = (*blocks[i]->outline)[0];
        in += max(plan.block.sent.along - outline, Length());
    }
    return in;
}

/// Where the stitched outlines lie and how long they came out: each moved on by what those before it came out
/// longer or shorter. The one whose end was measured reaches to that end; those behind it count from there.
void laySewn(StripWork &work, const MadeStrip *made, const std::optional<Length> &measured,
             const std::vector<const MadeBlock *> &blocks, const Plan &plan, std::int64_t stitched)
{
    const std::int64_t anchor =
        measured && stitched > 0 ? std::min(countEndingAt(plan, *measured), stitched) : 0;
    Length off;
    for (std::int64_t i = 0; i < std::min(stitched, work.capacity); ++i) {
        const auto at = static_cast<std::size_t>(i);
        StripPlace &place = work.places[at];
        const bool logged = at < blocks.size() && blocks[at]->outline;
        if (logged)
            place.along = (*blocks[at]->outline)[0];
        place.drawn += off;
        if (made && at < made->outlines.size()) {
            place.drawn = made->outlines[at].from;
            place.along = made->outlines[at].to - made->outlines[at].from;
        } else if (i + 1 == anchor && !logged && *measured > place.drawn) {
            place.along = *measured - place.drawn;
        }
        const Length end = i + 1 == anchor ? *measured : place.drawn + place.along;
        off = end - drawnEnd(plan, i + 1);
    }
}

/// A strip without the names of what is to come.
StripWork bareStrip(const Project &project, const Plan &plan, std::int64_t number)
{
    StripWork work;
    work.strip = number;
    work.usable = plan.strip.usable;
    const MadeStrip *made = madeStrip(project, number);
    if (made && made->usable)
        work.usable = *made->usable;
    std::optional<Length> measured;
    if (made && made->ended)
        measured = made->ended;
    else if (made && !made->outlines.empty())
        measured = made->outlines.back().to;
    const auto blocks = stitchedOn(project, number);
    const std::int64_t stitched = std::min(countOn(made, blocks.size(), plan), mostPlaces);
    takeFarEdge(work, measured, blocks, plan, stitched);
    work.end = work.usable - drawnIn(made, blocks, plan, stitched);
    const std::int64_t more = made && made->closed ? 0 : roomFor(work, plan, stitched);
    work.capacity = stitched + more;
    for (std::int64_t i = 0; i < work.capacity; ++i) {
        StripPlace place;
        place.place = i + 1;
        place.stitched = i < stitched;
        if (static_cast<std::size_t>(i) < blocks.size())
            place.block = blocks[static_cast<std::size_t>(i)]->block;
        place.start = plan.strip.end + plan.strip.advance * i + plan.strip.widened(i);
        place.centre = place.start + plan.block.sent.along.scaled(1, 2);
        // A measured end moves all that lies behind it; what lies before it stays where it was found.
        place.drawn = drawnStart(plan, i);
        place.along = plan.block.outline.along;
        if (stitched > 0 && i >= stitched)
            place.drawn += work.far - drawnEnd(plan, stitched);
        work.places.push_back(std::move(place));
    }
    laySewn(work, made, measured, blocks, plan, stitched);
    return work;
}

/// Gives the strip the next names; `left` is shortened by them.
void nameThem(StripWork &work, const Project &project, const Plan &plan, const std::vector<std::string> &left,
              std::size_t &at)
{
    std::int64_t stitched = 0;
    for (StripPlace &place : work.places) {
        if (place.stitched)
            ++stitched;
        if (place.block.empty() && at < left.size())
            place.block = left[at++];
    }
    const bool more = stitched < static_cast<std::int64_t>(work.places.size());
    if (!more && stitched < plan.strip.perStrip && stitched > 0 && at < left.size() &&
        !(madeStrip(project, work.strip) && madeStrip(project, work.strip)->closed)) {
        work.over = nextOn(work, project, plan, stitched);
        work.over->block = left[at];
    }
    if (more && !work.places[static_cast<std::size_t>(stitched)].block.empty()) {
        work.next = nextOn(work, project, plan, stitched);
        work.next->block = work.places[static_cast<std::size_t>(stitched)].block;
    }
}

} // namespace

std::vector<std::string> blockNames(const Project &project)
{
    std::vector<std::string> names;
    for (std::int64_t kit = 1; kit <= project.kits; ++kit) {
        // The first kit is the piece of before: what was made of it stays what it is called.
        const std::string mark = kit > 1 ? '.' + std::to_string(kit) : std::string();
        for (std::int64_t row = 0; row < project.blocks.rows; ++row)
            for (std::int64_t column = 1; column <= project.blocks.columns; ++column)
                names.push_back(rowName(row) + std::to_string(column) + mark);
        for (std::int64_t spare = 1; spare <= project.blocks.spare; ++spare)
            names.push_back(spareMark + std::to_string(spare) + mark);
        if (names.size() > 100'000)
            return names;
    }
    // Those that all kits share are numbered on from the first kit's.
    for (std::int64_t spare = 1; spare <= sparesOfSet(project); ++spare)
        names.push_back(spareMark + std::to_string(project.blocks.spare + spare));
    return names;
}

const MadeBlock *blockAt(const Project &project, const std::string &name)
{
    for (const MadeBlock &block : project.made.blocks)
        if (block.good() && (block.block == name || block.replaces == name))
            return &block;
    return nullptr;
}

std::vector<std::string> blocksToStitch(const Project &project)
{
    std::vector<std::string> left;
    std::vector<std::string> spares;
    std::set<std::string> good;
    std::int64_t spoiled = 0;
    for (const MadeBlock &block : project.made.blocks) {
        if (!block.good()) {
            ++spoiled;
            continue;
        }
        good.insert(block.block);
        if (block.replaces.empty())
            continue;
        good.insert(block.replaces);
        // What a spare that is made stands in for has used up that spare, not one still to come.
        if (block.block.starts_with(spareMark))
            --spoiled;
    }
    for (std::string &name : blockNames(project))
        if (!good.contains(name))
            (name.front() == spareMark ? spares : left).push_back(std::move(name));
    // Each spoiled block has used up one spare, as long as there are any.
    const std::size_t kept =
        spares.size() - std::min(spares.size(), static_cast<std::size_t>(std::max<std::int64_t>(spoiled, 0)));
    left.insert(left.end(), spares.begin(), spares.begin() + static_cast<std::ptrdiff_t>(kept));
    return left;
}

StripWork stripWork(const Project &project, const Plan &plan, std::int64_t strip)
{
    std::vector<StripWork> all = stripsInWork(project, plan);
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const StripWork &work) { return work.strip == strip; });
    return found == all.end() ? bareStrip(project, plan, strip) : *found;
}

std::vector<StripWork> stripsInWork(const Project &project, const Plan &plan)
{
    std::vector<StripWork> all;
    const std::vector<std::string> left = blocksToStitch(project);
    std::size_t at = 0;
    std::int64_t last = plan.strip.strips;
    for (const MadeBlock &block : project.made.blocks)
        last = std::max(last, block.strip);
    for (std::int64_t number = 1; number <= mostStrips; ++number) {
        if (number > last && (at >= left.size() || plan.strip.perStrip == 0))
            break;
        StripWork work = bareStrip(project, plan, number);
        nameThem(work, project, plan, left, at);
        all.push_back(std::move(work));
    }
    return all;
}

std::int64_t stripsNeeded(const Project &project, const Plan &plan)
{
    if (project.made.strips.empty() && project.made.blocks.empty())
        return plan.strip.strips;
    return std::max(plan.strip.strips, static_cast<std::int64_t>(stripsInWork(project, plan).size()));
}

std::optional<HarvestOffer> harvestOffer(const Project &project, const Plan &plan)
{
    if (plan.strip.perStrip < 2 || plan.sashing.shorts == 0 || project.strip.harvest)
        return std::nullopt;
    const Measures m = measures(project.system);
    if (plan.strip.width - m.fray * 2 < plan.sashing.shortLength)
        return std::nullopt;
    const auto with = [&](bool tails) {
        Project wide = project;
        wide.strip.harvest = true;
        wide.strip.tails = wide.strip.tails || tails;
        wide.strip.gap.reset();
        wide.strip.harvestGaps = 0;
        return planFigures(wide);
    };
    const Plan wide = with(false);
    HarvestOffer offer;
    offer.gap = wide.strip.gap;
    const Length wider = offer.gap - plan.strip.gap;
    offer.extra = max(wider, Length()) * (plan.strip.perStrip - 1);
    offer.free = offer.extra <= plan.strip.remainder;
    offer.perStrip = wide.strip.perStrip;
    offer.perStripTails = with(true).strip.perStrip;
    offer.pairs = wide.strip.harvestedPairs;
    offer.someGaps = wider > Length()
                         ? std::min(plan.strip.remainder.floorDiv(wider), plan.strip.perStrip - 1)
                         : plan.strip.perStrip - 1;
    offer.exact = plan.strip.width - m.fray * 2 < plan.sashing.shortLength + plan.sashing.shortSpare;
    return offer;
}

const StripWork *openStrip(const std::vector<StripWork> &all, std::int64_t strip)
{
    const StripWork *first = nullptr;
    for (const StripWork &work : all) {
        if (!work.next)
            continue;
        if (work.strip == strip)
            return &work;
        if (!first)
            first = &work;
    }
    return first;
}

} // namespace matside
