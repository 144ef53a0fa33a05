// SPDX-License-Identifier: MIT
#pragma once

#include "bench/step.h"

namespace matside {

/// What became of one cloth, as lengths along its selvage: used + spoiled + left = owned, always.
struct ClothAccount {
    std::string cloth;
    std::optional<Length> owned; ///< measured, or as bought; absent when nobody has told
    Length used;                 ///< in good pieces, the squared end with them
    Length spoiled;
    Length toDo;                ///< still to be cut
    std::optional<Length> left; ///< owned less used and spoiled; negative when more was cut than measured
};

/// Squaring an end takes 2 in | 50 mm, and as much again for every full 3 yd | 2.75 m cut beyond it (trade
/// notes, step 8; common practice).
[[nodiscard]] Length straightening(System system, Length cut);

/// How much of the cloth so many pieces of a cutting step take along the selvage; nothing for steps that cut
/// from pieces. A backing lies the way that takes less, or in panels where it is wider than the cloth both
/// ways. `usable` is the cloth's own width; zero: the strips'.
[[nodiscard]] Length takenBy(const Step &step, const Plan &plan, std::int64_t pieces, Length usable = {});

/// The cloth's end has been squared, so that what is cut of it first has a straight edge.
[[nodiscard]] bool endSquared(const std::vector<Step> &steps, const std::string &cloth);
/// Some of these pieces are made by such a step; bands carry its name.
[[nodiscard]] bool anyCutBy(const std::vector<Piece> &pieces, Does does);

/// Whether the step cuts its pieces across bands, not from the cloth: then the ruler shows their length.
[[nodiscard]] bool outOfBands(const Step &step);
/// Some of these bands run along the selvage: what is a strip right across elsewhere is cross-cut too.
[[nodiscard]] bool outOfAlong(const Step &step);

[[nodiscard]] std::vector<ClothAccount> clothAccounts(const Project &project, const Plan &plan,
                                                      const std::vector<Step> &steps);
[[nodiscard]] ClothAccount clothAccount(const Project &project, const Plan &plan,
                                        const std::vector<Step> &steps, const std::string &cloth);

} // namespace matside
