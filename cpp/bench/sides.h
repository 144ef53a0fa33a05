// SPDX-License-Identifier: MIT
#pragma once

#include "bench/step.h"

namespace matside {

/// Sides of the block in hand that are cut at a trimming step, 0…3: the fourth counts the block. `block` is
/// its name, empty at the trial.
[[nodiscard]] std::int64_t sidesCut(const Project &project, const Step &step, const std::string &block);

/// One more of them cut, an event of its own: it outlives a closed program and is taken back alone. `line` is
/// the ruler's on the stitches, where it was cut by one.
[[nodiscard]] Project withSideCut(const Project &project, const Step &step, const std::string &block,
                                  const std::optional<Length> &line);

/// The line by which the side across from the one at hand was cut; none before that is cut, or where it was
/// cut by none.
[[nodiscard]] std::optional<Length> lineOppositeTo(const Project &project, const Step &step,
                                                   const std::string &block);

/// Whether the first of the sides cut was cut by the line on its stitches.
[[nodiscard]] bool begunByLine(const Project &project, const Step &step, const std::string &block);

/// A common size taken for all blocks: their size from now on, and noted as what it is.
[[nodiscard]] Project withCommonSize(const Project &project, const Pair &size);
/// The width or height of the blocks is one that was taken so.
[[nodiscard]] bool takenAsCommon(const Project &project, Length size);

/// How many blocks of the strip to be cut apart are not stitched yet; 0 at any other step.
[[nodiscard]] std::int64_t stitchedBeforeApart(const std::vector<Step> &steps, const Plan &plan,
                                               const Step &step);

/// A strip of n blocks comes apart with n − 1 cuts: its last block is off with the one before. The ends of a
/// strip go with a block's own sides. True where the block at hand is that one.
[[nodiscard]] bool apartAlready(const Plan &plan, const Step &step);

} // namespace matside
