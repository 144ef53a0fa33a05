// SPDX-License-Identifier: MIT
//
// The order of the steps and their counts. The order is the trade's (common practice, no published source):
// one strip and one join are tried first, scissors come before heat, sashings are cut when the blocks are
// known.
#include "benchhelp.h"

#include <set>

using namespace matside;
using namespace benchhelp;

namespace {

/// Every id of the list, in this order, with this count.
void standInOrder(const std::vector<Step> &all,
                  const std::vector<std::pair<std::string, std::int64_t>> &wanted)
{
    auto at = all.begin();
    for (const auto &[id, count] : wanted) {
        at = std::find_if(at, all.end(), [&](const Step &step) { return step.id == id; });
        QVERIFY2(at != all.end(), id.c_str());
        QCOMPARE(at->count, count);
    }
}

} // namespace

class StepsTest : public QObject {
    Q_OBJECT
private slots:
    void theExamplesStepsStandInOrder();
    void theExamplesStripIsCutAsTheContractSays();
    void theTrialGoesThroughTheWholeLine();
    void countsAreThePlans();
    void trialComesFirstAndCanBePutOff();
    void theTestJoinSetsTheSeam();
    void pressingNeverComesBeforeTrimming();
    void everyIdIsItsOwn();
};

void StepsTest::theExamplesStepsStandInOrder()
{
    // Seven bands a face, by hand: pieces of 29 and 21 in twice, each alone with one and two shorts of
    // 8 1/2 in beside it on 40 1/2 in, make four bands and six shorts; nine shorts are left, four to a band.
    const std::vector<Step> all = stepsOf(exampleProject());
    standInOrder(all, {{"cut-strip/ground", 5},    {"cut-strip/back", 5},
                       {"cut-strip/batting", 5},   {"layer", 5},
                       {"mark-strip", 5},          {"cut-patch-1/rust", 20},
                       {"cut-patch-2/cream", 20},  {"stitch-block", 20},
                       {"trim-patches", 20},       {"press-block", 20},
                       {"rough-apart", 20},        {"trim-block", 20},
                       {"cut-band/bands", 7},      {"cut-short/bands", 15},
                       {"cut-band/bands-back", 7}, {"cut-short/bands-back", 15},
                       {"join-short", 15},         {"join-row", 3},
                       {"join-long-row", 2},       {"square-piece", 1},
                       {"straighten/edge", 1},     {"cut-binding/edge", 5},
                       {"sew-binding", 1},         {"last-look", 1}});
    QCOMPARE(total(all, Does::JoinLong), 4);
    QVERIFY(all.front().trial);
}

void StepsTest::theExamplesStripIsCutAsTheContractSays()
{
    const std::vector<Step> all = stepsOf(exampleProject());
    const Step &step = all[static_cast<std::size_t>(placeOf(all, "cut-strip/ground"))];
    QCOMPARE(step.station, Station::Cut);
    QCOMPARE(step.done, 0);
    QCOMPARE(step.size->across, in(13, 1, 4));
    QCOMPARE(step.size->along, in(40, 1, 2));
    QCOMPARE(step.ruler->layers, 2);
    QCOMPARE(step.ruler->first, std::string("square"));
    QCOMPARE(step.ruler->line, in(7, 1, 4));
    QVERIFY(step.ruler->on == LineOn::CutEdge);
    QCOMPARE(step.ruler->second.value_or(""), std::string("long"));
    QCOMPARE(step.ruler->keep, std::string("under-rulers"));
    QCOMPARE(step.check, std::string("cut-edge-square-to-fold"));
    QCOMPARE(step.caution, std::string("blade"));
    // A test block of 20 places on 5 strips has its own strip.
    QCOMPARE(total(all, Does::CutStrip, true), 3);
}

void StepsTest::theTrialGoesThroughTheWholeLine()
{
    std::vector<std::string> trial;
    for (const Step &step : stepsOf(exampleProject()))
        if (step.trial)
            trial.push_back(step.id);
    const std::vector<std::string> wanted{"trial/straighten/ground",
                                          "trial/cut-strip/ground",
                                          "trial/straighten/back",
                                          "trial/cut-strip/back",
                                          "trial/straighten/batting",
                                          "trial/cut-strip/batting",
                                          "trial/layer",
                                          "trial/mark-strip",
                                          "trial/stitch-test",
                                          "trial/press-block",
                                          "trial/measure-test",
                                          "trial/straighten/bands",
                                          "trial/cut-band/bands",
                                          "trial/cut-short/bands",
                                          "trial/straighten/bands-back",
                                          "trial/cut-band/bands-back",
                                          "trial/cut-short/bands-back",
                                          "trial/test-join"};
    QVERIFY(trial == wanted);
    for (const Step &step : stepsOf(exampleProject()))
        if (step.trial)
            QCOMPARE(step.count, 1);
}

