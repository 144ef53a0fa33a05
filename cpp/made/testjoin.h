// SPDX-License-Identifier: MIT
#pragma once

#include "made/tolerances.h"
#include "project/basis.h"
#include "project/problem.h"

#include <optional>

namespace matside {

/// What a seam does to a sashing (F9), strip and block allowances alike.
[[nodiscard]] Length gapLeft(Length strip, Length seam, Length bulk); ///< W − 4 s′ − e_f
[[nodiscard]] Length visibleWidth(Length strip, Length seam);         ///< W − 2 s′
[[nodiscard]] Length pitch(Length trimmed, Length gap);               ///< T + g, seam to matching seam
[[nodiscard]] Length rowLength(std::int64_t columns, Length trimmed, Length gap); ///< c T + (c − 1) g

/// What the test join teaches.
struct JoinAnswer {
    Length gap;        ///< as measured, minus for an overlap
    Length wanted;     ///< the basis' `gapWanted`
    bool good = false; ///< within `overlapMost` and `gapMost` of what the plan leaves: may stay as it is
    Length newSeam;    ///< s′ + (g − wanted) / 4, for a seam kept level with its strip
    Length newStrip;   ///< or the strip cut this wide: W + (wanted − g)
    /// From seam to seam of the sashing sewn with `newSeam`, as a ruler lies on it: 2 s′, the filler and the
    /// wanted gap. It is W − 2 s′ (F9, on paper) less what went over the bulk or was sewn otherwise than
    /// said, which the measured gap holds.
    Length visible;
    /// A seam scanter than planned leaves the stitched outline in view by this …
    Length outlineShows;
    Length trimInside; ///< … unless blocks are trimmed with this ruler line on it and sewn as planned
    /// An overlap without unpicking: pare this off each allowance …
    Length pare;
    Length allowanceLeft;       ///< … which leaves this
    bool mayPare = false;       ///< no less than F7's least
    std::optional<Length> turn; ///< e = e_b(loft) = 1.5 t + 0.24 H once `between` was measured
    Length between;             ///< D: measured, else the visible width
};

/// Nothing when no gap was measured. `cutStrip` is the front sashing's cut width, `filler` the batting
/// between the allowances.
[[nodiscard]] std::optional<JoinAnswer> answerOf(const TestJoin &join, const Basis &basis, Length cutStrip,
                                                 const Tolerances &tolerances, Length filler = Length());

/// Draw-up of the test block each way (F21), or why it cannot be taken: `draw-up-out-of-range` (share, most)
/// at the way's pointer in the project file, with the offer to set the nearest that can.
struct DrawUpAnswer {
    DrawUp drawUp;
    std::vector<Problem> problems;
    Pair sendNext; ///< planned outline / (1 − d), rounded to a tick once; where there are problems, nothing
};
[[nodiscard]] DrawUpAnswer drawUpOf(const TestBlock &test, const Pair &outline);

} // namespace matside
