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

/// Strips that hold a piece of `size` (−1: any), filled so that nothing more fits, and cost at most `slack`
/// more than the prices say they are worth; the cheapest first. `most` of them: there are too many.
std::vector<Candidate> Search::candidates(const Rest &rest, double slack, int size, std::size_t most)
{
    Finder finder(m_cloth, m_table, m_master.prices(), m_allowed, rest.need, size, most);
    for (int sheet = 0; sheet < static_cast<int>(m_cloth.sheets.size()); ++sheet)
        for (int level = 0; level < m_cloth.levels(); ++level) {
            const bool high =
                sheet > 0 && m_cloth.high(level) > rest.left[static_cast<std::size_t>(sheet) - 1];
            const bool many = sheet == 0 && rest.most[static_cast<std::size_t>(level)] <= 0;
            if (m_allowed[static_cast<std::size_t>(level)] && !high && !many)
                finder.find(sheet, level, m_master.room(sheet, level), slack);
        }
    m_work.spend(1 + finder.work());
    auto found = finder.take();
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

/// The relaxation is whole as it stands: takes it. False if it is not, or does not do.
bool Search::takeWhole(Rest rest, std::int64_t longest)
{
    std::vector<Cutting> uses;
    for (const Master::Use &u : m_master.uses()) {
        if (std::fabs(u.times - std::round(u.times)) > 1e-6)
            return false;
        uses.push_back({*u.strip, static_cast<int>(std::lround(u.times))});
    }
    for (const Cutting &u : uses)
        cut(m_cloth, m_allowed, u.strip, u.times, rest);
    if (!rest.done() || rest.spent > longest)
        return false;
    offer(rest);
    return true;
}

/// The size whose lowest lie is the tallest, the widest among equals.
int Search::tallestSize(const Rest &rest) const
{
    int lie = -1;
    const auto rank = [&](int j) { return std::pair(m_cloth.lie(j).level, m_cloth.lie(j).width); };
    for (std::size_t i = 0; i < rest.need.size(); ++i)
        if (rest.need[i] > 0 && (lie < 0 || rank(m_cloth.liesOf[i].front()) > rank(lie)))
            lie = m_cloth.liesOf[i].front();
    return m_cloth.lie(lie).size;
}

/// No, or Unknown, if bounds alone say so; Yes stands for "look on", the relaxation is then solved.
Search::Found Search::mayFit(const Rest &rest, std::int64_t longest, const std::string &key)
{
    const std::int64_t budget = longest - rest.spent;
    const auto known = m_refuted.find(key);
    if ((known != m_refuted.end() && known->second >= budget) || (budget <= 0 && m_cloth.owned() == 0))
        return Found::No;
    if (--m_tries < 0 || m_work.spent())
        return Found::Unknown;
    if (layered(rest) > budget)
        return Found::No;
    switch (relax(rest, longest)) {
    case Master::Outcome::Solved:
        return Found::Yes;
    case Master::Outcome::Stopped:
        return Found::Unknown;
    default:
        return Found::No;
    }
}

Search::Found Search::tryAll(const Rest &rest, std::int64_t longest)
{
    if (rest.done()) {
        offer(rest);
        return rest.spent <= longest ? Found::Yes : Found::No;
    }
    const std::int64_t budget = longest - rest.spent;
    const std::string key = keyOf(rest);
    const Found may = mayFit(rest, longest, key);
    if (may == Found::No)
        m_refuted[key] = std::max(budget, m_refuted[key]);
    if (may != Found::Yes)
        return may;
    if (takeWhole(rest, longest))
        return Found::Yes;
    const auto strips = candidates(rest, slackOf(budget), tallestSize(rest), mostCandidates);
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
