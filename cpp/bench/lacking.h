// SPDX-License-Identifier: MIT
#pragma once

#include "bench/step.h"

namespace matside {

/// What has to be done before a step can be done once more: `maker` so many times more, one at least.
struct Lacking {
    std::size_t maker = 0; ///< among the steps
    std::int64_t more = 1;
    std::int64_t inAll =
        1; ///< steps at the maker's station, in their order, until all the step takes is there
};

/// The first thing a step takes or needs of which too little is made for one repetition more; nothing where
/// all is there, nor for what is taken by no count. Each layered strip takes one strip of each cloth, so as
/// many can be layered as are cut of each.
[[nodiscard]] std::optional<Lacking> lackingFor(const std::vector<Step> &steps, const Step &step);

} // namespace matside
