// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

namespace touching {

/// What this process holds at one moment.
struct Holding {
    std::int64_t kib = 0;     ///< memory that is in use (VmRSS), KiB
    std::int64_t heap = 0;    ///< what was asked of the allocator and not given back, KiB
    std::int64_t handles = 0; ///< open files, sockets, pipes (/proc/self/fd)
    std::int64_t threads = 0;
};
[[nodiscard]] Holding holding();

/// How much a figure grows from one sample to the next: the middle one of the slopes of all pairs (Theil and
/// Sen), which a single high or low sample does not move. 0 for fewer than two.
[[nodiscard]] double growth(const std::vector<double> &samples);

} // namespace touching
