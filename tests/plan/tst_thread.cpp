// SPDX-License-Identifier: MIT
//
// Thread, bobbin, stitches and time. Checked against the worked block of the trade notes (F19, F20) and, from
// outside, the consumption formula of lockstitch type 301 re-derived stitch by stitch.
#include "plan/thread.h"

#include "plan/hours.h"
#include "planhelp.h"

#include "plan/onstrip.h"

#include <cmath>
#include <random>

using namespace matside;
using planhelp::in;

class ThreadForecast : public QObject {
    Q_OBJECT
private slots:
    void workedBlockOfTheNotes();
    void formulaIsTheSumOfItsStitches();
    void minutesOfTheNotes();
    void theClockOfABlockIsRun();
    void theHoursOfAPieceAreWalked();
    void ownAveragesCountFromThreeBlocks();
    void newBobbinsTellWhatABobbinServes();
    void stopsBeginWithStipplingAndEndWithTheOutline();
    void designsTurnAndChooseTheirPatches();
    void aLineDownTheSashingsCountsWhenPlanned();
};

void ThreadForecast::aLineDownTheSashingsCountsWhenPlanned()
{
    // Case 1 by hand: six shorts of 7 in and two longs of 21 in make 84 in; at 2.5 mm 853 stitches.
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    QCOMPARE(threadFor(sashingPath(project, plan(project))).stitches, 0);
    project.thread.sashingLine = true;
    QCOMPARE(sashingPath(project, plan(project)).running, in(84));
    QCOMPARE(threadFor(sashingPath(project, plan(project))).stitches, 853);
    project.kits = 3;
    QCOMPARE(sashingPath(project, plan(project)).running, in(252));
}

