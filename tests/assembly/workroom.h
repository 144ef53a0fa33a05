// SPDX-License-Identifier: MIT
#pragma once

#include "shelf.h"

#include <optional>

/// A workroom on paper: it is handed the steps of a plan file and nothing else of it. It cuts rectangles
/// from rectangles, sews edge to edge and folds; only at the end are its pieces compared with the plan.
namespace workroom {

/// What the room's shelves hold: widths of cloth, and the settings of the maker that no step repeats.
struct Room {
    std::map<std::string, Length> usable; ///< cloth id → width between the selvages
    Length shortSpare;
    Length longSpare;
    Length slack;
    std::int64_t columns = 1;
    std::int64_t rows = 1;
    std::int64_t kits = 1;
    std::int64_t spare = 0;
    std::optional<Length> allowance = {}; ///< of the blocks, where it is not the seam
};

/// Does the steps in order. The answer is empty when the piece came out as the plan says it should,
/// or says what went wrong first.
[[nodiscard]] std::string makeThePiece(const Json &plan, const Room &room);

} // namespace workroom
