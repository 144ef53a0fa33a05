// SPDX-License-Identifier: MIT
#pragma once

#include "bench/mishap.h"

namespace matside {

/// What an answer to a mishap is built from.
struct Case {
    const Project &project;
    const Plan &plan;
    const std::vector<Step> &steps;
    const Step &step;
    std::optional<Length> measure;
    std::int64_t strip;
    std::string block; ///< the one that was asked for; empty otherwise
};

[[nodiscard]] Answered unchanged(const Case &at, std::vector<Said> says);
/// Whether the rest of a cloth yields what is still to be cut of it, and the shortest thing to buy if not.
/// Where nobody has measured the rest it is reckoned from what Shop has bought for the layout, and that is
/// said. `squaring`: its cut edge has to be squared first.
void sayWhetherTheRestYields(const Case &at, const Project &changed, const std::string &cloth,
                             std::vector<Said> &says, bool squaring = false);
void nameWhatBecomesWrong(const Case &at, const Project &next, std::vector<Said> &says);
/// How many hoop strips more the project takes as it stands now.
void sayOfStrips(const Case &at, const Project &next, std::vector<Said> &says);
/// The piece in hand is given up; `narrow`: what is left of it may serve for something narrower.
[[nodiscard]] Answered spoiled(const Case &at, bool narrow);

// Trim, Join and Edge.

/// The blade went inside the allowance; measured: what is left outside the stitched line at its narrowest.
[[nodiscard]] Answered cutInto(const Case &at);
/// The same at the edge of the squared piece.
[[nodiscard]] Answered cutIntoEdge(const Case &at);
/// Measured: what the piece in hand comes to. The side of the plan that is nearest is meant.
[[nodiscard]] Answered sizeOff(const Case &at);
/// The whole piece, `off` its raw size by more than is good.
[[nodiscard]] Answered pieceOff(const Case &at, Length off);
[[nodiscard]] Answered sewnWrong(const Case &at);
[[nodiscard]] Answered foldMissed(const Case &at);
/// A block is no longer there, or no longer of use (`as`): a spare takes its place, or it is stitched again.
[[nodiscard]] Answered blockGone(const Case &at, BlockState as);
/// A join is given up: the sashing strips in it are cut again too.
[[nodiscard]] Answered joinSpoiled(const Case &at);

} // namespace matside
