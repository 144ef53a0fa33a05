// SPDX-License-Identifier: MIT
#include "shade/laying.h"

#include "shade/value.h"

#include <algorithm>
#include <array>
#include <limits>

namespace matside {

namespace {

/// How far two layers are apart, when that is to be judged.
std::optional<double> apartOf(const Layer &a, const Layer &b)
{
    if (a.cloth == b.cloth || !a.colour || !b.colour)
        return std::nullopt;
    return stepsApart(*a.colour, *b.colour);
}

using Apart = std::vector<std::vector<double>>;

/// Between the patches, ground left out; `stepsClear` where there is nothing to judge or no more is wanted.
Apart apartOfPatches(const std::vector<Layer> &layers)
{
    const std::size_t n = layers.size() - 1;
    Apart apart(n, std::vector<double>(n, stepsClear));
    for (std::size_t a = 0; a < n; ++a)
        for (std::size_t b = 0; b < n; ++b)
            apart[a][b] = std::min(apartOf(layers[a + 1], layers[b + 1]).value_or(stepsClear), stepsClear);
    return apart;
}

double leastInTurn(const Apart &apart)
{
    double least = stepsClear;
    for (std::size_t i = 1; i < apart.size(); ++i)
        least = std::min(least, apart[i - 1][i]);
    return least;
}

/// Orders of the patches grown one at a time. A state is the set laid so far and which lies on top.
class Growing {
public:
    Growing(const Apart &apart, double wanted)
        : m_apart(apart), m_wanted(wanted), m_count(apart.size()),
          m_ways((std::size_t{1} << m_count) * m_count)
    {
        for (std::size_t first = 0; first < m_count; ++first)
            at(std::size_t{1} << first, first).swaps = 0;
        for (std::size_t laid = 1; laid < (std::size_t{1} << m_count); ++laid)
            for (std::size_t top = 0; top < m_count; ++top)
                if (at(laid, top).swaps < never)
                    grow(laid, top);
    }
    /// The order with the fewest swaps, or nothing when none keeps all successive patches apart as wanted.
    [[nodiscard]] std::vector<std::size_t> fewestSwaps() const
    {
        std::size_t laid = (std::size_t{1} << m_count) - 1, top = 0;
        for (std::size_t other = 1; other < m_count; ++other)
            if (at(laid, other).swaps < at(laid, top).swaps)
                top = other;
        std::vector<std::size_t> order;
        if (at(laid, top).swaps == never)
            return order;
        while (order.size() < m_count) {
            order.push_back(top);
            const std::size_t below = at(laid, top).below;
            laid &= ~(std::size_t{1} << top);
            top = below;
        }
        std::reverse(order.begin(), order.end());
        return order;
    }

private:
    static constexpr int never = std::numeric_limits<int>::max();
    struct Way {
        int swaps = never;
        std::size_t below = 0;
    };

    [[nodiscard]] Way &at(std::size_t laid, std::size_t top) { return m_ways[laid * m_count + top]; }
    [[nodiscard]] const Way &at(std::size_t laid, std::size_t top) const
    {
        return m_ways[laid * m_count + top];
    }
    void grow(std::size_t laid, std::size_t top)
    {
        for (std::size_t next = 0; next < m_count; ++next) {
            if ((laid >> next & 1U) != 0 || m_apart[top][next] < m_wanted)
                continue;
            int swaps = at(laid, top).swaps; // those above it so far that lie below it now
            for (std::size_t later = next + 1; later < m_count; ++later)
                swaps += static_cast<int>(laid >> later & 1U);
            Way &way = at(laid | std::size_t{1} << next, next);
            if (swaps < way.swaps)
                way = {swaps, top};
        }
    }

    const Apart &m_apart;
    double m_wanted;
    std::size_t m_count;
    std::vector<Way> m_ways;
};

} // namespace

std::vector<Meeting> meetings(const std::vector<Layer> &layers)
{
    std::vector<Meeting> all;
    for (std::size_t over = 1; over < layers.size(); ++over) {
        if (const auto apart = apartOf(layers[0], layers[over]))
            all.push_back({over, 0, *apart});
        if (over > 1)
            if (const auto apart = apartOf(layers[over - 1], layers[over]))
                all.push_back({over, over - 1, *apart});
    }
    return all;
}

std::optional<Meeting> leastOf(const std::vector<Meeting> &meetings)
{
    const auto least = std::min_element(meetings.begin(), meetings.end(),
                                        [](const Meeting &a, const Meeting &b) { return a.apart < b.apart; });
    return least == meetings.end() ? std::nullopt : std::optional(*least);
}

std::optional<Order> betterOrder(const std::vector<Layer> &layers)
{
    if (layers.size() < 4 || layers.size() - 1 > patchesOrdered)
        return std::nullopt;
    const Apart apart = apartOfPatches(layers);
    const double before = leastInTurn(apart);
    std::vector<double> levels; // what the least can be, if better than now
    for (const std::vector<double> &row : apart)
        for (const double value : row)
            if (value > before)
                levels.push_back(value);
    std::sort(levels.begin(), levels.end());
    levels.erase(std::unique(levels.begin(), levels.end()), levels.end());
    std::vector<std::size_t> best;
    double reached = before;
    while (!levels.empty()) { // if a level can be had, so can all below it
        const std::size_t middle = levels.size() / 2;
        const double level = levels[middle];
        const auto cut = levels.begin() + static_cast<std::ptrdiff_t>(middle);
        if (std::vector<std::size_t> found = Growing(apart, level).fewestSwaps(); !found.empty()) {
            best = std::move(found);
            reached = level;
            levels.erase(levels.begin(), cut + 1);
        } else
            levels.erase(cut, levels.end());
    }
    if (best.empty())
        return std::nullopt;
    Order order{{0}, reached, before};
    for (const std::size_t patch : best)
        order.order.push_back(patch + 1);
    return order;
}

} // namespace matside
