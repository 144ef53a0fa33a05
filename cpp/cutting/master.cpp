// SPDX-License-Identifier: MIT
#include "cutting/master.h"

#include <algorithm>
#include <cmath>

namespace matside::cutting {

Master::Master(const Cloth &cloth, Table &table, Meter &meter)
    : m_cloth(cloth), m_table(table), m_meter(meter),
      m_rows(static_cast<std::size_t>(cloth.sizes() + cloth.levels() + cloth.owned())),
      m_allowed(static_cast<std::size_t>(cloth.levels()), 1), m_x(m_rows), m_dual(m_rows), m_way(m_rows)
{
    const auto levels = static_cast<std::size_t>(cloth.levels());
    m_state.need = cloth.need;
    m_state.least.assign(levels, 0);
    m_state.most.assign(levels, anyCount);
    for (int o = 1; o <= cloth.owned(); ++o)
        m_state.left.push_back(cloth.sheet(o).high);
    m_state.atMost.assign(m_rows, 0);
    // At first every row is met by its own slack; phase one finds strips.
    for (int r = 0; r < static_cast<int>(m_rows); ++r)
        m_state.basis.push_back(-1 - r);
    factor();
    // One strip of each lie alone.
    for (int j = 0; j < static_cast<int>(cloth.lies.size()); ++j) {
        const Lie &l = cloth.lie(j);
        const auto across = static_cast<int>(cloth.sheet(0).width / l.width);
        if (across > 0)
            propose({0, l.level, {{j, std::min(across, cloth.need[static_cast<std::size_t>(l.size)])}}});
    }
}

double Master::rowLeast(std::size_t row) const
{
    const auto sizes = static_cast<std::size_t>(m_cloth.sizes()),
               levels = static_cast<std::size_t>(m_cloth.levels());
    return row < sizes ? m_state.need[row] : row < sizes + levels ? m_state.least[row - sizes] : 0;
}

double Master::rowMost(std::size_t row) const
{
    const auto sizes = static_cast<std::size_t>(m_cloth.sizes()),
               levels = static_cast<std::size_t>(m_cloth.levels());
    constexpr double none = std::numeric_limits<double>::infinity();
    if (row < sizes)
        return none;
    if (row < sizes + levels)
        return m_state.most[row - sizes] >= anyCount ? none : m_state.most[row - sizes];
    return static_cast<double>(m_state.left[row - sizes - levels]);
}

double Master::least(int basic) const
{
    return basic >= 0 ? 0.0 : rowLeast(static_cast<std::size_t>(-1 - basic));
}

double Master::most(int basic) const
{
    if (basic < 0)
        return rowMost(static_cast<std::size_t>(-1 - basic));
    return proper(m_columns[static_cast<std::size_t>(basic)]) ? std::numeric_limits<double>::infinity() : 0.0;
}

bool Master::proper(const Column &c) const
{
    if (!m_allowed[static_cast<std::size_t>(c.strip.level)])
        return false;
    return std::all_of(c.strip.rows.begin(), c.strip.rows.end(), [&](const Row &r) {
        return r.count <= m_state.need[static_cast<std::size_t>(m_cloth.lie(r.lie).size)];
    });
}

double Master::cost(const Strip &s) const
{
    return s.sheet == 0 ? static_cast<double>(m_cloth.high(s.level)) : 0.0;
}

/// The strip as far as it is needed and allowed; −1 if nothing of it is.
int Master::addFitted(const Strip &strip)
{
    Strip s{strip.sheet, strip.level, {}};
    int top = -1;
    bool cut = false;
    for (const Row &r : strip.rows) {
        const int n = std::min(r.count, m_state.need[static_cast<std::size_t>(m_cloth.lie(r.lie).size)]);
        cut = cut || n < r.count;
        if (n > 0) {
            s.rows.push_back({r.lie, n});
            top = std::max(top, m_cloth.lie(r.lie).level);
        }
    }
    if (s.rows.empty())
        return -1;
    if (cut)
        s.level = top;
    while (s.level < m_cloth.levels() && !m_allowed[static_cast<std::size_t>(s.level)])
        ++s.level;
    if (s.level >= m_cloth.levels() || (s.sheet > 0 && m_cloth.high(s.level) > m_cloth.sheet(s.sheet).high))
        return -1;
    return add(s);
}

/// The column of a strip among the active ones; −1 if it was active before.
int Master::add(const Strip &s)
{
    auto hash = static_cast<std::uint64_t>(s.sheet) * 1024 + static_cast<std::uint64_t>(s.level) + 1;
    for (const Row &r : s.rows)
        hash = (hash ^ (static_cast<std::uint64_t>(r.lie) * 65536 + static_cast<std::uint64_t>(r.count))) *
               std::uint64_t(0x9E3779B97F4A7C15);
    const auto found = m_known.find(hash);
    if (found != m_known.end() && m_columns[static_cast<std::size_t>(found->second)].strip == s) {
        const int id = found->second;
        if (std::find(m_state.active.begin(), m_state.active.end(), id) != m_state.active.end())
            return -1;
        m_state.active.push_back(id);
        m_columns[static_cast<std::size_t>(id)].used = m_calls;
        return id;
    }
    Column c{s, {}, m_calls};
    for (const Row &r : s.rows)
        c.parts.push_back({m_cloth.lie(r.lie).size, r.count});
    const int id = static_cast<int>(m_columns.size());
    m_columns.push_back(std::move(c));
    m_known.insert_or_assign(hash, id);
    m_state.active.push_back(id);
    return id;
}

void Master::dropImproper()
{
    const auto old = std::move(m_state.active);
    m_state.active.clear();
    std::vector<int> trimmed;
    for (const int id : old)
        (proper(m_columns[static_cast<std::size_t>(id)]) ? m_state.active : trimmed).push_back(id);
    for (const int id : trimmed)
        addFitted(Strip(m_columns[static_cast<std::size_t>(id)].strip));
}

/// Keeps the strips used last when there are many.
void Master::dropIdle()
{
    const std::size_t most = 3 * m_rows + 40;
    if (m_state.active.size() <= most + m_rows)
        return;
    auto &active = m_state.active;
    std::stable_sort(active.begin(), active.end(), [&](int a, int b) {
        return m_columns[static_cast<std::size_t>(a)].used > m_columns[static_cast<std::size_t>(b)].used;
    });
    active.resize(most);
    for (const int b : m_state.basis)
        if (b >= 0 && proper(m_columns[static_cast<std::size_t>(b)]) &&
            std::find(active.begin(), active.end(), b) == active.end())
            active.push_back(b);
}

void Master::setNeed(const std::vector<int> &need)
{
    m_state.need = need;
    dropImproper();
}

void Master::setCounts(const std::vector<int> &least, const std::vector<int> &most)
{
    m_state.least = least;
    m_state.most = most;
}

void Master::allow(const std::vector<char> &levels)
{
    m_allowed = levels;
    dropImproper();
}

double Master::room(int sheet, int level) const
{
    const auto levels = static_cast<std::size_t>(m_cloth.levels());
    return m_room[static_cast<std::size_t>(sheet) * levels + static_cast<std::size_t>(level)];
}

/// Whole-numbered prices from the dual, each so that the bound stays valid whatever was lost.
void Master::roundPrices(bool first)
{
    const auto sizes = static_cast<std::size_t>(m_cloth.sizes()),
               levels = static_cast<std::size_t>(m_cloth.levels());
    const auto unit = static_cast<double>(priceUnit);
    m_rounded.assign(m_rows, 0.0);
    for (std::size_t r = 0; r < sizes; ++r)
        m_rounded[r] = m_state.need[r] > 0 ? std::floor(std::max(0.0, m_dual[r]) * unit) : 0.0;
    double zed = 0;
    m_room.assign(levels * m_cloth.sheets.size(), 0.0);
    for (std::size_t k = 0; k < levels; ++k) {
        double z = std::floor(m_dual[sizes + k] * unit);
        z = m_state.most[k] >= anyCount ? std::max(z, 0.0) : z;
        z = m_state.least[k] == 0 ? std::min(z, 0.0) : z;
        m_rounded[sizes + k] = z;
        zed += z;
        m_room[k] = (first ? 0.0 : cost({0, static_cast<int>(k), {}}) * unit) - zed;
    }
    for (std::size_t o = 0; o + 1 < m_cloth.sheets.size(); ++o) {
        const double p = std::ceil(std::max(0.0, -m_dual[sizes + levels + o]) * unit);
        m_rounded[sizes + levels + o] = p;
        for (std::size_t k = 0; k < levels; ++k)
            m_room[(o + 1) * levels + k] = p * static_cast<double>(m_cloth.heights[k]);
    }
    m_prices.assign(m_rounded.begin(), m_rounded.begin() + static_cast<std::ptrdiff_t>(sizes));
}

/// Prices strips in; true if one was new.
bool Master::price(bool first)
{
    roundPrices(first);
    m_table.fill(m_prices, m_state.need);
    const double tall = first ? 1.0 : static_cast<double>(m_cloth.heights.back());
    const double enough = 8 + static_cast<double>(priceUnit) * tall * 4e-9;
    bool added = false;
    m_violation = 0;
    m_scale = 1;
    for (int s = 0; s < static_cast<int>(m_cloth.sheets.size()); ++s) {
        double before = -1;
        for (int k = 0; k < m_cloth.levels(); ++k) {
            if (!m_allowed[static_cast<std::size_t>(k)] || (s > 0 && m_cloth.high(k) > m_cloth.sheet(s).high))
                continue;
            const double worth = m_table.best(s, k), over = worth - room(s, k);
            if (over <= 0)
                continue;
            m_violation = std::max(m_violation, over);
            m_scale = room(s, k) > 0 ? std::min(m_scale, room(s, k) / worth) : 0.0;
            // The same strip was offered on a lower level, where it costs no more.
            if (over <= enough || (worth == before && m_lowRoom >= room(s, k)))
                continue;
            before = worth;
            m_lowRoom = room(s, k);
            Strip strip{s, k, {}};
            m_table.trace(m_cloth.lieEnd[static_cast<std::size_t>(k)], m_cloth.sheet(s).place, strip.rows);
            fillUp(strip);
            added = add(strip) >= 0 || added;
        }
    }
    takeBound(first);
    return added;
}

/// Puts what still fits beside the priced pieces, tallest first: covering more is never worse.
void Master::fillUp(Strip &s) const
{
    Ticks left = m_cloth.sheet(s.sheet).width;
    for (const Row &r : s.rows)
        left -= m_cloth.lie(r.lie).width * r.count;
    for (int j = m_cloth.lieEnd[static_cast<std::size_t>(s.level)] - 1; j >= 0 && left > 0; --j) {
        const Lie &l = m_cloth.lie(j);
        const auto here = std::lower_bound(s.rows.begin(), s.rows.end(), j,
                                           [](const Row &r, int lie) { return r.lie < lie; });
        const int have = here != s.rows.end() && here->lie == j ? here->count : 0;
        const auto more =
            std::min<Ticks>(left / l.width, m_state.need[static_cast<std::size_t>(l.size)] - have);
        if (more <= 0)
            continue;
        left -= more * l.width;
        if (have > 0)
            here->count += static_cast<int>(more);
        else
            s.rows.insert(here, {j, static_cast<int>(more)});
    }
}

/// Prices that would not stay exact: near a set of counts that only just is possible.
bool Master::tooDear() const
{
    double sum = 0, most = 0;
    for (std::size_t r = 0; r < m_rows; ++r) {
        const double bound = m_rounded[r] >= 0 ? rowLeast(r) : rowMost(r);
        sum += std::fabs(m_rounded[r]) * std::max(1.0, bound);
        most = std::max(most, std::fabs(m_rounded[r]));
    }
    return sum > 0x1p61 || most > 0x1p46 || most * static_cast<double>(m_cloth.unit) > 0x1p61;
}

/// Keeps the prices if they prove more than before: scaled down first if some strip is worth too much
/// (Farley 1990).
void Master::takeBound(bool first)
{
    const auto sizes = static_cast<std::size_t>(m_cloth.sizes()),
               levels = static_cast<std::size_t>(m_cloth.levels());
    const double scale = m_scale < 1 ? m_scale * (1 - 1e-12) : 1.0;
    if (tooDear())
        return;
    Prices p{first, priceUnit, {}, {}, {}, {}};
    std::int64_t sum = 0;
    m_worth = 0;
    for (std::size_t r = 0; r < m_rows; ++r) {
        const auto whole =
            static_cast<std::int64_t>(r < sizes ? std::floor(m_rounded[r] * scale) : m_rounded[r]);
        if (r < sizes) {
            p.pieces.push_back(whole);
            sum += whole * m_state.need[r];
            m_worth += (static_cast<std::int64_t>(m_rounded[r]) - whole) * m_state.need[r];
        } else if (r < sizes + levels) {
            p.counts.push_back(whole);
            sum += whole * (whole > 0 ? m_state.least[r - sizes] : whole < 0 ? m_state.most[r - sizes] : 0);
        } else {
            p.owned.push_back(whole);
            sum -= whole * m_state.left[r - sizes - levels];
        }
    }
    m_worth += sum;
    if (m_scale <= 0)
        return;
    const std::int64_t bound = sum > 0 ? (sum + priceUnit - 1) / priceUnit : 0;
    if (first ? sum > 0 : bound > m_bound || m_proof.pieces.empty() || m_proof.ray) {
        m_refuted = first;
        m_proof = std::move(p);
        m_bound = first ? m_bound : std::max(bound, m_bound);
    }
}

} // namespace matside::cutting
