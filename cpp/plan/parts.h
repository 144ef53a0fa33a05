// SPDX-License-Identifier: MIT
#pragma once

#include "plan/formulas.h"
#include "plan/plan.h"

namespace matside {

/// The steps of plan(), in the order the numbers flow. Each reads only what stands before it.
[[nodiscard]] BlockPlan planBlock(const Project &project, const Basis &basis);
[[nodiscard]] SashingPlan planSashing(const Project &project, const Basis &basis, const BlockPlan &block,
                                      const Measures &m);
[[nodiscard]] StripPlan planStrip(const Project &project, const Basis &basis, const BlockPlan &block,
                                  const SashingPlan &sashing, const Measures &m);
[[nodiscard]] std::optional<FoldPlan> planFold(const Project &project, const Basis &basis,
                                               const SashingPlan &sashing, const Measures &m);
[[nodiscard]] SizePlan planSize(const Project &project, const Basis &basis, const BlockPlan &block,
                                const SashingPlan &sashing, const Measures &m);
[[nodiscard]] std::optional<BindingPlan> planBinding(const Project &project, const Basis &basis,
                                                     const SizePlan &size, const Measures &m);
[[nodiscard]] std::optional<FramePlan> planFrame(const Project &project, const Basis &basis,
                                                 const SizePlan &size, const Measures &m);
[[nodiscard]] std::optional<TablePlan> planTable(const Project &project, const SizePlan &size);
[[nodiscard]] std::vector<PatchPlan> planPatches(const Project &project, const Measures &m);
[[nodiscard]] BattingPlan planBatting(const Project &project, const Basis &basis, const BlockPlan &block,
                                      const StripPlan &strip, const Measures &m);

/// The end margin with or without waste tails (F4).
[[nodiscard]] Length endMargin(const Project &project, const Basis &basis, Length reach, bool tails,
                               const Measures &m);
/// The gap the rules ask for, whatever was entered (F3).
[[nodiscard]] Length reckonedGap(const Project &project, const Basis &basis, const SashingPlan &sashing,
                                 Length reach, const Measures &m);
/// The least fold-under that can be pressed and holds both layers (F10).
[[nodiscard]] Length leastFoldFor(Length foldCatch, const Measures &m);
/// Least a block's allowance may be pared to (F7).
[[nodiscard]] Length leastAllowance(Length seam, const Measures &m);

/// The binding is cut on the bias, since it goes round curves (F16).
[[nodiscard]] inline bool onBias(const Plan &plan)
{
    return plan.binding && plan.binding->bias;
}

/// Everything but problems and cautions.
[[nodiscard]] Plan planFigures(const Project &project);

} // namespace matside
