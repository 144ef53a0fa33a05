// SPDX-License-Identifier: MIT
#pragma once

#include "plan/hours.h"
#include "plan/plan.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace matside {

/// What she wants the piece to come to.
struct Wish {
    Pair size;     ///< finished, after its first wash
    Share washing; ///< what washing takes, both ways (F21); 0 to under 30 %
};

/// What she will have.
struct FitLimits {
    Length leastBlock;             ///< outline along
    Length mostBlock;              ///< outline along; what no hoop takes is left out anyway
    Length step;                   ///< block sizes by this much
    bool widen = true;             ///< the sashing may be up to 1/8 in | 3 mm wider (F13), by `finest`
    std::int64_t mostBlocks = 200; ///< in the piece
    std::size_t most = 12;         ///< layouts in the answer
    /// One spare for every twelve blocks, of all pieces of a set together; else as the project has them.
    bool proposeSpares = false;
};

/// Usual limits: from 4 in | 100 mm, or the largest patch where that is more, to what the largest hoop takes,
/// by 1/4 in | 5 mm.
[[nodiscard]] FitLimits usualLimits(const Project &project, std::span<const Hoop> owned);

/// A layout that comes near. Every figure is plan()'s, of the project with the layout applied.
struct Candidate {
    Project project; ///< with the layout applied
    Plan plan;       ///< of that project: no problems
    Pair over;       ///< finished less asked for; negative: smaller
    Pair washed;     ///< the finished size after washing
    Length cloth;    ///< of the top for the hoop strips, straightening not counted
    Hours hours;
    bool otherHoop = false;    ///< needs another of her hoops than the project's
    bool widerSashing = false; ///< than in the project as it stands
};

struct Candidates {
    Pair asked;                  ///< the size to make: wanted / (1 − washing)
    std::vector<Candidate> list; ///< nearest first
    /// Why there is none: fit-no-size () · fit-washing-out-of-range (washing, most) ·
    /// fit-block-over-size (least piece, asked) · fit-no-block-in-limits (least, most) ·
    /// fit-too-many-blocks (least blocks, most), or the problem the nearest layout would have.
    std::optional<Problem> none;
};

/// The finished size that leaves so much table to be seen on each side (negative: hangs over), F22 turned
/// round: table − 2·reveal, of a round table diameter − 2·reveal, a leaf counted as it lies. Nothing where
/// the table was not measured.
[[nodiscard]] std::optional<Pair> sizeLeaving(const Table &table, Pair reveal);

/// Layouts (blocks across × down × block size × sashing) ranked by how near their finished size comes: by the
/// sum of what they miss along and across, then by the larger miss, the fewer blocks, the sashing as it is,
/// the larger block, the fewer columns. Each way and for each block size the two counts just under and the
/// two just over are looked at; of layouts with the same counts the nearest is kept. Blocks keep the
/// project's proportion. Deterministic; bounded by the limits.
[[nodiscard]] Candidates candidatesFor(const Project &project, const Wish &wish, const FitLimits &limits,
                                       std::span<const Hoop> owned = {});

} // namespace matside
