// SPDX-License-Identifier: MIT
#pragma once

#include "cutting/cloth.h"

#include <cstdint>
#include <vector>

namespace matside::cutting {

/// Counts work, and says when to stop.
class Meter {
public:
    virtual ~Meter() = default;
    Meter() = default;
    Meter(const Meter &) = delete;
    Meter &operator=(const Meter &) = delete;
    virtual void spend(std::int64_t units) = 0;
    [[nodiscard]] virtual bool spent() const = 0;
};

/// The pricing table: what a strip is worth at most, for every height at once (a bounded knapsack over
/// the lies in rising height; Gilmore & Gomory 1965). Prices are whole numbers below 2^47 held in doubles,
/// so that every sum along a strip is exact.
class Table {
public:
    Table(const Cloth &cloth, Meter &meter);

    /// Fills the table for prices by size, each size at most `need` times in a strip (each way it lies).
    void fill(const std::vector<double> &prices, const std::vector<int> &need);
    /// Worth of the best strip of a sheet with lies below `end` (an index into the lies) from `place` on.
    [[nodiscard]] double worth(int end, int place) const
    {
        return m_row[static_cast<std::size_t>(end)][place];
    }
    [[nodiscard]] double best(int sheet, int level) const;
    /// The rows of one best strip with lies below `end` from `place` on.
    void trace(int end, int place, std::vector<Row> &rows) const;

private:
    void unlimited(const double *from, double *to, int lie, double price) const;
    void limited(const double *from, double *to, int lie, double price, int copies);

    const Cloth &m_cloth;
    Meter &m_meter;
    std::vector<std::vector<double>> m_cells;
    std::vector<const double *> m_row;
    std::vector<double> m_price;
    std::vector<double> m_spare;
};

} // namespace matside::cutting
