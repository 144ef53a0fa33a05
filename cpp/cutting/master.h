// SPDX-License-Identifier: MIT
#pragma once

#include "cutting/cloth.h"
#include "cutting/table.h"

#include <cstdint>
#include <deque>
#include <limits>
#include <unordered_map>
#include <vector>

namespace matside::cutting {

constexpr int anyCount = std::numeric_limits<int>::max() / 4;
constexpr std::int64_t priceUnit = std::int64_t(1) << 22;

/// The covering programme over strips, relaxed: least Σ height · strips so that every size is covered, the
/// number N_k of strips at least heights[k] high keeps within its bounds and no owned piece is used up
/// twice. Columns (strips) are priced in on demand; the basis is kept from one call to the next, so that
/// after a changed demand or bound only a few pivots follow.
///
/// Rows: sizes, then levels, then owned pieces. The floating point only proposes: `bound` and `proof` come
/// from prices rounded to whole numbers and checked by the exact pricing table.
class Master {
public:
    enum class Outcome { Solved, None, Beyond, Stopped }; ///< None: no such plan, proved by `proof`

    Master(const Cloth &cloth, Table &table, Meter &meter);

    /// Everything that a later call can return to.
    struct State {
        std::vector<int> basis, active, need, least, most;
        std::vector<char> atMost;
        std::vector<double> inverse;
        std::vector<std::int64_t> left;
        int sinceFactored = 0;
    };
    [[nodiscard]] State save() const { return m_state; }
    void restore(const State &state) { m_state = state; }

    /// Proposes a strip; what does not fit the present demand is left out of it.
    void propose(const Strip &strip) { addFitted(strip); }
    /// The present demand; columns with more than is needed are trimmed to it.
    void setNeed(const std::vector<int> &need);
    void setCounts(const std::vector<int> &least, const std::vector<int> &most);
    /// What is left of each owned piece, in units.
    void setLeft(const std::vector<std::int64_t> &left) { m_state.left = left; }
    /// Levels strips may have; columns of the others are dropped.
    void allow(const std::vector<char> &levels);

    /// Solves; gives up as Beyond as soon as the safe bound exceeds `enough`.
    Outcome solve(std::int64_t enough = std::numeric_limits<std::int64_t>::max());

    struct Use {
        const Strip *strip = nullptr;
        double times = 0;
    };
    [[nodiscard]] const std::vector<Use> &uses() const { return m_uses; }
    [[nodiscard]] const std::vector<double> &counts() const { return m_counts; } ///< N_k by level
    [[nodiscard]] std::int64_t bound() const { return m_bound; }                 ///< safe; in units
    [[nodiscard]] const Prices &proof() const { return m_proof; }                ///< of `bound`, or of None
    /// Of the last pricing: what a strip of the level may be worth at most.
    [[nodiscard]] double room(int sheet, int level) const;
    [[nodiscard]] const std::vector<double> &prices() const { return m_prices; }
    [[nodiscard]] std::int64_t worthOfAll() const { return m_worth; } ///< Σ prices·rows, `priceUnit`ths
    [[nodiscard]] double violation() const { return m_violation; }    ///< largest worth − room, ≥ 0

private:
    struct Column {
        Strip strip;
        std::vector<Row> parts; ///< size, count
        long used = 0;
    };
    [[nodiscard]] double rowLeast(std::size_t row) const;
    [[nodiscard]] double rowMost(std::size_t row) const;
    [[nodiscard]] double most(int basic) const;
    [[nodiscard]] double least(int basic) const;
    [[nodiscard]] bool proper(const Column &column) const;
    [[nodiscard]] double cost(const Strip &strip) const;
    int addFitted(const Strip &strip);
    int add(const Strip &strip);
    void dropImproper();
    void dropIdle();

    void fillUp(Strip &strip) const;

    void factor();
    bool invert(std::vector<double> &basis);
    void markBasic();
    void place();
    [[nodiscard]] bool phaseOne() const;
    void computePrices(bool first);
    int entering(bool first, bool bland, double &rate) const;
    void column(int entering, std::vector<double> &out) const;
    bool pivot(int enters, double rate);
    int leaving(double way, double &step, bool &toMost) const;
    bool improve(bool &first);
    bool price(bool first);
    void roundPrices(bool first);
    [[nodiscard]] bool tooDear() const;
    void takeBound(bool first);
    void finish();

    const Cloth &m_cloth;
    Table &m_table;
    Meter &m_meter;
    std::size_t m_rows;
    State m_state;
    std::vector<char> m_allowed;
    std::deque<Column> m_columns;
    std::unordered_map<std::uint64_t, int> m_known;
    std::vector<double> m_x, m_least, m_most; ///< basic variables and their bounds
    std::vector<double> m_dual, m_zed, m_way;
    std::vector<char> m_basic; ///< by row: its slack is in the basis
    std::vector<Use> m_uses;
    std::vector<double> m_counts, m_prices, m_rounded, m_room;
    std::int64_t m_bound = 0, m_worth = 0;
    double m_violation = 0, m_scale = 1, m_lowRoom = 0;
    bool m_refuted = false;
    Prices m_proof;
    long m_calls = 0, m_pivots = 0;
};

} // namespace matside::cutting
