// SPDX-License-Identifier: MIT
// The pivots of Whole: a dual simplex with bounded variables and an explicit inverse.
#include "cutting/whole.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace matside::cutting {
namespace {
constexpr double tiny = 1e-7;  ///< pivots below this are not taken
constexpr double loose = 1e-6; ///< a count may be off by this much
constexpr int factorEvery = 50;
constexpr double endless = std::numeric_limits<double>::infinity();
} // namespace

/// out = row · every column: the slack of row r is −e_r, a strip counts in every level up to its own.
void Whole::multiply(const std::vector<double> &row, std::vector<double> &out)
{
    sumLevels(row);
    for (std::size_t v = 0; v < m_columns; ++v)
        out[v] = m_strips[v].sheet == 0 ? m_prefix[static_cast<std::size_t>(m_strips[v].level)] : 0.0;
    const auto add = [&](double by, const std::vector<double> &worth) {
        double *to = out.data();
        const double *from = worth.data();
#pragma GCC ivdep
        for (std::size_t v = 0; v < m_columns; ++v)
            to[v] += by * from[v];
    };
    for (std::size_t r = 0; r < m_plain; ++r)
        if (row[r] != 0 && !m_dense[r].empty())
            add(row[r], m_dense[r]);
    for (std::size_t c = 0; c < m_cuts.size(); ++c)
        if (row[m_plain + c] != 0)
            add(row[m_plain + c], m_cutWorth[c]);
    for (std::size_t r = 0; r < m_rows; ++r)
        out[m_columns + r] = -row[r];
}

void Whole::sumLevels(const std::vector<double> &row)
{
    const auto sizes = static_cast<std::size_t>(m_cloth.sizes()),
               levels = static_cast<std::size_t>(m_cloth.levels());
    m_prefix.resize(levels);
    double sum = 0;
    for (std::size_t k = 0; k < levels; ++k)
        m_prefix[k] = sum += row[sizes + k];
}

/// m_way = B⁻¹ · column.
void Whole::column(std::size_t v)
{
    const auto sizes = static_cast<std::size_t>(m_cloth.sizes());
    for (std::size_t r = 0; r < m_rows; ++r) {
        const double *row = &m_inverse[r * m_rows];
        double sum = 0;
        if (v >= m_columns) {
            sum = -row[v - m_columns];
        } else {
            for (std::size_t p = m_begin[v]; p < m_begin[v + 1]; ++p)
                sum += row[m_partRow[p]] * m_partCount[p];
            if (m_strips[v].sheet == 0)
                for (std::size_t k = 0; k <= static_cast<std::size_t>(m_strips[v].level); ++k)
                    sum += row[sizes + k];
            for (std::size_t c = 0; c < m_cuts.size(); ++c)
                sum += row[m_plain + c] * m_cutWorth[c][v];
        }
        m_way[r] = sum;
    }
}

/// The inverse anew: each basic column is swapped in for a slack, the largest pivot first.
void Whole::factor()
{
    m_inverse.assign(m_rows * m_rows, 0.0);
    for (std::size_t r = 0; r < m_rows; ++r)
        m_inverse[r * m_rows + r] = -1; // the slacks
    const std::vector<std::size_t> wanted = m_basis;
    std::vector<char> taken(m_rows, 0);
    for (const std::size_t v : wanted)
        if (v >= m_columns) {
            m_basis[v - m_columns] = v;
            taken[v - m_columns] = 1;
        }
    for (const std::size_t v : wanted) {
        if (v >= m_columns)
            continue;
        column(v);
        std::size_t best = none;
        for (std::size_t r = 0; r < m_rows; ++r)
            if (!taken[r] && (best == none || std::fabs(m_way[r]) > std::fabs(m_way[best])))
                best = r;
        if (best == none || std::fabs(m_way[best]) < 1e-10) {
            m_unsure = true; // does not happen with an exact basis
            continue;
        }
        exchange(best);
        m_basis[best] = v;
        taken[best] = 1;
    }
    m_sinceFactored = 0;
    m_work.spend(static_cast<std::int64_t>(m_rows * m_rows * m_rows / 4000));
}

/// The column in m_way takes over `row` of the inverse.
void Whole::exchange(std::size_t row)
{
    double *pivot = &m_inverse[row * m_rows];
    const double by = 1 / m_way[row];
    for (std::size_t k = 0; k < m_rows; ++k)
        pivot[k] *= by;
    for (std::size_t r = 0; r < m_rows; ++r) {
        const double f = m_way[r];
        if (r == row || f == 0)
            continue;
        double *other = &m_inverse[r * m_rows];
#pragma GCC ivdep
        for (std::size_t k = 0; k < m_rows; ++k)
            other[k] -= f * pivot[k];
    }
}

