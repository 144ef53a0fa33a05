// SPDX-License-Identifier: MIT
#include "bench/shopping.h"

#include "bench/account.h"
#include "cutting/solve.h"

#include <algorithm>

namespace matside {

namespace {

Length usableOf(const Project &project, const Plan &plan, const std::string &id)
{
    if (const auto measured = measuredUsable(project, id))
        return *measured;
    const Cloth *cloth = clothNamed(project, id);
    return cloth && cloth->usable ? *cloth->usable : plan.strip.usable;
}

bool acrossTheCloth(const Step &step)
{
    return step.does == Does::CutStrip || step.does == Does::CutBand || step.does == Does::CutBinding ||
           step.does == Does::CutBacking || step.does == Does::CutBias;
}

bool crossCut(const Step &step)
{
    return step.does == Does::CutShort || step.does == Does::CutLong || step.does == Does::CutLongPiece;
}

/// The pieces that must come out of the cloth, for the optimiser; the squared end is a strip of its own.
cutting::Job jobOf(const Buy &buy, const std::vector<Step> &steps, bool mayTurn)
{
    cutting::Job job;
    job.usable = buy.usable.count();
    job.step = buy.step.count();
    const auto want = [&](Length across, Length along, std::int64_t pieces, bool turn) {
        job.sizes.push_back({min(across, buy.usable).count(), along.count(), static_cast<int>(pieces), turn});
    };
    for (const Step &step : steps) {
        if (step.cloth != buy.cloth || step.station != Station::Cut || !step.size || step.count > 100'000)
            continue;
        if (step.does == Does::CutStrip || step.does == Does::CutBinding)
            want(buy.usable, step.size->across, step.count, false);
        else if (crossCut(step))
            want(step.size->along, step.size->across, step.count, false);
        else if (step.does == Does::CutPatch)
            want(step.size->along, step.size->across, step.count, mayTurn);
        else if (step.does == Does::CutBacking || step.does == Does::CutBias)
            job.sizes.push_back(
                {step.size->along.count(), step.size->across.count(), static_cast<int>(step.count), true});
    }
    if (buy.straighten > Length())
        want(buy.usable, buy.straighten, 1, false);
    return job;
}

/// Crosscuts laid into the bands of their width, longest first, as the Cut station takes them.
void layBands(std::vector<ShopStrip> &strips, const std::vector<Step> &steps, const Buy &buy)
{
    for (ShopStrip &strip : strips) {
        std::vector<std::pair<Length, std::int64_t>> lots;
        for (const Step &step : steps)
            if (step.cloth == buy.cloth && step.size && crossCut(step) && step.size->across == strip.height)
                lots.emplace_back(step.size->along, step.count);
        if (lots.empty())
            continue;
        std::sort(lots.begin(), lots.end(), [](const auto &a, const auto &b) { return a.first > b.first; });
        Length left = buy.usable; // the first band of the lot stands for all in the drawing
        strip.pieces.clear();
        for (auto &[length, count] : lots) {
            if (length <= Length() || left < length)
                continue;
            const std::int64_t fit = std::min(left.floorDiv(length), count);
            strip.pieces.emplace_back(length, fit);
            left -= length * fit;
        }
    }
}

std::vector<ShopStrip> stripsOf(const std::vector<Step> &steps, const Plan &plan, const Buy &buy)
{
    std::vector<ShopStrip> strips;
    for (const Step &step : steps) {
        if (step.cloth != buy.cloth || step.station != Station::Cut || !step.size || step.count == 0)
            continue;
        if (step.does == Does::CutPatch) {
            const std::int64_t across = std::max<std::int64_t>(buy.usable.floorDiv(step.size->along), 1);
            strips.push_back({step.size->across,
                              (step.count + across - 1) / across,
                              {{step.size->along, std::min(across, step.count)}}});
        } else if (acrossTheCloth(step)) {
            const Length high = takenBy(step, plan, 1, buy.usable);
            const auto same = std::find_if(strips.begin(), strips.end(), [&](const ShopStrip &strip) {
                return strip.height == high && step.does == Does::CutBand;
            });
            if (same != strips.end())
                same->repeats += step.count;
            else
                strips.push_back({high, step.count, {{buy.usable, 1}}});
        }
    }
    layBands(strips, steps, buy);
    return strips;
}

/// Area that lies in pieces against the area bought, per mille.
std::int64_t wasteOf(const cutting::Job &job, const Buy &buy)
{
    long double used = 0;
    for (const cutting::Size &size : job.sizes)
        used += static_cast<long double>(size.across) * static_cast<long double>(size.along) *
                static_cast<long double>(size.pieces);
    used -= static_cast<long double>(buy.usable.count()) * static_cast<long double>(buy.straighten.count());
    const long double all =
        static_cast<long double>(buy.usable.count()) * static_cast<long double>(buy.bought.count());
    if (all <= 0 || used < 0 || used > all)
        return 0;
    return static_cast<std::int64_t>((1 - used / all) * 1000 + 0.5L);
}

} // namespace

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
        buy.usable = usableOf(project, plan, first.cloth);
        const Cloth *cloth = clothNamed(project, first.cloth);
        buy.step = cloth ? cloth->soldStep : usualSoldStep(project.system);
        for (const Step &step : steps)
            if (step.cloth == buy.cloth && step.station == Station::Cut)
                buy.cut += takenBy(step, plan, step.count, buy.usable);
        if (buy.cut <= Length() || !buy.cut.valid())
            continue;
        buy.straighten = straightening(project.system, buy.cut);
        buy.bought = (buy.cut + buy.straighten).upTo(buy.step);
        buy.strips = stripsOf(steps, plan, buy);
        const cutting::Job job = jobOf(buy, steps, !(cloth && cloth->directional));
        buy.waste = wasteOf(job, buy);
        if (const auto answer = cutting::solve(job, {effort, 0}))
            buy.least = Length::ticks(answer.value().leastBought);
        if (cloth && cloth->price)
            buy.cents = costOf(*cloth->price, buy.bought, project.system);
        list.push_back(std::move(buy));
    }
    return list;
}

} // namespace matside
