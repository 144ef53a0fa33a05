// SPDX-License-Identifier: MIT
#include "bench/record.h"

#include "bench/progress.h"
#include "plan/onstrip.h"

#include <algorithm>

namespace matside {

namespace {

/// The n-th good block in the order of stitching, counted from 0.
template <class Blocks> auto goodBlock(Blocks &blocks, std::int64_t n) -> decltype(blocks.data())
{
    for (auto &block : blocks)
        if (block.good() && n-- == 0)
            return &block;
    return nullptr;
}

std::optional<MadeBlock> nextBlock(const Project &project, const Plan &plan, std::int64_t strip)
{
    const std::vector<StripWork> all = stripsInWork(project, plan);
    const StripWork *open = openStrip(all, strip);
    if (!open)
        return std::nullopt;
    MadeBlock block;
    block.block = open->next->block;
    block.strip = open->strip;
    block.place = open->next->place;
    block.sent = {plan.block.sent.along, plan.block.sent.across};
    for (const MadeBlock &before : project.made.blocks)
        if (!before.good() && before.block == block.block)
            block.replaces = block.block; // made again: its forerunner stays on record
    return block;
}

MadeEvent spoiledAt(const Step &step)
{
    MadeEvent event;
    event.event = "spoiled";
    event.does = progressName(step);
    event.cloth = step.cloth;
    event.count = 1;
    return event;
}

/// Steps a block has behind it when it is in hand at `step`: their counts lose it too.
void spoilBehind(Project &project, const std::vector<Step> &steps, const Step &step)
{
    for (const Step &before : steps) {
        if (before.id == step.id)
            return;
        if (!goesBlockByBlock(before))
            continue;
        const std::string does = progressName(before);
        for (MadeCut &cut : project.made.cut)
            if (cut.does == does && cut.cloth == before.cloth && cut.spoiled < cut.count)
                ++cut.spoiled;
    }
}

} // namespace

void letASpareStandIn(Project &project)
{
    for (const MadeBlock &bad : project.made.blocks) {
        if (bad.good() || bad.block.starts_with('+') || blockAt(project, bad.block))
            continue;
        const auto spare =
            std::find_if(project.made.blocks.begin(), project.made.blocks.end(), [](const MadeBlock &block) {
                return block.good() && block.block.starts_with('+') && block.replaces.empty();
            });
        if (spare == project.made.blocks.end())
            return;
        spare->replaces = bad.block;
    }
}

bool goesBlockByBlock(const Step &step)
{
    return !step.trial &&
           (step.does == Does::StitchBlock || step.does == Does::TrimPatches ||
            step.does == Does::PressBlock || step.does == Does::RoughApart || step.does == Does::TrimBlock);
}

bool waitsForScissors(const std::vector<Step> &steps, const Step &step)
{
    if (step.does != Does::PressBlock || step.trial)
        return false;
    return std::any_of(steps.begin(), steps.end(), [&](const Step &before) {
        return before.does == Does::TrimPatches && !before.trial && before.done <= step.done;
    });
}

std::optional<std::size_t> pressedFirst(const std::vector<Step> &steps, const Step &step)
{
    if (step.trial || step.done >= step.count ||
        (step.does != Does::RoughApart && step.does != Does::TrimBlock))
        return std::nullopt;
    bool stitched = false;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        if (steps[i].trial)
            continue;
        stitched = stitched || (steps[i].does == Does::StitchBlock && steps[i].done > step.done);
        if (stitched && steps[i].does == Does::PressBlock && steps[i].done <= step.done)
            return i;
    }
    return std::nullopt;
}

void countUp(Project &project, const Step &step, std::int64_t done, std::int64_t spoiled)
{
    const std::string does = progressName(step);
    const auto same = [&](const MadeCut &cut) { return cut.cloth == step.cloth && cut.does == does; };
    const auto held = std::find_if(project.made.cut.begin(), project.made.cut.end(), same);
    if (held == project.made.cut.end())
        project.made.cut.push_back({step.cloth, does, 0, 0, {}});
    else
        std::rotate(held, held + 1, project.made.cut.end());
    MadeCut &last = project.made.cut.back();
    last.count = std::max<std::int64_t>(last.count + done, 0);
    last.spoiled = std::clamp<std::int64_t>(last.spoiled + spoiled, 0, last.count);
}

