// SPDX-License-Identifier: MIT
#pragma once

// Inside the checker only.
#include "cutting/answer.h"

#include <cstdint>
#include <vector>

namespace matside::cutting {

__extension__ using Wide = __int128; ///< holds every sum of prices times pieces
using Counts = std::vector<std::int64_t>;

/// Every strip height, and so every length, is a multiple of this: the heights of the pieces wanted, each way
/// it may lie on the widest cloth there is.
[[nodiscard]] Ticks grainOf(const Job &job);

/// A proof by strips; the job has no pieced strips any more, heights rise and there is a node.
[[nodiscard]] bool checkByStrips(const Job &job, const Certificate &proof);

} // namespace matside::cutting
