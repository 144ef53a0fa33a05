// SPDX-License-Identifier: MIT
#include "cutting/finder.h"

#include "cutting/rest.h"

#include <utility>

namespace matside::cutting {
namespace {
constexpr std::size_t visitsEach = 30; ///< steps looked at for every strip that may be found
}

Finder::Finder(const Cloth &cloth, const Table &table, const std::vector<double> &prices,
               const std::vector<char> &allowed, std::vector<int> need, int size, std::size_t most)
    : m_cloth(cloth), m_table(table), m_prices(prices), m_allowed(allowed), m_need(std::move(need)),
      m_size(size), m_wanted(size < 0 ? 0 : m_need[static_cast<std::size_t>(size)]), m_most(most)
{
}

void Finder::find(int sheet, int level, double room, double slack)
{
    m_sheet = sheet;
    m_level = level;
    m_room = room;
    m_slack = slack;
    const Sheet &s = m_cloth.sheet(sheet);
    lay(m_cloth.lieEnd[static_cast<std::size_t>(level)], s.place, s.width, 0.0);
}

std::vector<Candidate> Finder::take()
{
    if (m_visits >= visitsEach * m_most)
        m_found.resize(m_most);
    return std::move(m_found);
}

std::int64_t Finder::work() const
{
    return static_cast<std::int64_t>(m_found.size() + m_visits / 4) / 8;
}

/// Every number of the lie before `end`, the most first, then of those before it.
void Finder::lay(int end, int place, Ticks left, double worth)
{
    if (m_found.size() >= m_most || ++m_visits >= visitsEach * m_most ||
        worth + m_table.worth(end, place) < m_room - m_slack)
        return;
    if (end == 0)
        return keep(left, worth);
    const Lie &l = m_cloth.lie(end - 1);
    const auto of = static_cast<std::size_t>(l.size);
    const std::size_t base = m_places.size();
    for (int n = 0; place >= 0 && n * l.width <= left && n <= m_need[of]; ++n) {
        m_places.push_back(place);
        place = m_cloth.after(end - 1, place);
    }
    for (int n = static_cast<int>(m_places.size() - base) - 1; n >= 0; --n) {
        m_need[of] -= n;
        if (n > 0)
            m_rows.push_back({end - 1, n});
        const int next = m_places[base + static_cast<std::size_t>(n)];
        lay(end - 1, next, left - n * l.width, worth + n * m_prices[of]);
        if (n > 0)
            m_rows.pop_back();
        m_need[of] += n;
    }
    m_places.resize(base);
}

void Finder::keep(Ticks left, double worth)
{
    if (m_rows.empty() || levelFrom(m_allowed, m_cloth.lie(m_rows.front().lie).level) != m_level ||
        (m_size >= 0 && m_need[static_cast<std::size_t>(m_size)] == m_wanted))
        return;
    for (int z = m_cloth.lieEnd[static_cast<std::size_t>(m_level)] - 1; z >= 0; --z)
        if (m_cloth.lie(z).width <= left && m_need[static_cast<std::size_t>(m_cloth.lie(z).size)] > 0)
            return;
    m_found.push_back({m_room - worth, {m_sheet, m_level, std::vector<Row>(m_rows.rbegin(), m_rows.rend())}});
}

} // namespace matside::cutting
