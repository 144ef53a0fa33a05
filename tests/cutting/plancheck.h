// SPDX-License-Identifier: MIT
#pragma once

// A second reading of plans, from the pieces on the cloth up; shares nothing with the solver.
#include "cutting/answer.h"

#include <algorithm>
#include <string>
#include <vector>

namespace plancheck {

using namespace matside::cutting;

struct Piece {
    int cloth = -1, size = 0;
    Ticks x = 0, y = 0, w = 0, h = 0; ///< x across the strip's cloth, y along the first cuts' advance
};

struct Reading {
    std::string fault; ///< empty: the plan can be cut
    Ticks bought = 0;  ///< length of bought cloth the strips take
};

inline std::vector<Size> wanted(const Job &job, const Plan &plan, Ticks stripLength)
{
    std::vector<Size> all = job.sizes;
    for (const PiecedStrip &s : job.pieced) {
        // n strips sewn end to end lose n − 1 joins: the fewest that reach the total.
        int n = 1;
        while (n * stripLength - (n - 1) * s.loss < s.total)
            ++n;
        all.push_back(plan.lengthwise ? Size{s.height, stripLength, n, false}
                                      : Size{stripLength, s.height, n, false});
    }
    return all;
}

inline std::string overlap(std::vector<Piece> pieces)
{
    std::sort(pieces.begin(), pieces.end(), [](const Piece &a, const Piece &b) {
        return a.cloth != b.cloth ? a.cloth < b.cloth : a.y < b.y;
    });
    for (std::size_t i = 0; i < pieces.size(); ++i)
        for (std::size_t j = i + 1; j < pieces.size(); ++j) {
            const Piece &a = pieces[i], &b = pieces[j];
            if (b.cloth != a.cloth || b.y >= a.y + a.h)
                break;
            if (b.x < a.x + a.w && a.x < b.x + b.w)
                return "pieces of sizes " + std::to_string(a.size) + " and " + std::to_string(b.size) +
                       " overlap";
        }
    return {};
}

/// Lays every piece down. `lengthwiseLength` is the length a lengthwise plan runs over.
inline Reading read(const Job &job, const Plan &plan, Ticks lengthwiseLength = 0)
{
    const Ticks cross = plan.lengthwise ? lengthwiseLength : job.usable;
    const auto sizes = wanted(job, plan, cross);
    std::vector<std::int64_t> cut(sizes.size(), 0);
    std::vector<Ticks> used(job.owned.size() + 1, 0);
    std::vector<Piece> pieces;
    for (const StripLayout &s : plan.strips) {
        if (s.repeats <= 0 || s.height <= 0 || s.from < -1 || s.from >= static_cast<int>(job.owned.size()))
            return {"a strip that is none", 0};
        const Owned *owned = s.from < 0 ? nullptr : &job.owned[static_cast<std::size_t>(s.from)];
        const Ticks width = owned == nullptr ? cross : plan.lengthwise ? owned->along : owned->across;
        for (int n = 0; n < s.repeats; ++n) {
            Ticks x = 0;
            Ticks &y = used[static_cast<std::size_t>(s.from + 1)];
            for (const Laid &l : s.pieces) {
                if (l.size < 0 || l.size >= static_cast<int>(sizes.size()) || l.count <= 0)
                    return {"a piece nobody asked for", 0};
                const Size &size = sizes[static_cast<std::size_t>(l.size)];
                if (l.turned && !size.mayTurn)
                    return {"size " + std::to_string(l.size) + " lies against its grain", 0};
                const bool swapped = l.turned != plan.lengthwise;
                const Ticks w = swapped ? size.along : size.across, h = swapped ? size.across : size.along;
                for (int i = 0; i < l.count; ++i, x += w)
                    pieces.push_back({s.from, l.size, x, y, w, h});
                if (h > s.height)
                    return {"size " + std::to_string(l.size) + " is higher than its strip", 0};
                cut[static_cast<std::size_t>(l.size)] += l.count;
            }
            if (x > width)
                return {"a strip is fuller than the cloth is wide", 0};
            y += s.height;
        }
    }
    for (std::size_t i = 0; i < sizes.size(); ++i)
        if (cut[i] < sizes[i].pieces)
            return {"size " + std::to_string(i) + ": " + std::to_string(cut[i]) + " of " +
                        std::to_string(sizes[i].pieces),
                    0};
    for (std::size_t o = 0; o < job.owned.size(); ++o)
        if (used[o + 1] > (plan.lengthwise ? job.owned[o].across : job.owned[o].along))
            return {"owned piece " + std::to_string(o) + " is used beyond its end", 0};
    if (plan.lengthwise && used.front() > job.usable)
        return {"lengthwise strips are wider together than the cloth", 0};
    return {overlap(pieces), plan.lengthwise ? lengthwiseLength : used.front()};
}

/// All that an answer claims about its own plan.
inline std::string fault(const Job &job, const Answer &a)
{
    const Ticks squared = a.plan.lengthwise ? job.squared : 0;
    const Reading reading = read(job, a.plan, a.length - squared);
    if (!reading.fault.empty())
        return reading.fault;
    if (reading.bought + squared != a.length)
        return "length said " + std::to_string(a.length) + ", laid " + std::to_string(reading.bought);
    Ticks bought = 0;
    while (bought < a.length)
        bought += job.step;
    if (bought != a.bought)
        return "bought said " + std::to_string(a.bought) + ", is " + std::to_string(bought);
    if (a.leastBought > a.bought || a.leastBought % job.step != 0)
        return "a bound above the plan or off the steps";
    return {};
}

} // namespace plancheck
