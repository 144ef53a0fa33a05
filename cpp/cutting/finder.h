// SPDX-License-Identifier: MIT
#pragma once

#include "cutting/cloth.h"
#include "cutting/table.h"

#include <cstdint>
#include <vector>

namespace matside::cutting {

/// A strip, and how much more it costs than it is worth.
struct Candidate {
    double over = 0;
    Strip strip;
};

/// Finds the strips nothing more fits into that are cheap enough by the prices the table was last filled
/// with.
class Finder {
public:
    /// Strips hold a piece of `size` (−1: any). More than `most` are not looked for.
    Finder(const Cloth &cloth, const Table &table, const std::vector<double> &prices,
           const std::vector<char> &allowed, std::vector<int> need, int size, std::size_t most);

    /// Those of one height with room − worth ≤ slack.
    void find(int sheet, int level, double room, double slack);
    /// All found; as many as `most` if there are too many.
    [[nodiscard]] std::vector<Candidate> take();
    [[nodiscard]] std::int64_t work() const;

private:
    void lay(int end, int place, Ticks left, double worth);
    void keep(Ticks left, double worth);

    const Cloth &m_cloth;
    const Table &m_table;
    const std::vector<double> &m_prices;
    const std::vector<char> &m_allowed;
    std::vector<int> m_need;
    int m_size = -1, m_wanted = 0, m_sheet = 0, m_level = 0;
    double m_room = 0, m_slack = 0;
    std::size_t m_most, m_visits = 0;
    std::vector<Row> m_rows;
    std::vector<int> m_places; ///< a stack: what is left after so many of a lie
    std::vector<Candidate> m_found;
};

} // namespace matside::cutting
