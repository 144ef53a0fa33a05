// SPDX-License-Identifier: MIT
#pragma once

#include "cutting/cloth.h"
#include "cutting/table.h"

#include <cstdint>
#include <vector>

namespace matside::cutting {

/// What is still to be cut, and from what.
struct Rest {
    std::vector<int> need;          ///< by size
    std::vector<std::int64_t> left; ///< of each owned piece, in units
    std::vector<int> most;  ///< by level: strips at least so high that may still be cut from the bought cloth
    std::int64_t spent = 0; ///< bought so far, in units
    std::vector<Cutting> laid;

    [[nodiscard]] bool done() const;
    [[nodiscard]] std::int64_t pieces() const;
};

[[nodiscard]] Rest restOf(const Cloth &cloth);

/// The lowest allowed level not below `level`, −1 if none.
[[nodiscard]] int levelFrom(const std::vector<char> &allowed, int level);

/// Cuts `strip` up to `times` times, each time what is still needed of it, in the lowest allowed height.
/// Stops where an owned piece or a count of strips is used up; gives back how many strips were cut.
int cut(const Cloth &cloth, const std::vector<char> &allowed, const Strip &strip, int times, Rest &rest);

/// Ways to fill a strip begun with the tallest piece left.
enum class Filling { TallestFirst, Widest, Largest, Tall };
constexpr Filling fillings[] = {Filling::TallestFirst, Filling::Widest, Filling::Largest, Filling::Tall};

/// Cuts all that is left, strip by strip: owned pieces first, then the tallest piece left begins a strip.
/// False if a count of strips forbids it, or as soon as more than `enough` is spent.
bool fillGreedily(const Cloth &cloth, Table &table, const std::vector<char> &allowed, Filling filling,
                  std::int64_t enough, Rest &rest);

} // namespace matside::cutting
