// SPDX-License-Identifier: MIT
// The pivots of Master: a revised simplex with bounded rows and an explicit inverse of the basis.
#include "cutting/master.h"

#include <algorithm>
#include <cmath>

namespace matside::cutting {
namespace {
constexpr double tiny = 1e-9;
constexpr double loose = 1e-7; ///< a count may be off by this much
constexpr int factorEvery = 60;
constexpr long blandAfter = 400;
constexpr long mostPivots = 4000;
} // namespace

/// out = B⁻¹ · column; slack of row r is −e_r.
void Master::column(int entering, std::vector<double> &out) const
{
    const std::size_t n = m_rows;
    const double *inverse = m_state.inverse.data();
    if (entering < 0) {
        for (std::size_t r = 0; r < n; ++r)
            out[r] = -inverse[r * n + static_cast<std::size_t>(-1 - entering)];
        return;
    }
    const Column &c = m_columns[static_cast<std::size_t>(entering)];
    const auto sizes = static_cast<std::size_t>(m_cloth.sizes()),
               levels = static_cast<std::size_t>(m_cloth.levels());
    const auto level = static_cast<std::size_t>(c.strip.level);
    const auto high = static_cast<double>(m_cloth.heights[level]);
    for (std::size_t r = 0; r < n; ++r) {
        const double *row = inverse + r * n;
        double sum = 0;
        for (const Row &p : c.parts)
            sum += row[p.lie] * p.count;
        if (c.strip.sheet == 0) {
            for (std::size_t k = 0; k <= level; ++k)
                sum += row[sizes + k];
        } else {
            sum += row[sizes + levels + static_cast<std::size_t>(c.strip.sheet) - 1] * high;
        }
        out[r] = sum;
    }
}

/// The inverse anew from the basis, by elimination with row pivots; a basis that turns out singular is
/// replaced by the slacks.
void Master::factor()
{
    const std::size_t n = m_rows;
    auto &inverse = m_state.inverse;
    for (int attempt = 0; attempt < 2; ++attempt) {
        std::vector<double> unitMatrix(n * n, 0.0), basis(n * n, 0.0), out(n);
        for (std::size_t r = 0; r < n; ++r)
            unitMatrix[r * n + r] = 1;
        inverse = unitMatrix;
        for (std::size_t c = 0; c < n; ++c) {
            column(m_state.basis[c], out);
            for (std::size_t r = 0; r < n; ++r)
                basis[r * n + c] = out[r];
        }
        if (invert(basis))
            break;
        for (std::size_t r = 0; r < n; ++r)
            m_state.basis[r] = -1 - static_cast<int>(r);
    }
    markBasic();
    m_state.sinceFactored = 0;
    m_meter.spend(static_cast<std::int64_t>(n * n * n / 4000));
}

void Master::markBasic()
{
    m_basic.assign(m_rows, 0);
    for (const int b : m_state.basis)
        if (b < 0)
            m_basic[static_cast<std::size_t>(-1 - b)] = 1;
}

/// Gauss–Jordan on `basis` beside the inverse, which holds the unit matrix at first.
bool Master::invert(std::vector<double> &basis)
{
    const std::size_t n = m_rows;
    auto &inverse = m_state.inverse;
    for (std::size_t c = 0; c < n; ++c) {
        std::size_t p = c;
        for (std::size_t r = c + 1; r < n; ++r)
            if (std::fabs(basis[r * n + c]) > std::fabs(basis[p * n + c]))
                p = r;
        if (std::fabs(basis[p * n + c]) < 1e-10)
            return false;
        if (p != c)
            for (std::size_t k = 0; k < n; ++k) {
                std::swap(basis[p * n + k], basis[c * n + k]);
                std::swap(inverse[p * n + k], inverse[c * n + k]);
            }
        const double by = 1 / basis[c * n + c];
        for (std::size_t k = 0; k < n; ++k) {
            basis[c * n + k] *= by;
            inverse[c * n + k] *= by;
        }
        for (std::size_t r = 0; r < n; ++r) {
            const double f = basis[r * n + c];
            if (r == c || f == 0)
                continue;
            for (std::size_t k = c; k < n; ++k)
                basis[r * n + k] -= f * basis[c * n + k];
            for (std::size_t k = 0; k < n; ++k)
                inverse[r * n + k] -= f * inverse[c * n + k];
        }
    }
    return true;
}

/// Values of the basic variables: those out of the basis stand at a bound of their row.
void Master::place()
{
    const std::size_t n = m_rows;
    std::vector<double> at(n);
    for (std::size_t r = 0; r < n; ++r) {
        const double most = rowMost(r);
        if (std::isinf(most))
            m_state.atMost[r] = 0;
        at[r] = m_state.atMost[r] ? most : rowLeast(r);
    }
    for (const int b : m_state.basis)
        if (b < 0)
            at[static_cast<std::size_t>(-1 - b)] = 0;
    for (std::size_t r = 0; r < n; ++r) {
        double sum = 0;
        for (std::size_t c = 0; c < n; ++c)
            sum += m_state.inverse[r * n + c] * at[c];
        m_x[r] = sum;
    }
    m_least.resize(n);
    m_most.resize(n);
    for (std::size_t r = 0; r < n; ++r) {
        m_least[r] = least(m_state.basis[r]);
        m_most[r] = most(m_state.basis[r]);
    }
}

bool Master::phaseOne() const
{
    for (std::size_t r = 0; r < m_rows; ++r)
        if (m_x[r] < m_least[r] - loose || m_x[r] > m_most[r] + loose)
            return true;
    return false;
}

void Master::computePrices(bool first)
{
    const std::size_t n = m_rows;
    std::fill(m_dual.begin(), m_dual.end(), 0.0);
    for (std::size_t r = 0; r < n; ++r) {
        const int b = m_state.basis[r];
        double c = 0;
        if (first)
            c = m_x[r] < m_least[r] - loose ? -1 : m_x[r] > m_most[r] + loose ? 1 : 0;
        else if (b >= 0)
            c = cost(m_columns[static_cast<std::size_t>(b)].strip);
        if (c == 0)
            continue;
        const double *row = &m_state.inverse[r * n];
        for (std::size_t k = 0; k < n; ++k)
            m_dual[k] += c * row[k];
    }
    const auto sizes = static_cast<std::size_t>(m_cloth.sizes()),
               levels = static_cast<std::size_t>(m_cloth.levels());
    m_zed.assign(m_cloth.sheets.size() * levels, 0.0);
    double sum = 0;
    for (std::size_t k = 0; k < levels; ++k) {
        sum += m_dual[sizes + k];
        m_zed[k] = sum;
        for (std::size_t o = 1; o < m_cloth.sheets.size(); ++o)
            m_zed[o * levels + k] = m_dual[sizes + levels + o - 1] * static_cast<double>(m_cloth.heights[k]);
    }
}

/// The variable that improves most (with `bland` the first that does); INT_MAX if none.
int Master::entering(bool first, bool bland, double &rate) const
{
    constexpr int none = std::numeric_limits<int>::max();
    const double tall = first ? 1.0 : static_cast<double>(m_cloth.heights.back());
    double best = tiny * tall;
    int enters = none;
    const auto take = [&](int id, double gain, double signedRate) {
        if (gain > best) {
            best = gain;
            enters = id;
            rate = signedRate;
        }
    };
    for (std::size_t r = 0; r < m_rows && !(bland && enters != none); ++r)
        if (!m_basic[r] && rowLeast(r) < rowMost(r))
            take(-1 - static_cast<int>(r), m_state.atMost[r] ? m_dual[r] : -m_dual[r], m_dual[r]);
    const auto levels = static_cast<std::size_t>(m_cloth.levels());
    for (const int id : m_state.active) {
        if (bland && enters != none)
            break;
        const Column &c = m_columns[static_cast<std::size_t>(id)];
        double d =
            (first ? 0.0 : cost(c.strip)) -
            m_zed[static_cast<std::size_t>(c.strip.sheet) * levels + static_cast<std::size_t>(c.strip.level)];
        for (const Row &p : c.parts)
            d -= m_dual[static_cast<std::size_t>(p.lie)] * p.count;
        take(id, -d, d);
    }
    return enters;
}

/// The row whose variable meets a bound first as the entering one moves by `way`; −1 none.
int Master::leaving(double way, double &step, bool &toMost) const
{
    int row = -1;
    for (std::size_t r = 0; r < m_rows; ++r) {
        const double move = -way * m_way[r];
        if (std::fabs(move) < tiny)
            continue;
        const bool below = m_x[r]<m_least[r] - loose, above = m_x[r]> m_most[r] + loose;
        double bound = 0;
        bool most = false;
        if (move < 0) {
            if (below)
                continue;
            most = above;
            bound = above ? m_most[r] : m_least[r];
        } else {
            if (above || (!below && std::isinf(m_most[r])))
                continue;
            most = !below;
            bound = below ? m_least[r] : m_most[r];
        }
        const double here = std::max(0.0, (bound - m_x[r]) / move);
        if (here < step - 1e-11 || (row >= 0 && here < step + 1e-11 &&
                                    std::fabs(m_way[r]) > std::fabs(m_way[static_cast<std::size_t>(row)]))) {
            step = std::min(step, here);
            row = static_cast<int>(r);
            toMost = most;
        }
    }
    return row;
}

bool Master::pivot(int enters, double rate)
{
    const std::size_t n = m_rows;
    column(enters, m_way);
    const double way = rate < 0 ? 1 : -1;
    const auto slack = static_cast<std::size_t>(-1 - enters);
    double step = std::numeric_limits<double>::infinity();
    if (enters < 0)
        step = rowMost(slack) - rowLeast(slack);
    bool toMost = false;
    const int out = leaving(way, step, toMost);
    if (std::isinf(step))
        return false;
    for (std::size_t r = 0; r < n; ++r)
        m_x[r] -= way * step * m_way[r];
    if (out < 0) { // from one of its bounds to the other
        m_state.atMost[slack] = m_state.atMost[slack] ? 0 : 1;
        return true;
    }
    const auto at = static_cast<std::size_t>(out);
    double value = way * step;
    if (enters < 0) {
        value += m_state.atMost[slack] ? rowMost(slack) : rowLeast(slack);
        m_basic[slack] = 1;
    }
    const int left = m_state.basis[at];
    if (left < 0) {
        m_state.atMost[static_cast<std::size_t>(-1 - left)] = toMost ? 1 : 0;
        m_basic[static_cast<std::size_t>(-1 - left)] = 0;
    }
    m_state.basis[at] = enters;
    m_x[at] = value;
    m_least[at] = least(enters);
    m_most[at] = most(enters);
    double *pivotRow = &m_state.inverse[at * n];
    const double by = 1 / m_way[at];
    for (std::size_t k = 0; k < n; ++k)
        pivotRow[k] *= by;
    for (std::size_t r = 0; r < n; ++r) {
        const double f = m_way[r];
        if (r == at || f == 0)
            continue;
        double *row = &m_state.inverse[r * n];
#pragma GCC ivdep
        for (std::size_t k = 0; k < n; ++k)
            row[k] -= f * pivotRow[k];
    }
    if (++m_state.sinceFactored >= factorEvery) {
        factor();
        place();
    }
    return true;
}

/// Pivots over the known strips until none helps; false if the numbers fail.
bool Master::improve(bool &first)
{
    for (;;) {
        first = phaseOne();
        computePrices(first);
        double rate = 0;
        const int enters = entering(first, m_pivots > blandAfter, rate);
        if (enters == std::numeric_limits<int>::max())
            return true;
        ++m_pivots;
        m_meter.spend(1 + static_cast<std::int64_t>(m_rows * m_rows / 1024));
        if (m_pivots > mostPivots || !pivot(enters, rate))
            return false;
    }
}

Master::Outcome Master::solve(std::int64_t enough)
{
    ++m_calls;
    m_pivots = 0;
    m_bound = 0;
    m_worth = 0;
    m_refuted = false;
    m_proof = {};
    markBasic();
    dropIdle();
    place();
    for (;;) {
        bool first = false;
        if (!improve(first) || m_meter.spent())
            return Outcome::Stopped;
        const bool added = price(first);
        if (first && m_refuted)
            return Outcome::None;
        if (!first && m_bound > enough)
            return Outcome::Beyond;
        if (!added) {
            finish();
            return first ? Outcome::Stopped : Outcome::Solved;
        }
    }
}

void Master::finish()
{
    m_uses.clear();
    m_counts.assign(static_cast<std::size_t>(m_cloth.levels()), 0.0);
    for (std::size_t r = 0; r < m_rows; ++r) {
        const int b = m_state.basis[r];
        if (b < 0)
            continue;
        Column &c = m_columns[static_cast<std::size_t>(b)];
        c.used = m_calls;
        if (m_x[r] < loose)
            continue;
        m_uses.push_back({&c.strip, m_x[r]});
        for (int k = 0; c.strip.sheet == 0 && k <= c.strip.level; ++k)
            m_counts[static_cast<std::size_t>(k)] += m_x[r];
    }
}

} // namespace matside::cutting
