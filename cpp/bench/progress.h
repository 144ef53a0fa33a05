// SPDX-License-Identifier: MIT
#pragma once

#include "bench/step.h"

namespace matside {

/// The `does` under which a step's progress stands in `made.cut`, beside its cloth: the step's id without
/// its cloth ("cut-strip", "trial/cut-strip", "cut-long-piece-2").
[[nodiscard]] std::string progressName(const Step &step);

/// Spoiled blocks that a spare makes good: there is nothing to make for them.
[[nodiscard]] std::int64_t madeGoodBySpares(const Project &project);

/// Fills in `done` of every step from what was made: `made.cut`, or the states of `made.blocks` and the
/// measured rows where they say more, never over `count`. Spoiled pieces are not done: they are to be made
/// again, and `count` stays. A test that was measured leaves nothing of its part of the trial to do, and an
/// end squared stays square when the trial is put off or taken back.
void takeProgress(const Project &project, std::vector<Step> &steps);

} // namespace matside
