// SPDX-License-Identifier: MIT
#include "bench/account.h"
#include "bench/clothlay.h"
#include "bench/relay.h"

#include <algorithm>
#include <set>

namespace matside {

namespace {

/// What a project file holds: 10 000 m, and a million of anything.
bool canBeKept(const ClothLay &lay)
{
    constexpr std::int64_t most = 1'000'000;
    return lay.bought <= Length::mm(10'000'000) &&
           std::all_of(lay.strips.begin(), lay.strips.end(), [](const LaidStrip &strip) {
               return strip.repeats <= most &&
                      std::all_of(strip.pieces.begin(), strip.pieces.end(),
                                  [](const LaidPiece &piece) { return piece.count <= most; });
           });
}

} // namespace

Project withLayout(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                   const std::string &cloth, bool apart)
{
    Project next = project;
    if (next.made.layoutOf(cloth))
        return next;
    std::vector<Wanted> wanted = wantedOf(project, plan, steps, cloth);
    const CutCounts cuts = cutsOf(project, steps, cloth);
    Ground ground = groundOf(project, plan, cloth);
    bool begun = apart;
    for (Wanted &want : wanted)
        if (const auto found = cuts.all.find(want.does); found != cuts.all.end()) {
            want.count += found->second; // spoiled ones lie on the cloth too
            begun = begun || found->second > 0;
        }
    begun = begun || (cuts.all.contains(bandName({}, true)) && cuts.all.at(bandName({}, true)) > 0);
    if (begun)
        ground.owned.clear();
    const ClothLay lay = begun ? layApart(wanted, ground) : layKits(project, plan, steps, cloth);
    if (!lay.strips.empty() && canBeKept(lay))
        next.made.layouts.push_back({cloth, ground.usable, lay.bought, lay.strips, {}});
    return next;
}

bool tickedAsBought(const Project &project, const std::string &cloth)
{
    bool bought = false;
    for (const MadeEvent &event : project.made.events)
        if (event.cloth == cloth && (event.event == "bought" || event.event == "not-bought"))
            bought = event.event == "bought";
    return bought;
}

Length stillToBuy(const Project &project, const std::vector<Step> &steps, const MadeLayout &layout)
{
    const LayoutState state = stateOf(project, steps, layout);
    const ClothAccount account = clothAccount(project, {}, steps, layout.cloth);
    Length left = account.left ? *account.left : layout.bought - account.used - account.spoiled;
    if (state.cut.empty()) { // what squaring takes; the first end may lie beside it already
        left -= straightening(project.system, cutOf(state.open));
        if (endSquared(steps, layout.cloth))
            left += straightening(project.system, Length());
    }
    std::vector<const LaidStrip *> tallest;
    for (const LaidStrip &strip : state.open)
        if (strip.owned == 0 && strip.run <= Length())
            tallest.push_back(&strip);
    std::stable_sort(tallest.begin(), tallest.end(),
                     [](const LaidStrip *a, const LaidStrip *b) { return a->height > b->height; });
    Length over;
    // Strips along the selvage share one length, in one piece.
    if (const Length run = runOf(state.cut) > Length() ? Length() : runOf(state.open); run > left)
        over += run;
    else
        left -= run;
    for (const LaidStrip *strip : tallest) {
        const std::int64_t fit = std::clamp<std::int64_t>(left.floorDiv(strip->height), 0, strip->repeats);
        left -= strip->height * fit;
        over += strip->height * (strip->repeats - fit);
    }
    if (over <= Length())
        return {};
    const Cloth *sold = clothNamed(project, layout.cloth);
    return (over + straightening(project.system, over))
        .upTo(sold ? sold->soldStep : usualSoldStep(project.system));
}

Project withBought(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                   const std::string &cloth)
{
    Project next = withLayout(project, plan, steps, cloth);
    MadeEvent event;
    event.event = "bought";
    event.cloth = cloth;
    for (MadeLayout &layout : next.made.layouts) {
        if (layout.cloth != cloth)
            continue;
        const Length more = stillToBuy(next, steps, layout);
        layout.bought += more;
        event.length = more > Length() ? more : layout.bought;
        for (MadeCloth &made : next.made.cloths)
            if (made.cloth == cloth && made.length)
                *made.length += more;
    }
    next.made.events.push_back(std::move(event));
    return next;
}

Project withoutBought(const Project &project, const std::vector<Step> &steps, const std::string &cloth)
{
    Project next = project;
    MadeEvent event;
    event.event = "not-bought";
    event.cloth = cloth;
    next.made.events.push_back(std::move(event));
    std::erase_if(next.made.layouts, [&](const MadeLayout &layout) {
        return layout.cloth == cloth && stateOf(project, steps, layout).cut.empty() &&
               !endSquared(steps, cloth);
    });
    return next;
}

namespace {

/// More than the squaring of its end was counted: the pieces follow the steps as they were.
bool cutBeyondSquaring(const Project &project, const std::string &cloth)
{
    return std::any_of(project.made.cut.begin(), project.made.cut.end(), [&](const MadeCut &cut) {
        return cut.cloth == cloth && !cut.does.ends_with(nameOf(Does::Straighten));
    });
}

} // namespace

Project afterChange(const Project &before, const Project &next)
{
    std::set<std::string> fresh;
    for (const MadeCut &cut : next.made.cut)
        if (!cut.cloth.empty() && !next.made.layoutOf(cut.cloth))
            fresh.insert(cut.cloth);
    Project settled = next;
    if (!fresh.empty()) {
        const Plan was = plan(before);
        const std::vector<Step> all = was.problems.empty() ? steps(before, was) : std::vector<Step>();
        Project laid = before;
        for (const std::string &cloth : fresh)
            if (std::any_of(all.begin(), all.end(), [&](const Step &step) {
                    return step.cloth == cloth && step.station == Station::Cut;
                }))
                laid = withLayout(laid, was, all, cloth, cutBeyondSquaring(next, cloth));
        for (const MadeLayout &layout : laid.made.layouts)
            if (!settled.made.layoutOf(layout.cloth))
                settled.made.layouts.push_back(layout);
    }
    return withLayoutsSettled(settled);
}

} // namespace matside
