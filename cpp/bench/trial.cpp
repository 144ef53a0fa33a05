// SPDX-License-Identifier: MIT
//
// The trial: one hoop strip and one join's sashing go through the whole line before anything else is cut.
// They are extra to what the piece needs: the test block takes a place of its own. It is stitched without
// patches, so that nothing on it waits for the scissors when it is pressed.
#include "bench/build.h"

namespace matside {

namespace {

void trialBlock(Bench &bench)
{
    const Project &project = bench.project;
    const Pair size{bench.plan.strip.usable, bench.plan.strip.width};
    std::vector<Piece> layers;
    for (const ClothRole role : {ClothRole::Front, ClothRole::Back, ClothRole::Batting}) {
        if (role == ClothRole::Back && !reversible(project))
            continue;
        const std::string cloth = clothId(project, role);
        const std::vector<Piece> bands =
            bandsFrom(bench, cloth, "trial/" + nameOf(Does::CutStrip), "strip.width");
        Step &cut = cutAcross(bench, Does::CutStrip, cloth, 1, size, Length());
        stripsOutOf(bench, cut, bands);
        cut.figure = "strip.width";
        cut.makes = {{"trial-strip/" + cloth, 1}};
        layers.push_back(cut.makes.front());
    }
    Step &layer = add(bench, Station::Hoop, Does::Layer, 1);
    layer.takes = layers;
    layer.makes = {{"trial-layered", 1}};
    layer.check = "back-wrong-side-up";
    layer.caution = "adhesive";

    markStrip(bench, 1, "trial-layered", "trial-place");

    Step &stitch = add(bench, Station::Hoop, Does::StitchTest, 1);
    stitch.figure = "block.sent.along";
    stitch.size = bench.plan.block.sent;
    stitch.takes = {{"trial-place", 1}};
    stitch.makes = {{"test-block", 1}};
    stitch.check = "pins-out-of-hoop";
    stitch.caution = project.hoop.kind == HoopKind::Magnetic ? "magnets" : "needle";

    Step &press = add(bench, Station::Hoop, Does::PressBlock, 1);
    press.takes = {{"test-block", 1}};
    press.makes = {{"pressed-test-block", 1}};
    press.check = "lift-and-set-down";
    press.caution = "iron";

    Step &measure = add(bench, Station::Hoop, Does::MeasureTest, 1);
    measure.takes = {{"pressed-test-block", 1}};
    measure.makes = {{"draw-up", 1}};
    measure.check = "off-hoop-pressed-rested";
}

/// Batting for the test join's sashing (F7): one piece as long as its strips.
Piece cutTrialFiller(Bench &bench, Length length)
{
    const std::string cloth = clothId(bench.project, ClothRole::Batting);
    const std::string name = "trial/" + nameOf(Does::CutSashingFiller);
    const std::vector<Piece> bands = bandsFrom(bench, cloth, name);
    Step &cut = cutAcross(bench, Does::CutSashingFiller, cloth, 1, {length, *bench.plan.sashing.filler}, {});
    if (!bands.empty())
        cut.takes = bands;
    if (bandsAreWider(bench, cloth, name))
        cut.check = "band-is-wider";
    cut.figure = "sashing.filler";
    cut.makes = {{"trial-sashing-filler", 1}};
    return cut.makes.front();
}

void trialJoin(Bench &bench)
{
    const Project &project = bench.project;
    const SashingPlan &sashing = bench.plan.sashing;
    if (sashing.shorts == 0 && sashing.longs == 0)
        return;
    const Length length = sashing.shortLength + sashing.shortSpare;
    std::vector<Piece> pair;
    for (const ClothRole role : {ClothRole::SashingFront, ClothRole::SashingBack}) {
        const bool front = role == ClothRole::SashingFront;
        if (!front && !sashing.cutBack)
            continue;
        const std::string cloth = bandCloth(project, role);
        const Length width = front ? sashing.cutFront : *sashing.cutBack;
        const Length usable = front ? bench.plan.basis.usableSashFront : bench.plan.basis.usableSashBack;
        const std::vector<Piece> bands = bandsFrom(bench, cloth, "trial/" + nameOf(Does::CutBand));
        Step &band = cutAcross(bench, Does::CutBand, cloth, 1, {usable, width}, length);
        crossCutFrom(bench, band, bands);
        band.figure = front ? "sashing.cutFront" : "sashing.cutBack";
        band.makes = {{"trial-band/" + cloth + (front ? "/front" : "/back"), 1}};
        const std::string from = band.makes.front().name;
        Step &cut = add(bench, Station::Cut, Does::CutShort, 1, cloth);
        cut.size = Pair{length, width};
        cut.figure = "sashing.shorts.length";
        cut.ruler = placeRulers(project.rulers, cut.size->along, cut.size->across, 1);
        cut.check = "ends-square";
        cut.takes = {{from, 0}};
        cut.makes = {{"trial-short/" + cloth + (front ? "/front" : "/back"), 1}};
        pair.push_back(cut.makes.front());
    }
    // It is made as every join is, or its gap would tell nothing of theirs.
    if (sashing.filler)
        pair.push_back(cutTrialFiller(bench, length));
    Step &join = add(bench, Station::Join, Does::TestJoin, 1);
    join.takes = pair;
    join.makes = {{"joint-tried", 1}};
    join.figure = joinFigure(bench.plan);
    join.seam = bench.plan.basis.seam;
    if (bench.plan.fold && !bench.plan.fold->doubled)
        join.fold = bench.plan.fold->under;
    join.check = sashing.filler ? "measure-gap-beside-batting" : "measure-gap-and-distance";
    join.caution = "needle";
}

} // namespace

void addTrial(Bench &bench)
{
    bench.trial = true;
    trialBlock(bench);
    trialJoin(bench);
    bench.trial = false;
}

} // namespace matside
