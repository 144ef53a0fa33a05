// SPDX-License-Identifier: MIT
#pragma once

#include "project/basis.h"
#include "project/problem.h"
#include "project/project.h"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace matside {

struct BlockPlan {
    Pair outline; ///< B, as measured off the hoop
    Pair sent;    ///< B/(1−d), rounded to a tick once (F21)
    Pair trimmed; ///< T = B + 2·allowance (F6)
};

struct StripPlan {
    Length width;                ///< S (F1)
    Length reach;                ///< φ, how far the frame lies beyond the outline, along (F2)
    Length gap;                  ///< G (F3)
    Length end;                  ///< E (F4)
    Length advance;              ///< sent along + gap
    std::int64_t perStrip = 0;   ///< n (F5); 0 when no block fits
    std::vector<Length> starts;  ///< on flat cloth, from zero
    std::vector<Length> centres; ///< on flat cloth, from zero
    std::vector<Length> drawn;   ///< starts on cloth already drawn in
    Length used;
    Length remainder;
    Length usable;
    std::int64_t strips = 0;         ///< for all kits
    Length wideGap;                  ///< the first gaps of each strip, where only some yield sashing (F3)
    std::int64_t wideGaps = 0;       ///< how many those are; 0: all gaps are alike
    std::int64_t harvestedPairs = 0; ///< shorts the gaps yield, front and back alike (F3); 0 unless `harvest`

    /// The gap that follows so many blocks, 1 or more.
    [[nodiscard]] Length gapAfter(std::int64_t blocks) const { return blocks <= wideGaps ? wideGap : gap; }
    /// What the gaps that follow the first blocks come to beyond as many plain ones.
    [[nodiscard]] Length widened(std::int64_t blocks) const
    {
        return wideGaps > 0 ? (wideGap - gap) * std::min(blocks, wideGaps) : Length();
    }
    /// Gaps of a full strip that come apart into sashing, where they do.
    [[nodiscard]] std::int64_t yielding() const { return wideGaps > 0 ? wideGaps : perStrip - 1; }
};

/// The pieces one long sashing is cut in, when it is longer than its cloth.
struct LongPieces {
    std::vector<Length> pieces; ///< cut lengths in order from the left end, with spare and join seams
    std::vector<Length> joins;  ///< where the joins stand from the row's raw left end
};

struct SashingPlan {
    Length finished;
    Length cutFront;
    std::optional<Length> cutBack; ///< absent for the clean back
    Length allowanceGap;           ///< g on paper (F7): finished − 2·allowance
    std::optional<Length>
        filler;              ///< F7: batting laid in, as wide as the gap, where that is over what may stay
    Length expected;         ///< g − e_f (F9)
    std::int64_t shorts = 0; ///< per face
    Length shortLength;      ///< before the spare
    Length shortSpare;
    std::int64_t longs = 0; ///< per face
    Length longLength;      ///< before the spare
    Length longSpare;       ///< in all, half at each end
    LongPieces front;       ///< empty pieces when a long fits its cloth
    LongPieces back;
    std::vector<Length> marks; ///< F12, centres of the short sashings from the row's raw left end
};

struct FoldPlan {
    Length under;
    Length fold_catch; ///< as planned
    Length catchShown; ///< what folding the shown amount gives
    Length leastFold;
    bool doubled = false; ///< F10's other way: `under` and `leastFold` are 0, the catch is the fold's own
};

struct SizePlan {
    Pair outline;
    Pair raw;
    Pair finished;
    std::optional<Pair> backing; ///< clean back only (F11)
};

/// Scallops all round (F16): their inside points lie on the line `depth` inside the raw edge, and four of
/// them stand where those lines cross.
struct ScallopPlan {
    Length depth;
    std::int64_t along = 1;  ///< on the top, and on the bottom
    std::int64_t across = 1; ///< on the left, and on the right
    Pair chord;              ///< from one inside point to the next
    Pair radius;             ///< 0 where no arc is so deep
    Pair arc;
    Length border; ///< cloth outside the outline that leaves the quilting whole: y + b + 1/2 in | 12 mm
};

/// Bias for a piece with a curved edge (F16).
struct BiasPlan {
    Length square; ///< of cloth, for one continuous strip
    Length bites;  ///< how far the edge passes inside the outline; 0 when it clears it
    Length least;  ///< the least radius the folded edge eases round: 10 b
    std::optional<ScallopPlan> scallops;
};

struct BindingPlan {
    Length width; ///< F14
    Length cut;
    Length length;           ///< F15, with slack
    std::int64_t strips = 0; ///< cut across the cloth; of bias the one strip
    std::optional<BiasPlan> bias;
};

/// The framed edge (F14): a strip of sashing all round on each face, batting laid in where the blocks'
/// allowance ends, then bound. Left and right are sewn first.
struct FramePlan {
    Length width;                  ///< as seen, up to the binding's seam: outside − edge seam
    Length cut;                    ///< strips of both faces: seam + outside
    Length filler;                 ///< batting: outside − allowance, so that the binding is filled too
    Length sides;                  ///< left and right, before the spare: the raw piece across
    Length ends;                   ///< top and bottom, before the spare: the framed piece along
    Length spare;                  ///< on each piece
    std::int64_t frontStrips = 0;  ///< cut right across the cloth, for one piece
    std::int64_t backStrips = 0;   ///< 0 with a clean back
    std::int64_t fillerStrips = 0; ///< of batting
    bool joined = false;           ///< some piece is longer than its cloth: strips are sewn end to end
};

/// What is seen of the table, with its leaf in or out (F22).
struct TableSeen {
    bool leafIn = false;
    Pair reveal; ///< each side; negative hangs over. Round: mid-side, along and across
    /// Round only: how far the corner stands inside (negative: hangs over). With the leaf in the table is two
    /// half rounds and the leaf between, and the corner is measured from the half round's middle.
    Length corner;
};

/// As the table is fitted, and the other way where it has a leaf.
struct TablePlan : TableSeen {
    bool round = false;
    std::optional<TableSeen> other;
};

/// Batting for the hoop strips (F17).
struct BattingPlan {
    Length width; ///< as wide as the strips
    Length least; ///< it must reach seam + 1/4 in | 6 mm past every outline
    Pair inside;  ///< a piece that lies wholly inside a tight ring: outline + 2·seam + 1/2 in | 12 mm
    std::optional<bool> insideFits; ///< against the opening, when that is known
};

struct PatchPlan {
    std::string name;
    std::string cloth;
    Pair rectangle; ///< (w+2o) × (h+2o), F18
    Pair web;
    std::int64_t count = 0; ///< for one piece, spares included
};

/// Everything that follows from a project and what was made of it. A pure value.
struct Plan {
    Basis basis;
    std::vector<Problem> problems; ///< it cannot be made as it stands
    std::vector<Problem> cautions; ///< it can, but look here
    BlockPlan block;
    StripPlan strip;
    SashingPlan sashing;
    std::optional<FoldPlan> fold;
    SizePlan size;
    std::optional<FramePlan> frame;
    std::optional<BindingPlan> binding;
    std::optional<TablePlan> table;
    BattingPlan batting;
    std::vector<PatchPlan> patches;
};

/// plan(project, made) → Plan: pure, no clock, no search; fast enough for every step of a drag.
[[nodiscard]] Plan plan(const Project &project);

} // namespace matside
