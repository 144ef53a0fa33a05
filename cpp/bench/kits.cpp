// SPDX-License-Identifier: MIT
#include "bench/kits.h"

#include "plan/hours.h"

#include <algorithm>

namespace matside {

namespace {

bool onTheList(const Step &step)
{
    return step.station == Station::Cut && !step.trial && step.size && step.does != Does::Straighten;
}

std::int64_t countOf(const std::vector<Step> &steps, const std::string &id)
{
    const auto found =
        std::find_if(steps.begin(), steps.end(), [&](const Step &step) { return step.id == id; });
    return found == steps.end() || found->does == Does::CutBand || found->does == Does::CutAlong
               ? 0
               : found->count;
}

} // namespace

bool practised(const Project &project, const Step &step)
{
    return project.lesson && step.does == Does::CutShort && !step.trial;
}

Project oneKit(const Project &project)
{
    Project one = project;
    one.kits = 1; // the class stays: its practice is in every kit
    Made made;
    made.cloths = project.made.cloths;
    for (MadeCloth &cloth : made.cloths)
        cloth.length.reset(); // a length measured belongs to all kits
    made.testBlock = project.made.testBlock;
    made.testJoin = project.made.testJoin;
    made.drawUp = project.made.drawUp;
    made.trialPutOff = project.made.trialPutOff;
    one.made = std::move(made);
    for (Cloth &cloth : one.cloths)
        cloth.owned.clear();
    return one;
}

KitPlan kitPlan(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                const std::vector<Buy> &list)
{
    KitPlan kits;
    kits.kits = project.kits;
    const Project one = oneKit(project);
    const Plan onePlan = matside::plan(one);
    const std::vector<Step> oneSteps = matside::steps(one, onePlan);
    for (const Step &step : steps)
        if (onTheList(step))
            kits.cuts.push_back({step, countOf(oneSteps, step.id), step.count});
    const std::vector<Buy> alone = shoppingList(one, onePlan, oneSteps);
    for (const Buy &buy : list) {
        if (!buy.packages.empty())
            continue; // one kit alone is cut from the roll
        const auto same =
            std::find_if(alone.begin(), alone.end(), [&](const Buy &b) { return b.cloth == buy.cloth; });
        if (same != alone.end())
            kits.cloths.push_back({buy.cloth, buy.bought + buy.more, same->bought * project.kits, buy.step});
    }
    const Hours hours = hoursFor(project, plan);
    kits.machineTenths = hours.machine;
    const std::int64_t blocks = blocksInAll(project);
    const std::int64_t machines = project.lesson ? std::max<std::int64_t>(project.lesson->machines, 1) : 1;
    if (blocks > 0)
        kits.longestTenths = hours.machine / blocks * ((blocks + machines - 1) / machines);
    return kits;
}

} // namespace matside
