// SPDX-License-Identifier: MIT
#include "times.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <string>

namespace measure {

void Times::add(std::chrono::steady_clock::duration took)
{
    m_microseconds.push_back(std::chrono::duration<double, std::micro>(took).count());
}

double Times::share(double part) const
{
    if (m_microseconds.empty())
        return 0;
    std::vector<double> sorted = m_microseconds;
    std::sort(sorted.begin(), sorted.end());
    // Nearest rank: the smallest value with at least that share at or below it.
    const double rank = std::ceil(part * static_cast<double>(sorted.size()));
    const auto index = static_cast<std::size_t>(std::max(1.0, rank)) - 1;
    return sorted[std::min(index, sorted.size() - 1)];
}

void Times::print(std::string_view what) const
{
    std::printf("%-44s %6zu times  median %9.1f us  99th percentile %9.1f us  longest %9.1f us\n",
                std::string(what).c_str(), m_microseconds.size(), share(0.5), share(0.99), share(1));
}

} // namespace measure
