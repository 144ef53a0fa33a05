// SPDX-License-Identifier: MIT
#pragma once

#include "cutting/search.h"

namespace matside::cutting {

/// A plan that buys as much as the best of `search` with as few strip heights as a short search finds,
/// and of those the one with the fewest cuts. Best found, not proved.
[[nodiscard]] std::vector<Cutting> fewerHeights(const Cloth &cloth, Search &search, const Job &job,
                                                Work &work, std::int64_t budget);

} // namespace matside::cutting
