// SPDX-License-Identifier: MIT
#include "bench/progress.h"
#include "bench/step.h"
#include "plan/planhelp.h"

#include <set>

using namespace matside;
using planhelp::in;

namespace {

std::int64_t total(const std::vector<Step> &all, Does does, bool trial = false)
{
    std::int64_t sum = 0;
    for (const Step &step : all)
        if (step.does == does && step.trial == trial)
            sum += step.count;
    return sum;
}

} // namespace

class StepsTest : public QObject {
    Q_OBJECT
private slots:
    void theExamplesStepsStandInOrder();
    void countsAreThePlans();
    void trialComesFirstAndCanBePutOff();
    void pressingNeverComesBeforeTrimming();
    void progressIsWhatWasMadeLessWhatWasSpoiled();
    void harvestedShortsAreNotCutTwice();
    void everyIdIsItsOwn();
};

void StepsTest::theExamplesStepsStandInOrder()
{
    QFile file(QStringLiteral(TEST_DATA_DIR "/project-example.json"));
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QByteArray text = file.readAll();
    const auto read = readProject({text.constData(), static_cast<std::size_t>(text.size())});
    QVERIFY(read.ok());
    const std::vector<Step> all = steps(read.value().project, plan(read.value().project));
    std::vector<std::pair<std::string, std::int64_t>> run;
    for (const Step &step : all)
        if (!step.trial)
            run.emplace_back(step.id, step.count);
    const std::vector<std::pair<std::string, std::int64_t>> wanted{
        {"cut-strip/ground", 5}, {"cut-strip/back", 5},   {"cut-strip/batting", 5},
        {"stitch-block", 20},    {"trim-patches", 20},    {"press-block", 20},
        {"trim-block", 20},      {"cut-short/bands", 15}, {"cut-short/bands-back", 15},
        {"join-short", 15},      {"join-long-row", 2},    {"square-piece", 1},
        {"cut-binding/edge", 5}, {"sew-binding", 1},      {"last-look", 1}};
    auto at = run.begin();
    for (const auto &step : wanted) {
        at = std::find(at, run.end(), step);
        QVERIFY2(at != run.end(), step.first.c_str());
    }
    QCOMPARE(total(all, Does::JoinLong), 4);
    QVERIFY(all.front().trial);
}

void StepsTest::countsAreThePlans()
{
    planhelp::Chance chance(planhelp::seed(61));
    for (int i = 0; i < planhelp::count(2000); ++i) {
        const Project project = chance.project(chance.coin() ? System::Inch : System::Metric);
        const Plan p = plan(project);
        if (!p.problems.empty())
            continue;
        const std::vector<Step> all = steps(project, p);
        const std::int64_t faces = p.sashing.cutBack ? 2 : 1;
        const std::int64_t blocks =
            (project.blocks.columns * project.blocks.rows + project.blocks.spare) * project.kits;
        QCOMPARE(total(all, Does::CutStrip), p.strip.strips * (faces + 1));
        QCOMPARE(total(all, Does::StitchBlock), blocks);
        QCOMPARE(total(all, Does::TrimBlock), blocks);
        QCOMPARE(total(all, Does::CutShort) + total(all, Does::HarvestShort),
                 p.sashing.shorts * project.kits * faces);
        QCOMPARE(total(all, Does::JoinShort), p.sashing.shorts * project.kits);
        QCOMPARE(total(all, Does::CutLong) + total(all, Does::JoinLong),
                 p.sashing.longs * project.kits * faces);
        QCOMPARE(total(all, Does::JoinLongRow), p.sashing.longs * project.kits);
        QCOMPARE(total(all, Does::CutBinding), p.binding ? p.binding->strips * project.kits : 0);
        for (const Step &step : all) {
            QVERIFY2(step.count > 0, step.id.c_str());
            if (step.station == Station::Cut)
                QVERIFY2(step.ruler && step.caution == "blade", step.id.c_str());
        }
    }
}

void StepsTest::trialComesFirstAndCanBePutOff()
{
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    std::vector<Step> all = steps(project, plan(project));
    bool ended = false;
    for (const Step &step : all) {
        QVERIFY(!(ended && step.trial));
        ended = ended || !step.trial;
        if (!step.trial && step.does == Does::CutBand)
            QVERIFY(step.notTried);
    }
    project.made.trialPutOff = true;
    all = steps(project, plan(project));
    for (const Step &step : all)
        QVERIFY(!step.trial);
    project.made.trialPutOff = false;
    project.made.testBlock = TestBlock{{in(6), in(6)}, {in(6), in(6)}, {}};
    project.made.testJoin = TestJoin{in(0, 1, 2), in(0, 1, 32), in(1), in(0, 1, 8), {}};
    for (const Step &step : steps(project, plan(project)))
        QVERIFY2(!step.notTried, step.id.c_str());
    // A single block has no join to try.
    const Project mat = planhelp::piece(1, 1, in(6), planhelp::hoopP(), in(40, 1, 2));
    QCOMPARE(total(steps(mat, plan(mat)), Does::TestJoin, true), 0);
}

void StepsTest::pressingNeverComesBeforeTrimming()
{
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.patches.push_back({"leaf", in(2), in(3), in(0, 1, 2), "front", 2, {}});
    bool trimmed = false;
    for (const Step &step : steps(project, plan(project))) {
        trimmed = trimmed || step.does == Does::TrimPatches;
        if (step.does == Does::PressBlock)
            QVERIFY(trimmed);
    }
    QVERIFY(trimmed);
}

void StepsTest::progressIsWhatWasMadeLessWhatWasSpoiled()
{
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.made.trialPutOff = true;
    std::vector<Step> all = steps(project, plan(project));
    const auto first = nextStep(all);
    QVERIFY(first && all[*first].does == Does::Straighten);
    for (const Step &step : all)
        if (step.does == Does::Straighten || step.does == Does::CutStrip)
            project.made.cut.push_back(
                {step.cloth, progressName(step), step.count, step.does == Does::CutStrip ? 1 : 0, {}});
    all = steps(project, plan(project));
    for (const Step &step : all)
        if (step.does == Does::CutStrip)
            QCOMPARE(step.done, step.count - 1);
    QCOMPARE(all[*nextStep(all)].does, Does::CutStrip);
}

void StepsTest::harvestedShortsAreNotCutTwice()
{
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.strip.harvest = true;
    const std::vector<Step> all = steps(project, plan(project));
    QCOMPARE(total(all, Does::HarvestShort), 12);
    QCOMPARE(total(all, Does::CutShort), 0);
}

void StepsTest::everyIdIsItsOwn()
{
    planhelp::Chance chance(planhelp::seed(62));
    for (int i = 0; i < planhelp::count(500); ++i) {
        const Project project = chance.project(System::Inch);
        std::set<std::string> ids;
        for (const Step &step : steps(project, plan(project)))
            QVERIFY2(ids.insert(step.id).second, step.id.c_str());
    }
}

QTEST_GUILESS_MAIN(StepsTest)
#include "tst_steps.moc"
