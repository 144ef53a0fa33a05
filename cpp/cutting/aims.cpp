// SPDX-License-Identifier: MIT
#include "cutting/aims.h"

#include "cutting/solve.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace matside::cutting {

Handwork handworkOf(const Job &job, const Plan &plan)
{
    Handwork work;
    std::set<Ticks> heights;
    const auto sizes = sizesOf(job);
    for (const StripLayout &s : plan.strips) {
        heights.insert(s.height);
        ++work.layouts;
        Ticks filled = 0;
        std::int64_t cuts = 1; // frees the strip
        for (const Laid &p : s.pieces) {
            const Size &size = sizes[static_cast<std::size_t>(p.size)];
            const bool upright = p.turned == plan.lengthwise;
            const Ticks side = upright ? size.across : size.along, high = upright ? size.along : size.across;
            filled += side * p.count;
            cuts += p.count + (high < s.height ? p.count : 0);
        }
        const Ticks width = s.from >= 0 ? job.owned[static_cast<std::size_t>(s.from)].across : job.usable;
        work.cuts += (cuts - (filled == width && !plan.lengthwise ? 1 : 0)) * s.repeats;
    }
    work.heights = static_cast<int>(heights.size());
    return work;
}

namespace {

using Mask = std::vector<char>;

/// The heights a plan uses, those with the fewest strips first.
std::vector<std::size_t> usedBy(const std::vector<Cutting> &plan)
{
    std::map<std::size_t, int> strips;
    for (const Cutting &c : plan)
        strips[static_cast<std::size_t>(c.strip.level)] += c.times;
    std::vector<std::size_t> levels;
    levels.reserve(strips.size());
    for (const auto &[level, n] : strips)
        levels.push_back(level);
    std::stable_sort(levels.begin(), levels.end(), [&](auto a, auto b) { return strips[a] < strips[b]; });
    return levels;
}

/// Sets with one height fewer: one given up, or two given up for another.
std::vector<Mask> smaller(const std::vector<std::size_t> &used, std::size_t levels)
{
    Mask all(levels, 0);
    for (const std::size_t k : used)
        all[k] = 1;
    std::vector<Mask> sets;
    for (const std::size_t k : used) {
        sets.push_back(all);
        sets.back()[k] = 0;
    }
    for (std::size_t i = 0; i < used.size(); ++i)
        for (std::size_t j = i + 1; j < used.size(); ++j)
            for (std::size_t k = levels; k-- > 0;)
                if (!all[k]) {
                    sets.push_back(all);
                    sets.back()[used[i]] = sets.back()[used[j]] = 0;
                    sets.back()[k] = 1;
                }
    return sets;
}

} // namespace

std::vector<Cutting> fewerHeights(const Cloth &cloth, Search &search, const Job &job, Work &work,
                                  std::int64_t budget)
{
    const std::int64_t longest =
        (search.length() * cloth.unit + job.step - 1) / job.step * job.step / cloth.unit;
    std::vector<Cutting> best = search.best();
    Handwork least = handworkOf(job, cloth.planOf(best));
    const auto offer = [&](const std::vector<Cutting> &plan) {
        const Handwork found = handworkOf(job, cloth.planOf(plan));
        if (!(found < least))
            return false;
        least = found;
        best = plan;
        return true;
    };
    const auto levels = static_cast<std::size_t>(cloth.levels());
    work.extend(budget);
    for (bool fewer = true; fewer && !work.spent();) {
        fewer = false;
        for (const Mask &mask : smaller(usedBy(best), levels)) {
            fewer = !work.spent() && search.within(longest, mask) && offer(search.best());
            if (fewer || work.spent())
                break;
        }
    }
    Mask used(levels, 0);
    for (const std::size_t k : usedBy(best))
        used[k] = 1;
    for (const auto &plan : search.filled(longest, used))
        offer(plan);
    return best;
}

} // namespace matside::cutting
