// SPDX-License-Identifier: MIT
#include "cutting/whole.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace matside::cutting {
namespace {
constexpr double endless = std::numeric_limits<double>::infinity();
} // namespace

Whole::Whole(const Cloth &cloth, std::vector<Strip> strips, Prices limit, Work &work)
    : m_cloth(cloth), m_work(work), m_strips(std::move(strips)),
      m_rows(static_cast<std::size_t>(cloth.sizes() + cloth.levels() + cloth.owned())),
      m_columns(m_strips.size()), m_plain(m_rows)
{
    const auto sizes = static_cast<std::size_t>(cloth.sizes()),
               levels = static_cast<std::size_t>(cloth.levels());
    m_limits.push_back(std::move(limit));
    layParts();
    for (std::size_t v = 0; v < m_columns; ++v) {
        const Strip &s = m_strips[v];
        double most = 0;
        for (const Row &r : s.rows) {
            const double need = cloth.need[static_cast<std::size_t>(cloth.lie(r.lie).size)];
            most = std::max(most, std::ceil(need / r.count));
        }
        m_cost.push_back(s.sheet == 0 ? static_cast<double>(cloth.high(s.level)) : 0.0);
        m_low.push_back(0);
        m_high.push_back(most);
    }
    m_dense.resize(m_rows);
    for (std::size_t v = 0; v < m_columns; ++v)
        for (std::size_t p = m_begin[v]; p < m_begin[v + 1]; ++p) {
            auto &row = m_dense[static_cast<std::size_t>(m_partRow[p])];
            row.resize(m_columns);
            row[v] += m_partCount[p];
        }
    for (std::size_t r = 0; r < m_rows; ++r) {
        m_cost.push_back(0);
        m_low.push_back(r < sizes ? cloth.need[r] : 0);
        m_high.push_back(r < sizes + levels ? endless
                                            : static_cast<double>(cloth.sheets[r - sizes - levels + 1].high));
    }
    start();
}

/// The entries of every strip in its rows.
void Whole::layParts()
{
    const int owned = m_cloth.sizes() + m_cloth.levels();
    m_begin.clear();
    m_partRow.clear();
    m_partCount.clear();
    for (const Strip &s : m_strips) {
        m_begin.push_back(m_partRow.size());
        for (const Row &r : s.rows) {
            m_partRow.push_back(m_cloth.lie(r.lie).size);
            m_partCount.push_back(r.count);
        }
        if (s.sheet > 0) {
            m_partRow.push_back(owned + s.sheet - 1);
            m_partCount.push_back(static_cast<double>(m_cloth.high(s.level)));
        }
    }
    m_begin.push_back(m_partRow.size());
}

/// Every row in the basis by its slack: nothing is cut, and no strip is cheaper than nothing.
void Whole::start()
{
    m_basis.resize(m_rows);
    m_basic.assign(m_columns + m_rows, 0);
    m_atHigh.assign(m_columns + m_rows, 0);
    for (std::size_t r = 0; r < m_rows; ++r) {
        m_basis[r] = m_columns + r;
        m_basic[m_columns + r] = 1;
    }
    m_x.assign(m_rows, 0.0);
    m_way.assign(m_rows, 0.0);
    m_alpha.assign(m_columns + m_rows, 0.0);
    factor();
    reduce();
}

/// Goes on from the last basis until optimal, or until the node is proved to hold nothing.
Whole::Node Whole::solve()
{
    place();
    for (int pivots = 0;; ++pivots) {
        m_work.spend(1 +
                     static_cast<std::int64_t>((m_columns * (8 + m_cuts.size()) + m_rows * m_rows) / 3000));
        const std::size_t row = leaving();
        if (row == none) {
            return tooLong() ? Node::Closed : Node::Open;
        }
        if (pivots > 2000) {
            m_unsure = true;
            return Node::Closed;
        }
        const bool rising = m_x[row] < m_low[m_basis[row]];
        const std::size_t v = entering(row, rising);
        if (v == none) {
            std::vector<double> ray(m_rows);
            for (std::size_t k = 0; k < m_rows; ++k)
                ray[k] = (rising ? -1 : 1) * m_inverse[row * m_rows + k];
            m_unsure = m_unsure || !exceeds(ray, true);
            return Node::Closed;
        }
        swap(row, v, rising);
        if (pivots % 4 == 3 && tooLong())
            return Node::Closed;
    }
}

