// SPDX-License-Identifier: MIT
#include "bench/build.h"

namespace matside {

namespace {

/// So many for each kit.
Step &cutStrips(Bench &bench, Does does, const std::string &cloth, std::int64_t strips, Pair size,
                const char *figure, const char *makes)
{
    Step &cut = cutAcross(bench, does, cloth, strips * bench.project.kits, size, Length());
    cut.figure = figure;
    cut.makes = {{makes, 1}};
    return cut;
}

void cutFrame(Bench &bench, ClothRole role, std::int64_t strips, Length usable, const char *makes)
{
    if (strips <= 0)
        return;
    const std::string cloth = bandCloth(bench.project, role);
    const std::vector<Piece> bands = bandsFrom(bench, cloth, nameOf(Does::CutFrame));
    Step &cut =
        cutStrips(bench, Does::CutFrame, cloth, strips, {usable, bench.plan.frame->cut}, "frame.cut", makes);
    crossCutFrom(bench, cut, bands);
}

Step &sew(Bench &bench, std::int64_t number, std::vector<Piece> takes, const char *makes, Length length)
{
    const FramePlan &frame = *bench.plan.frame;
    Step &step = add(bench, Station::Edge, Does::SewFrame, bench.project.kits, {}, number);
    step.takes = std::move(takes);
    step.makes = {{makes, 1}};
    step.size = Pair{length, frame.cut};
    step.seam = bench.plan.basis.seam;
    step.figure = number == 1 ? "frame.sides" : "frame.ends";
    step.check = frame.joined ? "frame-joins-off-corners" : "frame-lies-flat";
    step.caution = "needle";
    return step;
}

} // namespace

void cutFiller(Bench &bench, Does does, std::int64_t strips, Length width, const char *figure,
               const char *makes)
{
    if (strips <= 0)
        return;
    const std::string cloth = clothId(bench.project, ClothRole::Batting);
    const std::vector<Piece> bands = bandsFrom(bench, cloth, nameOf(does));
    Step &cut = cutStrips(bench, does, cloth, strips, {bench.plan.basis.usableBatting, width}, figure, makes);
    stripsOutOf(bench, cut, bands);
    if (bandsAreWider(bench, cloth, nameOf(does)))
        cut.check = "band-is-wider";
}

std::vector<Piece> addFrame(Bench &bench)
{
    const FramePlan &frame = *bench.plan.frame;
    const Basis &basis = bench.plan.basis;
    cutFrame(bench, ClothRole::SashingFront, frame.frontStrips, basis.usableSashFront, "frame-strip/front");
    cutFrame(bench, ClothRole::SashingBack, frame.backStrips, basis.usableSashBack, "frame-strip/back");
    cutFiller(bench, Does::CutFiller, frame.fillerStrips, frame.filler, "frame.filler", "frame-filler");
    std::vector<Piece> takes{{"squared-piece", 1}, {"frame-strip/front", frame.frontStrips}};
    if (frame.backStrips > 0)
        takes.push_back({"frame-strip/back", frame.backStrips});
    takes.push_back({"frame-filler", frame.fillerStrips});
    sew(bench, 1, std::move(takes), "framed-sides", frame.sides);
    sew(bench, 2, {{"framed-sides", 1}}, "framed-piece", frame.ends);
    return {{"framed-piece", 1}};
}

} // namespace matside
