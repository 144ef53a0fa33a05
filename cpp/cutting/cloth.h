// SPDX-License-Identifier: MIT
#pragma once

#include "cutting/answer.h"

#include <cstdint>
#include <vector>

namespace matside::cutting {

/// One size lying one way on the cloth.
struct Lie {
    int size = 0;
    bool turned = false;
    Ticks width = 0;       ///< across the cloth
    std::int64_t high = 0; ///< along it, in units of the cloth
    int level = 0;         ///< index of its height
    int cells = 0;         ///< width in cells (even cells only)
};

/// Pieces of one lie side by side.
struct Row {
    int lie = 0, count = 0;
    friend bool operator==(const Row &, const Row &) = default;
};

/// One possible strip: of the bought cloth (sheet 0) or of owned piece `sheet` − 1.
struct Strip {
    int sheet = 0, level = 0;
    std::vector<Row> rows;
    friend bool operator==(const Strip &, const Strip &) = default;
};

/// Strips of a plan under way.
struct Cutting {
    Strip strip;
    int times = 0;
};

/// A cloth strips can be cut from.
struct Sheet {
    Ticks width = 0;
    std::int64_t high = 0; ///< in units; the bought cloth has no end
    int place = 0;         ///< index of its width among the places
};

/// A checked job made ready for planning: heights in units of their common divisor, the lies in rising
/// height, and the places (reachable sums of widths) the pricing table runs over. Where widths share a
/// divisor that leaves few cells, every cell is a place; otherwise only sums that occur are.
class Cloth {
public:
    /// Which way widths are rounded to cells if there are too many places: up, so that every plan can be
    /// cut, or down, so that every bound holds.
    enum class Rounding { Up, Down };
    explicit Cloth(const Job &job, Rounding rounding = Rounding::Up);

    std::vector<int> need;                ///< by size
    std::vector<Lie> lies;                ///< rising height, then falling width
    std::vector<std::int64_t> heights;    ///< in units, rising
    std::vector<int> lieEnd;              ///< by level: lies before it are no higher
    std::vector<std::vector<int>> liesOf; ///< by size, lowest first
    std::vector<Sheet> sheets;
    Ticks unit = 1;
    bool even = true;                   ///< places are cells
    bool rough = false;                 ///< too many places: widths were rounded to cells
    int places = 0;                     ///< highest place
    std::vector<std::vector<int>> back; ///< by lie (uneven only): place before one more piece, −1 none

    [[nodiscard]] int sizes() const { return static_cast<int>(need.size()); }
    [[nodiscard]] int levels() const { return static_cast<int>(heights.size()); }
    [[nodiscard]] int owned() const { return static_cast<int>(sheets.size()) - 1; }
    /// The place left after laying one more of `lie` from `place`, −1 if it does not fit.
    [[nodiscard]] int after(int lie, int place) const;
    [[nodiscard]] const Lie &lie(int j) const { return lies[static_cast<std::size_t>(j)]; }
    [[nodiscard]] const Sheet &sheet(int s) const { return sheets[static_cast<std::size_t>(s)]; }
    [[nodiscard]] std::int64_t high(int level) const { return heights[static_cast<std::size_t>(level)]; }
    [[nodiscard]] bool fits(int j, int s) const;

    [[nodiscard]] std::int64_t lengthOf(const std::vector<Cutting> &plan) const;
    [[nodiscard]] Plan planOf(const std::vector<Cutting> &plan) const;

private:
    void layOut(const Job &job);
    void findPlaces(Rounding rounding);
    std::vector<Ticks> reachable(std::size_t most) const;
};

/// Every demand of the job as sizes, pieced strips after the others.
[[nodiscard]] std::vector<Size> sizesOf(const Job &job);

} // namespace matside::cutting
