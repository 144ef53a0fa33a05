// SPDX-License-Identifier: MIT
#pragma once

#include "app/wording.h"
#include "made/commonsize.h"
#include "made/finding.h"
#include "plan/plan.h"

#include <nlohmann/json_fwd.hpp>

#include <QString>

namespace matside {

[[nodiscard]] std::span<const Worded> verdictWords();
[[nodiscard]] std::span<const Worded> remedyWords();
/// "top", "diagonal from top left": readings in the order of `Six`.
[[nodiscard]] QString readingText(std::size_t reading);
/// What the block is, in words, lengths in braces.
[[nodiscard]] QString verdictText(const Finding &finding, Marks marks, Measured what = Measured::Outline);
/// What to do about it.
[[nodiscard]] QString remedyText(const Finding &finding, Marks marks);

/// Along × across in braces; once where both are alike.
[[nodiscard]] QString sizeText(const Pair &size, Marks marks);

/// The blocks' size is one that was taken as common (F23).
[[nodiscard]] bool commonTaken(const Project &project);
/// What a block is held against: the planned outline, whether that is the common size of what was measured,
/// and its allowance.
[[nodiscard]] Target targetOf(const Project &project, const Plan &plan);
/// How far a stitched outline, along and across, is off the planned size, the worse of both; nothing where it
/// is near enough to be at size (F25).
[[nodiscard]] std::optional<Length> offItsSize(const Project &project, const Plan &plan,
                                               const std::array<Length, 2> &outline);
/// The finding on a block of the project; nothing when it was not measured.
[[nodiscard]] std::optional<Finding> findingOf(const Project &project, const Plan &plan,
                                               const MadeBlock &block);
/// What F23 chooses from the blocks measured; nothing under two of them. One that was taken stands while
/// every block can be trimmed to it.
[[nodiscard]] std::optional<CommonSize> commonOf(const Project &project, const Plan &plan);
/// One answer for a block beside the others: too far off its plan it may still be as the common size wants
/// it; and near its plan it may be too small for the others. `of` is that block, read as `readings`.
[[nodiscard]] Finding besideOthers(const Finding &finding, const std::string &of, const Readings &readings,
                                   const std::optional<CommonSize> &common, const Project &project,
                                   const Plan &plan);
/// What to do about it, where the common size is known already.
[[nodiscard]] QString remedyBeside(const Finding &finding, const std::optional<CommonSize> &common,
                                   const Project &project, const Plan &plan);
/// It is as good as the others, only larger than the common size that was taken: then what it is,
/// `stitchedFor` being what it was planned at when it was stitched, and what to do.
[[nodiscard]] bool trimmedToCommon(const Finding &finding, const Project &project);
[[nodiscard]] QString trimmedToCommonSays(const Finding &finding, const std::optional<Pair> &stitchedFor,
                                          const Project &project);
[[nodiscard]] QString trimmedToCommonDoes(const Plan &plan, Marks marks);
/// The next block that could be cut and has no size of its own yet, other than the one in hand; empty when
/// there is none.
[[nodiscard]] std::string nextToMeasure(const Project &project, const std::string &inHand);
/// `findings` of the plan file: one for every measured block.
[[nodiscard]] nlohmann::ordered_json findingsFile(const Project &project, const Plan &plan);

} // namespace matside
