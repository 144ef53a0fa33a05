// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <string_view>
#include <vector>

namespace measure {

/// Times of one kind of event, in microseconds.
class Times {
public:
    void add(std::chrono::steady_clock::duration took);
    /// The value that the given share (0…1) of the times does not exceed; 0 when there are none.
    [[nodiscard]] double share(double part) const;
    /// One line: how many, median, 99th percentile, longest.
    void print(std::string_view what) const;

private:
    std::vector<double> m_microseconds;
};

} // namespace measure
