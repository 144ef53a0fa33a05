// SPDX-License-Identifier: MIT
#pragma once

#include "bench/step.h"
#include "project/problem.h"

#include <vector>

namespace matside {

/// What is made to other measures than the plan has now, as cautions at the field that says them: stitched
/// blocks
/// (`blocks-otherwise`: how many, sent width, sent width now), hoop, sashing and binding strips cut
/// (`hoop-strips-otherwise`, `sashing-strips-otherwise`, `binding-strips-otherwise`: how many, width, width
/// now). Of another number of columns or rows: stitched blocks that have no place any more
/// (`blocks-without-place`: how many, the first of them), long sashings cut (`longs-otherwise`: how many,
/// length, length now) and rows joined (`rows-otherwise`: how many, blocks in one, columns now). It stays as
/// it is: nothing is counted anew.
[[nodiscard]] std::vector<Problem> madeOtherwise(const Project &project, const Plan &plan,
                                                 const std::vector<Step> &steps);

/// Cuts of a cloth that count for nothing now, because another cloth has its part: `cut-of-another-cloth`
/// (its name), at the other's part.
[[nodiscard]] std::vector<Problem> cutOfAnother(const Project &project, const std::vector<Step> &steps);

} // namespace matside
