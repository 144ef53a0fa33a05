// SPDX-License-Identifier: MIT
// Rounding cuts of Whole: what whole numbers of strips must meet beyond what fractions must.
#include "cutting/whole.h"

#include <algorithm>
#include <cmath>

namespace matside::cutting {
namespace {
constexpr std::int64_t largest = std::int64_t(1) << 34;
constexpr int mostFactor = 3;
constexpr std::size_t cutsARound = 10, mostCuts = 28;

} // namespace

/// Strips now cut, by strip.
std::vector<double> Whole::values() const
{
    std::vector<double> x(m_columns);
    for (std::size_t v = 0; v < m_columns; ++v)
        x[v] = m_basic[v] ? 0.0 : m_atHigh[v] ? m_high[v] : m_low[v];
    for (std::size_t r = 0; r < m_rows; ++r)
        if (m_basis[r] < m_columns)
            x[m_basis[r]] = m_x[r];
    return x;
}

double Whole::lengthNow() const
{
    const auto x = values();
    double length = 0;
    for (std::size_t v = 0; v < m_columns; ++v)
        length += m_cost[v] * x[v];
    return length;
}

/// What a strip is worth in the cut: F of its sum, and its share in the slacks of cuts taken negatively.
/// Rounded up where it must be rounded.
std::int64_t Whole::worthIn(const Seed &seed, std::size_t v) const
{
    std::int64_t z = 0, own = 0;
    for (std::size_t p = m_begin[v]; p < m_begin[v + 1]; ++p)
        z += seed.multipliers[static_cast<std::size_t>(m_partRow[p])] *
             static_cast<std::int64_t>(m_partCount[p]);
    z *= cutUnit;
    for (std::size_t c = 0; c < m_cuts.size(); ++c) {
        const std::int64_t m = seed.multipliers[m_plain + c];
        if (m == 0)
            continue;
        z += m * m_cuts[c].worth[v];
        if (seed.weights[c] > 0)
            own += (seed.weights[c] * m_cuts[c].worth[v] >> cutBits) + 1;
    }
    const std::int64_t frac = z & (cutUnit * cutUnit - 1);
    const std::int64_t rest = frac == 0 ? 0 : std::min(cutUnit, frac / (seed.part >> cutBits) + 1);
    return (z >> (2 * cutBits)) * cutUnit + rest + own;
}

/// The multipliers of one row of the inverse, taken `factor` times. Rows of sizes have whole numbers only,
/// so that their multipliers matter only beyond the whole; a cut taken negatively leaves its own slack,
/// which is not whole, with a weight of its own. False if nothing comes of it.
bool Whole::sow(std::size_t row, double factor, Seed &seed) const
{
    const auto sizes = static_cast<std::size_t>(m_cloth.sizes());
    const double *inverse = &m_inverse[row * m_rows];
    seed.multipliers.assign(m_rows, 0);
    seed.weights.assign(m_cuts.size(), 0);
    std::int64_t need = 0;
    for (std::size_t r = 0; r < m_rows; ++r) {
        const double m = factor * inverse[r];
        if (r >= sizes && r < m_plain)
            continue;
        seed.multipliers[r] = static_cast<std::int64_t>((r < sizes ? m - std::floor(m) : m) * cutUnit);
        if (std::abs(seed.multipliers[r]) > 4 * cutUnit)
            return false; // keeps every sum below 2^62, as does `largest`
        need += seed.multipliers[r] * (r < sizes ? cutUnit * m_cloth.need[r] : m_cuts[r - m_plain].least);
    }
    seed.part = need & (cutUnit * cutUnit - 1);
    if (seed.part < cutUnit * cutUnit / 64)
        return false;
    seed.least = ((need >> (2 * cutBits)) + 1) * cutUnit;
    for (std::size_t c = 0; c < m_cuts.size(); ++c) {
        if (seed.multipliers[m_plain + c] < 0)
            seed.weights[c] = -seed.multipliers[m_plain + c] * cutUnit / (seed.part >> cutBits) + 1;
        if (seed.weights[c] > 4 * cutUnit)
            return false;
        seed.least += seed.weights[c] * m_cuts[c].least >> cutBits;
    }
    return true;
}

/// How far the present fractions break the cut, by its own steepness.
double Whole::broken(const Seed &seed, const std::vector<double> &x) const
{
    double met = 0, norm = 0;
    for (std::size_t v = 0; v < m_columns; ++v) {
        if (x[v] <= 1e-9)
            continue;
        const double worth = static_cast<double>(worthIn(seed, v)) / cutUnit;
        met += worth * x[v];
        norm += worth * worth;
    }
    return (static_cast<double>(seed.least) / cutUnit - met) / (1 + std::sqrt(norm));
}

bool Whole::grow(const Seed &seed)
{
    Rounding cut;
    cut.least = seed.least;
    std::vector<double> worth;
    std::int64_t most = std::abs(cut.least);
    for (std::size_t v = 0; v < m_columns; ++v) {
        cut.worth.push_back(worthIn(seed, v));
        worth.push_back(static_cast<double>(cut.worth.back()) / cutUnit);
        most = std::max(most, std::abs(cut.worth.back()));
    }
    if (most > largest ||
        std::any_of(m_cuts.begin(), m_cuts.end(), [&](auto &c) { return c.worth == cut.worth; }))
        return false;
    RoundingCut known;
    const auto sizes = static_cast<std::ptrdiff_t>(m_cloth.sizes());
    known.sizes.assign(seed.multipliers.begin(), seed.multipliers.begin() + sizes);
    for (std::size_t c = 0; c < m_cuts.size(); ++c)
        if (seed.multipliers[m_plain + c] != 0)
            known.cuts.emplace_back(m_cuts[c].known, seed.multipliers[m_plain + c]);
    cut.known = static_cast<int>(m_known.size());
    m_known.push_back(std::move(known));
    m_grown.emplace_back(std::move(cut), std::move(worth));
    return true;
}

/// Adds the cuts the present fractions break most; false if they break none.
bool Whole::addCuts()
{
    const auto x = values();
    std::vector<Seed> seeds;
    std::vector<std::pair<double, std::size_t>> order;
    for (std::size_t r = 0; r < m_rows; ++r) {
        const double part = m_x[r] - std::floor(m_x[r]);
        if (m_basis[r] >= m_columns + m_plain || part < 1e-4 || part > 1 - 1e-4)
            continue;
        for (int n = -mostFactor; n <= mostFactor; ++n) {
            Seed seed;
            if (n == 0 || !sow(r, n, seed))
                continue;
            const double by = broken(seed, x);
            if (by < 1e-3)
                continue;
            order.emplace_back(-by, seeds.size());
            seeds.push_back(std::move(seed));
        }
    }
    m_work.spend(static_cast<std::int64_t>(m_rows + m_columns / 16));
    std::sort(order.begin(), order.end());
    m_grown.clear();
    for (const auto &[rank, which] : order)
        if (m_grown.size() < cutsARound && m_cuts.size() + m_grown.size() < mostCuts)
            grow(seeds[which]);
    m_work.spend(static_cast<std::int64_t>(m_grown.size() * m_columns * (4 + m_cuts.size()) / 400));
    for (auto &[cut, worth] : m_grown) {
        m_low.push_back(static_cast<double>(cut.least) / cutUnit);
        m_high.push_back(std::numeric_limits<double>::infinity());
        m_cost.push_back(0);
        m_basis.push_back(m_columns + m_rows);
        m_basic.push_back(1);
        m_atHigh.push_back(0);
        m_cuts.push_back(std::move(cut));
        m_cutWorth.push_back(std::move(worth));
        ++m_rows;
    }
    return !m_grown.empty();
}

/// Lets go of cuts that do not bind.
void Whole::dropCuts()
{
    for (std::size_t c = m_cuts.size(); c-- > 0;) {
        const std::size_t slack = m_columns + m_plain + c;
        if (!m_basic[slack])
            continue;
        const auto at = [](auto &list, std::size_t i) {
            list.erase(list.begin() + static_cast<std::ptrdiff_t>(i));
        };
        at(m_basis,
           static_cast<std::size_t>(std::find(m_basis.begin(), m_basis.end(), slack) - m_basis.begin()));
        for (std::size_t &b : m_basis)
            b -= b > slack;
        at(m_low, slack);
        at(m_high, slack);
        at(m_cost, slack);
        at(m_basic, slack);
        at(m_atHigh, slack);
        at(m_cuts, c);
        at(m_cutWorth, c);
        --m_rows;
    }
}

/// At most so many rounds of cuts before any branching.
Whole::Node Whole::tighten(int rounds)
{
    double before = 0;
    for (int n = 0, idle = 0; n < rounds && idle < 4; ++n) {
        if (solve() == Node::Closed)
            return Node::Closed;
        const double length = lengthNow();
        idle = length > before + 1e-6 * length ? 0 : idle + 1;
        before = length;
        dropCuts();
        resize();
        compact();
        if (!addCuts())
            return Node::Open;
        resize();
    }
    const Node last = solve();
    if (last == Node::Open)
        compact();
    return last;
}

/// After rows came or went.
void Whole::resize()
{
    m_x.assign(m_rows, 0.0);
    m_way.assign(m_rows, 0.0);
    m_alpha.assign(m_columns + m_rows, 0.0);
    factor();
    place();
    reduce();
}

} // namespace matside::cutting
