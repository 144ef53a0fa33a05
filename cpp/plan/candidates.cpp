// SPDX-License-Identifier: MIT
#include "plan/candidates.h"

#include "plan/parts.h"
#include "plan/remarks.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace matside {

namespace {

constexpr Share mostWashing{300'000};
constexpr std::int64_t mostCount = 1000; // columns or rows of a project
constexpr int mostSizes = 400;           // block sizes looked at
constexpr int mostPlans = 60;            // layouts planned in full

/// What one block size and sashing width come to, as plan() reckons it.
struct Grain {
    Length block; ///< along
    Length height;
    Length wider;               ///< sashing beyond the project's
    const Hoop *hoop = nullptr; ///< another than the project's
    Pair one;                   ///< finished with one block
    Pair pitch;                 ///< what each further block adds
};

struct Found {
    Grain grain;
    std::int64_t columns = 0;
    std::int64_t rows = 0;
    Length miss;
    Length worst;

    [[nodiscard]] auto rank() const
    {
        return std::tuple(miss, worst, columns * rows, grain.wider, -grain.block, columns);
    }
};

Length heightFor(const Project &project, Length width)
{
    const Blocks &now = project.blocks;
    if (now.width == now.height || now.width <= Length())
        return width;
    const Length height = now.height.scaled(width.count(), now.width.count());
    return max(height.nearestTo(project.finest), project.finest);
}

void put(Project &project, const Grain &grain, const Basis &basis)
{
    project.blocks.width = grain.block;
    project.blocks.height = grain.height;
    if (grain.wider > Length())
        project.sashing.finished = basis.finished + grain.wider;
    if (grain.hoop)
        project.hoop = *grain.hoop;
}

bool hooped(const Project &project, const Measures &m)
{
    const Basis basis = basisOf(project);
    const BlockPlan block = planBlock(project, basis);
    if (!project.hoop.outside || block.sent.along > basis.field.along ||
        block.sent.across > basis.field.across)
        return false;
    return planStrip(project, basis, block, planSashing(project, basis, block, m), m).perStrip > 0;
}

/// Her other hoops, smallest outside first.
std::vector<const Hoop *> bySize(std::span<const Hoop> owned)
{
    std::vector<const Hoop *> hoops;
    for (const Hoop &hoop : owned)
        if (hoop.outside)
            hoops.push_back(&hoop);
    std::stable_sort(hoops.begin(), hoops.end(), [](const Hoop *a, const Hoop *b) {
        return a->outside->along + a->outside->across < b->outside->along + b->outside->across;
    });
    return hoops;
}

/// The project's hoop where it takes the block, else the smallest that does; false when none does.
bool chooseHoop(const Project &project, Grain &grain, const std::vector<const Hoop *> &hoops,
                const Measures &m)
{
    Project tried = project;
    tried.blocks.columns = tried.blocks.rows = 1;
    put(tried, grain, {});
    if (hooped(tried, m))
        return true;
    for (const Hoop *hoop : hoops) {
        tried.hoop = *hoop;
        if (!hooped(tried, m))
            continue;
        grain.hoop = hoop;
        return true;
    }
    return false;
}

void weigh(const Project &project, const Basis &basis, Grain &grain, const Measures &m)
{
    Project tried = project;
    put(tried, grain, basis);
    const Basis now = basisOf(tried);
    const BlockPlan block = planBlock(tried, now);
    const auto finished = [&](std::int64_t count) {
        tried.blocks.columns = tried.blocks.rows = count;
        return planSize(tried, now, block, planSashing(tried, now, block, m), m).finished;
    };
    grain.one = finished(1);
    const Pair two = finished(2);
    grain.pitch = {two.along - grain.one.along, two.across - grain.one.across};
}

std::vector<Grain> grainsOf(const Project &project, const FitLimits &limits,
                            const std::vector<const Hoop *> &hoops, const Measures &m)
{
    std::vector<Grain> grains;
    Project bare = project; // looked at again and again: without what was made of it
    bare.made.blocks.clear();
    bare.made.events.clear();
    const Basis basis = basisOf(bare);
    int sizes = 0;
    for (Length block = limits.leastBlock.upTo(limits.step);
         block <= limits.mostBlock && block.valid() && sizes < mostSizes; block += limits.step, ++sizes) {
        Grain grain;
        grain.block = block;
        grain.height = heightFor(project, block);
        if (!chooseHoop(bare, grain, hoops, m))
            continue;
        const Length widest = limits.widen ? m.shortSpare.scaled(1, 4) : Length();
        const Length by = max(project.finest, m.cutStep);
        for (Length wider; wider <= widest; wider += by) {
            grain.wider = wider;
            weigh(bare, basis, grain, m);
            if (grain.pitch.along > Length() && grain.pitch.across > Length())
                grains.push_back(grain);
        }
    }
    return grains;
}

/// The two counts just under a length and the two just over; one at the least.
std::pair<std::int64_t, std::int64_t> countsFor(Length asked, Length one, Length pitch)
{
    const std::int64_t under = asked < one ? 0 : std::min((asked - one).floorDiv(pitch) + 1, mostCount);
    return {std::max<std::int64_t>(under - 1, 1), std::min(under + 2, mostCount)};
}

std::vector<Found> nearest(const std::vector<Grain> &grains, Pair asked, std::int64_t mostBlocks)
{
    std::map<std::pair<std::int64_t, std::int64_t>, Found> best;
    for (const Grain &grain : grains) {
        const auto across = countsFor(asked.along, grain.one.along, grain.pitch.along);
        const auto down = countsFor(asked.across, grain.one.across, grain.pitch.across);
        for (std::int64_t columns = across.first; columns <= across.second; ++columns) {
            for (std::int64_t rows = down.first; rows <= down.second; ++rows) {
                if (columns * rows > mostBlocks)
                    continue;
                const Length along = (grain.one.along + grain.pitch.along * (columns - 1) - asked.along);
                const Length deep = (grain.one.across + grain.pitch.across * (rows - 1) - asked.across);
                const Found found{grain, columns, rows, along.magnitude() + deep.magnitude(),
                                  max(along.magnitude(), deep.magnitude())};
                const auto [at, added] = best.try_emplace({columns, rows}, found);
                if (!added && found.rank() < at->second.rank())
                    at->second = found;
            }
        }
    }
    std::vector<Found> list;
    list.reserve(best.size());
    for (const auto &[counts, found] : best)
        list.push_back(found);
    std::sort(list.begin(), list.end(), [](const Found &a, const Found &b) { return a.rank() < b.rank(); });
    return list;
}

void proposeSpares(Project &project)
{
    Blocks &blocks = project.blocks;
    const std::int64_t spares = usualSpares(blocks.columns * blocks.rows * project.kits);
    blocks.spare = isOneSet(project) ? 0 : spares; // it would be made with every piece
    blocks.spareInAll = isOneSet(project) ? spares : 0;
}

Candidate planned(const Project &project, const Found &found, Pair asked, Share washing, bool spares)
{
    Candidate candidate;
    candidate.project = project;
    put(candidate.project, found.grain, basisOf(project));
    candidate.project.blocks.columns = found.columns;
    candidate.project.blocks.rows = found.rows;
    if (spares)
        proposeSpares(candidate.project);
    candidate.plan = plan(candidate.project);
    const Pair finished = candidate.plan.size.finished;
    candidate.over = {finished.along - asked.along, finished.across - asked.across};
    const std::int64_t left = 1'000'000 - washing.millionths;
    candidate.washed = {finished.along.scaled(left, 1'000'000), finished.across.scaled(left, 1'000'000)};
    candidate.cloth = candidate.plan.strip.width * candidate.plan.strip.strips;
    candidate.hours = hoursFor(candidate.project, candidate.plan);
    candidate.otherHoop = found.grain.hoop != nullptr;
    candidate.widerSashing = found.grain.wider > Length();
    return candidate;
}

Problem refusal(std::string at, std::string code, std::vector<Argument> args)
{
    return {std::move(at), std::move(code), std::move(args), {}};
}

/// Why no block size came into question at all.
Problem noGrain(const Project &project, const FitLimits &limits)
{
    const std::vector<Problem> now = plan(project).problems;
    for (const Problem &problem : now)
        if (problem.code == "hoop-unknown" || problem.code == "draw-up-out-of-range")
            return problem;
    return refusal("/blocks/width", "fit-no-block-in-limits",
                   {told(limits.leastBlock), told(limits.mostBlock)});
}

/// Why no counts came into question.
Problem noCounts(const std::vector<Grain> &grains, Pair asked, std::int64_t mostBlocks)
{
    std::int64_t least = 0;
    for (const Grain &grain : grains) {
        const auto across = countsFor(asked.along, grain.one.along, grain.pitch.along);
        const auto down = countsFor(asked.across, grain.one.across, grain.pitch.across);
        const std::int64_t blocks = across.first * down.first;
        least = least == 0 ? blocks : std::min(least, blocks);
    }
    return refusal("/blocks", "fit-too-many-blocks", {least, mostBlocks});
}

} // namespace

FitLimits usualLimits(const Project &project, std::span<const Hoop> owned)
{
    const bool inch = project.system == System::Inch;
    FitLimits limits;
    limits.step = inch ? Length::inches(0, 1, 4) : Length::mm(5);
    limits.leastBlock = inch ? Length::inches(4) : Length::mm(100);
    for (const Patch &patch : project.patches)
        limits.leastBlock = max(limits.leastBlock, max(patch.width, patch.height).upTo(limits.step));
    Project tried = project;
    const auto take = [&](const Hoop &hoop) {
        tried.hoop = hoop;
        const Pair field = basisOf(tried).field;
        limits.mostBlock = max(limits.mostBlock, max(field.along, field.across).downTo(limits.step));
    };
    take(project.hoop);
    std::for_each(owned.begin(), owned.end(), take);
    limits.mostBlock = max(limits.mostBlock, limits.leastBlock);
    return limits;
}

std::optional<Pair> sizeLeaving(const Table &table, Pair reveal)
{
    const std::optional<Length> along = table.along(table.leafIn);
    const std::optional<Length> across = table.across();
    if (!along || !across)
        return std::nullopt;
    return Pair{*along - reveal.along * 2, *across - reveal.across * 2};
}

Candidates candidatesFor(const Project &project, const Wish &wish, const FitLimits &limits,
                         std::span<const Hoop> owned)
{
    Candidates answer;
    if (wish.washing < Share{} || wish.washing >= mostWashing) {
        answer.none = refusal("", "fit-washing-out-of-range", {wish.washing, mostWashing});
        return answer;
    }
    answer.asked = {sentFor(wish.size.along, wish.washing), sentFor(wish.size.across, wish.washing)};
    if (wish.size.along <= Length() || wish.size.across <= Length() || !answer.asked.along.valid() ||
        !answer.asked.across.valid()) {
        answer.none = refusal("/table", "fit-no-size", {});
        return answer;
    }
    const Measures m = measures(project.system);
    const bool sane = limits.step > Length() && limits.leastBlock > Length() && project.finest > Length();
    const std::vector<Grain> grains =
        sane ? grainsOf(project, limits, bySize(owned), m) : std::vector<Grain>();
    if (grains.empty()) {
        answer.none = noGrain(project, limits);
        return answer;
    }
    const Pair least = grains.front().one;
    if (least.along > answer.asked.along || least.across > answer.asked.across) {
        const bool along = least.along > answer.asked.along;
        answer.none = refusal("/blocks/width", "fit-block-over-size",
                              {told(along ? least.along : least.across, Round::Nearest),
                               told(along ? answer.asked.along : answer.asked.across, Round::Nearest)});
        return answer;
    }
    const std::vector<Found> ranked = nearest(grains, answer.asked, limits.mostBlocks);
    if (ranked.empty())
        answer.none = noCounts(grains, answer.asked, limits.mostBlocks);
    int plans = 0;
    for (const Found &found : ranked) {
        if (answer.list.size() >= limits.most || plans++ >= mostPlans)
            break;
        Candidate candidate = planned(project, found, answer.asked, wish.washing, limits.proposeSpares);
        if (candidate.plan.problems.empty())
            answer.list.push_back(std::move(candidate));
        else if (!answer.none)
            answer.none = candidate.plan.problems.front();
    }
    if (!answer.list.empty())
        answer.none.reset();
    return answer;
}

} // namespace matside