std::string blockInHand(const Project &project, const Plan &plan, const Step &step, std::int64_t strip)
{
    if (!goesBlockByBlock(step))
        return {};
    if (step.does == Does::StitchBlock) {
        const auto block = nextBlock(project, plan, strip);
        return block ? block->block : std::string();
    }
    const MadeBlock *block = goodBlock(project.made.blocks, step.done - madeGoodBySpares(project));
    return block ? block->block : std::string();
}

Project withDone(const Project &project, const Plan &plan, const Step &step, std::int64_t strip)
{
    Project next = project;
    if (goesBlockByBlock(step) && step.does == Does::StitchBlock) {
        if (auto block = nextBlock(project, plan, strip)) {
            next.made.blocks.push_back(std::move(*block));
            letASpareStandIn(next);
            return next;
        }
    }
    if (goesBlockByBlock(step) && step.does == Does::TrimBlock) {
        const auto stitched =
            std::find_if(next.made.blocks.begin(), next.made.blocks.end(),
                         [](const MadeBlock &block) { return block.state == BlockState::Stitched; });
        if (stitched != next.made.blocks.end()) {
            stitched->state = BlockState::Trimmed;
            return next;
        }
    }
    countUp(next, step, 1, 0);
    return next;
}

Project withSpoiled(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                    const Step &step, std::int64_t strip)
{
    Project next = project;
    MadeEvent event = spoiledAt(step);
    event.block = blockInHand(project, plan, step, strip);
    auto open = goesBlockByBlock(step) && step.does == Does::StitchBlock ? nextBlock(project, plan, strip)
                                                                         : std::nullopt;
    if (open) {
        open->state = BlockState::Spoiled;
        event.strip = open->strip;
        next.made.blocks.push_back(std::move(*open));
    } else if (goesBlockByBlock(step) && step.does != Does::StitchBlock && !event.block.empty()) {
        for (MadeBlock &block : next.made.blocks)
            if (block.block == event.block && block.good())
                block.state = BlockState::Spoiled;
        spoilBehind(next, steps, step);
    } else {
        countUp(next, step, 1, 1);
    }
    letASpareStandIn(next);
    next.made.events.push_back(std::move(event));
    return next;
}

Project withBlockGone(const Project &project, const std::vector<Step> &steps, const Step &at,
                      const std::string &block, BlockState as)
{
    Project next = project;
    MadeBlock *gone = next.made.goodBlock(block);
    if (!gone)
        return next;
    // Blocks pass each step in the order they were stitched in.
    const auto before =
        std::count_if(next.made.blocks.data(), gone, [](const MadeBlock &b) { return b.good(); });
    const std::int64_t bySpares = madeGoodBySpares(project);
    for (const Step &step : steps) {
        if (!goesBlockByBlock(step) || before >= step.done - bySpares)
            continue;
        for (MadeCut &cut : next.made.cut)
            if (cut.does == progressName(step) && cut.cloth == step.cloth && cut.spoiled < cut.count)
                ++cut.spoiled;
    }
    gone->state = as;
    letASpareStandIn(next);
    MadeEvent event = spoiledAt(at);
    event.event = as == BlockState::Lost ? "block-gone" : "spoiled";
    event.block = block;
    next.made.events.push_back(std::move(event));
    return next;
}

Project withLastSpoiled(const Project &project, const std::vector<Step> &steps, const Step &step)
{
    Project next = project;
    MadeEvent event = spoiledAt(step);
    if (goesBlockByBlock(step) && !next.made.blocks.empty()) {
        const bool trimming = step.does == Does::TrimBlock;
        const auto last =
            std::find_if(next.made.blocks.rbegin(), next.made.blocks.rend(), [&](const MadeBlock &b) {
                return b.good() && (!trimming || b.state == BlockState::Trimmed);
            });
        if (last != next.made.blocks.rend()) {
            last->state = BlockState::Spoiled;
            event.block = last->block;
        }
        spoilBehind(next, steps, step);
        for (MadeCut &cut : next.made.cut)
            if (cut.does == event.does && cut.cloth == step.cloth && cut.spoiled < cut.count)
                ++cut.spoiled;
    } else {
        countUp(next, step, 0, 1);
    }
    letASpareStandIn(next);
    next.made.events.push_back(std::move(event));
    return next;
}

} // namespace matside
