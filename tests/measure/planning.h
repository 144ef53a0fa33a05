// SPDX-License-Identifier: MIT
#pragma once

#include "project/project.h"
#include "times.h"

namespace measure {

/// 30 × 30 blocks of 6 in in an invented two-ring hoop, with twelve cloths: larger than anybody's table.
[[nodiscard]] matside::Project largePiece();

struct Planned {
    Times all;
    int refused = 0; ///< sizes that do not go, told with remedies
};

/// plan() once for each step of a drag that takes the block's size up and down by 1/16 in.
[[nodiscard]] Planned planWhileDragging(int moves);

/// plan() of the large piece with so many columns and rows, 200 times.
[[nodiscard]] Times planOf(int columns, int rows);

/// plan() for pieces of 1 to 1000 columns.
void planByColumns();

} // namespace measure
