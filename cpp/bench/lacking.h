// SPDX-License-Identifier: MIT
#pragma once

#include "bench/step.h"

namespace matside {

/// What has to be done before a step can be done once more: `maker` so many times more, one at least.
struct Lacking {
    std::size_t maker = 0; ///< among the steps
    std::int64_t more = 1;
};

/// The first thing a step takes of which too little is made for one repetition more; nothing where all is
/// there. Each layered strip takes one strip of each cloth, so as many can be layered as are cut of each.
/// Of a band as many pieces are there as the layout has places for them on the bands cut; strips of filler
/// are cut up longest piece first, so all of them are cut before the first is laid in. A block is stitched on
/// a strip that is marked: `strip` is the one worked on, 0: the first one open. A squared end is
/// not waited for, nor anything that has been made as often as it is wanted.
[[nodiscard]] std::optional<Lacking> lackingFor(const Project &project, const Plan &plan,
                                                const std::vector<Step> &steps, const Step &step,
                                                std::int64_t strip = 0);

} // namespace matside
