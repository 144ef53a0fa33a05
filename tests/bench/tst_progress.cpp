// SPDX-License-Identifier: MIT
//
// What is done: from what was cut, from the states of the blocks, and from what the trial measured.
#include "bench/progress.h"
#include "benchhelp.h"

using namespace matside;
using namespace benchhelp;

namespace {

MadeBlock block(const char *name, BlockState state)
{
    MadeBlock made;
    made.block = name;
    made.state = state;
    return made;
}

std::int64_t doneOf(const std::vector<Step> &all, std::string_view id)
{
    const auto at = placeOf(all, id);
    return at < 0 ? -1 : all[static_cast<std::size_t>(at)].done;
}

} // namespace

class ProgressTest : public QObject {
    Q_OBJECT
private slots:
    void itIsWhatWasMadeLessWhatWasSpoiled();
    void itNeverPassesTheCount();
    void blocksTellHowFarTheyAre();
    void whatIsCutApartWasPressed();
    void measuredRowsAreChecked();
    void aMeasuredTrialIsBehindHer();
    void anEndStaysSquare();
    void everyStepDoneLeavesNothing();
};

void ProgressTest::itIsWhatWasMadeLessWhatWasSpoiled()
{
    Project project = nineBlocks();
    project.made.trialPutOff = true;
    std::vector<Step> all = stepsOf(project);
    const auto first = nextStep(all);
    QVERIFY(first && all[*first].does == Does::Straighten);
    for (const Step &step : all)
        if (step.does == Does::Straighten || step.does == Does::CutStrip)
            project.made.cut.push_back(
                {step.cloth, progressName(step), step.count, step.does == Does::CutStrip ? 1 : 0, {}});
    all = stepsOf(project);
    for (const Step &step : all)
        if (step.does == Does::CutStrip)
            QCOMPARE(step.done, step.count - 1);
    QCOMPARE(all[*nextStep(all)].does, Does::CutStrip);
}

void ProgressTest::itNeverPassesTheCount()
{
    Project project = nineBlocks();
    for (const Step &step : stepsOf(project))
        project.made.cut.push_back({step.cloth, progressName(step), 1'000'000, 0, {}});
    for (const Step &step : stepsOf(project))
        QCOMPARE(step.done, step.count);
    project.made.cut = {{"front", "cut-strip", 2, 1'000, {}}};
    QCOMPARE(doneOf(stepsOf(project), "cut-strip/front"), 0);
}

void ProgressTest::blocksTellHowFarTheyAre()
{
    Project project = nineBlocks();
    project.made.blocks = {block("A1", BlockState::Stitched), block("A2", BlockState::Trimmed),
                           block("A3", BlockState::Joined), block("B1", BlockState::Spoiled),
                           block("B2", BlockState::Lost)};
    std::vector<Step> all = stepsOf(project);
    QCOMPARE(doneOf(all, "stitch-block"), 3);
    QCOMPARE(doneOf(all, "press-block"), 2);
    QCOMPARE(doneOf(all, "trim-block"), 2);
    // The blocks of the piece say nothing of the test block.
    QCOMPARE(doneOf(all, "trial/press-block"), 0);
    // Whichever says more.
    project.made.cut = {{"", "stitch-block", 7, 1, {}}, {"", "trim-block", 1, 0, {}}};
    all = stepsOf(project);
    QCOMPARE(doneOf(all, "stitch-block"), 6);
    QCOMPARE(doneOf(all, "trim-block"), 2);
}

void ProgressTest::whatIsCutApartWasPressed()
{
    Project project = nineBlocks();
    project.made.blocks = {block("A1", BlockState::Stitched), block("A2", BlockState::Stitched),
                           block("A3", BlockState::Stitched)};
    project.made.cut = {{"", "press-block", 1, 0, {}}, {"", "rough-apart", 2, 0, {}}};
    std::vector<Step> all = stepsOf(project);
    QCOMPARE(doneOf(all, "press-block"), 2);
    QCOMPARE(doneOf(all, "rough-apart"), 2);
    QCOMPARE(doneOf(all, "trial/press-block"), 0);
    // One that was spoiled since is pressed again, when it is made again.
    project.made.cut[1].spoiled = 1;
    QCOMPARE(doneOf(stepsOf(project), "press-block"), 1);
    // Once all lie apart no iron comes next.
    project.made.cut[1] = {"", "rough-apart", 9, 0, {}};
    all = stepsOf(project);
    for (const Step &step : all)
        if (step.does == Does::PressBlock && !step.trial)
            QCOMPARE(step.done, std::min<std::int64_t>(step.count, 9));
}

void ProgressTest::measuredRowsAreChecked()
{
    Project project = nineBlocks();
    QCOMPARE(doneOf(stepsOf(project), "join-row"), 0);
    project.made.rows = {{"A", in(21), {}, {}}, {"B", in(21), {}, {}}};
    QCOMPARE(doneOf(stepsOf(project), "join-row"), 2);
}

void ProgressTest::aMeasuredTrialIsBehindHer()
{
    Project project = nineBlocks();
    project.made.testBlock = TestBlock{{in(6), in(6)}, {in(5, 7, 8), in(6)}, {}};
    std::vector<Step> all = stepsOf(project);
    QVERIFY(all[*nextStep(all)].trial && all[*nextStep(all)].does == Does::CutBand);
    for (const Step &step : all)
        if (step.trial && step.does != Does::TestJoin)
            QCOMPARE(step.done == step.count, !cutsSashing(step));
    project.made.testJoin = TestJoin{in(0, 1, 2), in(0, 1, 32), in(1), std::nullopt, {}};
    all = stepsOf(project);
    QVERIFY(!all[*nextStep(all)].trial);
}

void ProgressTest::anEndStaysSquare()
{
    Project project = nineBlocks();
    project.made.cut = {{"front", "trial/straighten", 1, 0, {}}};
    project.made.trialPutOff = true;
    QCOMPARE(doneOf(stepsOf(project), "straighten/front"), 1);
    QCOMPARE(doneOf(stepsOf(project), "straighten/back"), 0);
    project.made.cut = {{"front", "straighten", 1, 0, {}}};
    project.made.trialPutOff = false;
    QCOMPARE(doneOf(stepsOf(project), "trial/straighten/front"), 1);
}

void ProgressTest::everyStepDoneLeavesNothing()
{
    Project project = exampleProject();
    std::int64_t made = 0;
    for (auto next = nextStep(stepsOf(project)); next; next = nextStep(stepsOf(project))) {
        const Step step = stepsOf(project)[*next];
        project.made.cut.push_back({step.cloth, progressName(step), step.count - step.done, 0, {}});
        QVERIFY2(++made < 200, step.id.c_str());
    }
    QVERIFY(made > 30);
}

QTEST_GUILESS_MAIN(ProgressTest)
#include "tst_progress.moc"
