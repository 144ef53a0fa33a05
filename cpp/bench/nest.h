// SPDX-License-Identifier: MIT
#pragma once

#include "length/length.h"

#include <cstdint>
#include <vector>

namespace matside {

/// So many pieces of one length.
struct Lot {
    Length length;
    std::int64_t count = 0;
};

/// Bands with the same pieces in them: how many of each lot, in the order the lots were given.
struct FilledBand {
    std::int64_t repeats = 0;
    std::vector<std::int64_t> pieces;
};

/// Bands of a usable length that hold all the pieces, first fit by falling length. A piece longer than a band
/// takes a band of its own.
[[nodiscard]] std::vector<FilledBand> fillBands(const std::vector<Lot> &lots, Length usable);
[[nodiscard]] std::int64_t bandsFor(const std::vector<Lot> &lots, Length usable);

} // namespace matside
