// SPDX-License-Identifier: MIT
//
// matside-numbers [--short] [--only GROUP]: the figures this program is held to, each beside what it is
// measured against, in one run: what, measured, yardstick, goal, verdict. It always ends with 0 unless it
// could not measure.
#include "keeping.h"
#include "planning.h"
#include "screen.h"

#include <QGuiApplication>

#include <algorithm>
#include <array>
#include <cstdio>
#include <string>
#include <vector>

namespace {

using namespace measure;

bool whole = true;

/// One row of the table; `goal` is the most that the value may be.
void say(const char *what, double value, const char *unit, double goal, const char *against)
{
    std::printf("%-58s %9.2f %-3s goal %8.2f %-3s %-4s %s\n", what, value, unit, goal, unit,
                value <= goal ? "met" : "OVER", against);
    std::fflush(stdout);
}

void cannot(const char *what)
{
    std::fprintf(stderr, "matside-numbers: %s could not be measured\n", what);
    whole = false;
}

double ms(const Times &times, double share)
{
    return times.share(share) / 1000;
}

void fingers(bool brief)
{
    const int moves = brief ? 200 : 2000;
    Stage stage(largeDocument());
    if (!stage.stands())
        return cannot("the window");
    if (const auto drag = dragCorner(stage, moves)) {
        say("corner dragged at Fit, all models, 99th percentile", ms(drag->models, 0.99), "ms", 4,
            "a quarter of a frame");
        say("corner dragged at Fit, its frame ended, 99th percentile", ms(drag->frames, 0.99), "ms", 16.7,
            "a 60 Hz frame");
    } else {
        cannot("dragging the corner");
    }
    if (const auto scrub = scrubStrip(stage, moves)) {
        say("strip scrubbed at Hoop, its frame ended, 99th percentile", ms(scrub->frames, 0.99), "ms", 16,
            "a 60 Hz frame");
        say("strip scrubbed at Hoop, longest", ms(scrub->frames, 1), "ms", 16, "a 60 Hz frame");
    } else {
        cannot("scrubbing the strip");
    }
}

void gallery(bool brief)
{
    const int blocks = brief ? 40 : 200;
    const int steps = brief ? 100 : 600;
    QTemporaryDir folder;
    if (!fillGallery(folder.path(), blocks))
        return cannot("the gallery's notes");
    Stage stage({}, folder.path());
    const auto times = stage.stands() ? scrollGallery(stage, steps) : std::nullopt;
    if (!times)
        return cannot("the gallery");
    say("gallery of photographs of 12 MP scrolled, 99th percentile", ms(*times, 0.99), "ms", 16.7,
        "a 60 Hz frame");
}

void logging(bool brief)
{
    const auto logged = logBlocks(brief ? 50 : 500);
    if (!logged)
        return cannot("logging a block");
    std::printf("(medians: %.2f ms ours, %.2f ms plain sqlite3)\n", ms(logged->ours, 0.5),
                ms(logged->plain, 0.5));
    say("a block logged, median, in times of plain sqlite3",
        logged->ours.share(0.5) / logged->plain.share(0.5), "x", 1.5, "the same rows through sqlite3 itself");
}

void crowding(bool brief)
{
    const auto growth = grow(brief ? 0.05 : 1, brief ? 3 : 11);
    if (!growth)
        return cannot("growth");
    std::printf("(%d projects, %d rows of what was made, %d notes, beside one project)\n", growth->projects,
                growth->events, growth->notes);
    say("start of the crowded store, median, in times of the empty",
        growth->startCrowded.share(0.5) / growth->startAlone.share(0.5), "x", 1.1, "itself with one project");
    say("change of station, median, in times of the empty",
        growth->stationCrowded.share(0.5) / growth->stationAlone.share(0.5), "x", 1.1,
        "itself with one project");
}

void planning(bool brief)
{
    say("plan() of 30 x 30 blocks and 12 cloths, 99th percentile",
        ms(planWhileDragging(brief ? 200 : 2000).all, 0.99), "ms", 4, "a quarter of a frame");
}

/// A part of the table that can be asked for by itself.
struct Group {
    const char *name;
    void (*measure)(bool brief);
};
constexpr std::array groups{Group{"plan", planning}, Group{"fingers", fingers}, Group{"gallery", gallery},
                            Group{"log", logging}, Group{"crowd", crowding}};

} // namespace

int main(int argc, char **argv)
{
    const std::vector<std::string> given(argv + 1, argv + argc);
    const bool brief = std::find(given.begin(), given.end(), "--short") != given.end();
    const auto only = std::find(given.begin(), given.end(), "--only");
    const std::string wanted = only != given.end() && only + 1 != given.end() ? *(only + 1) : "";
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    const QGuiApplication app(argc, argv);
    for (const Group &group : groups)
        if (wanted.empty() || wanted == group.name)
            group.measure(brief);
    return whole ? 0 : 1;
}
