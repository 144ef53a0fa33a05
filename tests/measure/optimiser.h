// SPDX-License-Identifier: MIT
#pragma once

#include "times.h"

namespace measure {

/// What the optimiser made of a number of jobs: bought lengths and their proofs, without the handwork. The
/// times are what the solver takes of one processor.
struct Cut {
    Times times;
    double slowest = 0; ///< ms: of the jobs' medians, the longest
    int jobs = 0;
    int proved = 0;
    int within = 0;    ///< proved within 16 ms
    int widest = 0;    ///< purchase steps between what is bought and what is proved to be needed
    int later = 0;     ///< random jobs that were proved with 400 000 units of work and not before
    int left = 0;      ///< of random jobs, the widest gap then
    int differing = 0; ///< bought lengths that are not the optimum found by a general solver
};

/// The invented jobs, each directional and turned: sampler, blocks and metric pieces; then the two of 2000
/// pieces. Their optima were found by CBC 2.10.8 or HiGHS 1.15 with level models (tests/bench/cutmodels.cpp
/// writes them), those of the 2000 pieces by a bound of a general LP solver and the plan.
[[nodiscard]] Cut cutInvented(int rounds);
/// With 100 000 units of work, five times the room's own budget: the turned one wants that much.
[[nodiscard]] Cut cutLarge(int rounds);
/// `count` random jobs of 2 to 8 sizes (tests/bench/cutsrandom.h), inch and metric in turn.
[[nodiscard]] Cut cutRandom(bool turn, int count);

} // namespace measure
