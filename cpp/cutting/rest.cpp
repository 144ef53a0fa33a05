// SPDX-License-Identifier: MIT
#include "cutting/rest.h"

#include "cutting/master.h"

#include <algorithm>
#include <limits>
#include <numeric>

namespace matside::cutting {

bool Rest::done() const
{
    return std::all_of(need.begin(), need.end(), [](int n) { return n <= 0; });
}

std::int64_t Rest::pieces() const
{
    return std::accumulate(need.begin(), need.end(), std::int64_t(0));
}

Rest restOf(const Cloth &cloth)
{
    Rest rest;
    rest.need = cloth.need;
    for (int o = 1; o <= cloth.owned(); ++o)
        rest.left.push_back(cloth.sheet(o).high);
    rest.most.assign(static_cast<std::size_t>(cloth.levels()), anyCount);
    return rest;
}

int levelFrom(const std::vector<char> &allowed, int level)
{
    for (auto k = static_cast<std::size_t>(level); k < allowed.size(); ++k)
        if (allowed[k])
            return static_cast<int>(k);
    return -1;
}

namespace {

/// What of `strip` is still needed, lowered to its tallest piece.
Strip neededOf(const Cloth &cloth, const std::vector<char> &allowed, const Strip &strip,
               std::vector<int> need)
{
    Strip out{strip.sheet, -1, {}};
    for (const Row &r : strip.rows) {
        int &left = need[static_cast<std::size_t>(cloth.lie(r.lie).size)];
        const int n = std::min(r.count, left);
        if (n <= 0)
            continue;
        left -= n;
        out.rows.push_back({r.lie, n});
        out.level = std::max(out.level, cloth.lie(r.lie).level);
    }
    if (out.level >= 0)
        out.level = levelFrom(allowed, out.level);
    return out;
}

/// How often the strip can be cut with all its pieces needed, and with what is left to cut it from.
int timesOf(const Cloth &cloth, const Strip &s, int times, const Rest &rest)
{
    for (std::size_t i = 0; i < s.rows.size(); ++i) {
        const int size = cloth.lie(s.rows[i].lie).size;
        int of = 0;
        for (const Row &r : s.rows)
            of += cloth.lie(r.lie).size == size ? r.count : 0;
        times = std::min(times, rest.need[static_cast<std::size_t>(size)] / of);
    }
    if (s.sheet > 0)
        return static_cast<int>(std::min<std::int64_t>(
            times, rest.left[static_cast<std::size_t>(s.sheet) - 1] / cloth.high(s.level)));
    for (int k = 0; k <= s.level; ++k)
        times = std::min(times, rest.most[static_cast<std::size_t>(k)]);
    return times;
}

} // namespace

int cut(const Cloth &cloth, const std::vector<char> &allowed, const Strip &strip, int times, Rest &rest)
{
    int done = 0;
    while (done < times) {
        Strip s = neededOf(cloth, allowed, strip, rest.need);
        if (s.level < 0)
            break;
        const int n = timesOf(cloth, s, times - done, rest);
        if (n <= 0)
            break;
        for (const Row &r : s.rows)
            rest.need[static_cast<std::size_t>(cloth.lie(r.lie).size)] -= r.count * n;
        if (s.sheet > 0) {
            rest.left[static_cast<std::size_t>(s.sheet) - 1] -= cloth.high(s.level) * n;
        } else {
            rest.spent += cloth.high(s.level) * n;
            for (int k = 0; k <= s.level; ++k)
                if (rest.most[static_cast<std::size_t>(k)] < anyCount)
                    rest.most[static_cast<std::size_t>(k)] -= n;
        }
        done += n;
        rest.laid.push_back({std::move(s), n});
    }
    return done;
}

namespace {

/// The tallest piece left (as low as it may lie), the widest among equals; −1 if none can be cut.
int tallestLeft(const Cloth &cloth, const std::vector<char> &allowed, const Rest &rest)
{
    int found = -1;
    for (std::size_t i = 0; i < rest.need.size(); ++i) {
        if (rest.need[i] <= 0)
            continue;
        int lowest = -1;
        for (const int j : cloth.liesOf[i])
            if (lowest < 0 && cloth.fits(j, 0) && levelFrom(allowed, cloth.lie(j).level) >= 0)
                lowest = j;
        if (lowest < 0)
            return -1;
        const auto rank = [&](int j) { return std::pair(cloth.lie(j).level, cloth.lie(j).width); };
        if (found < 0 || rank(lowest) > rank(found))
            found = lowest;
    }
    return found;
}

std::vector<double> worths(const Cloth &cloth, const std::vector<int> &need, Filling filling, int level)
{
    std::vector<double> worth(need.size(), 0.0);
    for (std::size_t i = 0; i < need.size(); ++i) {
        if (need[i] <= 0)
            continue;
        Ticks narrow = std::numeric_limits<Ticks>::max();
        std::int64_t high = 0;
        for (const int j : cloth.liesOf[i]) {
            narrow = std::min(narrow, cloth.lie(j).width);
            high = std::max(high, cloth.lie(j).high);
        }
        const auto w = static_cast<double>(narrow);
        const auto share = static_cast<double>(std::min<std::int64_t>(1000, 1000 * high / cloth.high(level)));
        worth[i] = filling == Filling::Widest ? w * 1000
                   : filling == Filling::Largest
                       ? w * (1 + share)
                       : w * (1000 + static_cast<double>(static_cast<int>(share / 5)));
    }
    return worth;
}

/// A strip with `lie` in it, the rest filled with what is worth most.
Strip begunWith(const Cloth &cloth, Table &table, const Rest &rest, Filling filling, int lie, int level)
{
    Strip s{0, level, {}};
    const Lie &l = cloth.lie(lie);
    const int end = cloth.lieEnd[static_cast<std::size_t>(level)];
    Ticks left = cloth.sheet(0).width;
    if (filling == Filling::TallestFirst) {
        auto need = rest.need;
        const auto lay = [&](int j) {
            int &n = need[static_cast<std::size_t>(cloth.lie(j).size)];
            const int here = static_cast<int>(std::min<Ticks>(n, left / cloth.lie(j).width));
            if (here > 0)
                s.rows.push_back({j, here});
            n -= here;
            left -= here * cloth.lie(j).width;
        };
        lay(lie);
        for (int j = end - 1; j >= 0; --j)
            if (j != lie)
                lay(j);
        std::sort(s.rows.begin(), s.rows.end(), [](const Row &a, const Row &b) { return a.lie < b.lie; });
        return s;
    }
    auto need = rest.need;
    --need[static_cast<std::size_t>(l.size)];
    table.fill(worths(cloth, need, filling, level), need);
    table.trace(end, cloth.after(lie, cloth.sheet(0).place), s.rows);
    const auto here =
        std::lower_bound(s.rows.begin(), s.rows.end(), lie, [](const Row &r, int j) { return r.lie < j; });
    if (here != s.rows.end() && here->lie == lie)
        ++here->count;
    else
        s.rows.insert(here, {lie, 1});
    return s;
}

/// Owned pieces are used up by the strips that hold the most cloth for their height.
void useOwned(const Cloth &cloth, Table &table, const std::vector<char> &allowed, Rest &rest)
{
    for (int o = 1; o <= cloth.owned(); ++o) {
        for (bool more = true; more && !rest.done();) {
            more = false;
            std::vector<double> area(rest.need.size(), 0.0);
            for (const Lie &l : cloth.lies)
                area[static_cast<std::size_t>(l.size)] =
                    static_cast<double>(l.width) * static_cast<double>(l.high);
            table.fill(area, rest.need);
            int best = -1;
            double most = 0;
            for (int k = 0; k < cloth.levels(); ++k) {
                const double share = table.best(o, k) / static_cast<double>(cloth.high(k));
                if (allowed[static_cast<std::size_t>(k)] && share > most &&
                    cloth.high(k) <= rest.left[static_cast<std::size_t>(o) - 1]) {
                    most = share;
                    best = k;
                }
            }
            if (best < 0)
                continue;
            Strip s{o, best, {}};
            table.trace(cloth.lieEnd[static_cast<std::size_t>(best)], cloth.sheet(o).place, s.rows);
            more = cut(cloth, allowed, s, 1, rest) > 0;
        }
    }
}

} // namespace

bool fillGreedily(const Cloth &cloth, Table &table, const std::vector<char> &allowed, Filling filling,
                  std::int64_t enough, Rest &rest)
{
    useOwned(cloth, table, allowed, rest);
    while (!rest.done()) {
        const int lie = tallestLeft(cloth, allowed, rest);
        if (lie < 0 || rest.spent >= enough)
            return false;
        const int level = levelFrom(allowed, cloth.lie(lie).level);
        const Strip s = begunWith(cloth, table, rest, filling, lie, level);
        // As often as it stays whole: then the next strip is filled anew.
        const Strip whole = neededOf(cloth, allowed, s, rest.need);
        if (cut(cloth, allowed, whole, std::max(1, timesOf(cloth, whole, anyCount, rest)), rest) == 0)
            return false;
    }
    return rest.spent <= enough;
}

} // namespace matside::cutting
