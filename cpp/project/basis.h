// SPDX-License-Identifier: MIT
#pragma once

#include "project/project.h"

namespace matside {

/// The project with every reckoned default filled in and every measured value in force:
/// what the formulas start from. Lengths that the trial has not yet settled are marked.
struct Basis {
    System system = System::Inch;
    Length seam;            ///< s: planned, or the test join's new seam
    Length finished;        ///< f: visible sashing
    Length allowance;       ///< the block's own allowance
    Length outside;         ///< a: cloth kept outside the outline
    Length edgeSeam;        ///< b: the binding's allowance
    Length usable;          ///< U of the hoop strips
    Length usableSashFront; ///< U of the front sashing's cloth
    Length usableSashBack;
    Length usableBinding;
    Share drawAlong;        ///< measured, else planned
    Share drawAcross;
    Pair field;
    Pair hoopOutside;
    bool blockTried = false; ///< the test block was measured
    bool joinTried = false;  ///< the test join was measured
};

[[nodiscard]] Basis basisOf(const Project &project);

/// Draw-up of a measured block, F21: 1 − outline / sent, in millionths, rounded half up.
[[nodiscard]] Share drawUp(Length sent, Length outline);

} // namespace matside
