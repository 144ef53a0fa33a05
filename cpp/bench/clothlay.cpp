// SPDX-License-Identifier: MIT
#include "bench/clothlay.h"

#include "bench/account.h"
#include "bench/alonglay.h"
#include "bench/nest.h"
#include "cutting/solve.h"

#include <algorithm>

namespace matside {

namespace {

using From = Wanted::From;

/// Bands of one width, each filled from end to end.
void addBands(std::vector<LaidStrip> &strips, const std::vector<Wanted> &wanted, Length height, Length usable)
{
    std::vector<const Wanted *> here;
    std::vector<Lot> lots;
    for (const Wanted &want : wanted)
        if (want.from == From::Band && want.along == height) {
            here.push_back(&want);
            lots.push_back({want.across, want.count});
        }
    for (const FilledBand &band : fillBands(lots, usable)) {
        LaidStrip strip{bandName(height, true), height, band.repeats, 0, false, {}, {}};
        for (std::size_t i = 0; i < here.size(); ++i)
            if (band.pieces[i] > 0)
                strip.pieces.push_back(
                    {here[i]->does, here[i]->across, here[i]->along, band.pieces[i], false, {}});
        strips.push_back(std::move(strip));
    }
}

/// Side by side in rows; what is longer than the cloth is wide lies a quarter turned, where it may.
void addRows(std::vector<LaidStrip> &strips, const Wanted &want, Length usable)
{
    const bool turned = want.mayTurn && want.across > usable && want.along <= usable;
    const Length across = turned ? want.along : want.across, along = turned ? want.across : want.along;
    const std::int64_t each = std::max<std::int64_t>(usable.floorDiv(across), 1);
    const auto row = [&](std::int64_t repeats, std::int64_t pieces) {
        if (repeats > 0 && pieces > 0)
            strips.push_back(
                {want.does, along, repeats, 0, false, {{want.does, across, along, pieces, turned, {}}}, {}});
    };
    row(want.count / each, each);
    row(1, want.count % each);
}

/// Every step's pieces in strips of their own.
std::vector<LaidStrip> apart(const std::vector<Wanted> &wanted, Length usable)
{
    std::vector<LaidStrip> strips;
    std::vector<Length> bands;
    for (const Wanted &want : wanted) {
        if (want.count <= 0)
            continue;
        if (want.from == From::Row) {
            addRows(strips, want, usable);
        } else if (want.from != From::Band) {
            const Length height = want.from == From::Whole ? want.takes : want.along;
            // A backing that takes less so lies across the cloth, a quarter turned.
            const bool turned = height == want.across && height != want.along;
            const Length across = min(turned ? want.along : want.across, usable);
            strips.push_back(
                {want.does, height, want.count, 0, false, {{want.does, across, height, 1, turned, {}}}, {}});
        } else if (std::find(bands.begin(), bands.end(), want.along) == bands.end()) {
            bands.push_back(want.along);
            addBands(strips, wanted, want.along, usable);
        }
    }
    return strips;
}

cutting::Job jobOf(const std::vector<Wanted> &wanted, const Ground &ground, Length straighten)
{
    cutting::Job job;
    job.usable = ground.usable.count();
    job.step = ground.step.count();
    for (const Wanted &want : wanted)
        job.sizes.push_back(sizeOf(want));
    for (const Pair &owned : ground.owned)
        job.owned.push_back({std::max<std::int64_t>(owned.across.count(), 1),
                             std::max<std::int64_t>(owned.along.count(), 1)});
    // Squaring takes a strip right across; on owned pieces it is taken off before, and for thousands of kits
    // it is longer than any piece may be: then it is added afterwards.
    if (straighten > Length() && ground.owned.empty() && straighten.count() <= cutting::limits::length)
        job.sizes.push_back({job.usable, straighten.count(), 1, false});
    return job;
}

/// The name of a strip: that of its step where it goes right across or holds one sort only by itself.
std::string nameOfStrip(const cutting::StripLayout &strip, const std::vector<Wanted> &wanted)
{
    Length sashing;
    for (const Wanted &want : wanted)
        if (want.from == From::Band && want.count > 0)
            sashing = want.along;
    const Length height = Length::ticks(strip.height);
    const Wanted &first = wanted[static_cast<std::size_t>(strip.pieces.front().size)];
    const bool oneSort = strip.pieces.size() == 1;
    if (oneSort && ((strip.pieces.front().count == 1 && first.from == From::Cloth) || first.ownStrip))
        return first.does;
    return bandName(height, height == sashing);
}

Length toStraighten(const Ground &ground, Length cut)
{
    return cut > Length() && ground.straighten ? straightening(ground.system, cut) : Length();
}

} // namespace

std::vector<LaidStrip> stripsOf(const cutting::Plan &plan, const std::vector<Wanted> &wanted, Length run)
{
    std::vector<LaidStrip> strips;
    for (const cutting::StripLayout &laid : plan.strips) {
        if (laid.repeats <= 0 || laid.pieces.empty() ||
            laid.pieces.front().size >= static_cast<int>(wanted.size()))
            continue; // the squared end
        const Length height = Length::ticks(laid.height);
        LaidStrip strip{run > Length() ? alongName(height) : nameOfStrip(laid, wanted),
                        height,
                        laid.repeats,
                        laid.from + 1,
                        false,
                        {},
                        {},
                        run};
        for (const cutting::Laid &piece : laid.pieces) {
            const Wanted &want = wanted[static_cast<std::size_t>(piece.size)];
            strip.pieces.push_back({want.does,
                                    piece.turned ? want.along : want.across,
                                    piece.turned ? want.across : want.along,
                                    piece.count,
                                    piece.turned,
                                    {}});
        }
        strips.push_back(std::move(strip));
    }
    // Owned pieces first, then in the order of the steps, so that what is cut first lies first.
    const auto rank = [&](const LaidStrip &strip) {
        const auto at = std::find_if(wanted.begin(), wanted.end(), [&](const Wanted &want) {
            return std::any_of(strip.pieces.begin(), strip.pieces.end(),
                               [&](const LaidPiece &piece) { return piece.does == want.does; });
        });
        return std::pair(strip.owned == 0, at - wanted.begin());
    };
    std::stable_sort(strips.begin(), strips.end(),
                     [&](const LaidStrip &a, const LaidStrip &b) { return rank(a) < rank(b); });
    return strips;
}

std::string bandName(Length height, bool ofSashings)
{
    return nameOf(Does::CutBand) + (ofSashings ? std::string() : '-' + std::to_string(height.count()));
}

Length cutOf(const std::vector<LaidStrip> &strips)
{
    Length cut = runOf(strips);
    for (const LaidStrip &strip : strips)
        if (strip.owned == 0 && strip.run <= Length())
            cut += strip.height * strip.repeats;
    return cut;
}

ClothLay laidAs(std::vector<LaidStrip> strips, const Ground &ground)
{
    ClothLay lay;
    lay.cut = cutOf(strips);
    lay.straighten = toStraighten(ground, lay.cut);
    lay.bought = (lay.cut + lay.straighten).upTo(ground.step);
    lay.strips = std::move(strips);
    return lay;
}

ClothLay layApart(const std::vector<Wanted> &wanted, const Ground &ground)
{
    return laidAs(apart(wanted, ground.usable), ground);
}

namespace {

/// Strips across the cloth.
ClothLay layAcross(const std::vector<Wanted> &wanted, const Ground &ground)
{
    ClothLay lay = layApart(wanted, ground);
    const cutting::Job job = jobOf(wanted, ground, lay.straighten);
    const auto answer = cutting::solve(job, {ground.effort, ground.effort / 4});
    if (!answer)
        return lay;
    ClothLay mixed = laidAs(stripsOf(answer.value().plan, wanted), ground);
    if (ground.owned.empty() ? mixed.bought < lay.bought : mixed.bought <= lay.bought)
        lay = std::move(mixed);
    const bool squared = job.sizes.size() > wanted.size();
    const Length straight = squared ? Length::ticks(job.sizes.back().along) : Length();
    const Length shortest = max(Length::ticks(answer.value().leastLength) - straight, Length());
    lay.least = min(lay.bought, (shortest + toStraighten(ground, shortest)).upTo(ground.step));
    if (squared && toStraighten(ground, shortest) == straight)
        lay.least = min(lay.bought, Length::ticks(answer.value().leastBought));
    return lay;
}

} // namespace

ClothLay layOut(const std::vector<Wanted> &wanted, const Ground &ground)
{
    ClothLay lay = layAcross(wanted, ground);
    if (lay.least && ground.owned.empty() && ground.reach > Length())
        offerAlong(lay, wanted, ground);
    return lay;
}

} // namespace matside
