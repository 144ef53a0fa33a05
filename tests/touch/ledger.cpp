// SPDX-License-Identifier: MIT
#include "ledger.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <string>

#include <malloc.h>

namespace touching {

Holding holding()
{
    Holding now;
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);) {
        if (line.starts_with("VmRSS:"))
            now.kib = std::stoll(line.substr(6));
        if (line.starts_with("Threads:"))
            now.threads = std::stoll(line.substr(8));
    }
    const struct mallinfo2 asked = mallinfo2();
    now.heap = static_cast<std::int64_t>((asked.uordblks + asked.hblkhd) / 1024);
    // One of them is the one that lists them.
    for ([[maybe_unused]] const auto &entry : std::filesystem::directory_iterator("/proc/self/fd"))
        ++now.handles;
    --now.handles;
    return now;
}

double growth(const std::vector<double> &samples)
{
    std::vector<double> slopes;
    for (std::size_t from = 0; from < samples.size(); ++from)
        for (std::size_t to = from + 1; to < samples.size(); ++to)
            slopes.push_back((samples[to] - samples[from]) / static_cast<double>(to - from));
    if (slopes.empty())
        return 0;
    const auto middle = slopes.begin() + static_cast<std::ptrdiff_t>(slopes.size() / 2);
    std::nth_element(slopes.begin(), middle, slopes.end());
    return *middle;
}

} // namespace touching
