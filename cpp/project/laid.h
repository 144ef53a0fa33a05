// SPDX-License-Identifier: MIT
#pragma once

#include "length/length.h"

#include <cstdint>
#include <string>
#include <vector>

namespace matside {

/// Pieces of one step side by side in a strip.
struct LaidPiece {
    std::string does; ///< progress name of the step they are cut at; empty: left over, nothing is cut
    Length across;    ///< along the strip: from selvage to selvage, unless the strip runs along them
    Length along;     ///< the other way, at most the strip's height
    std::int64_t count = 1;
    bool turned = false; ///< a quarter turn against the step's own size
    std::string rest;
    friend bool operator==(const LaidPiece &, const LaidPiece &) = default;
};

/// Strips of one height with the same pieces in them, cut one after the other.
struct LaidStrip {
    std::string does; ///< progress name of the step that cuts the strip
    Length height;    ///< along the selvage; of a strip that runs along it, across the cloth
    std::int64_t repeats = 1;
    std::int64_t owned = 0; ///< from the n-th owned piece of the cloth; 0 = from what is bought
    bool spoiled = false;   ///< cut and lost: nothing comes out of it
    std::vector<LaidPiece> pieces;
    std::string rest;
    Length run = {}; ///< it runs along the selvage, so long; 0: across the cloth
    friend bool operator==(const LaidStrip &, const LaidStrip &) = default;
};

/// How a cloth is cut, fixed from the day it was bought or first cut: strips in the order they are cut. How
/// many of them are cut already follows from the counts of their steps.
struct MadeLayout {
    std::string cloth;
    Length usable;
    Length bought; ///< of the cloth itself, owned pieces not counted
    std::vector<LaidStrip> strips;
    std::string rest;
    friend bool operator==(const MadeLayout &, const MadeLayout &) = default;
};

} // namespace matside
