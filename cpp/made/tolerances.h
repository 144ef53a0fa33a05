// SPDX-License-Identifier: MIT
#pragma once

#include "length/length.h"

namespace matside {

/// What is still good work, inch | metric: hers to set. The values she starts with are common practice
/// (F23–F25); no published limit for them is known.
struct Tolerances {
    Length agree;             ///< 1/8 in | 3 mm: |K| up to this, the readings agree
    Length doubtful;          ///< 3/16 in | 5 mm: beyond it something was misread
    Length plainDiagonals;    ///< 3/16 in | 5 mm: a square's diagonals differ by no more: cut plainly
    Length splitDiagonals;    ///< 5/16 in | 8 mm: no more: split the lean
    Length plainWander;       ///< 9/128 in | 1.8 mm: the line's departure from the seam, squared off one side
    Length splitWander;       ///< 1/16 in | 1.6 mm: the same when the lean is split
    Length size;              ///< 1/16 in | 1.5 mm: an outline this near to its size is at size
    Length under;             ///< 1/8 in | 3 mm: a smaller outline is stitched anew
    Length over;              ///< 1/4 in | 6 mm: a larger one too; also the most a common size may take off
    Length tiltLeast;         ///< 1/16 in | 1.5 mm: opposite sides that differ by more tilt
    Length tiltMost;          ///< 1/8 in | 3 mm: a side tilted by more is stitched anew
    Length trimmedDiagonals;  ///< 1/8 in | 3 mm: a trimmed block's diagonals differ by no more
    Length trim;              ///< 1/32 in | 0.8 mm: a trim
    Length gapWanted;         ///< 1/32 in | 0.8 mm between two allowances
    Length gapMost;           ///< 1/8 in | 3 mm
    Length overlapMost;       ///< 1/16 in | 1.5 mm
    Length visible;           ///< 1/16 in | 1.5 mm: a sashing's visible width against its neighbour
    Length crossing;          ///< 1/16 in | 1.5 mm
    Length rowPerColumn;      ///< 1/16 in | 1.5 mm a column: a row farther from the mean is corrected
    Length easePerBlock;      ///< 1/16 in | 1.5 mm a block can be eased
    Length opposite;          ///< 1/8 in | 3 mm: a finished piece's opposite sides
    Length oppositeLarge;     ///< 1/4 in | 6 mm: the same over `large`
    Length large;             ///< 60 in | 1500 mm
    Length finishedDiagonals; ///< 1/4 in | 6 mm for every `large`
    friend bool operator==(const Tolerances &, const Tolerances &) = default;
};
[[nodiscard]] Tolerances usualTolerances(System system);

/// The least an allowance may be pared to: 3/8 in | 9 mm from a 1/2 in | 12 mm seam up, 1/4 in | 6 mm below
/// it (F7), never more than three quarters of the seam; under `remake` (1/4 in | 6 mm, at most half the
/// seam) nothing holds it any more (F25).
struct LeastAllowance {
    Length pare;
    Length remake;
};
[[nodiscard]] LeastAllowance leastAllowance(Length seam, System system);

} // namespace matside
