// SPDX-License-Identifier: MIT
// The exact search for the last strips: the tallest piece left must lie in some strip; try them all.
#include "cutting/search.h"

#include <algorithm>
#include <cmath>

namespace matside::cutting {
namespace {
constexpr std::size_t mostCandidates = 3000;

/// Lower bound L2 on bins (Martello & Toth 1990): pieces that exclude each other, the rest by area.
std::int64_t binsFor(const std::vector<std::pair<Ticks, std::int64_t>> &items, Ticks width)
{
    std::int64_t best = 0;
    for (std::size_t t = 0; t <= items.size(); ++t) {
        const Ticks small = t == items.size() ? 0 : std::min(items[t].first, width - items[t].first);
        std::int64_t alone = 0, large = 0, sum = 0;
        for (const auto &[w, n] : items) {
            if (w > width - small)
                alone += n;
            else if (2 * w > width) {
                large += n;
                sum += w * n;
            } else if (w >= small)
                sum += w * n;
        }
        best = std::max(best, alone + std::max(large, (sum + width - 1) / width));
    }
    return best;
}

/// What is left, as the key of a refutation.
std::string keyOf(const Rest &rest)
{
    std::string key;
    const auto put = [&](std::int64_t n) {
        for (; n >= 128; n >>= 7)
            key.push_back(static_cast<char>(n & 127));
        key.push_back(static_cast<char>(n | 128));
    };
    for (const int n : rest.need)
        put(n);
    for (const std::int64_t n : rest.left)
        put(n);
    for (const int n : rest.most)
        put(std::max(0, n));
    return key;
}

} // namespace

/// Σ (heights[k] − heights[k−1]) · strips needed for the pieces that cannot lie lower than heights[k].
std::int64_t Search::layered(const Rest &rest) const
{
    if (m_cloth.owned() > 0)
        return 0;
    std::vector<std::pair<Ticks, std::int64_t>> items;
    std::int64_t sum = 0, strips = 0;
    for (int k = m_cloth.levels() - 1; k >= 0; --k) {
        bool more = false;
        for (std::size_t i = 0; i < rest.need.size(); ++i) {
            if (rest.need[i] <= 0 || m_cloth.lie(m_cloth.liesOf[i].front()).level != k)
                continue;
            Ticks narrow = m_cloth.sheet(0).width;
            for (const int j : m_cloth.liesOf[i])
                narrow = std::min(narrow, m_cloth.lie(j).width);
            items.emplace_back(narrow, rest.need[i]);
            more = true;
        }
        if (more)
            strips = binsFor(items, m_cloth.sheet(0).width);
        sum += (m_cloth.high(k) - (k > 0 ? m_cloth.high(k - 1) : 0)) * strips;
    }
    return sum;
}

/// The exact search with a limit on the strips it begins.
Search::Found Search::tryTail(const Rest &rest, std::int64_t longest, int nodes)
{
    m_tries = nodes;
    m_missed = false;
    m_refuted.clear();
    return tryAll(rest, longest);
}

/// Strips that hold `lie`, filled so that nothing more fits, and cost at most `slack` more than the prices
/// say they are worth; the cheapest first.
std::vector<Search::Candidate> Search::candidates(const Rest &rest, double slack, int size, std::size_t most)
{
    std::vector<Candidate> found;
    std::vector<int> need = rest.need;
    std::vector<Row> rows;
    std::vector<int> places; // a stack: what is left after so many of a lie
    int sheet = 0, level = 0;
    double room = 0;
    std::size_t visits = 0;
    const auto lay = [&](auto &&self, int j, int place, Ticks left, double worth) -> void {
        if (found.size() >= most || ++visits >= 30 * most || worth + m_table.worth(j, place) < room - slack)
            return;
        if (j == 0) {
            const auto of = static_cast<std::size_t>(std::max(0, size));
            if (rows.empty() || (size >= 0 && need[of] == rest.need[of]) ||
                levelFrom(m_allowed, m_cloth.lie(rows.front().lie).level) != level)
                return;
            for (int z = m_cloth.lieEnd[static_cast<std::size_t>(level)] - 1; z >= 0; --z)
                if (m_cloth.lie(z).width <= left && need[static_cast<std::size_t>(m_cloth.lie(z).size)] > 0)
                    return;
            found.push_back({room - worth, {sheet, level, std::vector<Row>(rows.rbegin(), rows.rend())}});
            return;
        }
        const Lie &l = m_cloth.lie(j - 1);
        const auto of = static_cast<std::size_t>(l.size);
        const double price = m_master.prices()[of];
        const std::size_t base = places.size();
        for (int n = 0; place >= 0 && n * l.width <= left && n <= need[of]; ++n) {
            places.push_back(place);
            place = m_cloth.after(j - 1, place);
        }
        for (int n = static_cast<int>(places.size() - base) - 1; n >= 0; --n) {
            need[of] -= n;
            if (n > 0)
                rows.push_back({j - 1, n});
            const int next = places[base + static_cast<std::size_t>(n)];
            self(self, j - 1, next, left - n * l.width, worth + n * price);
            if (n > 0)
                rows.pop_back();
            need[of] += n;
        }
        places.resize(base);
    };
    for (sheet = 0; sheet < static_cast<int>(m_cloth.sheets.size()); ++sheet)
        for (level = 0; level < m_cloth.levels(); ++level) {
            const bool high =
                sheet > 0 && m_cloth.high(level) > rest.left[static_cast<std::size_t>(sheet) - 1];
            const bool many = sheet == 0 && rest.most[static_cast<std::size_t>(level)] <= 0;
            if (!m_allowed[static_cast<std::size_t>(level)] || high || many)
                continue;
            room = m_master.room(sheet, level);
            const int end = m_cloth.lieEnd[static_cast<std::size_t>(level)];
            lay(lay, end, m_cloth.sheet(sheet).place, m_cloth.sheet(sheet).width, 0.0);
        }
    m_work.spend(1 + static_cast<std::int64_t>(found.size() + visits / 4) / 8);
    if (visits >= 30 * most)
        found.resize(most, Candidate{}); // too many to look at: said by their number
    std::stable_sort(found.begin(), found.end(),
                     [](const auto &a, const auto &b) { return a.over < b.over; });
    return found;
}

/// How much more than its prices a strip may cost, in prices, if `budget` must do for all.
double Search::slackOf(std::int64_t budget) const
{
    std::int64_t strips = budget / m_cloth.heights.front() + 1;
    for (const Sheet &s : m_cloth.sheets)
        strips += s.high / m_cloth.heights.front();
    return static_cast<double>(budget) * static_cast<double>(priceUnit) -
           static_cast<double>(m_master.worthOfAll()) + m_master.violation() * static_cast<double>(strips) +
           1;
}

Search::Found Search::tryAll(const Rest &rest, std::int64_t longest)
{
    if (rest.done()) {
        offer(rest);
        return rest.spent <= longest ? Found::Yes : Found::No;
    }
    const std::int64_t budget = longest - rest.spent;
    const std::string key = keyOf(rest);
    const auto known = m_refuted.find(key);
    if (known != m_refuted.end() && known->second >= budget)
        return Found::No;
    if (budget <= 0 && m_cloth.owned() == 0)
        return Found::No;
    if (--m_tries < 0 || m_work.spent())
        return Found::Unknown;
    if (layered(rest) > budget) {
        m_refuted[key] = budget;
        return Found::No;
    }
    const auto outcome = relax(rest, longest);
    if (outcome == Master::Outcome::Stopped)
        return Found::Unknown;
    if (outcome != Master::Outcome::Solved) {
        m_refuted[key] = budget;
        return Found::No;
    }
    Rest straight = rest;
    bool whole = true;
    for (const Master::Use &u : m_master.uses()) {
        const double near = std::round(u.times);
        whole = whole && std::fabs(u.times - near) < 1e-6;
    }
    if (whole) {
        std::vector<Cutting> uses;
        for (const Master::Use &u : m_master.uses())
            uses.push_back({*u.strip, static_cast<int>(std::lround(u.times))});
        for (const Cutting &u : uses)
            cut(m_cloth, m_allowed, u.strip, u.times, straight);
        if (straight.done() && straight.spent <= longest) {
            offer(straight);
            return Found::Yes;
        }
    }
    int lie = -1;
    for (std::size_t i = 0; i < rest.need.size(); ++i) {
        if (rest.need[i] <= 0)
            continue;
        const int lowest = m_cloth.liesOf[i].front();
        const auto rank = [&](int j) { return std::pair(m_cloth.lie(j).level, m_cloth.lie(j).width); };
        if (lie < 0 || rank(lowest) > rank(lie))
            lie = lowest;
    }
    const double slack = slackOf(budget);
    const auto strips = candidates(rest, slack, m_cloth.lie(lie).size, mostCandidates);
    bool missed = strips.size() >= mostCandidates;
    const Master::State state = m_master.save();
    for (std::size_t i = 0; i < strips.size(); ++i) {
        if (i > 0)
            m_master.restore(state);
        Rest next = rest;
        if (cut(m_cloth, m_allowed, strips[i].strip, 1, next) != 1)
            continue;
        const Found found = tryAll(next, longest);
        if (found == Found::Yes)
            return found;
        missed = missed || found == Found::Unknown;
        if (m_tries < 0 || m_work.spent())
            return Found::Unknown;
    }
    if (missed)
        return Found::Unknown;
    m_refuted[key] = budget;
    return Found::No;
}

} // namespace matside::cutting
