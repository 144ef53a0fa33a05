// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

namespace matside {

/// How place mats are made and laid (trade notes, step 3, after a published etiquette reference).
struct MatUse {
    Length apart;              ///< between two mats, at least: 4 in | 10 cm
    Length fromEdge;           ///< from the edge it lies at: 1 in | 2.5 cm
    std::array<Pair, 2> sizes; ///< along the edge × deep: 18 × 12 and 20 × 14 in | 45 × 30 and 50 × 35 cm
};
[[nodiscard]] MatUse matUse(System system);

/// Where one mat lies, its middle measured from the table's.
struct MatPlace {
    Length along;    ///< to the right
    Length across;   ///< downwards
    double turn = 0; ///< degrees clockwise; 0: the edge it lies at is below it
};

/// Mats on a table.
struct MatsLaid {
    std::int64_t side = 0; ///< in a row along each longer side; round: on all the rim
    std::int64_t end = 0;  ///< at each shorter side
    std::vector<MatPlace> places;

    [[nodiscard]] std::int64_t count() const { return static_cast<std::int64_t>(places.size()); }
};

/// The most mats that lie on a table, or `most` of them where that is fewer; none where it is too small or
/// was not measured (F22).
///
/// Along a side of length L lie ⌊(L + apart)/(mat + apart)⌋, 200 at most. Two rows face each other where the
/// table is 2·(deep + fromEdge) + apart wide, else there is one. With `ends` mats lie at the two shorter
/// sides too, and the rows make room for them unless they lie clear between the rows. On a round table,
/// radius R, the outer corners of n mats are `fromEdge` inside the rim: their outer edges lie c = √((R −
/// fromEdge)² − (mat/2)²) from the middle, and no mat comes nearer than apart/2 to the line halfway to its
/// neighbour: (c − deep)·sin(π/n) − (mat/2)·cos(π/n) ≥ apart/2. A leaf parts the round into halves, each with
/// its half of them, and ⌊leaf/(mat + apart)⌋ lie along each of its edges.
[[nodiscard]] MatsLaid layMats(const Table &table, const Pair &mat, bool ends, System system,
                               std::int64_t most = 1000);

/// Why not one mat lies on the table: fit-mats-off-table or fit-mats-off-round-table (mat along, mat deep,
/// and the least width or diameter); nothing where one does or the table was not measured.
[[nodiscard]] std::optional<Problem> whyNoMats(const Table &table, const Pair &mat, System system);

/// The pieces of the project as mats on its table: more than one, none of them for a class, and all of them
/// lie along its edge. Nothing where they do not.
[[nodiscard]] std::optional<MatsLaid> setOfMats(const Project &project, const Plan &plan);

} // namespace matside
