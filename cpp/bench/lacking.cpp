// SPDX-License-Identifier: MIT
#include "bench/lacking.h"

#include "bench/account.h"
#include "bench/progress.h"
#include "bench/record.h"
#include "bench/relay.h"

#include <algorithm>

namespace matside {

namespace {

/// What is made of one thing, and who can make more of it.
struct Supply {
    std::int64_t made = 0;
    std::optional<std::size_t> open; ///< the first step that makes it and is not done
    std::int64_t each = 1;           ///< made by one repetition of that step
    std::int64_t left = 0;           ///< its repetitions still to do
};

Supply supplyOf(const std::vector<Step> &steps, const std::string &name)
{
    Supply supply;
    for (std::size_t i = 0; i < steps.size(); ++i)
        for (const Piece &made : steps[i].makes) {
            if (made.name != name)
                continue;
            supply.made += steps[i].done * made.count;
            if (supply.open || steps[i].done >= steps[i].count)
                continue;
            supply.open = i;
            supply.each = std::max<std::int64_t>(made.count, 1);
            supply.left = steps[i].count - steps[i].done;
        }
    return supply;
}

std::optional<Lacking> lacks(const Supply &supply, std::int64_t wanted)
{
    if (!supply.open || supply.made >= wanted)
        return std::nullopt;
    const std::int64_t more = (wanted - supply.made + supply.each - 1) / supply.each;
    return Lacking{*supply.open, std::min(more, supply.left)};
}

/// Of the bands cut so far none has a place left for one more piece.
std::optional<Lacking> lacksBand(const Project &project, const std::vector<Step> &steps, const Step &step)
{
    std::optional<Lacking> first;
    bool any = false;
    for (const Piece &piece : step.takes) {
        const Supply supply = supplyOf(steps, piece.name);
        any = any || supply.made > 0;
        if (!first && supply.open)
            first = Lacking{*supply.open, 1};
    }
    const MadeLayout *layout = step.trial ? nullptr : project.made.layoutOf(step.cloth);
    if (any && layout) {
        const LayoutState state = stateOf(project, steps, *layout);
        const auto places = state.unfilled.find(progressName(step));
        any = places != state.unfilled.end() && places->second > 0;
    }
    return any ? std::nullopt : first;
}

bool isBand(const Piece &piece, const std::vector<Step> &steps)
{
    return std::any_of(steps.begin(), steps.end(), [&](const Step &maker) {
        return maker.does == Does::CutBand &&
               std::any_of(maker.makes.begin(), maker.makes.end(),
                           [&](const Piece &made) { return made.name == piece.name; });
    });
}

/// The strip the next block goes on is not marked yet.
std::optional<Lacking> lacksMarks(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                                  std::int64_t strip)
{
    const std::int64_t on = stripOfNext(project, plan, strip);
    for (std::size_t i = 0; i < steps.size(); ++i)
        if (steps[i].does == Does::MarkStrip && !steps[i].trial &&
            steps[i].done < std::min(on, steps[i].count))
            return Lacking{i, std::min(on, steps[i].count) - steps[i].done};
    return std::nullopt;
}

/// A gap piece comes off with the block behind it, so its strip must be apart as far as that.
std::optional<Lacking> lacksApart(const std::vector<Step> &steps, const Step &step)
{
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const std::int64_t wanted = std::min(step.done + 2, steps[i].count);
        if (steps[i].does == Does::RoughApart && steps[i].done < wanted)
            return Lacking{i, wanted - steps[i].done};
    }
    return std::nullopt;
}

} // namespace

std::optional<Lacking> lackingFor(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                                  const Step &step, std::int64_t strip)
{
    if (step.done >= step.count)
        return std::nullopt;
    const bool stitching = step.does == Does::StitchBlock && !step.trial;
    if (stitching)
        if (const auto marks = lacksMarks(project, plan, steps, strip))
            return marks;
    if (step.does == Does::HarvestShort)
        if (const auto apart = lacksApart(steps, step))
            return apart;
    bool bands = false;
    for (const Piece &piece : step.takes) {
        if (piece.count == 0 && isBand(piece, steps)) {
            bands = true;
            continue;
        }
        if ((stitching && piece.name == "place") || piece.name.starts_with("straight/"))
            continue; // strip by strip, above; and an end may have been square from the shop
        const Supply supply = supplyOf(steps, piece.name);
        // What is taken by no count is cut up before: all of it has to be there.
        const std::int64_t wanted =
            piece.count > 0 ? (step.done + 1) * piece.count : supply.made + supply.left * supply.each;
        if (const auto lacking = lacks(supply, wanted))
            return lacking;
    }
    return bands ? lacksBand(project, steps, step) : std::nullopt;
}

} // namespace matside
