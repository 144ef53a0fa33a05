// SPDX-License-Identifier: MIT
#pragma once

#include "cutting/job.h"

#include <cstdint>

/// Random jobs for measuring, the same on every machine. Inch: usable width 40–44 in by 1/4, 2–8 sizes,
/// sides 2–20 in by 1/8, 1–60 of each, sold by 1/8 yd. Metric: 1000–1450 mm by 1, sides 50–500 mm by 5,
/// sold by 10 cm.
class RandomJobs {
public:
    RandomJobs(bool inch, bool turn) : m_inch(inch), m_turn(turn) {}

    [[nodiscard]] matside::cutting::Job job(std::uint64_t seed)
    {
        m_state = seed * 2 + m_inch;
        matside::cutting::Job job;
        job.usable = m_inch ? 2032 * upTo(160, 176) : 320 * upTo(1000, 1450);
        job.step = m_inch ? 36576 : 32000;
        const auto sizes = upTo(2, 8);
        for (std::int64_t i = 0; i < sizes; ++i) {
            const auto across = side(), along = side();
            job.sizes.push_back({across, along, static_cast<int>(upTo(1, 60)), m_turn});
        }
        return job;
    }

private:
    /// SplitMix64 (Steele, Lea & Flood, OOPSLA 2014).
    std::uint64_t next()
    {
        std::uint64_t z = m_state += 0x9E3779B97F4A7C15;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
    std::int64_t upTo(std::int64_t least, std::int64_t most)
    {
        return least + static_cast<std::int64_t>(next() % static_cast<std::uint64_t>(most - least + 1));
    }
    std::int64_t side() { return m_inch ? 1016 * upTo(16, 160) : 1600 * upTo(10, 100); }

    bool m_inch;
    bool m_turn;
    std::uint64_t m_state = 0;
};