/// The count of the tallest strips that is not whole, else the strip nearest to one more; `none` if all are
/// whole.
std::size_t Whole::fractional(double &value) const
{
    const auto firstLevel = m_columns + static_cast<std::size_t>(m_cloth.sizes());
    const auto endLevel = firstLevel + static_cast<std::size_t>(m_cloth.levels());
    std::size_t level = none, strip = none;
    double best = 0, levelValue = 0;
    for (std::size_t r = 0; r < m_rows; ++r) {
        const std::size_t v = m_basis[r];
        const double part = m_x[r] - std::floor(m_x[r]);
        if (part < 1e-6 || part > 1 - 1e-6)
            continue;
        if (v >= firstLevel && v < endLevel && (level == none || v > level)) {
            level = v;
            levelValue = m_x[r];
        } else if (v < m_columns && part > best) {
            best = part;
            strip = v;
            value = m_x[r];
        }
    }
    value = level != none ? levelValue : value;
    return level != none ? level : strip;
}

bool Whole::side(int node, std::size_t v, double low, double high)
{
    if (low > high)
        return false; // no prices needed
    const double lowWas = m_low[v], highWas = m_high[v];
    m_low[v] = low;
    m_high[v] = high;
    const bool found = explore(node);
    m_low[v] = lowWas;
    m_high[v] = highWas;
    // While it was fixed its reduced cost was free: it goes where that is right.
    if (!m_basic[v])
        m_atHigh[v] = m_reduced[v] < 0 ? 1 : 0;
    return found;
}

/// Two children; the index of the first.
int Whole::split(int node, std::size_t v, int value)
{
    const int first = static_cast<int>(m_nodes.size());
    m_nodes.resize(m_nodes.size() + 2);
    Certificate::Node &parent = m_nodes[static_cast<std::size_t>(node)];
    (v < m_columns ? parent.strip : parent.level) =
        static_cast<int>(v < m_columns ? v : v - m_columns) - (v < m_columns ? 0 : m_cloth.sizes());
    parent.value = value;
    parent.fewer = first;
    parent.more = first + 1;
    return first;
}

bool Whole::explore(int node)
{
    if (m_work.spent() || m_work.done() >= m_end) {
        m_unsure = true;
        return false;
    }
    if (solve() == Node::Closed) {
        m_nodes[static_cast<std::size_t>(node)].prices = std::move(m_prices);
        return false;
    }
    double value = 0;
    const std::size_t v = fractional(value);
    if (v == none) {
        if (lengthNow() > static_cast<double>(m_longest) + 0.5) {
            m_unsure = true; // too long, but not provably
            return false;
        }
        m_plan.clear();
        const auto x = values();
        for (std::size_t p = 0; p < m_columns; ++p)
            if (x[p] > 0.5)
                m_plan.push_back({m_strips[p], static_cast<int>(std::lround(x[p]))});
        return true;
    }
    const double low = m_low[v], high = m_high[v], down = std::floor(value);
    const bool up = v < m_columns || value - down > 0.5;
    const int fewer = split(node, v, static_cast<int>(down));
    if (up)
        return side(fewer + 1, v, down + 1, high) || side(fewer, v, low, down);
    return side(fewer, v, low, down) || side(fewer + 1, v, down + 1, high);
}

Whole::Found Whole::within(std::int64_t longest, std::int64_t units, int rounds)
{
    m_longest = longest;
    m_end = m_work.done() + units;
    m_unsure = false;
    for (int k = 0; k < m_cloth.levels(); ++k) { // so many strips alone would be as long
        const std::int64_t most = longest / m_cloth.high(k);
        m_high[m_columns + static_cast<std::size_t>(m_cloth.sizes() + k)] = static_cast<double>(most);
    }
    m_nodes.assign(1, {});
    if (tighten(rounds) == Node::Closed) {
        m_nodes.front().prices = std::move(m_prices);
        return m_unsure ? Found::Unknown : Found::No;
    }
    if (explore(0))
        return Found::Yes;
    return m_unsure ? Found::Unknown : Found::No;
}

} // namespace matside::cutting
