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
    long double used =
        area(choice.strip.along, choice.strip.across) * static_cast<long double>(choice.strips);
    for (const FillerStrips &filler : choice.fillers)
        used += area(filler.strip.along, filler.strip.across) * static_cast<long double>(filler.count);
    if (all <= 0 || used >= all)
        return 0;
    return static_cast<std::int64_t>((1 - used / all) * 1000 + 0.5L);
}

/// Packages with the same height left below what was laid into them.
struct Rest {
    Length height;
    std::int64_t packages = 0;
};

/// Lays rows of one width into what is left, package by package; gives back the rows that found no place.
std::int64_t layRows(std::vector<Rest> &rests, Length width, std::int64_t rows)
{
    std::vector<Rest> after;
    const auto keep = [&](Length height, std::int64_t packages) {
        if (packages > 0)
            after.push_back({height, packages});
    };
    for (const Rest &rest : rests) {
        const std::int64_t each = std::max<std::int64_t>(rest.height.floorDiv(width), 0);
        const std::int64_t full = each > 0 ? std::min(rest.packages, rows / each) : 0;
        const std::int64_t part = each > 0 && full < rest.packages ? std::min(each, rows - full * each) : 0;
        keep(rest.height - width * each, full);
        keep(rest.height - width * part, part > 0 ? 1 : 0);
        keep(rest.height, rest.packages - full - (part > 0 ? 1 : 0));
        rows -= full * each + part;
    }
    rests = std::move(after);
    return rows;
}

/// Packages of this height and breadth that hold the hoop strips, and beneath them the fillers.
std::int64_t packagesFor(const BattingChoice &choice, Length along, Length across)
{
    const std::int64_t beside = across.floorDiv(choice.strip.along);
    const std::int64_t below = along.floorDiv(choice.strip.across);
    std::int64_t rows = (choice.strips + beside - 1) / beside;
    std::int64_t count = (rows + below - 1) / below;
    std::vector<Rest> rests{{along, count}};
    (void)layRows(rests, choice.strip.across, rows);
    for (const FillerStrips &filler : choice.fillers) {
        const std::int64_t abreast = across.floorDiv(filler.strip.along);
        const std::int64_t each = along.floorDiv(filler.strip.across);
        if (abreast <= 0 || each <= 0)
            continue; // longer than any package is broad: from the roll
        rows = layRows(rests, filler.strip.across, (filler.count + abreast - 1) / abreast);
        const std::int64_t more = (rows + each - 1) / each;
        rests.push_back({along, more});
        (void)layRows(rests, filler.strip.across, rows);
        count += more;
    }
    return count;
}

} // namespace

std::int64_t stripsIn(Length along, Length across, Pair strip)
{
    if (along < strip.across || across < strip.along || strip.along <= Length() || strip.across <= Length())
        return 0;
    return along.floorDiv(strip.across) * across.floorDiv(strip.along);
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
    buy.count = buy.turned ? packagesFor(choice, package.width - square, package.length)
                           : packagesFor(choice, package.length - square, package.width);
    buy.waste = wasteOf(choice, package.length, package.width, buy.count);
    if (package.price) // a yard's price for a yard is the price itself
        if (const auto one = costOf(*package.price,
                                    system == System::Inch ? Length::inches(36) : Length::mm(1000), system))
            buy.cents = *one * buy.count;
    return buy;
}

Pair layOf(const PackageBuy &buy)
{
    const Package &package = buy.package;
    return buy.turned ? Pair{package.width, package.length} : Pair{package.length, package.width};
}

ShopStrip stripsOf(const PackageBuy &buy, Pair strip)
{
    const Pair lies = layOf(buy);
    const std::int64_t beside = lies.across.floorDiv(strip.along);
    return {strip.across, beside > 0 ? buy.each / beside : 0, 0, {{strip.along, strip.across, beside}}};
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
    for (const Step &step : steps)
        if (step.cloth == batting->id && isFiller(step) && step.size && step.done < step.count)
            choice.fillers.push_back({step.count - step.done, *step.size});
    Project all = withoutPackages(project, batting->id);
    for (Cloth &cloth : all.cloths)
        if (cloth.id == batting->id)
            cloth.owned.clear();
    const ClothLay lay = layKits(all, plan, steps, batting->id);
    choice.roll = lay.bought;
    choice.rollStrips = shopStrips(lay.strips);
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
        const Pair lies = layOf(buy);
        const OwnedPiece piece{lies.along, lies.across, {}, true};
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
