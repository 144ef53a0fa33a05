// SPDX-License-Identifier: MIT
#pragma once

#include "project/project.h"

namespace matside {

/// The project with every reckoned default filled in and every measured value in force:
/// what the formulas start from. Lengths that the trial has not yet settled are marked.
struct Basis {
    System system = System::Inch;
    Length seam;     ///< s: as planned; strips and blocks are cut for it
    Length sewnSeam; ///< s': made.testJoin.seam once tried, else s
    Length nextSeam; ///< F9: s' + (g_m − g_w)/4 once a gap was measured, else s'
    /// g_w: 1/32 in | 0.8 mm between the allowances, or the gap the plan leaves there itself where the
    /// sashing is wider than two allowances and nothing fills it (F7).
    Length gapWanted;
    Length between;      ///< D: made.testJoin.between, else the visible sashing
    Length turn;         ///< e: fold.turn, or F10's e_b = 1.5 t + 0.24 loft once `between` was measured
    Length loft;         ///< H: made.testJoin.loft, else as planned
    Length finished;     ///< f: visible sashing
    Length allowance;    ///< the block's own allowance
    Length outside;      ///< a: cloth kept outside the outline; of a framed edge the frame with its binding
    Length edgeSeam;     ///< b: the binding's allowance
    Length cornerRadius; ///< ρ of the raw edge; 0 for square corners and scallops
    Length scallopDepth; ///< y; 0 for an edge without scallops
    Length usable;       ///< U of the hoop strips
    Length usableSashFront; ///< U of the front sashing's cloth
    Length usableSashBack;
    Length usableBinding;
    Length usableBatting;
    Share drawAlong; ///< measured, else planned
    Share drawAcross;
    Pair field;
    Pair hoopOutside;
    bool blockTried = false; ///< the test block was measured
    bool joinTried = false;  ///< the test join was measured
};

[[nodiscard]] Basis basisOf(const Project &project);

/// 1/8 in | 3 mm: a gap between two allowances that may stay open; a wider one is filled (F7).
[[nodiscard]] Length gapLeftOpen(System system);

/// The piece is bagged out: no binding, seam on the outline (F11).
[[nodiscard]] bool isBagged(const Project &project);

/// The edge has a frame of sashing all round; a bagged piece has none (F14).
[[nodiscard]] bool isFramed(const Project &project);

/// Width between the selvages of a cloth as it was measured; nothing when nobody has.
[[nodiscard]] std::optional<Length> measuredUsable(const Project &project, std::string_view cloth);

/// Draw-up of a measured block, F21: 1 − outline / sent, in millionths, rounded half up.
[[nodiscard]] Share drawUp(Length sent, Length outline);

} // namespace matside
