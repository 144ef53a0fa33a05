// SPDX-License-Identifier: MIT
#pragma once

#include "bench/step.h"

namespace matside {

/// Where the rulers lie to cut `width` from a cut edge along `cutLength`. In order of preference: one ruler
/// long enough, two butted with a fence long enough, one slid along, two slid along, the mat.
[[nodiscard]] RulerPlace placeRulers(const std::vector<Ruler> &rulers, Length width, Length cutLength,
                                     std::int64_t layers);

/// The ruler's allowance line on the stitched outline of a block `trimmed` on its longer side.
[[nodiscard]] RulerPlace placeOnOutline(const std::vector<Ruler> &rulers, Length allowance, Length trimmed);

/// Layers of plain cloth for a strip this wide that is used in pieces this long: folded once, unless the
/// bend at the fold would show: strips under 2 in | 50 mm, or used over more than 30 in | 760 mm (F26).
[[nodiscard]] std::int64_t layersFor(System system, Length width, Length usedLength);

/// Straight width left in a strip used over a length across the fold, when the ruler's line departs from
/// the fold by `off` over a ruler's `width`: W − (ℓ/2)·off/width (F26).
[[nodiscard]] Length straightWidth(Length strip, Length usedLength, Length off, Length width);

} // namespace matside
