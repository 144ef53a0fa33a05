// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"

#include <cstdint>

namespace matside {

/// Time for the whole piece, spare blocks and kits with it, in tenths of a minute (F20). The minutes are one
/// maker's (common practice, no published source); at the machine her own average takes their place once
/// three blocks were timed.
struct Hours {
    std::int64_t machine = 0;  ///< hooping, stitching, patches: the forecast for a block, times the blocks
    std::int64_t trimming = 0; ///< 3 a block
    std::int64_t joining = 0;  ///< 9 a short sashing; a long 2.5 a foot and 5
    std::int64_t edging = 0;   ///< 1.5 an inch of edge by hand, 0.6 by machine; none where it is bagged
    bool ownMinutes = false;   ///< `machine` from her own timed blocks

    [[nodiscard]] std::int64_t all() const { return machine + trimming + joining + edging; }
};
[[nodiscard]] Hours hoursFor(const Project &project, const Plan &plan);

} // namespace matside
