// SPDX-License-Identifier: MIT
#include "bench/build.h"
#include "bench/clothlay.h"
#include "plan/onstrip.h"

namespace matside {

namespace {

std::vector<Piece> cutStrips(Bench &bench, std::int64_t count)
{
    const Pair size{bench.plan.strip.usable, bench.plan.strip.width};
    std::vector<Piece> layers;
    for (const ClothRole role : {ClothRole::Front, ClothRole::Back, ClothRole::Batting}) {
        if (role == ClothRole::Back && !reversible(bench.project))
            continue;
        const std::string cloth = clothId(bench.project, role);
        const std::vector<Piece> bands = bandsFrom(bench, cloth, nameOf(Does::CutStrip), "strip.width");
        Step &cut = cutAcross(bench, Does::CutStrip, cloth, count, size, Length());
        stripsOutOf(bench, cut, bands);
        cut.figure = "strip.width";
        cut.makes = {{"hoop-strip/" + cloth, 1}};
        layers.push_back({"hoop-strip/" + cloth, 1});
    }
    return layers;
}

void cutPatches(Bench &bench)
{
    std::int64_t number = 0;
    for (const PatchPlan &patch : bench.plan.patches) {
        if (patch.count == 0)
            continue;
        ++number;
        const std::string name = nameOf(Does::CutPatch) + '-' + std::to_string(number);
        const std::vector<Piece> bands = bandsFrom(bench, patch.cloth, name);
        straighten(bench, patch.cloth);
        // The plan counts the patches of one kit; the spares that all kits share have theirs beside them.
        const auto index = static_cast<std::size_t>(&patch - bench.plan.patches.data());
        const std::int64_t count = patch.count * bench.project.kits +
                                   bench.project.patches[index].perBlock * sparesOfSet(bench.project);
        Step &cut = add(bench, Station::Cut, Does::CutPatch, count, patch.cloth, number);
        cut.takes = bands;
        if (bands.empty())
            cut.takes.push_back({"straight/" + patch.cloth, 0});
        cut.size = patch.rectangle;
        cut.ruler = placeRulers(bench.project.rulers, patch.rectangle.across, patch.rectangle.along, 1);
        cut.makes = {{"patch/" + std::to_string(number), 1}};
        cut.check = "web-on-wrong-side";
    }
}

/// One step for every block, taking the piece the step before made.
Step &eachBlock(Bench &bench, Station station, Does does, const char *takes, const char *makes)
{
    Step &step = add(bench, station, does, blocksWanted(bench.project));
    step.takes = {{takes, 1}};
    step.makes = {{makes, 1}};
    return step;
}

} // namespace

void stripsOutOf(const Bench &bench, Step &cut, const std::vector<Piece> &bands)
{
    if (!bands.empty())
        cut.takes = bands;
    if (!bands.empty() || usableOf(bench.project, bench.plan, cut.cloth) >= cut.size->along * 2)
        cut.check = "strips-side-by-side";
    crossCutFrom(bench, cut, bands);
}

Step &markStrip(Bench &bench, std::int64_t count, const char *takes, const char *places)
{
    const StripPlan &strip = bench.plan.strip;
    Step &mark = add(bench, Station::Hoop, Does::MarkStrip, count);
    mark.figure = strip.perStrip > 0 ? "strip.centres.0" : "strip.end";
    mark.at = strip.centres;
    mark.takes = {{takes, 1}};
    mark.makes = {{places, strip.perStrip}};
    mark.check = "every-tick-from-zero";
    return mark;
}

void addBlocks(Bench &bench)
{
    const Project &project = bench.project;
    const StripPlan &strip = bench.plan.strip;
    // More than planned, once a strip was torn, was closed or came out too short.
    const std::int64_t strips = stripsNeeded(project, bench.plan);
    const std::vector<Piece> layers = cutStrips(bench, strips);

    Step &layer = add(bench, Station::Hoop, Does::Layer, strips);
    layer.takes = layers;
    layer.makes = {{"layered-strip", 1}};
    layer.check = "back-wrong-side-up";
    layer.caution = "adhesive";

    Step &mark = markStrip(bench, strips, "layered-strip", "place");
    if (strip.harvestedPairs > 0) { // each gap comes apart into one piece of either face
        mark.makes.push_back({"gap/front", strip.yielding()});
        if (bench.plan.sashing.cutBack)
            mark.makes.push_back({"gap/back", strip.yielding()});
    }
    cutPatches(bench);

    Step &stitch = eachBlock(bench, Station::Hoop, Does::StitchBlock, "place", "stitched-block");
    stitch.figure = "strip.gap";
    stitch.size = bench.plan.block.sent;
    stitch.check = "pins-out-of-hoop";
    stitch.caution = project.hoop.kind == HoopKind::Magnetic ? "magnets" : "needle";
    std::int64_t number = 0;
    for (std::size_t i = 0; i < bench.plan.patches.size(); ++i)
        if (bench.plan.patches[i].count > 0)
            stitch.takes.push_back({"patch/" + std::to_string(++number), project.patches[i].perBlock});

    const char *stitched = "stitched-block";
    if (number > 0) {
        // Scissors before heat, always: a pressed patch can no longer be trimmed.
        Step &trim = eachBlock(bench, Station::Hoop, Does::TrimPatches, stitched, "patched-block");
        trim.check = "trim-close-to-stitches";
        trim.caution = "scissors";
        stitched = "patched-block";
    }
    Step &press = eachBlock(bench, Station::Hoop, Does::PressBlock, stitched, "pressed-block");
    press.check = "lift-and-set-down";
    press.caution = "iron";

    Step &apart = eachBlock(bench, Station::Trim, Does::RoughApart, "pressed-block", "rough-block");
    apart.check = "nothing-underneath";
    apart.caution = "blade";
    Step &trim = eachBlock(bench, Station::Trim, Does::TrimBlock, "rough-block", "block");
    trim.figure = "block.trimmed.along";
    trim.size = bench.plan.block.trimmed;
    trim.ruler = placeOnOutline(project.rulers, bench.plan.basis.allowance,
                                max(bench.plan.block.trimmed.along, bench.plan.block.trimmed.across));
    trim.check = "outer-line-at-both-corners";
    trim.caution = "blade";
}

} // namespace matside
