// SPDX-License-Identifier: MIT
#pragma once

#include "made/tolerances.h"
#include "project/project.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace matside {

/// Which block lies at each place of the layout. `places` are the places' names row by row ("A1" …); a block
/// lies at its own unless `made` says otherwise. Of two said to lie at one place the first does; a block
/// whose own place is taken, as one made again, gets the place left over.
[[nodiscard]] std::vector<std::string> laidOut(const Project &project,
                                               const std::vector<std::string> &places);

/// Two blocks change places; their labels stay with them. Nothing when one of the two was not logged yet.
[[nodiscard]] std::optional<Project> withSwapped(const Project &project,
                                                 const std::vector<std::string> &places, std::size_t first,
                                                 std::size_t second);

/// What lies at a place, for a proposal.
struct Laid {
    bool measured = false;
    Length off;         ///< from the size all are trimmed for, the worse way
    bool fixed = false; ///< sewn to its neighbour already, or not made yet
};

/// Why two places should change their blocks.
enum class SwapFor {
    EndColumn, ///< off-size blocks stand together in an end column, one a row, where every row takes one
    End,       ///< a single one at an end of its row, where it shows least
    Centre     ///< the block nearest to its size in the middle
};
struct Swap {
    SwapFor why = SwapFor::End;
    std::size_t first = 0; ///< places, row by row
    std::size_t second = 0;
};
/// The next swap that betters the layout, or nothing when it lies well: off-size blocks (farther off than
/// `tolerances.size`) go to the ends first, then the best comes to the middle. Practice. Done one after the
/// other the proposals end after at most one for each block and one more.
[[nodiscard]] std::optional<Swap> nextSwap(std::int64_t columns, std::int64_t rows,
                                           const std::vector<Laid> &laid, const Tolerances &tolerances);

} // namespace matside
