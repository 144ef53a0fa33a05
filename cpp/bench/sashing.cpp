// SPDX-License-Identifier: MIT
#include "bench/build.h"
#include "bench/kits.h"
#include "bench/nest.h"

#include "plan/formulas.h"

#include <algorithm>

namespace matside {

namespace {

/// One face's sashing: where it comes from and what is cut.
struct Face {
    std::string name; ///< "front" or "back"
    std::string cloth;
    std::string ground; ///< the blocks' own cloth on this face: what a gap piece is made of
    Length width;
    Length usable;
    const LongPieces &pieces;
    const char *figure;
};

/// Short joins of one kit; in a class it has one more, to practise with (F28).
std::int64_t shortJoins(const Bench &bench)
{
    const SashingPlan &sashing = bench.plan.sashing;
    const std::int64_t practice =
        bench.project.lesson && sashing.shorts + sashing.longs > 0 ? practiceSashings : 0;
    return sashing.shorts + practice;
}

/// Short sashings of one face.
std::int64_t shortsOf(const Bench &bench)
{
    return shortJoins(bench) * bench.project.kits - bench.plan.strip.harvestedPairs;
}

std::vector<Lot> lotsOf(const Bench &bench, const Face &face, std::int64_t shorts)
{
    const SashingPlan &sashing = bench.plan.sashing;
    const std::int64_t longs = sashing.longs * bench.project.kits;
    std::vector<Lot> lots{{sashing.shortLength + sashing.shortSpare, shorts}};
    if (face.pieces.pieces.empty())
        lots.push_back({sashing.longLength + sashing.longSpare, longs});
    for (const Length piece : face.pieces.pieces)
        lots.push_back({piece, longs});
    return lots;
}

Step &crossCut(Bench &bench, const Face &face, Does does, std::int64_t count, Length length,
               std::int64_t number = 0)
{
    const std::string name = nameOf(does) + (number > 0 ? '-' + std::to_string(number) : std::string());
    std::vector<Piece> bands = bandsFrom(bench, face.cloth, name, face.figure);
    if (bands.empty())
        bands.push_back({"band/" + face.name, 0});
    Step &cut = add(bench, Station::Cut, does, count, face.cloth, number);
    cut.size = Pair{length, face.width};
    cut.ruler = placeRulers(bench.project.rulers, length, face.width, 1);
    cut.check = bandsAreWider(bench, face.cloth, name) ? "band-is-wider" : "ends-square";
    cut.takes = std::move(bands);
    return cut;
}

void cutLongs(Bench &bench, const Face &face)
{
    const SashingPlan &sashing = bench.plan.sashing;
    const std::int64_t longs = sashing.longs * bench.project.kits;
    if (longs == 0)
        return;
    if (face.pieces.pieces.empty()) {
        Step &cut = crossCut(bench, face, Does::CutLong, longs, sashing.longLength + sashing.longSpare);
        cut.figure = "sashing.longs.length";
        cut.makes = {{"long/" + face.name, 1}};
        return;
    }
    std::vector<Piece> pieces;
    for (std::size_t i = 0; i < face.pieces.pieces.size(); ++i) {
        const auto number = static_cast<std::int64_t>(i + 1);
        Step &cut = crossCut(bench, face, Does::CutLongPiece, longs, face.pieces.pieces[i], number);
        cut.makes = {{"long-piece/" + face.name + '/' + std::to_string(number), 1}};
        pieces.push_back(cut.makes.front());
    }
    Step &join = add(bench, Station::Join, Does::JoinLong, longs, face.cloth);
    join.takes = pieces;
    join.makes = {{"long/" + face.name, 1}};
    join.seam = measures(bench.project.system).joinSeam;
    join.at = face.pieces.joins;
    join.size = Pair{sashing.longLength + sashing.longSpare, face.width};
    join.check = "joins-at-mid-block";
    join.caution = "needle";
}

/// Bands of the sashing's own width, where no fixed layout says otherwise.
void cutBands(Bench &bench, const Face &face, std::int64_t bands, Length cutShort)
{
    const SashingPlan &sashing = bench.plan.sashing;
    const Length longest = sashing.longs == 0 ? cutShort
                           : face.pieces.pieces.empty()
                               ? sashing.longLength + sashing.longSpare
                               : *std::max_element(face.pieces.pieces.begin(), face.pieces.pieces.end());
    Step &band = cutAcross(bench, Does::CutBand, face.cloth, bands, {face.usable, face.width}, longest);
    band.figure = face.figure;
    band.makes = {{"band/" + face.name, 1}};
}

void cutFace(Bench &bench, const Face &face)
{
    const SashingPlan &sashing = bench.plan.sashing;
    const std::int64_t harvested = bench.plan.strip.harvestedPairs;
    const std::int64_t shorts = shortsOf(bench);
    const Length cutShort = sashing.shortLength + sashing.shortSpare;
    if (harvested > 0) {
        // A gap piece is as long as the strip is wide, less its frayed edges: often just the short itself.
        const Length piece = bench.plan.strip.width - measures(bench.project.system).fray * 2;
        Step &take = add(bench, Station::Trim, Does::HarvestShort, harvested, face.ground);
        take.size = Pair{min(cutShort, piece), face.width};
        take.figure = face.figure;
        take.ruler = placeRulers(bench.project.rulers, face.width, piece, 1);
        take.takes = {{"gap/" + face.name, 1}};
        take.makes = {{"short/" + face.name, 1}};
        take.check = "batting-peeled-off";
        take.caution = "blade";
    }
    const std::int64_t bands = bandsFor(lotsOf(bench, face, shorts), face.usable);
    if (bands == 0)
        return;
    if (!bench.project.made.layoutOf(face.cloth))
        cutBands(bench, face, bands, cutShort);
    if (shorts > 0) {
        Step &cut = crossCut(bench, face, Does::CutShort, shorts, cutShort);
        cut.figure = "sashing.shorts.length";
        cut.makes = {{"short/" + face.name, 1}};
    }
    cutLongs(bench, face);
}

/// Strips of filler (F7), so many for each kit: a piece for each short and each long, cut as long as its
/// sashing. A long that is longer than the batting is wide is butted from whole strips and a rest, never
/// sewn.
std::int64_t fillerStrips(const Bench &bench)
{
    const SashingPlan &sashing = bench.plan.sashing;
    const Length usable = bench.plan.basis.usableBatting;
    const Length each = sashing.longLength + sashing.longSpare;
    if (usable <= Length())
        return 0;
    const std::int64_t whole = each > usable ? each.floorDiv(usable) : 0;
    const std::vector<Lot> pieces{{sashing.shortLength + sashing.shortSpare, shortJoins(bench)},
                                  {each - usable * whole, sashing.longs}};
    return whole * sashing.longs + bandsFor(pieces, usable);
}

} // namespace

void addSashings(Bench &bench)
{
    const SashingPlan &sashing = bench.plan.sashing;
    cutFace(bench, {"front", bandCloth(bench.project, ClothRole::SashingFront),
                    clothId(bench.project, ClothRole::Front), sashing.cutFront,
                    bench.plan.basis.usableSashFront, sashing.front, "sashing.cutFront"});
    if (sashing.cutBack)
        cutFace(bench, {"back", bandCloth(bench.project, ClothRole::SashingBack),
                        clothId(bench.project, ClothRole::Back), *sashing.cutBack,
                        bench.plan.basis.usableSashBack, sashing.back, "sashing.cutBack"});
    if (sashing.filler)
        cutFiller(bench, Does::CutSashingFiller, fillerStrips(bench), *sashing.filler, "sashing.filler",
                  "sashing-filler");
}

} // namespace matside
