// SPDX-License-Identifier: MIT
#pragma once

#include "bench/step.h"
#include "plan/plan.h"

#include <vector>

namespace matside {

/// Whether the next piece of this cut comes from cloth that is there already, as the shopping list reckons:
/// of each width the pieces that lie there are cut first. Packages still to be bought are not meant.
[[nodiscard]] bool comesFromOwned(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                                  const Step &step);

} // namespace matside
