// SPDX-License-Identifier: MIT
#include "made/commonsize.h"

#include "made/finding.h"
#include "project/basis.h"

#include <algorithm>

namespace matside {

namespace {

/// One way of a size: along or across.
using Way = Length Pair::*;

/// The sizes that count one way: on square blocks both, for such a block may be turned.
std::vector<Length> sizesOf(const OwnSize &block, Way way, bool square)
{
    if (square)
        return {block.outline.along, block.outline.across};
    return {block.outline.*way};
}

struct Chosen {
    Length size;
    bool asPlanned = true;
    std::vector<std::string> outliers;
};

struct Sized {
    Length size;
    const OwnSize *block;
};

Chosen chosenFor(const std::vector<OwnSize> &blocks, Way way, bool square, Length planned,
                 const Tolerances &tolerances, Marks marks)
{
    std::vector<Sized> left;
    for (const OwnSize &block : blocks)
        for (const Length size : sizesOf(block, way, square))
            left.push_back({size, &block});
    std::stable_sort(left.begin(), left.end(),
                     [](const Sized &a, const Sized &b) { return a.size < b.size; });
    Chosen chosen{planned, true, {}};
    while (!left.empty()) {
        const Length smallest = left.front().size, largest = left.back().size;
        if (planned - smallest <= tolerances.size && largest - planned <= tolerances.size)
            return chosen;
        const Length common = min(largest, smallest + tolerances.size).downTo(stepOf(Round::Down, marks));
        if (largest - common <= tolerances.over) {
            chosen.size = common;
            chosen.asPlanned = false;
            return chosen;
        }
        const OwnSize *outlier = left.front().block;
        chosen.outliers.push_back(outlier->block);
        std::erase_if(left, [&](const Sized &sized) { return sized.block == outlier; });
    }
    return chosen;
}

void addOnce(std::vector<std::string> &names, const std::string &name)
{
    if (std::find(names.begin(), names.end(), name) == names.end())
        names.push_back(name);
}

Concerned effectOn(const OwnSize &block, const Pair &common)
{
    const Length along = common.along - block.outline.along, across = common.across - block.outline.across;
    return {block.block, max(Length(), max(along, across)).scaled(1, 2),
            max(Length(), max(-along, -across)).scaled(1, 2), block.cut};
}

} // namespace

CommonSize commonSize(const std::vector<OwnSize> &blocks, const Pair &planned, const Pair &cutFor,
                      const Tolerances &tolerances, Marks marks)
{
    const bool square = planned.along == planned.across;
    const Chosen along = chosenFor(blocks, &Pair::along, square, planned.along, tolerances, marks);
    const Chosen across =
        square ? along : chosenFor(blocks, &Pair::across, false, planned.across, tolerances, marks);
    CommonSize common;
    common.outline = {along.size, across.size};
    common.asPlanned = along.asPlanned && across.asPlanned;
    for (const Chosen *chosen : {&along, &across})
        for (const std::string &outlier : chosen->outliers)
            addOnce(common.outliers, outlier);
    for (const OwnSize &block : blocks) {
        const auto &out = common.outliers;
        if (std::find(out.begin(), out.end(), block.block) != out.end())
            continue;
        if (block.cut && cutFor != common.outline)
            common.becomeWrong.push_back(block.block);
        if (block.outline != common.outline)
            common.concerned.push_back(effectOn(block, common.outline));
    }
    return common;
}

bool isCommonSize(const std::vector<OwnSize> &blocks, const Pair &planned, const Tolerances &tolerances,
                  Marks marks)
{
    const CommonSize again = commonSize(blocks, planned, planned, tolerances, marks);
    return !again.asPlanned && again.outline == planned;
}

std::vector<OwnSize> ownSizes(const Project &project, const Tolerances &tolerances)
{
    const Basis basis = basisOf(project);
    const Target target{{project.blocks.width, project.blocks.height}, false, basis.allowance};
    std::vector<OwnSize> sizes;
    for (const MadeBlock &block : project.made.blocks) {
        if (!block.good())
            continue;
        const bool cut = block.state != BlockState::Stitched;
        const Measured what = measuredOn(block, target, tolerances);
        const std::optional<Readings> readings = readingsOf(block);
        if (!readings) {
            if (block.outline)
                sizes.push_back({block.block, {(*block.outline)[0], (*block.outline)[1]}, cut});
            continue;
        }
        const Finding finding = judge(*readings, what, target, tolerances, project.marks());
        if (finding.kind == FindingKind::MeasureAgain)
            continue;
        const Length both = what == Measured::Trimmed ? basis.allowance * 2 : Length();
        sizes.push_back({block.block, {finding.own.along - both, finding.own.across - both}, cut});
    }
    return sizes;
}

} // namespace matside
