// SPDX-License-Identifier: MIT
#include "bench/account.h"
#include "bench/build.h"
#include "bench/progress.h"

#include "plan/formulas.h"
#include "plan/working.h"

#include <algorithm>

namespace matside {

namespace {

constexpr std::string_view roleNames[] = {"front", "back",          "batting",      "patch",
                                          "web",   "sashing-front", "sashing-back", "binding"};

/// Right across the cloth, unless it comes out of a band along the selvage.
bool fullWidth(Does does)
{
    return does == Does::CutStrip || does == Does::CutBand || does == Does::CutBinding ||
           does == Does::CutFrame || does == Does::CutFiller || does == Does::CutSashingFiller;
}

/// Steps whose figures hang on the test block or the test join.
bool hangsOnTrial(const Step &step, const Plan &plan)
{
    if (step.trial)
        return false;
    const bool sashing =
        step.does == Does::CutBand || step.does == Does::CutAlong || step.does == Does::CutShort ||
        step.does == Does::CutLong || step.does == Does::CutLongPiece || step.does == Does::JoinLong ||
        step.does == Does::HarvestShort || step.does == Does::JoinShort || step.does == Does::JoinLongRow;
    const bool block = step.does == Does::MarkStrip || step.does == Does::StitchBlock ||
                       step.does == Does::CutStrip || step.does == Does::CutAlong;
    const bool joins = plan.sashing.shorts > 0 || plan.sashing.longs > 0;
    return (block && !plan.basis.blockTried) || (sashing && joins && !plan.basis.joinTried);
}

} // namespace

bool reversible(const Project &project)
{
    return project.build == Build::Reversible;
}

std::string clothId(const Project &project, ClothRole role)
{
    if (const Cloth *cloth = clothFor(project, role))
        return cloth->id;
    std::string name(roleNames[static_cast<std::size_t>(role)]);
    const auto taken = [&](const Cloth &cloth) { return cloth.id == name; };
    while (std::any_of(project.cloths.begin(), project.cloths.end(), taken))
        name += "-cloth"; // another cloth goes by the name of this part
    return name;
}

std::string bandCloth(const Project &project, ClothRole role)
{
    if (clothFor(project, role))
        return clothId(project, role);
    return clothId(project, role == ClothRole::SashingBack ? ClothRole::Back : ClothRole::Front);
}

std::int64_t blocksWanted(const Project &project)
{
    return blocksInAll(project);
}

Step &add(Bench &bench, Station station, Does does, std::int64_t count, const std::string &cloth,
          std::int64_t number)
{
    Step step;
    step.id = (bench.trial ? "trial/" : "") + nameOf(does) +
              (number > 0 ? '-' + std::to_string(number) : std::string()) +
              (cloth.empty() ? std::string() : '/' + cloth);
    step.station = station;
    step.does = does;
    step.trial = bench.trial;
    step.cloth = cloth;
    step.count = count;
    if (station == Station::Cut)
        step.caution = "blade";
    bench.steps.push_back(std::move(step));
    return bench.steps.back();
}

void straighten(Bench &bench, const std::string &cloth)
{
    if (!bench.straight.insert(cloth).second)
        return;
    Step &step = add(bench, Station::Cut, Does::Straighten, 1, cloth);
    step.makes = {{"straight/" + cloth, 1}};
    step.check = "cross-line-on-fold";
    RulerPlace place;
    place.layers = 2;
    place.on = LineOn::Fold;
    place.keep = "left-of-ruler";
    const auto longest = std::max_element(bench.project.rulers.begin(), bench.project.rulers.end(),
                                          [](const Ruler &a, const Ruler &b) { return a.length < b.length; });
    if (longest == bench.project.rulers.end()) {
        place.fence = Fence::Mat;
    } else {
        place.first = longest->name;
        place.firstLength = longest->length;
        place.firstWidth = longest->width;
        const bool whole = longest->length * 2 >= bench.plan.basis.usable;
        place.fence = whole ? Fence::LongEnough : Fence::SlideAlong;
    }
    step.ruler = place;
}

Step &cutAcross(Bench &bench, Does does, const std::string &cloth, std::int64_t count, Pair size,
                Length usedLength, std::int64_t number)
{
    straighten(bench, cloth);
    Step &step = add(bench, Station::Cut, does, count, cloth, number);
    const std::int64_t layers = layersFor(bench.project.system, size.across, usedLength);
    step.size = size;
    step.ruler = placeRulers(bench.project.rulers, size.across,
                             layers == 2 ? size.along.scaled(1, 2) : size.along, layers);
    step.check = layers == 2 ? "cut-edge-square-to-fold" : "line-at-both-ends";
    step.takes = {{"straight/" + cloth, 0}};
    return step;
}

Step &cutAlong(Bench &bench, const std::string &cloth, std::int64_t count, Pair size, Length longest)
{
    Step &step = cutAcross(bench, Does::CutAlong, cloth, count, size, longest, size.across.count());
    step.check = step.ruler->layers == 2 ? "along-folded" : "along-single";
    return step;
}

void crossCutFrom(const Bench &bench, Step &cut, const std::vector<Piece> &bands)
{
    if (!anyCutBy(bands, Does::CutAlong))
        return;
    cut.takes = bands;
    cut.ruler = placeRulers(bench.project.rulers, cut.size->along, cut.size->across, 1);
    cut.check = bandsAreWider(bench, cut.cloth, progressName(cut)) ? "band-is-wider" : "ends-square";
}

std::vector<Step> steps(const Project &project, const Plan &plan)
{
    Bench bench{project, plan, {}, {}, false};
    if (!project.made.trialPutOff)
        addTrial(bench);
    addBlocks(bench);
    addSashings(bench);
    addJoining(bench);
    takeProgress(project, bench.steps);
    for (Step &step : bench.steps) {
        step.notTried = hangsOnTrial(step, plan);
        lieInBands(project, step);
        if (outOfAlong(step) && fullWidth(step.does))
            step.figure.clear(); // its band has the width: what is read off is its length
    }
    return std::move(bench.steps);
}

std::optional<std::size_t> nextStep(const std::vector<Step> &steps)
{
    const auto open =
        std::find_if(steps.begin(), steps.end(), [](const Step &step) { return step.done < step.count; });
    if (open == steps.end())
        return std::nullopt;
    return static_cast<std::size_t>(open - steps.begin());
}

} // namespace matside
