// SPDX-License-Identifier: MIT
#include "cutting/table.h"

#include <algorithm>
#include <cstring>

namespace matside::cutting {

Table::Table(const Cloth &cloth, Meter &meter) : m_cloth(cloth), m_meter(meter)
{
    const auto width = static_cast<std::size_t>(cloth.places) + 1;
    m_cells.assign(cloth.lies.size() + 1, std::vector<double>(width, 0.0));
    m_row.assign(cloth.lies.size() + 1, m_cells.front().data());
    m_price.assign(cloth.lies.size(), 0.0);
    m_spare.assign(width, 0.0);
}

double Table::best(int sheet, int level) const
{
    return worth(m_cloth.lieEnd[static_cast<std::size_t>(level)], m_cloth.sheet(sheet).place);
}

void Table::fill(const std::vector<double> &prices, const std::vector<int> &need)
{
    std::int64_t passes = 0;
    for (int j = 0; j < static_cast<int>(m_cloth.lies.size()); ++j) {
        const Lie &l = m_cloth.lie(j);
        const auto at = static_cast<std::size_t>(j);
        const int copies = need[static_cast<std::size_t>(l.size)];
        const double price = prices[static_cast<std::size_t>(l.size)];
        m_price[at] = price;
        m_row[at + 1] = m_row[at];
        if (price <= 0 || copies <= 0)
            continue;
        double *to = m_cells[at + 1].data();
        const auto most = m_cloth.sheet(0).width / l.width;
        if (m_cloth.even && copies >= most && m_cloth.owned() == 0)
            unlimited(m_row[at], to, j, price);
        else
            limited(m_row[at], to, j, price, copies);
        m_row[at + 1] = to;
        ++passes;
    }
    m_meter.spend(1 + passes * m_cloth.places / (m_cloth.even ? 2048 : 512));
}

void Table::unlimited(const double *from, double *to, int lie, double price) const
{
    const int w = m_cloth.lie(lie).cells, end = m_cloth.places + 1;
    std::memcpy(to, from, static_cast<std::size_t>(std::min(w, end)) * sizeof(double));
    // Blocks no wider than the piece do not overlap what they read.
    for (int start = w; start < end; start += w) {
        const int stop = std::min(start + w, end);
        const double *behind = to - w;
#pragma GCC ivdep
        for (int c = start; c < stop; ++c) {
            const double with = behind[c] + price;
            to[c] = with > from[c] ? with : from[c];
        }
    }
}

void Table::limited(const double *from, double *to, int lie, double price, int copies)
{
    const int end = m_cloth.places + 1;
    std::memcpy(to, from, static_cast<std::size_t>(end) * sizeof(double));
    if (!m_cloth.even) {
        const auto &back = m_cloth.back[static_cast<std::size_t>(lie)];
        for (int n = 0; n < copies; ++n) {
            bool better = false;
            for (int c = end - 1; c >= 0 && back[static_cast<std::size_t>(c)] >= 0; --c) {
                const double with = to[back[static_cast<std::size_t>(c)]] + price;
                better = better || with > to[c];
                to[c] = with > to[c] ? with : to[c];
            }
            if (!better)
                return;
        }
        return;
    }
    const int w = m_cloth.lie(lie).cells;
    int left = std::min(copies, (end - 1) / w);
    for (int some = 1; left > 0; some *= 2) {
        const int n = std::min(some, left), shift = w * n;
        left -= n;
        const double more = price * n;
        std::memcpy(m_spare.data(), to, static_cast<std::size_t>(end) * sizeof(double));
        const double *behind = m_spare.data() - shift;
#pragma GCC ivdep
        for (int c = shift; c < end; ++c) {
            const double with = behind[c] + more;
            to[c] = with > to[c] ? with : to[c];
        }
    }
}

void Table::trace(int end, int place, std::vector<Row> &rows) const
{
    for (int j = end - 1; j >= 0; --j) {
        const auto at = static_cast<std::size_t>(j);
        if (m_row[at + 1] == m_row[at])
            continue;
        int count = 0, here = place;
        double worth = 0;
        while (m_row[at][here] + worth != m_row[at + 1][place]) {
            here = m_cloth.after(j, here);
            worth += m_price[at];
            ++count;
        }
        if (count > 0)
            rows.push_back({j, count});
        place = here;
    }
    std::reverse(rows.begin(), rows.end());
}

} // namespace matside::cutting
