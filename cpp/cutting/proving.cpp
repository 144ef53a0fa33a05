// SPDX-License-Identifier: MIT
// What Whole proves, in whole numbers.
#include "cutting/whole.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace matside::cutting {
namespace {
constexpr std::int64_t proofUnit = std::int64_t(1) << 34;
} // namespace

/// Whole prices of the rows; false if one would be too large to stay exact.
bool Whole::priceRows(const std::vector<double> &y)
{
    m_price.resize(m_rows);
    for (std::size_t r = 0; r < m_rows; ++r) {
        const double p = std::floor(y[r] * static_cast<double>(proofUnit));
        if (std::fabs(p) > 0x1p48)
            return false;
        const bool open = std::isinf(m_high[m_columns + r]);
        m_price[r] = static_cast<std::int64_t>(open ? std::max(p, 0.0) : p);
    }
    const auto sizes = static_cast<std::size_t>(m_cloth.sizes());
    m_levelPrice.assign(static_cast<std::size_t>(m_cloth.levels()), 0);
    for (std::size_t k = 0; k < m_levelPrice.size(); ++k)
        m_levelPrice[k] = m_price[sizes + k] + (k > 0 ? m_levelPrice[k - 1] : 0);
    return true;
}

/// What a strip costs beyond its worth.
Whole::Wide Whole::restOf(std::size_t v, bool ray) const
{
    std::int64_t rest = ray ? 0 : proofUnit * static_cast<std::int64_t>(m_cost[v]);
    for (std::size_t p = m_begin[v]; p < m_begin[v + 1]; ++p)
        rest -= m_price[static_cast<std::size_t>(m_partRow[p])] * static_cast<std::int64_t>(m_partCount[p]);
    if (m_strips[v].sheet == 0)
        rest -= m_levelPrice[static_cast<std::size_t>(m_strips[v].level)];
    Wide all = Wide(rest) * cutUnit;
    for (std::size_t c = 0; c < m_cuts.size(); ++c)
        if (m_price[m_plain + c] != 0)
            all -= Wide(m_price[m_plain + c]) * m_cuts[c].worth[v];
    return all;
}

/// What the prices prove: Σ cost·x ≥ Σ (cost − price·column)·x + Σ price·row, each term at its worst bound.
Whole::Wide Whole::sumOf(bool ray) const
{
    Wide sum = 0;
    for (std::size_t r = 0; r < m_rows; ++r) {
        const double bound = m_price[r] >= 0 ? m_low[m_columns + r] : m_high[m_columns + r];
        sum += Wide(m_price[r]) *
               (r >= m_plain ? m_cuts[r - m_plain].least : cutUnit * static_cast<std::int64_t>(bound));
    }
    for (std::size_t v = 0; v < m_columns; ++v) {
        const Wide rest = restOf(v, ray);
        if (rest < 0 || m_low[v] > 0)
            sum += rest * static_cast<std::int64_t>(rest >= 0 ? m_low[v] : m_high[v]);
    }
    return sum;
}

/// True if the prices prove that the node holds no plan of at most the length sought; as a ray: no plan at
/// all.
bool Whole::exceeds(const std::vector<double> &y, bool ray)
{
    if (!priceRows(y) || sumOf(ray) <= (ray ? Wide(0) : Wide(proofUnit) * cutUnit * m_longest))
        return false;
    keep(m_price, ray);
    return true;
}

/// Remembers the prices that close the node.
void Whole::keep(const std::vector<std::int64_t> &prices, bool ray)
{
    const auto sizes = static_cast<std::size_t>(m_cloth.sizes()),
               levels = static_cast<std::size_t>(m_cloth.levels());
    m_prices = {ray, proofUnit, {}, {}, {}, {}};
    const auto at = [&](std::size_t r) { return prices.begin() + static_cast<std::ptrdiff_t>(r); };
    m_prices.pieces.assign(at(0), at(sizes));
    m_prices.counts.assign(at(sizes), at(sizes + levels));
    for (std::size_t r = sizes + levels; r < m_plain; ++r)
        m_prices.owned.push_back(-prices[r]); // a row with an upper bound
    for (std::size_t c = 0; c < m_cuts.size(); ++c)
        if (prices[m_plain + c] != 0)
            m_prices.cuts.emplace_back(m_cuts[c].known, prices[m_plain + c]);
}

/// The length of this basis, which is a bound even while rows are off, exceeds what is sought.
bool Whole::tooLong()
{
    return lengthNow() > static_cast<double>(m_longest) + 1e-6 && exceeds(dual(), false);
}

/// Drops the strips that cost too much beyond the present prices for a plan short enough.
void Whole::compact()
{
    if (!priceRows(dual()))
        return;
    const Wide spare = Wide(proofUnit) * cutUnit * m_longest - sumOf(false);
    std::vector<std::size_t> kept;
    for (std::size_t v = 0; v < m_columns; ++v)
        if (m_basic[v] || restOf(v, false) <= spare)
            kept.push_back(v);
    if (kept.size() + m_columns / 8 >= m_columns)
        return;
    keep(m_price, false);
    m_limits.push_back(std::move(m_prices));
    std::vector<std::size_t> place(m_columns + m_rows, 0);
    for (std::size_t i = 0; i < kept.size(); ++i)
        place[kept[i]] = i;
    for (std::size_t r = 0; r < m_rows; ++r)
        place[m_columns + r] = kept.size() + r;
    for (std::size_t &b : m_basis)
        b = place[b];
    const auto thin = [&](auto &list) {
        for (std::size_t i = 0; i < kept.size(); ++i)
            if (kept[i] != i)
                list[i] = std::move(list[kept[i]]);
        const auto begin = list.begin() + static_cast<std::ptrdiff_t>(kept.size());
        list.erase(begin, list.begin() + static_cast<std::ptrdiff_t>(m_columns));
    };
    thin(m_strips);
    for (auto *list : {&m_cost, &m_low, &m_high, &m_reduced})
        thin(*list);
    thin(m_basic);
    thin(m_atHigh);
    for (auto &row : m_dense)
        if (!row.empty())
            thin(row);
    for (std::size_t c = 0; c < m_cuts.size(); ++c) {
        thin(m_cuts[c].worth);
        thin(m_cutWorth[c]);
    }
    m_columns = kept.size();
    layParts();
    resize();
}

Certificate Whole::proof() const
{
    Certificate proof;
    proof.byStrips = true;
    proof.nodes = m_nodes;
    proof.cuts = m_known;
    proof.limits = m_limits;
    std::map<int, int> places;
    for (Certificate::Node &node : proof.nodes) {
        if (node.strip < 0)
            continue;
        const auto [place, fresh] = places.emplace(node.strip, static_cast<int>(places.size()));
        if (fresh) {
            const Plan one = m_cloth.planOf({{m_strips[static_cast<std::size_t>(node.strip)], 1}});
            proof.strips.push_back(one.strips.front());
        }
        node.strip = place->second;
    }
    return proof;
}

} // namespace matside::cutting
