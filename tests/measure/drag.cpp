// SPDX-License-Identifier: MIT
//
// matside-drag [MOVES]: how long planning takes while a finger is on the control (2000 moves unless told).
#include "planning.h"

#include <cstdio>
#include <cstdlib>

int main(int argc, char **argv)
{
    const int moves = argc > 1 ? std::atoi(argv[1]) : 2000;
    if (moves < 1) {
        std::fputs("usage: matside-drag [MOVES]\n", stderr);
        return 2;
    }
    measure::planWhileDragging(moves);
    measure::planByColumns();
    return 0;
}
