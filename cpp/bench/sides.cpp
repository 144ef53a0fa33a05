// SPDX-License-Identifier: MIT
#include "bench/sides.h"

#include "bench/progress.h"

#include <algorithm>

namespace matside {

namespace {

constexpr const char *sideCut = "side-cut";
constexpr const char *commonTaken = "common-size";

/// The sides of the block in hand that are cut, the last first.
std::vector<const MadeEvent *> cutsOf(const Project &project, const Step &step, const std::string &block)
{
    std::vector<const MadeEvent *> cuts;
    const std::string does = progressName(step);
    const std::vector<MadeEvent> &events = project.made.events;
    for (std::size_t at = events.size(); at-- > 0;) {
        const MadeEvent &event = events[at];
        if (event.event != sideCut) {
            // A cut into the block begins its sides anew; a purchase, or work on another block, leaves them.
            if (event.does == does || (!block.empty() && event.block == block))
                break;
        } else if (event.does == does && event.block == block && event.count == step.done + 1) {
            cuts.push_back(&event);
        }
    }
    return cuts;
}

} // namespace

std::int64_t sidesCut(const Project &project, const Step &step, const std::string &block)
{
    return std::min<std::int64_t>(static_cast<std::int64_t>(cutsOf(project, step, block).size()), 3);
}

std::optional<Length> lineOppositeTo(const Project &project, const Step &step, const std::string &block)
{
    const auto cuts = cutsOf(project, step, block);
    return cuts.size() < 2 ? std::nullopt : cuts[1]->length;
}

bool begunByLine(const Project &project, const Step &step, const std::string &block)
{
    const auto cuts = cutsOf(project, step, block);
    return !cuts.empty() && cuts.back()->length.has_value();
}

Project withSideCut(const Project &project, const Step &step, const std::string &block,
                    const std::optional<Length> &line)
{
    Project next = project;
    MadeEvent event;
    event.event = sideCut;
    event.does = progressName(step);
    event.block = block;
    event.count = step.done + 1;
    event.length = line;
    next.made.events.push_back(std::move(event));
    return next;
}

Project withCommonSize(const Project &project, const Pair &size)
{
    Project next = project;
    next.blocks.width = size.along;
    next.blocks.height = size.across;
    for (const Length way : {size.along, size.across}) {
        if (takenAsCommon(next, way))
            continue;
        MadeEvent event;
        event.event = commonTaken;
        event.length = way;
        next.made.events.push_back(std::move(event));
    }
    return next;
}

bool takenAsCommon(const Project &project, Length size)
{
    const auto &events = project.made.events;
    return std::any_of(events.begin(), events.end(), [&](const MadeEvent &event) {
        return event.event == commonTaken && event.length == size;
    });
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
