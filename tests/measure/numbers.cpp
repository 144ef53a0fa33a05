// SPDX-License-Identifier: MIT
//
// matside-numbers [--short] [--only GROUP]: the figures this program is held to, each beside what it is
// measured against, in one run: what, measured, yardstick, goal, verdict. It always ends with 0 unless it
// could not measure.
#include "keeping.h"
#include "launch.h"
#include "optimiser.h"
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

/// The same where `goal` is the least that the value may be.
void sayAtLeast(const char *what, double value, const char *unit, double goal, const char *against)
{
    std::printf("%-58s %9.2f %-3s least %7.2f %-3s %-4s %s\n", what, value, unit, goal, unit,
                value >= goal ? "met" : "OVER", against);
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

void dragging(bool brief)
{
    Stage stage(largeDocument());
    if (!stage.stands())
        return cannot("the window");
    const auto drag = dragCorner(stage, brief ? 200 : 2000);
    if (!drag)
        return cannot("dragging the corner");
    say("corner dragged at Fit, all models, 99th percentile", ms(drag->models, 0.99), "ms", 4,
        "a quarter of a frame");
    say("corner dragged at Fit, its frame ended, 99th percentile", ms(drag->frames, 0.99), "ms", 16.7,
        "a 60 Hz frame");
    std::printf("(median of these frames: %.1f ms)\n", ms(drag->frames, 0.5));
}

void scrubbing(bool brief)
{
    Stage stage(largeDocument());
    if (!stage.stands())
        return cannot("the window");
    const auto scrub = scrubStrip(stage, brief ? 200 : 2000);
    if (!scrub)
        return cannot("scrubbing the strip");
    say("strip scrubbed at Hoop, its frame ended, 99th percentile", ms(scrub->frames, 0.99), "ms", 16,
        "a 60 Hz frame");
    std::printf("(median of these frames: %.1f ms, longest %.1f ms)\n", ms(scrub->frames, 0.5),
                ms(scrub->frames, 1));
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

/// Beside many other projects: the program itself started on such a store, and the change of its stations.
void crowding(bool brief)
{
    QTemporaryDir alone;
    QTemporaryDir crowded;
    const Crowd many = brief ? Crowd{25, 2500, 500} : Crowd{500, 50000, 10000};
    if (!fillShelf(alone.path(), {}) || !fillShelf(crowded.path(), many))
        return cannot("the crowded shelf");
    std::printf("(%d projects, %d rows of what was made, %d notes, beside one project)\n", many.projects,
                many.events, many.notes);
    const auto on = [](const QTemporaryDir &folder) {
        return Launch{QStringLiteral(PROGRAM), {QStringLiteral("--data"), folder.path()}};
    };
    if (const auto starts = launchBoth({on(alone), on(crowded)}, brief ? 3 : 15)) {
        const auto &[one, all] = *starts;
        std::printf("(medians: %.0f ms with one project, %.0f ms with all)\n", ms(one.firstFrame, 0.5),
                    ms(all.firstFrame, 0.5));
        say("start to the first frame, crowded store, median",
            all.firstFrame.share(0.5) / one.firstFrame.share(0.5), "x", 1.1, "itself with one project");
    } else {
        cannot("the start");
    }
    const auto growth = grow(alone.path(), crowded.path(), brief ? 3 : 11);
    if (!growth)
        return cannot("the change of station");
    say("change of station, crowded store, median",
        growth->stationCrowded.share(0.5) / growth->stationAlone.share(0.5), "x", 1.1,
        "itself with one project");
}

/// How a logged note and the look at all blocks grow with the notes there are.
void noting(bool brief)
{
    for (const int notes : {1, 100, brief ? 1000 : 10000}) {
        const auto noted = logBeside(notes);
        if (!noted)
            return cannot("a note beside many");
        std::printf("(beside %5d notes: one more %.2f ms, the newest of every block %.2f ms, medians)\n",
                    notes, ms(noted->log, 0.5), ms(noted->look, 0.5));
    }
}

/// The program with its demo open, and a window of Qt Quick with nothing in it.
void starting(bool brief)
{
    QTemporaryDir data;
    const auto both = launchBoth(
        {Launch{QStringLiteral(BARE), {}},
         Launch{QStringLiteral(PROGRAM), {QStringLiteral("--data"), data.path(), QStringLiteral("--demo")}}},
        brief ? 3 : 11);
    if (!both)
        return cannot("the start");
    const auto &[bare, ours] = *both;
    std::printf("(medians: %.0f ms and %.1f MB, the bare window %.0f ms and %.1f MB)\n",
                ms(ours.firstFrame, 0.5), ours.peak, ms(bare.firstFrame, 0.5), bare.peak);
    say("start to the first drawn frame, demo open, median",
        ours.firstFrame.share(0.5) / bare.firstFrame.share(0.5), "x", 1.5, "a bare Qt Quick window");
    say("peak memory, demo open, median", ours.peak / bare.peak, "x", 2, "a bare Qt Quick window");
}

void cutting(bool brief)
{
    const int rounds = brief ? 3 : 21;
    const Cut invented = cutInvented(rounds);
    say("cuts: jobs A-C, both ways, slowest median", invented.slowest, "ms", 4, "a quarter of a frame");
    const Cut large = cutLarge(rounds);
    say("cuts: jobs D of 2000 pieces, 100 000 units, slowest median", large.slowest, "ms", 50,
        "three frames");
    say("cuts: of these eight, not the optimum or not proved",
        invented.differing + large.differing + invented.jobs - invented.proved + large.jobs - large.proved,
        "", 0, "optima found by CBC and HiGHS");
    for (const bool turn : {false, true}) {
        const Cut random = cutRandom(turn, brief ? 50 : 1000);
        sayAtLeast(turn ? "cuts: random jobs, cloth turned, proved within 16 ms"
                        : "cuts: random jobs, one way, proved within 16 ms",
                   100.0 * random.within / random.jobs, "%", 99, "a 60 Hz frame");
        say(turn ? "cuts: random jobs, cloth turned, widest gap" : "cuts: random jobs, one way, widest gap",
            random.widest, "st", 1, "one step of what is sold");
        std::printf(
            "(%d jobs: %d proved in at most %.0f ms, %d more with 400 000 units, gaps to %d steps then)\n",
            random.jobs, random.proved, ms(random.times, 1), random.later, random.left);
    }
}

void planning(bool brief)
{
    say("plan() of 30 x 30 blocks and 12 cloths, 99th percentile",
        ms(planWhileDragging(brief ? 200 : 2000).all, 0.99), "ms", 4, "a quarter of a frame");
    for (const int side : {1, 10, 30, 100})
        std::printf("(plan() of %5d blocks: %.3f ms, median)\n", side * side, ms(planOf(side, side), 0.5));
}

/// A part of the table that can be asked for by itself.
struct Group {
    const char *name;
    void (*measure)(bool brief);
};
constexpr std::array groups{Group{"plan", planning},   Group{"cuts", cutting},    Group{"drag", dragging},
                            Group{"scrub", scrubbing}, Group{"gallery", gallery}, Group{"start", starting},
                            Group{"log", logging},     Group{"crowd", crowding},  Group{"notes", noting}};

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