void StepsTest::countsAreThePlans()
{
    planhelp::Chance chance(planhelp::seed(61));
    const int wanted = planhelp::count(2000);
    int made = 0;
    for (int i = 0; made < wanted; ++i) {
        QVERIFY2(i < wanted * 20, "too few of the random projects can be made");
        Project project = chance.project(chance.coin() ? System::Inch : System::Metric);
        project.made.trialPutOff = chance.between(0, 3) == 0;
        const Plan p = plan(project);
        if (!p.problems.empty())
            continue;
        ++made;
        const std::vector<Step> all = steps(project, p);
        const std::int64_t faces = p.sashing.cutBack ? 2 : 1;
        const std::int64_t blocks =
            (project.blocks.columns * project.blocks.rows + project.blocks.spare) * project.kits;
        QCOMPARE(total(all, Does::CutStrip), p.strip.strips * (faces + 1));
        QCOMPARE(total(all, Does::MarkStrip), p.strip.strips);
        QCOMPARE(total(all, Does::StitchBlock), blocks);
        QCOMPARE(total(all, Does::TrimBlock), blocks);
        QCOMPARE(total(all, Does::HarvestShort), p.strip.harvestedPairs * faces);
        QCOMPARE(total(all, Does::CutShort) + total(all, Does::HarvestShort),
                 p.sashing.shorts * project.kits * faces);
        QCOMPARE(total(all, Does::JoinShort), p.sashing.shorts * project.kits);
        QCOMPARE(total(all, Does::CutLong) + total(all, Does::JoinLong),
                 p.sashing.longs * project.kits * faces);
        QCOMPARE(total(all, Does::JoinRow), project.blocks.rows * project.kits);
        QCOMPARE(total(all, Does::JoinLongRow), p.sashing.longs * project.kits);
        QCOMPARE(total(all, Does::SquarePiece), project.kits * (p.frame ? 2 : 1));
        QCOMPARE(total(all, Does::CutFrame),
                 p.frame ? (p.frame->frontStrips + p.frame->backStrips) * project.kits : 0);
        const bool bias = p.binding && p.binding->bias;
        QCOMPARE(total(all, Does::CutBinding), p.binding && !bias ? p.binding->strips * project.kits : 0);
        QCOMPARE(total(all, Does::CutBias), bias ? project.kits : 0);
        std::int64_t trials = 0;
        bool counted = false;
        for (const Step &step : all) {
            QVERIFY2(step.count > 0, step.id.c_str());
            QVERIFY2(!step.makes.empty(), step.id.c_str());
            if (step.station == Station::Cut)
                QVERIFY2(step.ruler && step.caution == "blade", step.id.c_str());
            counted = counted || !step.trial;
            QVERIFY2(!(step.trial && counted), step.id.c_str());
            trials += step.trial ? 1 : 0;
        }
        QCOMPARE(trials == 0, project.made.trialPutOff);
    }
}

void StepsTest::trialComesFirstAndCanBePutOff()
{
    Project project = nineBlocks();
    for (const Step &step : stepsOf(project))
        if (!step.trial && (cutsSashing(step) || step.does == Does::StitchBlock))
            QVERIFY2(step.notTried, step.id.c_str());
    project.made.trialPutOff = true;
    for (const Step &step : stepsOf(project)) {
        QVERIFY(!step.trial);
        if (cutsSashing(step) || step.does == Does::JoinShort || step.does == Does::CutStrip)
            QVERIFY2(step.notTried, step.id.c_str());
    }
    project.made.trialPutOff = false;
    project.made.testBlock = TestBlock{{in(6), in(6)}, {in(6), in(6)}, {}};
    for (const Step &step : stepsOf(project)) {
        QVERIFY2(!(step.does == Does::CutStrip && step.notTried), step.id.c_str());
        QVERIFY2(!(cutsSashing(step) && !step.trial && !step.notTried), step.id.c_str());
    }
    project.made.testJoin = TestJoin{in(0, 1, 2), in(0, 1, 32), in(1), in(0, 1, 8), {}};
    for (const Step &step : stepsOf(project))
        QVERIFY2(!step.notTried, step.id.c_str());
}

void StepsTest::theTestJoinSetsTheSeam()
{
    // F9's worked example: 1/16 in of overlap where 1/32 in of gap is wanted, at a 1/2 in seam.
    Project project = nineBlocks();
    project.made.testJoin = TestJoin{in(0, 1, 2), -in(0, 1, 16), std::nullopt, std::nullopt, {}};
    int joins = 0;
    for (const Step &step : stepsOf(project)) {
        if (step.does == Does::TestJoin)
            QCOMPARE(*step.seam, in(0, 1, 2));
        if (step.does != Does::JoinShort && step.does != Does::JoinLongRow)
            continue;
        QVERIFY(std::abs(step.seam->asInches() - 0.4766) < 0.0005);
        ++joins;
    }
    QCOMPARE(joins, 2);
}

void StepsTest::pressingNeverComesBeforeTrimming()
{
    Project project = nineBlocks();
    project.patches.push_back({"leaf", in(2), in(3), in(0, 1, 2), "front", 2, {}});
    const std::vector<Step> all = stepsOf(project);
    QVERIFY(placeOf(all, "stitch-block") < placeOf(all, "trim-patches"));
    QVERIFY(placeOf(all, "trim-patches") < placeOf(all, "press-block"));
    QCOMPARE(total(all, Does::CutPatch), 18);
    // Without patches there is nothing to trim; the test block never has one.
    QCOMPARE(total(stepsOf(nineBlocks()), Does::TrimPatches), 0);
    for (const Step &step : all)
        for (const Piece &piece : step.takes)
            QVERIFY(!(step.trial && piece.name.starts_with("patch/")));
}

void StepsTest::everyIdIsItsOwn()
{
    planhelp::Chance chance(planhelp::seed(62));
    for (int i = 0; i < planhelp::count(500); ++i) {
        Project project = chance.project(System::Inch);
        project.patches = {{"leaf", in(2), in(3), in(0, 1, 2), "green", 1, {}},
                           {"stem", in(1), in(3), in(0, 1, 2), "green", 2, {}}};
        std::set<std::string> ids;
        for (const Step &step : stepsOf(project))
            QVERIFY2(ids.insert(step.id).second, step.id.c_str());
    }
}

QTEST_GUILESS_MAIN(StepsTest)
#include "tst_steps.moc"
