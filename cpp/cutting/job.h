// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

namespace matside::cutting {

/// A length in 1/8128 inch, the tick of `Length`.
using Ticks = std::int64_t;

/// A piece to be cut, seam allowances included.
struct Size {
    Ticks across = 0;     ///< along the crosswise grain (selvage to selvage), > 0
    Ticks along = 0;      ///< along the lengthwise grain, > 0
    int pieces = 0;       ///< how many are wanted; 0 is allowed
    bool mayTurn = false; ///< a quarter turn is allowed (no direction in the print, no grain to keep)
};

/// A long strip sewn together from strips of the full width (binding, a joined border).
struct PiecedStrip {
    Ticks height = 0; ///< as cut, > 0
    Ticks total = 0;  ///< sewn length wanted, > 0
    Ticks loss = 0;   ///< what each join takes from the length, 0 … less than the width
};

/// A piece of the same cloth already owned; strips are cut across it before any cloth is bought.
struct Owned {
    Ticks across = 0; ///< usable width, > 0
    Ticks along = 0;  ///< length, > 0
};

/// What must come out of one cloth.
struct Job {
    Ticks usable = 0; ///< width without selvages, > 0
    Ticks step = 1;   ///< sold by: 36576 is 1/8 yd, 32000 is 10 cm; 1 asks for the exact length
    std::vector<Size> sizes;
    std::vector<PiecedStrip> pieced;
    std::vector<Owned> owned;
    bool mayRunLengthwise = false; ///< also try strips cut along the selvage over the whole length
    Ticks squared = 0;             ///< ≥ 0; of the length bought, what is lost before strips run along it
    Ticks reach = 0; ///< strips along the selvage are no longer than this; 0: as long as they like
};

/// Bounds on what is taken on; beyond them the job is refused in words, never half done.
namespace limits {
constexpr int sizes = 64;                ///< distinct sizes, pieced strips among them
constexpr std::int64_t pieces = 100'000; ///< pieces in all
constexpr int owned = 8;
constexpr Ticks length = Ticks(1) << 23; ///< of one side of a piece or the width: about 26 m
} // namespace limits

/// Why a job is refused. `index` names the size (pieced strips are counted on after the sizes) or the
/// owned piece it is about, −1 if none; `allowed` is the value that would do.
struct Refusal {
    enum class Reason {
        NoWidth,        ///< the usable width is not positive, or beyond `limits::length`
        NoStep,         ///< the step is not positive, or beyond `limits::length`
        NoSize,         ///< a side is not positive or beyond `limits::length`
        NegativeCount,  ///< fewer than no pieces
        WiderThanCloth, ///< lies on the cloth in no allowed way; allowed: the usable width
        LossTooLarge,   ///< a join takes the whole strip; allowed: the usable width − 1
        TooManySizes,   ///< allowed: `limits::sizes`
        TooManyPieces,  ///< allowed: `limits::pieces`
        TooManyOwned,   ///< allowed: `limits::owned`
    };
    Reason reason{};
    int index = -1;
    Ticks allowed = 0;
};

} // namespace matside::cutting
