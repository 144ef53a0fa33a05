// SPDX-License-Identifier: MIT
#include "bench/shopping.h"

#include "bench/account.h"
#include "bench/clothlay.h"
#include "bench/relay.h"

#include <algorithm>

namespace matside {

namespace {

/// Area that lies in no piece against the area of all strips and the rest bought with them, per mille.
std::int64_t wasteOf(const std::vector<LaidStrip> &strips, const Buy &buy)
{
    long double used = 0;
    for (const LaidStrip &strip : strips)
        for (const LaidPiece &piece : strip.pieces)
            if (strip.owned == 0 && !piece.does.empty())
                used += static_cast<long double>(piece.across.count()) *
                        static_cast<long double>(piece.along.count()) *
                        static_cast<long double>(piece.count * strip.repeats);
    const long double all =
        static_cast<long double>(buy.usable.count()) * static_cast<long double>(buy.bought.count());
    if (all <= 0 || used < 0 || used > all)
        return 0;
    return static_cast<std::int64_t>((1 - used / all) * 1000 + 0.5L);
}

/// From the layout fixed when it was bought or first cut.
void takeFixed(Buy &buy, const Project &project, const Plan &plan, const std::vector<Step> &steps,
               const MadeLayout &layout)
{
    buy.fixed = true;
    buy.usable = layout.usable;
    buy.bought = layout.bought;
    buy.cut = cutOf(layout.strips);
    buy.straighten = buy.cut > Length() ? straightening(project.system, buy.cut) : Length();
    buy.more = plan.problems.empty() ? stillToBuy(project, steps, layout) : Length();
    buy.strips = shopStrips(layout.strips);
    buy.waste = wasteOf(layout.strips, buy);
}

/// Laid out anew; how little could do comes with it.
void takeLaid(Buy &buy, const ClothLay &lay)
{
    buy.bought = lay.bought;
    buy.cut = lay.cut;
    buy.straighten = lay.straighten;
    buy.least = lay.least;
    buy.strips = shopStrips(lay.strips);
    buy.waste = wasteOf(lay.strips, buy);
}

/// The packages among a cloth's pieces, by size, and what they cost where their size has a price.
std::vector<BuyPackages> packagesOf(const Cloth &cloth, System system)
{
    const Length unit = system == System::Inch ? Length::inches(36) : Length::mm(1000);
    std::vector<BuyPackages> list;
    for (const OwnedPiece &owned : cloth.owned) {
        if (!owned.package)
            continue;
        auto same = std::find_if(list.begin(), list.end(), [&](const BuyPackages &had) {
            return had.length == owned.length && had.width == owned.width;
        });
        if (same == list.end())
            same = list.insert(list.end(), {owned.length, owned.width, 0, {}});
        ++same->count;
    }
    for (BuyPackages &bought : list)
        for (const Package &package : cloth.packages)
            if (package.price && min(package.length, package.width) == min(bought.length, bought.width) &&
                max(package.length, package.width) == max(bought.length, bought.width))
                if (const auto one = costOf(*package.price, unit, system))
                    bought.cents = *one * bought.count;
    return list;
}

/// The roll's price for what is bought of it, and that of the packages; nothing while one of them is unknown.
std::optional<std::int64_t> centsOf(const Buy &buy, const Cloth &cloth, System system)
{
    std::optional<std::int64_t> cents;
    if (cloth.price)
        cents = costOf(*cloth.price, buy.bought + buy.more, system);
    else if (buy.bought + buy.more <= Length() && !buy.packages.empty())
        cents = 0;
    for (const BuyPackages &packages : buy.packages)
        cents = cents && packages.cents ? std::optional(*cents + *packages.cents) : std::nullopt;
    return cents;
}

} // namespace

std::vector<ShopStrip> shopStrips(const std::vector<LaidStrip> &laid)
{
    std::vector<ShopStrip> strips;
    for (const LaidStrip &from : laid) {
        ShopStrip strip{from.height, from.repeats, from.owned, {}, from.run};
        for (const LaidPiece &piece : from.pieces)
            strip.pieces.push_back({piece.across, piece.along, piece.count, piece.does.empty()});
        strips.push_back(std::move(strip));
    }
    return strips;
}

std::int64_t Buy::overPerMille() const
{
    if (!least || *least <= Length() || *least >= bought)
        return 0;
    const std::int64_t over = (bought - *least).count();
    return (over * 1000 + least->count() - 1) / least->count();
}

std::optional<std::int64_t> costOf(const std::string &price, Length length, System system)
{
    std::int64_t value = 0;
    std::int64_t parts = 0; // digits behind the point
    bool point = false;
    for (const char c : price) {
        if (c == '.' && !point) {
            point = true;
            continue;
        }
        if (c < '0' || c > '9' || value > 100'000'000 || parts >= 4)
            return std::nullopt;
        value = value * 10 + (c - '0');
        parts += point ? 1 : 0;
    }
    if (price.empty() || length < Length())
        return std::nullopt;
    for (; parts < 4; ++parts)
        value *= 10;
    const std::int64_t unit = (system == System::Inch ? Length::inches(36) : Length::mm(1000)).count();
    if (length.count() > 4'000'000'000)
        return std::nullopt;
    // value is in 1/10 000; a cent is 100 of them.
    const std::int64_t whole = length.count() / unit;
    const std::int64_t rest = length.count() % unit;
    const std::int64_t tenThousandths2 = 2 * (value * whole) + 2 * (value * rest) / unit;
    return (tenThousandths2 + 100) / 200;
}

std::vector<Buy> shoppingList(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                              std::int64_t effort)
{
    std::vector<Buy> list;
    for (const Step &first : steps) {
        if (first.station != Station::Cut || first.cloth.empty() ||
            std::any_of(list.begin(), list.end(), [&](const Buy &buy) { return buy.cloth == first.cloth; }))
            continue;
        Buy buy;
        buy.cloth = first.cloth;
        const Ground ground = groundOf(project, plan, first.cloth);
        buy.usable = ground.usable;
        buy.step = ground.step;
        if (const MadeLayout *layout = project.made.layoutOf(first.cloth))
            takeFixed(buy, project, plan, steps, *layout);
        else
            takeLaid(buy, layKits(project, plan, steps, first.cloth, effort));
        if (buy.strips.empty() || !buy.cut.valid() || !buy.bought.valid())
            continue;
        if (const Cloth *cloth = clothNamed(project, first.cloth)) {
            buy.packages = packagesOf(*cloth, project.system);
            buy.cents = centsOf(buy, *cloth, project.system);
        }
        list.push_back(std::move(buy));
    }
    return list;
}

} // namespace matside