/// Values of the basic variables.
void Whole::place()
{
    std::vector<double> sum(m_rows, 0.0);
    const auto sizes = static_cast<std::size_t>(m_cloth.sizes());
    for (std::size_t v = 0; v < m_columns + m_rows; ++v) {
        const double at = m_atHigh[v] ? m_high[v] : m_low[v];
        if (m_basic[v] || at == 0)
            continue;
        if (v >= m_columns) {
            sum[v - m_columns] += at;
            continue;
        }
        for (std::size_t p = m_begin[v]; p < m_begin[v + 1]; ++p)
            sum[static_cast<std::size_t>(m_partRow[p])] -= m_partCount[p] * at;
        if (m_strips[v].sheet == 0)
            for (std::size_t k = 0; k <= static_cast<std::size_t>(m_strips[v].level); ++k)
                sum[sizes + k] -= at;
        for (std::size_t c = 0; c < m_cuts.size(); ++c)
            sum[m_plain + c] -= m_cutWorth[c][v] * at;
    }
    for (std::size_t r = 0; r < m_rows; ++r) {
        double x = 0;
        for (std::size_t c = 0; c < m_rows; ++c)
            x += m_inverse[r * m_rows + c] * sum[c];
        m_x[r] = x;
    }
}

std::vector<double> Whole::dual() const
{
    std::vector<double> y(m_rows, 0.0);
    for (std::size_t r = 0; r < m_rows; ++r)
        if (const double c = m_cost[m_basis[r]]; c != 0)
            for (std::size_t k = 0; k < m_rows; ++k)
                y[k] += c * m_inverse[r * m_rows + k];
    return y;
}

/// Reduced costs anew.
void Whole::reduce()
{
    const auto y = dual();
    m_reduced.resize(m_columns + m_rows);
    multiply(y, m_reduced);
    for (std::size_t v = 0; v < m_columns + m_rows; ++v)
        m_reduced[v] = m_basic[v] ? 0.0 : m_cost[v] - m_reduced[v];
}

std::size_t Whole::leaving() const
{
    std::size_t row = none;
    double worst = loose;
    for (std::size_t r = 0; r < m_rows; ++r) {
        const std::size_t b = m_basis[r];
        const double off = std::max(m_low[b] - m_x[r], m_x[r] - m_high[b]);
        if (off > worst) {
            worst = off;
            row = r;
        }
    }
    return row;
}

/// The variable that may take over the row soonest; `rising`: the row's variable must grow.
std::size_t Whole::entering(std::size_t row, bool rising)
{
    const std::vector<double> rho(m_inverse.begin() + static_cast<std::ptrdiff_t>(row * m_rows),
                                  m_inverse.begin() + static_cast<std::ptrdiff_t>((row + 1) * m_rows));
    multiply(rho, m_alpha);
    std::size_t best = none;
    double least = endless;
    for (std::size_t v = 0; v < m_columns + m_rows; ++v) {
        const double a = m_alpha[v];
        if (m_basic[v] || std::fabs(a) < tiny || m_low[v] == m_high[v])
            continue;
        const bool helps = (a < 0) == (rising != static_cast<bool>(m_atHigh[v]));
        if (!helps)
            continue;
        const double ratio = std::fabs(m_reduced[v]) / std::fabs(a);
        if (ratio < least - 1e-10 || (ratio < least + 1e-10 && std::fabs(a) > std::fabs(m_alpha[best]))) {
            least = std::min(ratio, least);
            best = v;
        }
    }
    return best;
}

/// False if the numbers have drifted: they are then made anew, and nothing else is done.
bool Whole::swap(std::size_t row, std::size_t v, bool rising)
{
    column(v);
    if (std::fabs(m_way[row] - m_alpha[v]) > 1e-6 * (1 + std::fabs(m_alpha[v]))) {
        factor();
        reduce();
        place();
        return false;
    }
    const double step = m_reduced[v] / m_alpha[v];
    for (std::size_t j = 0; j < m_columns + m_rows; ++j) // those of basic variables are not looked at
        m_reduced[j] -= step * m_alpha[j];
    const std::size_t left = m_basis[row];
    const double bound = rising ? m_low[left] : m_high[left];
    const double theta = (m_x[row] - bound) / m_way[row];
    for (std::size_t r = 0; r < m_rows; ++r)
        m_x[r] -= theta * m_way[r];
    m_x[row] = (m_atHigh[v] ? m_high[v] : m_low[v]) + theta;
    exchange(row);
    m_basis[row] = v;
    m_basic[v] = 1;
    m_basic[left] = 0;
    m_atHigh[left] = rising ? 0 : 1;
    m_reduced[left] = -step;
    m_reduced[v] = 0;
    m_atHigh[v] = 0;
    if (++m_sinceFactored >= factorEvery) {
        factor();
        reduce();
        place();
    }
    return true;
}

} // namespace matside::cutting
