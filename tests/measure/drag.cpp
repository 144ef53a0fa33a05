// SPDX-License-Identifier: MIT
//
// matside-drag [MOVES]: how long planning takes while a finger is on the control, and how long until the
// frame that shows it (2000 moves unless told).
#include "planning.h"
#include "screen.h"

#include <QGuiApplication>

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
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    const QGuiApplication app(argc, argv);
    if (!measure::frameWhileDragging(moves)) {
        std::fputs("matside-drag: the window or the corner of the piece was not found\n", stderr);
        return 1;
    }
    return 0;
}
