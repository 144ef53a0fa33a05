// SPDX-License-Identifier: MIT
#pragma once

#include "cutting/job.h"

#include <initializer_list>
#include <random>
#include <vector>

namespace jobs {

using namespace matside::cutting;

inline Job of(Ticks usable, Ticks step, bool turn, std::initializer_list<Size> sizes)
{
    Job job{usable, step, sizes, {}, {}, false};
    for (Size &s : job.sizes)
        s.mayTurn = turn;
    return job;
}

/// The invented jobs the optimiser was designed on: a sampler on 42 in, blocks on 40 in, metric pieces on
/// 1.4 m, 2000 pieces on 41.5 in.
inline Job sampler(bool turn)
{
    return of(341376, 36576, turn,
              {{93472, 73152, 12},
               {65024, 16256, 20},
               {276352, 16256, 6},
               {341376, 20320, 7},
               {40640, 40640, 24},
               {28448, 52832, 30}});
}
inline Job blocks(bool turn)
{
    return of(325120, 36576, turn,
              {{20320, 20320, 200},
               {36576, 36576, 96},
               {20320, 36576, 192},
               {28448, 28448, 120},
               {52832, 52832, 40},
               {20320, 52832, 80},
               {101600, 12192, 60},
               {101600, 101600, 9},
               {40640, 81280, 40}});
}
inline Job metric(bool turn)
{
    return of(448000, 32000, turn,
              {{38400, 38400, 60},
               {20800, 20800, 240},
               {20800, 76800, 36},
               {76800, 76800, 12},
               {96000, 72000, 20},
               {288000, 17600, 8},
               {27200, 54400, 90},
               {131200, 128000, 4}});
}
inline Job large(bool turn)
{
    return of(337312, 36576, turn,
              {{12192, 12192, 400},
               {16256, 16256, 300},
               {20320, 20320, 300},
               {23368, 23368, 160},
               {12192, 28448, 240},
               {16256, 40640, 160},
               {31496, 31496, 96},
               {20320, 69088, 120},
               {42672, 42672, 60},
               {52832, 28448, 80},
               {101600, 20320, 60},
               {75184, 75184, 24}});
}

/// A small job in small numbers: up to `pieces` pieces in all.
inline Job small(std::mt19937 &random, int pieces)
{
    const auto upTo = [&](int least, int most) {
        return static_cast<int>(least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1)));
    };
    Job job;
    job.usable = upTo(8, 20);
    job.step = upTo(1, 4);
    while (pieces > 0) {
        Size s{upTo(1, static_cast<int>(job.usable)), upTo(1, 9), upTo(1, std::min(3, pieces)),
               upTo(0, 1) == 1};
        pieces -= s.pieces;
        job.sizes.push_back(s);
    }
    return job;
}

} // namespace jobs
