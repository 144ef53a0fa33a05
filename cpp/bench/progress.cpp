// SPDX-License-Identifier: MIT
#include "bench/progress.h"

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
            return block.state != BlockState::Spoiled && block.state != BlockState::Lost &&
                   (does == Does::StitchBlock || block.state != BlockState::Stitched);
        case Does::RoughApart:
        case Does::TrimBlock:
            return block.state == BlockState::Trimmed || block.state == BlockState::Joined;
        default:
            return false;
        }
    };
    return std::count_if(project.made.blocks.begin(), project.made.blocks.end(), reached);
}

} // namespace

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
    for (Step &step : steps) {
        const auto held = good.find({step.cloth, progressName(step)});
        std::int64_t done = held == good.end() ? 0 : held->second;
        if (!step.trial)
            done = std::max(done, blocksMade(project, step.does));
        if ((step.does == Does::MeasureTest && project.made.testBlock) ||
            (step.does == Does::TestJoin && project.made.testJoin))
            done = step.count;
        step.done = std::clamp<std::int64_t>(done, 0, step.count);
    }
}

} // namespace matside