void ThreadForecast::workedBlockOfTheNotes()
{
    // 28 sq in of stippling at 1/4 in = 112 in, echo 16, outer line 24: running 152 in; bean 18 in; 2.5 mm.
    const ThreadUse use = threadFor({in(152), in(18), Length::mmTenths(25)});
    QCOMPARE(use.stitches, 2093);
    QVERIFY(std::fabs(use.all.asMm() / 1000 - 19.0) < 0.05);
    QVERIFY(std::fabs(use.bobbin.asMm() / 1000 - 10.6) < 0.05);
    QCOMPARE(blocksOn(Length::mm(60'000), use.bobbin), 5);
    QCOMPARE(blocksOn(Length::mm(60'000), Length()), 0);
}

// F19 | independent derivation | lockstitch type 301 laid stitch by stitch: its length above and
//    | beneath, the sandwich twice
void ThreadForecast::formulaIsTheSumOfItsStitches()
{
    // Independent derivation: each stitch lays its length on top and beneath and passes the sandwich twice
    // with both threads together.
    const double stitch = 2.5;
    const double sandwich = 0.08 * 25.4;
    const double running = 152 * 25.4;
    const double bean = 18 * 25.4;
    double sum = 0;
    for (double at = 0; at < running - 1e-9; at += stitch)
        sum += 2 * std::min(stitch, running - at) + 2 * sandwich * std::min(stitch, running - at) / stitch;
    for (int pass = 0; pass < 3; ++pass)
        for (double at = 0; at < bean - 1e-9; at += stitch)
            sum += 2 * std::min(stitch, bean - at) + 2 * sandwich * std::min(stitch, bean - at) / stitch;
    const ThreadUse use = threadFor({in(152), in(18), Length::mmTenths(25)});
    QVERIFY(std::fabs(use.all.asMm() - sum) < 0.1);
}

// The minutes themselves are one maker's: common practice, no published source.
void ThreadForecast::minutesOfTheNotes()
{
    QCOMPARE(minuteTenths(2093, 600, 4, 3, true), 184);
    // Off the machine: hoop 3 + 4.36 + 4 × 0.5 + 3 = 12.4.
    QCOMPARE(minuteTenths(2093, 600, 4, 3, false), 124);
}

// F20 | independent derivation | a clock run stitch by stitch and stop by stop at the machine
void ThreadForecast::theClockOfABlockIsRun()
{
    std::mt19937 random(20);
    for (int block = 0; block < 200; ++block) {
        const int stitches = static_cast<int>(random() % 6000);
        const int speed = 300 + static_cast<int>(random() % 900);
        const int patches = static_cast<int>(random() % 7);
        const int changes = static_cast<int>(random() % 5);
        for (const bool atTheStop : {true, false}) {
            double seconds = 180;
            for (int stitch = 0; stitch < stitches; ++stitch)
                seconds += 60.0 / (speed * 0.8); // it starts, stops and turns: four fifths of its speed
            for (int patch = 0; patch < patches; ++patch)
                seconds += atTheStop ? 30 + 90 : 30;
            for (int change = 0; change < changes; ++change)
                seconds += 60;
            const auto told = minuteTenths(stitches, speed, patches, changes, atTheStop);
            QVERIFY2(std::fabs(static_cast<double>(told) - seconds / 6) < 0.5001,
                     qPrintable(QStringLiteral("%1 stitches at %2: %3").arg(stitches).arg(speed).arg(told)));
        }
    }
}

// F20 | independent derivation | the piece sewn row by row, its longs and its edge walked eighth by eighth of
// an
//    | inch
void ThreadForecast::theHoursOfAPieceAreWalked()
{
    std::mt19937 random(21);
    for (int piece = 0; piece < 30; ++piece) {
        const int columns = 1 + static_cast<int>(random() % 6), rows = 1 + static_cast<int>(random() % 5);
        Project project = planhelp::piece(columns, rows, in(6), planhelp::hoopP(), in(40, 1, 2));
        project.blocks.spare = static_cast<std::int64_t>(random() % 3);
        project.edge.sewn = piece % 2 == 0 ? Sewn::Hand : Sewn::Machine;
        const Plan planned = plan(project);
        const auto walked = [](Length way, double minutesAFoot) {
            double minutes = 0;
            for (Length at; at < way; at = at + in(0, 1, 8))
                minutes += minutesAFoot * std::min((way - at).asInches(), 0.125) / 12;
            return minutes;
        };
        double joining = 0, trimming = 0;
        for (int row = 0; row < rows; ++row) {
            for (int column = 0; column < columns; ++column) {
                trimming += 3;
                joining += column > 0 ? 9 : 0;
            }
            joining += row > 0 ? walked(planned.sashing.longLength, 2.5) + 5 : 0;
        }
        trimming += 3 * static_cast<double>(project.blocks.spare);
        double edging = 0;
        for (const Length side : {planned.size.finished.along, planned.size.finished.across})
            edging += 2 * walked(side, project.edge.sewn == Sewn::Hand ? 18 : 7.2);
        const Hours hours = hoursFor(project, planned);
        QVERIFY(planned.binding.has_value());
        QCOMPARE(static_cast<double>(hours.trimming) / 10, trimming);
        // Each long is rounded to a tenth by itself, the edge once.
        QVERIFY(std::fabs(static_cast<double>(hours.joining) / 10 - joining) < 0.0501 * rows);
        QVERIFY(std::fabs(static_cast<double>(hours.edging) / 10 - edging) < 0.0501);
        QCOMPARE(hours.machine,
                 forecastOf(project, planned).minuteTenths * (columns * rows + project.blocks.spare));
    }
}

void ThreadForecast::ownAveragesCountFromThreeBlocks()
{
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    for (int i = 0; i < 2; ++i) {
        MadeBlock block;
        block.block = "A" + std::to_string(i + 1);
        block.strip = 1;
        block.place = i + 1;
        block.minutes = 20 + i;
        project.made.blocks.push_back(block);
    }
    QVERIFY(!forecastOf(project, plan(project)).ownMinutes);
    MadeBlock third = project.made.blocks.back();
    third.block = "A3";
    third.place = 3;
    third.minutes = 25;
    project.made.blocks.push_back(third);
    const Forecast own = forecastOf(project, plan(project));
    QVERIFY(own.ownMinutes);
    QCOMPARE(own.minuteTenths, 220);
}

void ThreadForecast::newBobbinsTellWhatABobbinServes()
{
    Project project = planhelp::piece(4, 4, in(6), planhelp::hoopP(), in(40, 1, 2));
    const Plan p = plan(project);
    const std::int64_t reckoned = forecastOf(project, p).blocksPerBobbin;
    QVERIFY(reckoned > 0);
    QCOMPARE(forecastOf(project, p).bobbinLeft, reckoned);
    for (int i = 0; i < 9; ++i) {
        MadeBlock block;
        block.block = blockNames(project)[static_cast<std::size_t>(i)];
        block.strip = 1 + i / 4;
        block.place = 1 + i % 4;
        project.made.blocks.push_back(block);
    }
    project.made.events = {{"new-bobbin", "", "", "", 0, 0, {}, {}},
                           {"new-bobbin", "", "", "", 0, 4, {}, {}},
                           {"new-bobbin", "", "", "", 0, 8, {}, {}}};
    const Forecast own = forecastOf(project, p);
    QVERIFY(own.ownBobbin);
    QCOMPARE(own.blocksPerBobbin, 4);
    QCOMPARE(own.bobbinLeft, 3);
}

void ThreadForecast::stopsBeginWithStipplingAndEndWithTheOutline()
{
    Project project = planhelp::piece(3, 3, in(7), planhelp::hoopQ(), in(40, 1, 2));
    project.patches = {{"hull", in(4), in(1, 3, 4), in(0, 1, 2), "rust", 1, {}},
                       {"sail", in(2, 1, 4), in(3, 1, 2), in(0, 1, 2), "cream", 2, {}}};
    const auto stops = stopsOf(project, plan(project), "A1");
    QCOMPARE(stops.size(), std::size_t(6));
    QVERIFY(stops.front().kind == Stop::Kind::Stipple);
    QCOMPARE(stops[2].name, std::string("hull"));
    QCOMPARE(stops[4].rectangle.across, in(4, 1, 2)); // F18: 3 1/2 + 2 × 1/2
    QVERIFY(stops.back().kind == Stop::Kind::Outline);
    project.patches.clear();
    QCOMPARE(stopsOf(project, plan(project), "A1").size(), std::size_t(2));
}

void ThreadForecast::designsTurnAndChooseTheirPatches()
{
    Project project = planhelp::piece(2, 1, in(7), planhelp::hoopQ(), in(40, 1, 2));
    project.patches = {{"hull", in(4), in(1, 3, 4), in(0, 1, 2), "rust", 1, {}},
                       {"sail", in(2, 1, 4), in(3, 1, 2), in(0, 1, 2), "cream", 1, {}}};
    project.designs = {{"boat", {"hull", "sail"}, 3000, "", {}}, {"hull-only", {"hull"}, 2000, "", {}}};
    project.layout = {{"boat", "hull-only@90"}};
    QCOMPARE(designOf(project, "A2").turned, 90);
    QCOMPARE(designOf(project, "A2").design->id, std::string("hull-only"));
    QCOMPARE(stopsOf(project, plan(project), "A2").size(), std::size_t(4));
    QCOMPARE(forecastOf(project, plan(project)).use.stitches, 3000);
}

QTEST_APPLESS_MAIN(ThreadForecast)
#include "tst_thread.moc"
