// SPDX-License-Identifier: MIT
#include "bench/nest.h"

#include <algorithm>

namespace matside {

namespace {

/// Bands with the same room left, counted together: thousands of kits stay a handful of groups.
struct Open {
    Length room;
    std::int64_t bands = 0;
};

void fill(std::vector<Open> &open, Lot lot, Length usable)
{
    for (std::size_t i = 0; i < open.size() && lot.count > 0; ++i) {
        const std::int64_t each = open[i].room.floorDiv(lot.length);
        if (each == 0)
            continue;
        const std::int64_t full = std::min(open[i].bands, lot.count / each);
        const std::int64_t rest = full < open[i].bands ? lot.count - full * each : 0;
        lot.count -= full * each + rest;
        const Open group = open[i];
        open[i].bands -= full + (rest > 0 ? 1 : 0);
        if (rest > 0)
            open.insert(open.begin() + static_cast<std::ptrdiff_t>(i), {group.room - lot.length * rest, 1}),
                ++i;
        if (full > 0)
            open.insert(open.begin() + static_cast<std::ptrdiff_t>(i),
                        {group.room - lot.length * each, full}),
                ++i;
    }
    if (lot.count <= 0)
        return;
    const std::int64_t each = std::max<std::int64_t>(usable.floorDiv(lot.length), 1);
    const std::int64_t full = lot.count / each;
    const std::int64_t rest = lot.count % each;
    if (full > 0)
        open.push_back({usable - lot.length * each, full});
    if (rest > 0)
        open.push_back({usable - lot.length * rest, 1});
}

} // namespace

std::int64_t bandsFor(std::vector<Lot> lots, Length usable)
{
    std::erase_if(lots, [](const Lot &lot) { return lot.count <= 0 || lot.length <= Length(); });
    std::sort(lots.begin(), lots.end(), [](const Lot &a, const Lot &b) { return a.length > b.length; });
    std::vector<Open> open;
    for (const Lot &lot : lots)
        fill(open, lot, usable);
    std::int64_t bands = 0;
    for (const Open &group : open)
        bands += group.bands;
    return bands;
}

} // namespace matside
