// SPDX-License-Identifier: MIT
#pragma once

#include "made/tolerances.h"
#include "project/made.h"

#include <string>
#include <vector>

namespace matside {

/// What to do about a row that is longer or shorter than the others (F24).
enum class RowRemedy {
    Leave,      ///< within a crossing's tolerance of the mean
    Ease,       ///< up to 1/16 in | 1.5 mm a column: eased to the long sashing
    ResewSeams, ///< farther: its seams are sewn anew, `seamBy` deeper (minus: scanter)
    TakeApart   ///< farther than seams and easing together can mend: a block or a strip is off size
};
/// `leave`, `ease`, `resew-seams`, `take-apart`.
[[nodiscard]] std::string_view nameOf(RowRemedy remedy);

struct RowFinding {
    std::string row;
    Length off; ///< its length less the mean
    RowRemedy does = RowRemedy::Leave;
    Length seamBy; ///< off / (4 (c − 1)): every seam of the row deeper by this brings it to the mean
    Length toEase; ///< seams moved as far as the eye allows, this is still left to ease
};
struct RowsFinding {
    Length mean; ///< all long sashings are cut for this (F8)
    std::vector<RowFinding> rows;
};
/// `columns` ≥ 1 blocks in each row. No rows: an empty finding.
[[nodiscard]] RowsFinding judgeRows(const std::vector<MadeRow> &rows, std::int64_t columns,
                                    const Tolerances &tolerances);

/// What the joined rows measure along: their mean, to which all are eased, or what is planned while none is
/// measured.
[[nodiscard]] Length joinedAlong(const std::vector<MadeRow> &rows, Length planned);

/// How far the joins of each later row lie from the first row's, at worst: the
/// crossings a judge looks at. Joins that one of the rows lacks are not compared.
struct CrossingsFinding {
    std::string row;
    Length worst;          ///< + to the right of the first row's
    std::int64_t join = 0; ///< which, from 1
    bool good = true;
};
[[nodiscard]] std::vector<CrossingsFinding> judgeCrossings(const std::vector<MadeRow> &rows,
                                                           const Tolerances &tolerances);

} // namespace matside
