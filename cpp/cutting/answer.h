// SPDX-License-Identifier: MIT
#pragma once

#include "cutting/job.h"

#include <cstdint>
#include <utility>
#include <vector>

namespace matside::cutting {

/// Pieces of one size side by side in a strip. `size` counts the sizes of the job, then its pieced strips.
struct Laid {
    int size = 0;
    bool turned = false;
    int count = 0;
    friend bool operator==(const Laid &, const Laid &) = default;
};

/// Strips of the same height and contents. Laid from the first edge, pieces touch.
struct StripLayout {
    int from = -1; ///< −1 the bought cloth, else the index of the owned piece
    Ticks height = 0;
    int repeats = 0;
    std::vector<Laid> pieces;
    friend bool operator==(const StripLayout &, const StripLayout &) = default;
};

/// How the cloth is cut: first into strips edge to edge, then each strip across into pieces; a piece lower
/// than its strip is trimmed. With `lengthwise` the strips run along the selvage over the bought length
/// and `height` is their width across the cloth; owned pieces are then cut the same way.
struct Plan {
    bool lengthwise = false;
    std::vector<StripLayout> strips;
    friend bool operator==(const Plan &, const Plan &) = default;
};

/// What a plan asks of the cutter, in the order it is spared.
struct Handwork {
    int heights = 0;       ///< different strip heights: ruler settings
    std::int64_t cuts = 0; ///< strip cuts, cross-cuts and trims, each counted singly
    int layouts = 0;       ///< different strips
    friend auto operator<=>(const Handwork &, const Handwork &) = default;
};

/// One proof by prices (Gilmore & Gomory 1961: the dual of the covering programme). Each piece of size i
/// has the price `pieces[i]`/`unit`; no strip of height h holds more than `unit`·h − Σ `counts[k]` over the
/// heights up to h, no strip of owned piece o more than `owned[o]`·h. Then no plan whose strip counts keep
/// to the branches above is shorter than
/// (Σ pieces·wanted + Σ counts⁺·least − Σ counts⁻·most − Σ owned·length) / `unit`.
/// With `ray`, strips have no price of their own and the sum must exceed 0: there is no such plan.
/// In a proof by strips, a strip may also hold more: it then counts as often as the branches above allow.
struct Prices {
    bool ray = false;
    std::int64_t unit = 1;
    std::vector<std::int64_t> pieces, counts, owned;
    std::vector<std::pair<int, std::int64_t>> cuts; ///< index and price of rounding cuts
};

/// What whole numbers of strips must meet beyond what fractions must (mixed-integer rounding, Nemhauser &
/// Wolsey 1990). The rows of the sizes and of earlier cuts are added up with multipliers, in 1/2^20; a cut
/// taken negatively leaves its slack. With b the sum of what is wanted, a strip of sum z is worth
/// ⌊z⌋ + min(1, frac z / frac b), plus its share in those slacks, and all together at least ⌊b⌋ + 1.
struct RoundingCut {
    std::vector<std::int64_t> sizes;                ///< ≥ 0
    std::vector<std::pair<int, std::int64_t>> cuts; ///< index of an earlier cut, multiplier
};

/// A proof that nothing shorter exists, checked by `checkCertificate`. A node without children rests on
/// its prices; one with children splits the plans by how many strips are at least `heights[level]` high,
/// or how many are `strips[strip]`: at most `value` in the first child, more in the second.
///
/// With `byStrips` the plans are those of strips nothing more fits into, which lose nothing; strips that
/// cost too much beyond the prices of `limits`, one after the other, for a plan shorter than `least` are
/// left out; the first knows no cuts.
struct Certificate {
    struct Node {
        int level = -1, strip = -1;
        int value = 0;
        int fewer = -1, more = -1; ///< indices of the children, −1 none
        Prices prices;
    };
    Ticks least = 0;            ///< what is proved: every plan is at least this long
    std::vector<Ticks> heights; ///< the possible strip heights, rising
    std::vector<Node> nodes;    ///< the first is the root; empty: nothing is proved
    bool byStrips = false;
    std::vector<Prices> limits;
    std::vector<RoundingCut> cuts;
    std::vector<StripLayout> strips; ///< those branched on
};

/// What a proof rests on.
enum class Proof {
    None,   ///< a gap remains between `bought` and `leastBought`
    Prices, ///< `certificate` proves it
    Search, ///< some strip counts were refuted by trying every layout, which no certificate holds
};

/// Strips along the selvage, where they buy less than was asked.
struct Lengthwise {
    Plan plan;                 ///< none where no way was found
    Handwork handwork;         ///< of the plan
    Ticks bought = 0;          ///< strips run over this, less what is squared off; with no plan as was asked
    Ticks least = 0;           ///< no way along that can be reached buys less; at most `bought`
    Proof proof = Proof::None; ///< that nothing shorter than `bought` does
    Certificate certificate;   ///< at one step less than `bought`, of the job turned; see `turnedJob`
    bool stopped = false;
    std::int64_t work = 0;

    [[nodiscard]] bool found() const { return !plan.strips.empty(); }
};

struct Answer {
    Plan plan;
    Handwork handwork;
    Ticks length = 0;      ///< summed strip heights on the bought cloth; lengthwise: the bought length
    Ticks bought = 0;      ///< `length` rounded up to the step
    Ticks leastLength = 0; ///< no plan is shorter
    Ticks leastBought = 0; ///< `leastLength` rounded up to the step
    Proof proof = Proof::None;
    bool stopped = false;    ///< the budget ran out or a stop was asked before all aims were met
    Certificate certificate; ///< for strips across the cloth
    Certificate lengthwise;  ///< for strips along it, at one step less than `bought`: at least the width + 1
    std::int64_t work = 0;   ///< work units spent

    [[nodiscard]] bool proved() const { return leastBought >= bought; }
};

} // namespace matside::cutting
