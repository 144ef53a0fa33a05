// SPDX-License-Identifier: MIT
#include "bench/nest.h"

#include <algorithm>
#include <numeric>

namespace matside {

namespace {

/// Bands with the same room left and the same contents, counted together: thousands of kits stay a handful
/// of groups.
struct Open {
    Length room;
    FilledBand band;
};

Open with(const Open &group, std::size_t lot, std::int64_t pieces, Length length, std::int64_t bands)
{
    Open filled = group;
    filled.room -= length * pieces;
    filled.band.repeats = bands;
    filled.band.pieces[lot] += pieces;
    return filled;
}

/// Splits a group into bands filled as far as they hold, one filled with what is left over, and the others.
void fill(std::vector<Open> &open, const std::vector<Lot> &lots, std::size_t lot, Length usable)
{
    const Length length = lots[lot].length;
    std::int64_t count = lots[lot].count;
    std::vector<Open> next;
    for (const Open &group : open) {
        const std::int64_t each = std::max<std::int64_t>(group.room.floorDiv(length), 0);
        const std::int64_t full = each > 0 ? std::min(group.band.repeats, count / each) : 0;
        const std::int64_t rest =
            each > 0 && full < group.band.repeats ? std::min(each, count - full * each) : 0;
        if (full > 0)
            next.push_back(with(group, lot, each, length, full));
        if (rest > 0)
            next.push_back(with(group, lot, rest, length, 1));
        if (const std::int64_t others = group.band.repeats - full - (rest > 0 ? 1 : 0); others > 0)
            next.push_back(with(group, lot, 0, length, others));
        count -= full * each + rest;
    }
    const Open fresh{usable, {0, std::vector<std::int64_t>(lots.size(), 0)}};
    const std::int64_t each = std::max<std::int64_t>(usable.floorDiv(length), 1);
    if (const std::int64_t full = count / each; full > 0)
        next.push_back(with(fresh, lot, each, length, full));
    if (const std::int64_t rest = count % each; rest > 0)
        next.push_back(with(fresh, lot, rest, length, 1));
    open = std::move(next);
}

} // namespace

std::vector<FilledBand> fillBands(const std::vector<Lot> &lots, Length usable)
{
    std::vector<std::size_t> order(lots.size());
    std::iota(order.begin(), order.end(), std::size_t(0));
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return lots[a].length > lots[b].length; });
    std::vector<Open> open;
    for (const std::size_t lot : order)
        if (lots[lot].count > 0 && lots[lot].length > Length())
            fill(open, lots, lot, usable);
    std::vector<FilledBand> bands;
    bands.reserve(open.size());
    for (Open &group : open)
        bands.push_back(std::move(group.band));
    return bands;
}

std::int64_t bandsFor(const std::vector<Lot> &lots, Length usable)
{
    std::int64_t bands = 0;
    for (const FilledBand &band : fillBands(lots, usable))
        bands += band.repeats;
    return bands;
}

} // namespace matside
