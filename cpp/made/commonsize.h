// SPDX-License-Identifier: MIT
#pragma once

#include "made/tolerances.h"
#include "project/project.h"

#include <string>
#include <vector>

namespace matside {

/// A block's own outline.
struct OwnSize {
    std::string block;
    Pair outline;
    bool cut = false; ///< trimmed or joined already
};

/// What a common size does to one block.
struct Concerned {
    std::string block;
    Length shows;     ///< (common − own) / 2, the larger way: its line shows outside the seam by this
    Length loses;     ///< (own − common) / 2, the larger way: stippling that goes into the seam, each side
    bool cut = false; ///< already cut: never altered, but its size is no longer the others'
};

/// The size all blocks are trimmed for (F23), each way alike on square blocks so that they can be turned.
struct CommonSize {
    Pair outline; ///< planned where every block is near enough, else down to the ruler's mark
    bool asPlanned = true;
    std::vector<std::string> outliers;    ///< too small for the rest, in the order they were left out
    std::vector<Concerned> concerned;     ///< every block whose own size is not the common one
    std::vector<std::string> becomeWrong; ///< blocks already cut for another size
};

/// If every outline is within `tolerances.size` of the planned size: that. Else min(largest, smallest +
/// size) if the largest loses no more than `tolerances.over`; else the smallest is named an outlier and the
/// size is chosen without it. `cutFor` is the outline that blocks already trimmed were cut for.
[[nodiscard]] CommonSize commonSize(const std::vector<OwnSize> &blocks, const Pair &planned,
                                    const Pair &cutFor, const Tolerances &tolerances, Marks marks);

/// The blocks of a project that can be reckoned with: neither spoiled nor lost, measured by their sides (the
/// outline, or a trimmed block less two allowances) or else by the outline noted off the hoop. Readings that
/// disagree are left out.
[[nodiscard]] std::vector<OwnSize> ownSizes(const Project &project, const Tolerances &tolerances);

/// The planned size is the common one already: chosen again from what was measured it comes out the same, and
/// not because every block is near it. A larger block then loses stippling instead of being off size (F23).
[[nodiscard]] bool isCommonSize(const std::vector<OwnSize> &blocks, const Pair &planned,
                                const Tolerances &tolerances, Marks marks);

} // namespace matside
