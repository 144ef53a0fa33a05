// SPDX-License-Identifier: MIT
#include "cutting/aims.h"

#include "cutting/solve.h"

#include <algorithm>
#include <map>
#include <set>

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

std::vector<Cutting> fewerHeights(const Cloth &cloth, Search &search, const Job &job, Work &work,
                                  std::int64_t budget)
{
    const std::int64_t longest =
        (search.length() * cloth.unit + job.step - 1) / job.step * job.step / cloth.unit;
    std::vector<Cutting> best = search.best();
    Handwork least = handworkOf(job, cloth.planOf(best));
    std::vector<char> allowed(static_cast<std::size_t>(cloth.levels()), 0);
    const auto usedOf = [&](const std::vector<Cutting> &plan) {
        std::map<int, int> used;
        for (const Cutting &c : plan)
            used[c.strip.level] += c.times;
        return used;
    };
    work.extend(budget);
    for (bool fewer = true; fewer && !work.spent();) {
        fewer = false;
        const auto used = usedOf(best);
        // The height with the fewest strips is given up first; the tallest cannot be.
        std::vector<std::pair<int, int>> order;
        for (const auto &[level, strips] : used)
            order.emplace_back(strips, level);
        std::sort(order.begin(), order.end());
        for (const auto &[strips, level] : order) {
            std::fill(allowed.begin(), allowed.end(), char(0));
            for (const auto &[other, n] : used)
                allowed[static_cast<std::size_t>(other)] = other != level;
            if (!search.within(longest, allowed))
                continue;
            const Handwork found = handworkOf(job, cloth.planOf(search.best()));
            if (found < least) {
                least = found;
                best = search.best();
                fewer = true;
                break;
            }
        }
    }
    return best;
}

} // namespace matside::cutting
