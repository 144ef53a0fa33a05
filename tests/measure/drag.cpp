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
    const auto planned = measure::planWhileDragging(moves);
    planned.all.print("plan(), 30 x 30 blocks, 12 cloths, dragging");
    std::printf("%-44s %6d of those sizes were refused, with remedies\n", "", planned.refused);
    measure::planByColumns();
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    const QGuiApplication app(argc, argv);
    measure::Stage stage(measure::largeDocument());
    const auto took = stage.stands() ? measure::dragCorner(stage, moves) : std::nullopt;
    if (!took) {
        std::fputs("matside-drag: the window or the corner of the piece was not found\n", stderr);
        return 1;
    }
    took->models.print("touch event to all models following");
    took->frames.print("touch event to the end of its frame");
    std::printf("%-44s %6d moves stayed on the same number of blocks and drew nothing new\n", "",
                took->still);
    return 0;
}
