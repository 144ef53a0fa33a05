// SPDX-License-Identifier: MIT
#pragma once

#include "cutting/job.h"

#include <fstream>
#include <optional>
#include <sstream>
#include <string>

/// A job file: lines beginning with # are left out; then the usable width, the purchase step and the
/// number of sizes; then for each size its width across, its length along, how many, and 1 if it may turn.
inline std::optional<matside::cutting::Job> readJob(const std::string &file)
{
    std::ifstream in(file);
    std::stringstream text;
    for (std::string line; std::getline(in, line);)
        if (line.empty() || line.front() != '#')
            text << line << '\n';
    matside::cutting::Job job;
    int sizes = 0;
    if (!(text >> job.usable >> job.step >> sizes))
        return std::nullopt;
    for (int i = 0; i < sizes; ++i) {
        matside::cutting::Size s;
        int turn = 0;
        if (!(text >> s.across >> s.along >> s.pieces >> turn))
            return std::nullopt;
        s.mayTurn = turn != 0;
        job.sizes.push_back(s);
    }
    return job;
}
