// SPDX-License-Identifier: MIT
#pragma once

#include "cutting/answer.h"
#include "length/result.h"

#include <cstdint>
#include <stop_token>

namespace matside::cutting {

/// How long to go on. One work unit is about a microsecond of a desk computer, but is counted from
/// what is done, not from a clock: the same job and budget give the same answer anywhere.
struct Budget {
    std::int64_t bought = 20'000;  ///< for the bought length and its proof
    std::int64_t handwork = 4'000; ///< for fewer strip heights and cuts once the length is settled; 0: leave
};

/// The least cloth to buy for `job`, with a plan and a lower bound.
///
/// Aims in order: least bought length, fewest strip heights, fewest cuts. The first is proved whenever
/// `Answer::proved()`; the others are the best found. Method: greedy filling; column generation (Gilmore &
/// Gomory 1961, 1963) with bounds in integers; diving; branching on how many strips are at least so high.
///
/// Pure: no clock, no chance. `previous` is the answer to a similar job (the sizes in the same order);
/// its strips are taken as first proposals. A stop gives the best plan so far and the bound so far.
[[nodiscard]] Result<Answer, Refusal> solve(const Job &job, Budget budget = {}, std::stop_token stop = {},
                                            const Answer *previous = nullptr);

/// Strips along the selvage that buy at least a step less than `below`, all of them side by side over the one
/// length: the cloth runs one way. Where none does, that is proved or said.
[[nodiscard]] Result<Lengthwise, Refusal> solveLengthwise(const Job &job, Ticks below, Budget budget = {},
                                                          std::stop_token stop = {});

/// The first reason to refuse the job, or nothing to say: `ok` is true then.
struct Verdict {
    bool ok = true;
    Refusal refusal;
};
[[nodiscard]] Verdict check(const Job &job);

/// Full-width strips needed for a pieced strip: n strips sewn end to end have n − 1 joins, so
/// n = ⌈(total − loss) / (usable − loss)⌉.
[[nodiscard]] std::int64_t stripsFor(const PiecedStrip &strip, Ticks usable);

/// Strip heights, layouts and cuts of a plan for `job`.
[[nodiscard]] Handwork handworkOf(const Job &job, const Plan &plan);

} // namespace matside::cutting
