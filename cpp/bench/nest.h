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

/// How many bands of a usable length hold all the pieces, first fit by falling length. A piece longer than
/// a band takes a band of its own.
[[nodiscard]] std::int64_t bandsFor(std::vector<Lot> lots, Length usable);

} // namespace matside
