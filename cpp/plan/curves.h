// SPDX-License-Identifier: MIT
#pragma once

#include "project/project.h"

#include <cstdint>
#include <optional>

namespace matside {

/// Curved edges and the bias that binds them (F16), and what is sewn to a finished piece. Each figure is
/// rounded to a tick once. π is taken as 355/113, under a tick off for anything shorter than 1400 in.

/// What four rounded corners take off a rectangle's perimeter: (8 − 2π) ρ. Never negative.
[[nodiscard]] Length cornersSave(Length radius);
/// Length of a circle's edge: π D.
[[nodiscard]] Length roundEdge(Length diameter);

/// One scallop: an arc over a chord q, y deep.
struct Scallop {
    Length radius; ///< (q²/4 + y²) / 2y
    Length arc;    ///< 2 r asin(q / 2r)
};
/// Nothing unless 0 < depth ≤ chord / 2 (a half circle) and the chord is under 1000 in.
[[nodiscard]] std::optional<Scallop> scallop(Length chord, Length depth);
/// The border a scallop needs so as to leave the quilting whole: y + b + 1/2 in | 12 mm.
[[nodiscard]] Length scallopBorder(Length depth, Length edgeSeam, System system);

/// The least radius a folded edge of this seam eases round: 10 b, for the edge stretches by b / ρ and
/// cotton bias gives about a tenth (practice, no published limit).
[[nodiscard]] Length leastRadius(Length edgeSeam);
/// How far a rounded corner passes inside the corner of the stitched outline, which stands `outside` from the
/// raw edges: ρ(√2 − 1) − a√2, or nothing when it clears it.
[[nodiscard]] Length cornerBite(Length radius, Length outside);
/// The largest radius that clears the outline's corner: a(2 + √2), to the tick below.
[[nodiscard]] Length radiusThatClears(Length outside);

/// Side of the square for one continuous bias strip by the tube: √(L·W) + 3 in | 75 mm for its seams, up to
/// whole inches | 10 mm. The rule is published on many pages (F16).
[[nodiscard]] Length biasSquare(Length length, Length width, System system);

/// The same bias cut as strips from cloth `height` long and `usable` wide.
struct BiasStrips {
    Length each;             ///< h√2
    std::int64_t number = 0; ///< ⌊(U − h) / (W√2)⌋; 0 when the cloth is not wide enough
    Length joined;           ///< sewn together with 1/4 in | 6 mm seams, which cost 2·√2/4 in each
};
[[nodiscard]] BiasStrips biasStrips(Length height, Length usable, Length width, System system);

/// The least height of cloth, in steps of 9 in | 250 mm, whose bias strips come to `length` when joined, and
/// how many of them that takes; nothing where the cloth is too narrow for it. Less height would mean many
/// short strips (practice, no published source).
struct LeastBias {
    Length height;
    BiasStrips strips;
};
[[nodiscard]] std::optional<LeastBias> leastBiasStrips(Length length, Length usable, Length width,
                                                       System system);

/// A hanging sleeve of 4 in | 100 mm finished: how wide and how long to cut it, least and most (published
/// show rules: 8 1/2–9 in wide, 1–2 in shorter than the piece).
struct Sleeve {
    Length wideLeast, wideMost;
    Length longLeast, longMost; ///< no less than nothing for a very small piece
};
[[nodiscard]] Sleeve hangingSleeve(Length along, System system);

/// The piece as the front of a pillow with an envelope back: two pieces that overlap by 4 in | 100 mm, each
/// with a double hem of 1 in | 25 mm in all. Practice.
struct Pillow {
    Pair form; ///< 1 in | 25 mm larger than the cover each way, for a plump one
    Pair back; ///< each of the two, cut size
};
/// `allowance` is sewn away all round; nothing when the back is bound in with the edge.
[[nodiscard]] Pillow envelopePillow(const Pair &cover, Length allowance, System system);

} // namespace matside
