// SPDX-License-Identifier: MIT
#pragma once

#include "bench/shopping.h"

namespace matside {

/// One line of a class's cut list.
struct KitCut {
    Step step;
    std::int64_t each = 0; ///< in one kit; 0: only cut on the day, as bands are
    std::int64_t all = 0;  ///< on the cutting day
};

/// A cloth bought for all kits together, beside as much as each kit would take alone.
struct KitCloth {
    std::string cloth;
    Length together;
    Length oneByOne; ///< what one kit buys × kits; never less than `together`
    Length step;     ///< sold by
};

/// Short sashings of either face that each kit of a class has beyond the piece's own, for practice (F28).
constexpr std::int64_t practiceSashings = 1;

/// One piece of this step in each kit is for practice.
[[nodiscard]] bool practised(const Project &project, const Step &step);

/// What a class needs (F28).
struct KitPlan {
    std::int64_t kits = 1;
    std::vector<KitCut> cuts;
    std::vector<KitCloth> cloths;
    std::int64_t machineTenths = 0; ///< tenths of a minute at all machines together
    std::int64_t longestTenths = 0; ///< at one of the machines, blocks shared out evenly
};

/// `list` is the shopping list of all kits.
[[nodiscard]] KitPlan kitPlan(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                              const std::vector<Buy> &list);

/// The same piece made once, nothing of it cut yet; what was measured stands.
[[nodiscard]] Project oneKit(const Project &project);

} // namespace matside
