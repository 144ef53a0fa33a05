// SPDX-License-Identifier: MIT
#include "bench/otherwise.h"

#include "bench/progress.h"
#include "bench/relay.h"
#include "plan/onstrip.h"

#include <algorithm>
#include <initializer_list>
#include <optional>
#include <set>

namespace matside {

namespace {

/// No block draws up by more than a tenth.
constexpr std::int64_t mostNum = 10, mostDen = 9;

/// One way of a block. Sizes that are sent follow the draw-up, which is measured while the blocks are made:
/// where there is one, a block sent with less or more of it is still of the planned size.
bool fits(Length sent, Length outline, Length now, bool drawsUp)
{
    return sent == now || (drawsUp && outline <= sent && sent <= outline.scaled(mostNum, mostDen));
}

std::optional<Problem> blocks(const Project &project, const Plan &plan)
{
    const Pair &outline = plan.block.outline, &now = plan.block.sent;
    const bool drawsUp = project.made.testBlock || project.made.drawUp || now != outline;
    std::int64_t many = 0;
    Length was;
    bool across = false;
    for (const MadeBlock &block : project.made.blocks) {
        if (!block.good() || !block.sent)
            continue;
        const auto [along, deep] = *block.sent;
        const bool wide = fits(along, outline.along, now.along, drawsUp);
        if (wide && fits(deep, outline.across, now.across, drawsUp))
            continue;
        ++many;
        across = wide;
        was = wide ? deep : along;
    }
    if (many == 0)
        return std::nullopt;
    return Problem{across ? "/blocks/height" : "/blocks/width",
                   "blocks-otherwise",
                   {many, Told{was}, Told{across ? now.across : now.along}},
                   {}};
}

/// The width a piece was laid out with; bands follow the layout they are fixed in, the pieces out of them the
/// plan.
Length widthOf(const LaidPiece &piece)
{
    return piece.turned ? piece.across : piece.along;
}

/// Strips cut that hold pieces of these steps, wider or narrower than they are cut now.
std::optional<Problem> strips(const Project &project, const std::vector<Step> &steps,
                              std::initializer_list<Does> kinds, const char *at, const char *code)
{
    std::int64_t many = 0;
    Length was, now;
    for (const MadeLayout &layout : project.made.layouts)
        for (const LaidStrip &strip : stateOf(project, steps, layout).cut) {
            if (strip.spoiled)
                continue;
            const auto stepOf = [&](const LaidPiece &piece) {
                return std::find_if(steps.begin(), steps.end(), [&](const Step &each) {
                    return std::find(kinds.begin(), kinds.end(), each.does) != kinds.end() && !each.trial &&
                           each.cloth == layout.cloth && each.size && progressName(each) == piece.does;
                });
            };
            const auto off =
                std::find_if(strip.pieces.begin(), strip.pieces.end(), [&](const LaidPiece &one) {
                    const auto step = stepOf(one);
                    return step != steps.end() && step->size->across != widthOf(one);
                });
            if (off == strip.pieces.end())
                continue;
            many += strip.repeats;
            was = widthOf(*off);
            now = stepOf(*off)->size->across;
        }
    if (many == 0)
        return std::nullopt;
    return Problem{at, code, {many, Told{was}, Told{now}}, {}};
}

/// Good blocks whose place the piece has no more; a spare has none until it takes one.
std::optional<Problem> withoutPlace(const Project &project)
{
    if (project.made.blocks.empty())
        return std::nullopt; // this is asked at every move of a drag, and there may be thousands of places
    const std::vector<std::string> all = blockNames(project);
    const std::set<std::string> places(all.begin(), all.end());
    std::int64_t many = 0, lowest = 0;
    std::string first;
    for (const MadeBlock &block : project.made.blocks) {
        const std::string &place = !block.lies.empty()            ? block.lies
                                   : block.block.starts_with('+') ? block.replaces
                                                                  : block.block;
        if (!block.good() || place.empty() || places.contains(place))
            continue;
        if (many++ == 0)
            first = block.block;
        // Its letter tells which of the two counts is too small for it.
        lowest += places.contains(place.substr(0, place.find_first_of("0123456789")) + "1") ? 0 : 1;
    }
    if (many == 0)
        return std::nullopt;
    return Problem{
        lowest == many ? "/blocks/rows" : "/blocks/columns", "blocks-without-place", {many, first}, {}};
}

/// Long sashings cut whole, further from the length the rows have now than their spare takes up.
std::optional<Problem> longsCut(const Project &project, const Plan &plan, const std::vector<Step> &steps)
{
    const auto laid = [&](const Step &step) -> std::optional<Length> {
        for (const MadeLayout &layout : project.made.layouts)
            for (const LaidStrip &strip : stateOf(project, steps, layout).cut)
                for (const LaidPiece &piece : strip.pieces)
                    if (layout.cloth == step.cloth && piece.does == progressName(step))
                        return piece.turned ? piece.along : piece.across;
        return std::nullopt;
    };
    std::int64_t many = 0;
    Length was, now;
    for (const Step &step : steps) {
        if (step.does != Does::CutLong || step.trial || step.done == 0 || !step.size)
            continue;
        const Length wanted = step.size->along, length = laid(step).value_or(wanted);
        if (std::max(length, wanted) - std::min(length, wanted) <= plan.sashing.longSpare)
            continue;
        many += step.done;
        was = length;
        now = wanted;
    }
    if (many == 0)
        return std::nullopt;
    return Problem{"/blocks/columns", "longs-otherwise", {many, Told{was}, Told{now}}, {}};
}

/// Rows joined and measured of another number of blocks.
std::optional<Problem> rowsJoined(const Project &project)
{
    std::int64_t many = 0, blocksThen = 0;
    for (const MadeRow &row : project.made.rows) {
        const auto joined = static_cast<std::int64_t>(row.joins.size()) + 1;
        if (row.joins.empty() || joined == project.blocks.columns)
            continue;
        ++many;
        blocksThen = joined;
    }
    if (many == 0)
        return std::nullopt;
    return Problem{"/blocks/columns", "rows-otherwise", {many, blocksThen, project.blocks.columns}, {}};
}

} // namespace

std::vector<Problem> madeOtherwise(const Project &project, const Plan &plan, const std::vector<Step> &steps)
{
    std::vector<Problem> found;
    const auto add = [&](std::optional<Problem> problem) {
        if (problem)
            found.push_back(std::move(*problem));
    };
    add(blocks(project, plan));
    add(withoutPlace(project));
    add(rowsJoined(project));
    add(longsCut(project, plan, steps));
    add(strips(project, steps, {Does::CutStrip}, "/blocks/width", "hoop-strips-otherwise"));
    add(strips(project, steps, {Does::CutShort, Does::CutLong, Does::CutLongPiece}, "/seam",
               "sashing-strips-otherwise"));
    add(strips(project, steps, {Does::CutBinding}, "/seam", "binding-strips-otherwise"));
    return found;
}

std::vector<Problem> cutOfAnother(const Project &project, const std::vector<Step> &steps)
{
    std::vector<Problem> found;
    for (const MadeCut &cut : project.made.cut) {
        if (cut.cloth.empty() || cut.count <= cut.spoiled)
            continue;
        const auto same = [&](const Step &step) { return progressName(step) == cut.does; };
        const auto own = [&](const Step &step) { return step.cloth == cut.cloth && same(step); };
        if (std::any_of(steps.begin(), steps.end(), own))
            continue;
        // The one that has its part has nothing cut of it yet.
        const auto other = std::find_if(steps.begin(), steps.end(), [&](const Step &step) {
            return same(step) && !step.cloth.empty() && step.done == 0;
        });
        const std::string by = other == steps.end() ? std::string() : other->cloth;
        const auto listed = std::find_if(project.cloths.begin(), project.cloths.end(),
                                         [&](const Cloth &cloth) { return cloth.id == by; });
        if (listed == project.cloths.end())
            continue;
        const Cloth *was = clothNamed(project, cut.cloth);
        std::string at = "/cloths/" + std::to_string(listed - project.cloths.begin()) + "/role";
        const auto told = [&](const Problem &problem) { return problem.at == at; };
        if (std::none_of(found.begin(), found.end(), told))
            found.push_back({std::move(at),
                             "cut-of-another-cloth",
                             {was && !was->name.empty() ? was->name : cut.cloth, listed->name},
                             {}});
    }
    return found;
}

} // namespace matside
