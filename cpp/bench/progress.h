// SPDX-License-Identifier: MIT
#pragma once

#include "bench/step.h"

namespace matside {

/// The `does` under which a step's progress stands in `made.cut`, beside its cloth: the step's id without
/// its cloth ("cut-strip", "trial/cut-strip", "cut-long-piece-2").
[[nodiscard]] std::string progressName(const Step &step);

/// Fills in `done` of every step from what was made. Spoiled pieces are not done: they are to be made again.
void takeProgress(const Project &project, std::vector<Step> &steps);

} // namespace matside
