// SPDX-License-Identifier: MIT
#include "bench/packages.h"

#include "bench/account.h"
#include "bench/clothlay.h"

#include <algorithm>

namespace matside {

namespace {

/// What of so much cloth is in no strip, per mille, half up.
std::int64_t wasteOf(const BattingChoice &choice, Length along, Length across, std::int64_t pieces)
{
    const auto area = [](Length a, Length b) {
        return static_cast<long double>(a.count()) * static_cast<long double>(b.count());
    };
    const long double all = area(along, across) * static_cast<long double>(pieces);
    const long double used =
        area(choice.strip.along, choice.strip.across) * static_cast<long double>(choice.strips);
    if (all <= 0 || used >= all)
        return 0;
    return static_cast<std::int64_t>((1 - used / all) * 1000 + 0.5L);
}

PackageBuy boughtAs(const BattingChoice &choice, const Package &package, System system)
{
    PackageBuy buy;
    buy.package = package;
    // One edge is squared first, as on any cloth.
    const Length square = straightening(system, Length());
    const std::int64_t straight = stripsIn(package.length - square, package.width, choice.strip);
    const std::int64_t turned = stripsIn(package.width - square, package.length, choice.strip);
    buy.turned = turned > straight;
    buy.each = std::max(straight, turned);
    if (buy.each <= 0)
        return buy;
    buy.count = (choice.strips + buy.each - 1) / buy.each;
    buy.waste = wasteOf(choice, package.length, package.width, buy.count);
    if (package.price) // a yard's price for a yard is the price itself
        if (const auto one = costOf(*package.price,
                                    system == System::Inch ? Length::inches(36) : Length::mm(1000), system))
            buy.cents = *one * buy.count;
    return buy;
}

} // namespace

std::int64_t stripsIn(Length along, Length across, Pair strip)
{
    if (along < strip.across || across < strip.along || strip.along <= Length() || strip.across <= Length())
        return 0;
    return along.floorDiv(strip.across) * across.floorDiv(strip.along);
}

std::optional<BattingChoice> battingChoice(const Project &project, const Plan &plan,
                                           const std::vector<Step> &steps)
{
    const Cloth *batting = clothFor(project, ClothRole::Batting);
    if (!batting || project.made.layoutOf(batting->id))
        return std::nullopt;
    BattingChoice choice;
    choice.cloth = batting->id;
    for (const Step &step : steps)
        if (step.cloth == batting->id && step.does == Does::CutStrip && step.size) {
            choice.strips += step.count - step.done;
            choice.strip = *step.size;
        }
    if (choice.strips <= 0)
        return std::nullopt;
    Project all = withoutPackages(project, batting->id);
    for (Cloth &cloth : all.cloths)
        if (cloth.id == batting->id)
            cloth.owned.clear();
    const ClothLay lay = layKits(all, plan, steps, batting->id);
    choice.roll = lay.bought;
    choice.rollUsable = usableOf(all, plan, batting->id);
    choice.rollProved = lay.least && *lay.least >= lay.bought;
    choice.rollWaste = wasteOf(choice, choice.roll, choice.rollUsable, 1);
    if (batting->price)
        choice.rollCents = costOf(*batting->price, choice.roll, project.system);
    for (const Package &package : batting->packages)
        choice.packages.push_back(boughtAs(choice, package, project.system));
    std::int64_t best = choice.rollWaste;
    for (std::size_t i = 0; i < choice.packages.size(); ++i)
        if (choice.packages[i].each > 0 && choice.packages[i].waste < best) {
            best = choice.packages[i].waste;
            choice.least = i;
        }
    return choice;
}

std::optional<Project> withPackages(const Project &project, const BattingChoice &choice, std::size_t package)
{
    if (package >= choice.packages.size() || project.made.layoutOf(choice.cloth))
        return std::nullopt;
    const PackageBuy &buy = choice.packages[package];
    Project next = withoutPackages(project, choice.cloth);
    for (Cloth &cloth : next.cloths) {
        if (cloth.id != choice.cloth)
            continue;
        if (buy.each <= 0 || cloth.owned.size() + static_cast<std::size_t>(buy.count) > mostOwned)
            return std::nullopt;
        const OwnedPiece piece{buy.turned ? buy.package.width : buy.package.length,
                               buy.turned ? buy.package.length : buy.package.width,
                               {},
                               true};
        cloth.owned.insert(cloth.owned.end(), static_cast<std::size_t>(buy.count), piece);
    }
    return next;
}

Project withoutPackages(const Project &project, const std::string &cloth)
{
    Project next = project;
    for (Cloth &listed : next.cloths)
        if (listed.id == cloth)
            std::erase_if(listed.owned, [](const OwnedPiece &owned) { return owned.package; });
    return next;
}

} // namespace matside
