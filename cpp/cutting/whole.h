// SPDX-License-Identifier: MIT
#pragma once

#include "cutting/cloth.h"
#include "cutting/search.h"

#include <cstdint>
#include <limits>
#include <vector>

namespace matside::cutting {

/// Whole numbers of given strips: is there a plan of at most a given length with these strips alone? Branch
/// and bound over the counts N_k, then over single strips, on a dual simplex with bounded variables that
/// goes on from one node to the next. A node is given up only for a reason checked in whole numbers.
class Whole {
public:
    enum class Found { Yes, No, Unknown };

    /// `limit`: the prices by which the strips were chosen.
    Whole(const Cloth &cloth, std::vector<Strip> strips, Prices limit, Work &work);
    /// Spends at most `units` of work; `rounds` of cuts at most come before the branching.
    Found within(std::int64_t longest, std::int64_t units, int rounds = 24);
    [[nodiscard]] const std::vector<Cutting> &plan() const { return m_plan; }
    /// After No: the proof, but for `least` and `heights`; prices by units of the
    /// cloth.
    [[nodiscard]] Certificate proof() const;

private:
    static constexpr std::size_t none = std::numeric_limits<std::size_t>::max();
    static constexpr int cutBits = 20;
    static constexpr std::int64_t cutUnit = std::int64_t(1) << cutBits;
    enum class Node { Open, Closed };
    __extension__ using Wide = __int128;
    /// Σ worth · strips ≥ least, in `cutUnit`ths: valid for whole numbers of strips. Made from a sum of rows
    /// by F(z) = ⌊z⌋ + min(1, frac z / frac b) (mixed-integer rounding, Nemhauser & Wolsey 1990).
    struct Rounding {
        std::vector<std::int64_t> worth; ///< by strip
        std::int64_t least = 0;
        int known = -1; ///< its index in the proof
    };
    /// What a cut is made from: multipliers of the rows and weights of the slacks of earlier cuts.
    struct Seed {
        std::vector<std::int64_t> multipliers, weights; ///< in `cutUnit`ths
        std::int64_t part = 0;                          ///< frac b, in squares of it
        std::int64_t least = 0;
    };
    void layParts();
    void start();
    [[nodiscard]] std::vector<double> values() const;
    [[nodiscard]] double lengthNow() const;
    [[nodiscard]] std::int64_t worthIn(const Seed &seed, std::size_t v) const;
    bool sow(std::size_t row, double factor, Seed &seed) const;
    [[nodiscard]] double broken(const Seed &seed, const std::vector<double> &x) const;
    bool grow(const Seed &seed);
    bool addCuts();
    void dropCuts();
    void resize();
    Node tighten(int rounds);
    void factor();
    void exchange(std::size_t row);
    void sumLevels(const std::vector<double> &row);
    [[nodiscard]] std::vector<double> dual() const;
    void place();
    void reduce();
    void multiply(const std::vector<double> &row, std::vector<double> &out);
    void column(std::size_t variable);
    [[nodiscard]] std::size_t leaving() const;
    [[nodiscard]] std::size_t entering(std::size_t row, bool rising);
    bool swap(std::size_t row, std::size_t variable, bool rising);
    Node solve();
    bool priceRows(const std::vector<double> &y);
    [[nodiscard]] Wide restOf(std::size_t v, bool ray) const;
    [[nodiscard]] Wide sumOf(bool ray) const;
    bool exceeds(const std::vector<double> &y, bool ray);
    void compact();
    void keep(const std::vector<std::int64_t> &prices, bool ray);
    bool tooLong();
    bool explore(int node);
    int split(int node, std::size_t variable, int value);
    [[nodiscard]] std::size_t fractional(double &value) const;
    bool side(int node, std::size_t variable, double low, double high);

    const Cloth &m_cloth;
    Work &m_work;
    std::vector<Strip> m_strips;
    std::size_t m_rows, m_columns, m_plain; ///< plain: rows that are not cuts
    std::vector<Rounding> m_cuts;
    std::vector<std::pair<Rounding, std::vector<double>>> m_grown; ///< cuts about to be added
    std::vector<std::vector<double>> m_cutWorth;                   ///< by cut, by strip
    std::vector<std::size_t> m_begin;                              ///< by strip: its parts
    std::vector<int> m_partRow;
    std::vector<double> m_partCount;
    std::vector<std::vector<double>> m_dense;  ///< the same by row, by strip
    std::vector<double> m_cost, m_low, m_high; ///< strips, then the slack of every row
    std::vector<std::size_t> m_basis;
    std::vector<char> m_atHigh, m_basic;
    std::vector<double> m_inverse, m_x, m_reduced, m_alpha, m_way, m_prefix;
    int m_sinceFactored = 0;
    std::int64_t m_longest = 0, m_end = 0;
    bool m_unsure = false;
    std::vector<Cutting> m_plan;
    std::vector<std::int64_t> m_price, m_levelPrice; ///< of the rows, in whole numbers
    std::vector<Prices> m_limits;                    ///< by which strips were dropped
    Prices m_prices;                                 ///< what closed the last node
    std::vector<Certificate::Node> m_nodes;          ///< `strip` as an index of `m_strips`
    std::vector<RoundingCut> m_known;
};

} // namespace matside::cutting
