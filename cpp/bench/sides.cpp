// SPDX-License-Identifier: MIT
#include "bench/sides.h"

#include "bench/progress.h"

#include <algorithm>

namespace matside {

namespace {

constexpr const char *sideCut = "side-cut";

} // namespace

std::int64_t sidesCut(const Project &project, const Step &step, const std::string &block)
{
    std::int64_t sides = 0;
    const auto &events = project.made.events;
    // Anything that happened since, such as a cut into the block, begins its sides anew.
    for (auto event = events.rbegin(); event != events.rend() && event->event == sideCut; ++event)
        if (event->does == progressName(step) && event->block == block && event->count == step.done + 1)
            ++sides;
    return std::min<std::int64_t>(sides, 3);
}

Project withSideCut(const Project &project, const Step &step, const std::string &block)
{
    Project next = project;
    MadeEvent event;
    event.event = sideCut;
    event.does = progressName(step);
    event.block = block;
    event.count = step.done + 1;
    next.made.events.push_back(std::move(event));
    return next;
}

std::int64_t stitchedBeforeApart(const std::vector<Step> &steps, const Plan &plan, const Step &step)
{
    const std::int64_t full = plan.strip.perStrip;
    if (step.does != Does::RoughApart || step.trial || full < 1)
        return 0;
    const std::int64_t last = std::min(step.count, (step.done / full + 1) * full);
    const auto stitching = std::find_if(steps.begin(), steps.end(), [](const Step &each) {
        return each.does == Does::StitchBlock && !each.trial;
    });
    return stitching == steps.end() ? 0 : std::max<std::int64_t>(0, last - stitching->done);
}

bool apartAlready(const Plan &plan, const Step &step)
{
    const std::int64_t full = plan.strip.perStrip;
    if (step.does != Does::RoughApart || step.trial || full < 1)
        return false;
    const std::int64_t before = step.done / full * full;
    return std::min(step.count - before, full) - (step.done - before) < 2;
}

} // namespace matside
