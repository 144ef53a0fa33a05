// SPDX-License-Identifier: MIT
#pragma once

#include "length/show.h"
#include "made/tolerances.h"
#include "made/truesquare.h"

#include <optional>

namespace matside {

/// The finished piece measured before its edge is trimmed: four sides and two diagonals with a tape, which is
/// read to a mark, not to half of one.
struct PieceFinding {
    bool measureAgain = true; ///< the readings disagree: nothing else is said
    Length K;                 ///< by how much (F23)
    /// What the diagonal from the top right would be by the sides and the other diagonal (Euler: the squares
    /// of a parallelogram's sides make those of its diagonals), so that the maker can trace the disagreement.
    /// Zero where the sides cannot hold the other one.
    Length otherDiagonal;
    Length ends;          ///< top − bottom
    Length flanks;        ///< right − left
    Length diagonals;     ///< from top left − from top right
    Length within;        ///< squared off its base, no edge wanders more: "square within …"
    Length oppositeLimit; ///< 1/8 in | 3 mm, or 1/4 in | 6 mm when a side is over 60 in | 1500 mm (F24)
    Length diagonalLimit; ///< 1/4 in | 6 mm for every 60 in | 1500 mm, never under `oppositeLimit`
    bool good = false;    ///< within both
    Pair trueSize;        ///< the largest true rectangle that can be cut
    std::array<Side, 4> order{Side::Bottom, Side::Right, Side::Top, Side::Left}; ///< of squaring it
    std::optional<Shape> shape; ///< the fitted figure, for drawing its departure exaggerated
};
[[nodiscard]] PieceFinding judgePiece(const Readings &readings, const Tolerances &tolerances, Marks marks);

} // namespace matside
