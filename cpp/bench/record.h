// SPDX-License-Identifier: MIT
#pragma once

#include "bench/step.h"

namespace matside {

/// One repetition of a step done, as it stands in `made` afterwards. A stitched block is logged with its
/// name, strip and place (`strip` 0: the first strip that is open); a trimmed one gets its state; everything
/// else is counted in `made.cut`, what was touched last standing last.
[[nodiscard]] Project withDone(const Project &project, const Plan &plan, const Step &step,
                               std::int64_t strip = 0);

/// The piece last made at this step, or in hand at it, is spoiled: it stays on record and is to be made
/// again; a spoiled block first uses up a spare. Nothing else changes.
[[nodiscard]] Project withSpoiled(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                                  const Step &step, std::int64_t strip = 0);
/// Good spares take the places of blocks that are no longer good, so that nothing need be made again.
void letASpareStandIn(Project &project);
/// A block that was good is lost, given away or spoiled (`as`), wherever it is: every step it has passed
/// counts one less, and a spare takes its place where there is one. Nothing without such a block.
[[nodiscard]] Project withBlockGone(const Project &project, const std::vector<Step> &steps, const Step &at,
                                    const std::string &block, BlockState as);
/// The piece last done at this step turned out spoiled (it was counted already).
[[nodiscard]] Project withLastSpoiled(const Project &project, const std::vector<Step> &steps,
                                      const Step &step);

/// Adds so many done and spoiled to the count of a step.
void countUp(Project &project, const Step &step, std::int64_t done, std::int64_t spoiled);

/// The name of the block in hand at a step that goes block by block; empty at others.
[[nodiscard]] std::string blockInHand(const Project &project, const Plan &plan, const Step &step,
                                      std::int64_t strip = 0);

/// A pressed patch can no longer be trimmed: pressing waits until the patches of the block in hand are.
[[nodiscard]] bool waitsForScissors(const std::vector<Step> &steps, const Step &step);

/// The pressing that the block at hand still needs before it is cut off its strip or trimmed, among the
/// steps; nothing where it is pressed or not stitched yet, nor at any other step.
[[nodiscard]] std::optional<std::size_t> pressedFirst(const std::vector<Step> &steps, const Step &step);

/// True for the steps every block passes, from stitching to trimming.
[[nodiscard]] bool goesBlockByBlock(const Step &step);

} // namespace matside
