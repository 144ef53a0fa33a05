// SPDX-License-Identifier: MIT
#pragma once

#include "plan/working.h"

#include <optional>
#include <vector>

namespace matside {

/// One length of a sum as it is laid end to end with the others.
struct SumPiece {
    std::optional<std::size_t> term; ///< which of the working's terms it is; none for a root
    Length from;                     ///< where it begins, from the sum's own beginning
    Length length;
    bool less = false; ///< taken off: it lies back from the end of what was laid before
    bool rest = false; ///< what rounding up adds
};

/// What is laid end to end for one way of reckoning.
struct SumWay {
    std::vector<SumPiece> pieces;
    Length end;
    bool counts = true;     ///< false for the shorter of two ways
    std::int64_t times = 1; ///< so often it is laid one after another
};

enum class SumKind {
    Words,  ///< no lengths to lay: counts, or a product of lengths
    Sum,    ///< one way; its end is the figure
    Larger, ///< several ways; the one that counts ends at the figure
    Part,   ///< what is left is parted, and one part is the figure
    Often   ///< how often the second way lies in the first
};

/// A sum as lengths laid on a table beside each other, all to one scale.
struct LaidSum {
    SumKind kind = SumKind::Words;
    std::vector<SumWay> ways;
    std::int64_t parts = 1; ///< of a part: into how many what is left is parted
    Length least;           ///< the leftmost and the rightmost place of all that is laid
    Length most;
};

[[nodiscard]] LaidSum laidOf(const Working &working);

} // namespace matside
