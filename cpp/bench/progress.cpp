// SPDX-License-Identifier: MIT
#include "bench/progress.h"

#include "bench/record.h"

#include <algorithm>
#include <map>

namespace matside {

namespace {

std::int64_t blocksMade(const Project &project, Does does)
{
    const auto reached = [&](const MadeBlock &block) {
        switch (does) {
        case Does::StitchBlock:
        case Does::TrimPatches:
        case Does::PressBlock:
            return block.good() && (does == Does::StitchBlock || block.state != BlockState::Stitched);
        case Does::RoughApart:
        case Does::TrimBlock:
            return block.state == BlockState::Trimmed || block.state == BlockState::Joined;
        default:
            return false;
        }
    };
    return std::count_if(project.made.blocks.begin(), project.made.blocks.end(), reached);
}

/// The blocks that so many short joins touch, row by row: a row that is begun holds one more than joins.
std::int64_t blocksJoined(const Project &project, std::int64_t joins)
{
    const std::int64_t aRow = project.blocks.columns - 1;
    return joins + (joins + aRow - 1) / aRow;
}

/// The part of the trial a step belongs to was measured.
bool tried(const Project &project, const Step &step, bool blockPart)
{
    return step.trial && (blockPart ? project.made.testBlock.has_value() : project.made.testJoin.has_value());
}

} // namespace

std::int64_t madeGoodBySpares(const Project &project)
{
    const auto bad = std::count_if(project.made.blocks.begin(), project.made.blocks.end(),
                                   [](const MadeBlock &b) { return !b.good(); });
    return std::min<std::int64_t>(bad, project.blocks.spare * project.kits + sparesOfSet(project));
}

std::string progressName(const Step &step)
{
    const std::string tail = '/' + step.cloth;
    if (!step.cloth.empty() && step.id.ends_with(tail))
        return step.id.substr(0, step.id.size() - tail.size());
    return step.id;
}

void takeProgress(const Project &project, std::vector<Step> &steps)
{
    std::map<std::pair<std::string, std::string>, std::int64_t> good;
    for (const MadeCut &cut : project.made.cut)
        good[{cut.cloth, cut.does}] += cut.count - cut.spoiled;
    const auto held = [&](const std::string &cloth, const std::string &name) -> std::int64_t {
        const auto found = good.find({cloth, name});
        return found == good.end() ? 0 : found->second;
    };
    const std::int64_t bySpares = madeGoodBySpares(project);
    // What lies cut apart or trimmed was under the iron before, and its patches under the scissors.
    const std::int64_t offStrip =
        std::max(held({}, nameOf(Does::RoughApart)), held({}, nameOf(Does::TrimBlock)));
    bool blockPart = true; // the trial's first part ends with the measuring of its block
    for (Step &step : steps) {
        std::int64_t done = held(step.cloth, progressName(step));
        if (!step.trial)
            done = std::max(done, blocksMade(project, step.does));
        if (!step.trial && (step.does == Does::TrimPatches || step.does == Does::PressBlock))
            done = std::max(done, offStrip);
        if (goesBlockByBlock(step))
            done += bySpares;
        if (step.does == Does::JoinRow)
            done = std::max(done, static_cast<std::int64_t>(project.made.rows.size()));
        if (step.does == Does::Straighten)
            done =
                std::max(held(step.cloth, nameOf(step.does)), held(step.cloth, "trial/" + nameOf(step.does)));
        if (tried(project, step, blockPart))
            done = step.count;
        blockPart = blockPart && step.does != Does::MeasureTest;
        step.done = std::clamp<std::int64_t>(done, 0, step.count);
        if (step.does == Does::JoinShort)
            step.needs = {{"block", blocksJoined(project, step.done + 1)}};
    }
}

} // namespace matside
