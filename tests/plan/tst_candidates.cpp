// SPDX-License-Identifier: MIT
//
// Layouts that fit a table. Case 18 of the trade notes was reckoned by hand; the rankings are found again
// here by trying every count and every block size in plain sixteenths, with the raw-edge formula of F13.
#include "candidatehelp.h"

#include <cmath>
#include <map>
#include <tuple>

using namespace matside;
using candidatehelp::missOf;
using candidatehelp::onTable;
using candidatehelp::told;
using planhelp::in;

namespace {

FitLimits only(Length block, const Project &project)
{
    FitLimits limits = usualLimits(project, {});
    limits.leastBlock = limits.mostBlock = block;
    limits.widen = false;
    return limits;
}

const Candidate *with(const Candidates &found, std::int64_t columns, std::int64_t rows)
{
    for (const Candidate &candidate : found.list)
        if (candidate.project.blocks.columns == columns && candidate.project.blocks.rows == rows)
            return &candidate;
    return nullptr;
}

} // namespace

class CandidatesTest : public QObject {
    Q_OBJECT
private slots:
    void sixtyByThirtySix();
    void runnerWithADrop();
    void roundTable_data();
    void roundTable();
    void allowanceForWashing();
    void widerSashingTakesUpTheRest();
    void anotherOfHerHoops();
    void oblongBlocksKeepTheirProportion();
    void stiffLipIsCautioned();
    void nothingNearerExists_data();
    void nothingNearerExists();
};

// Case 18 (a): table 60 × 36, reveal 6.
void CandidatesTest::sixtyByThirtySix()
{
    const Project project = onTable({in(60), in(36), std::nullopt, {}});
    const Pair wanted = *sizeLeaving(*project.table, {in(6), in(6)});
    QCOMPARE(wanted, (Pair{in(48), in(24)}));
    const Candidates all = candidatesFor(project, {wanted, {}}, usualLimits(project, {}));
    QVERIFY2(!all.list.empty(), told(all));
    const Candidate &first = all.list.front();
    QCOMPARE(first.project.blocks.width, in(7));
    QCOMPARE(first.project.blocks.columns, 6);
    QCOMPARE(first.project.blocks.rows, 3);
    QCOMPARE(first.plan.size.finished, (Pair{in(48), in(24)}));
    QCOMPARE(first.plan.table->reveal, (Pair{in(6), in(6)}));
    QCOMPARE(first.over, (Pair{}));
    // 5 in blocks (T = 6) come out even as well, with 32 blocks to 18.
    const Candidate *small = with(all, 8, 4);
    QVERIFY2(small, told(all));
    QCOMPARE(small->project.blocks.width, in(5));
    QCOMPARE(small->over, (Pair{}));

    const Candidates sixes = candidatesFor(project, {wanted, {}}, only(in(6), project));
    QCOMPARE(sixes.list.front().project.blocks.columns, 7);
    QCOMPARE(sixes.list.front().project.blocks.rows, 3);
    QCOMPARE(sixes.list.front().plan.size.finished, (Pair{in(49), in(21)}));
    QCOMPARE(sixes.list.front().plan.table->reveal, (Pair{in(5, 1, 2), in(7, 1, 2)}));
}

// Case 18 (b): a runner on 72 × 38 that drops 6 at the ends; 2 rows of 12 leave 12 at the sides.
void CandidatesTest::runnerWithADrop()
{
    const Project project = onTable({in(72), in(38), std::nullopt, {}});
    const Pair wanted = *sizeLeaving(*project.table, {in(-6), in(12)});
    QCOMPARE(wanted.along, in(84));
    const Candidates found = candidatesFor(project, {wanted, {}}, only(in(6), project));
    const Candidate &first = found.list.front();
    QCOMPARE(first.project.blocks.columns, 12);
    QCOMPARE(first.project.blocks.rows, 2);
    QCOMPARE(first.plan.size.finished, (Pair{in(84), in(14)}));
    QCOMPARE(first.plan.table->reveal, (Pair{in(-6), in(12)}));
    QVERIFY(!planhelp::has(first.plan.cautions, "stiff-lip"));
}

// Case 18 (c): round table of 48, 6 in blocks.
void CandidatesTest::roundTable_data()
{
    QTest::addColumn<int>("side");
    QTest::addColumn<double>("reveal");
    QTest::addColumn<double>("corner"); // z/√2 − 24, over the edge when positive
    QTest::addColumn<bool>("hangs");
    QTest::newRow("5 × 5") << 5 << 6.5 << 0.75 << true;
    QTest::newRow("4 × 4") << 4 << 10.0 << -4.25 << false;
    QTest::newRow("6 × 6") << 6 << 3.0 << 5.6875 << false; // long enough to hang
}

void CandidatesTest::roundTable()
{
    QFETCH(int, side);
    QFETCH(double, reveal);
    QFETCH(double, corner);
    QFETCH(bool, hangs);
    const Project project = onTable({std::nullopt, std::nullopt, in(48), {}});
    const Pair wanted = *sizeLeaving(*project.table, {in(6, 1, 2), in(6, 1, 2)});
    QCOMPARE(wanted, (Pair{in(35), in(35)}));
    const Pair asked{in(7) * side, in(7) * side};
    const Candidates found = candidatesFor(project, {asked, {}}, only(in(6), project));
    const Candidate &first = found.list.front();
    QCOMPARE(first.project.blocks.columns, side);
    QCOMPARE(first.project.blocks.rows, side);
    QCOMPARE(first.plan.table->reveal.along.asInches(), reveal);
    // The case gives its corners to a sixteenth or so.
    QVERIFY(std::abs(-first.plan.table->corner.asInches() - corner) < 0.06);
    QVERIFY(std::abs(-first.plan.table->corner.asInches() - (side * 7 / std::sqrt(2.0) - 24)) < 0.0005);
    QCOMPARE(planhelp::has(first.plan.cautions, "corner-hangs"), hangs);
}

// F21: 48 × 24 wanted after washing, 4 %: made 49 7/8 × 24 15/16 of 7 5/16 blocks, washed to 47 7/8 × 23
// 15/16.
void CandidatesTest::allowanceForWashing()
{
    const Project project = onTable({in(60), in(36), std::nullopt, {}});
    FitLimits limits = usualLimits(project, {});
    limits.step = in(0, 1, 16);
    limits.widen = false;
    const Candidates found = candidatesFor(project, {{in(48), in(24)}, Share{40'000}}, limits);
    QCOMPARE(found.asked, (Pair{in(50), in(25)}));
    const Candidate *candidate = with(found, 6, 3);
    QVERIFY2(candidate, told(found));
    QCOMPARE(candidate->project.blocks.width, in(7, 5, 16));
    QCOMPARE(candidate->plan.block.trimmed.along, in(8, 5, 16));
    QCOMPARE(candidate->plan.size.finished, (Pair{in(49, 7, 8), in(24, 15, 16)}));
    const auto mark = [&](Length length) { return show(length, project.marks(), Round::Nearest).mark; };
    QCOMPARE(mark(candidate->washed.along), in(47, 7, 8));
    QCOMPARE(mark(candidate->washed.across), in(23, 15, 16));
}

// F13 backwards: X = 48 3/8 of 7 in blocks: c = 6, g = (48 3/8 − 48)/5 = 0.075, on a sixteenth 1/16: 48 5/16.
void CandidatesTest::widerSashingTakesUpTheRest()
{
    const Project project = onTable({in(60), in(36), std::nullopt, {}});
    FitLimits limits = only(in(7), project);
    limits.widen = true;
    const Candidates found = candidatesFor(project, {{in(48, 3, 8), in(24, 1, 8)}, {}}, limits);
    const Candidate &first = found.list.front();
    QCOMPARE(first.project.blocks.columns, 6);
    QCOMPARE(first.project.sashing.finished, std::optional(in(1, 1, 16)));
    QCOMPARE(first.plan.sashing.allowanceGap, in(0, 1, 16));
    QCOMPARE(first.plan.size.finished, (Pair{in(48, 5, 16), in(24, 1, 8)}));
    QVERIFY(first.widerSashing);
    limits.widen = false;
    QVERIFY(!candidatesFor(project, {{in(48, 3, 8), in(24, 1, 8)}, {}}, limits)
                 .list.front()
                 .project.sashing.finished);
}

// 9 in blocks do not fit hoop P; they fit Q, which she owns as well.
void CandidatesTest::anotherOfHerHoops()
{
    Project project = onTable({in(60), in(36), std::nullopt, {}});
    project.hoop = planhelp::hoopP();
    const std::vector<Hoop> owned{planhelp::hoopP(), planhelp::hoopQ(), planhelp::hoopR()};
    QCOMPARE(usualLimits(project, {}).mostBlock, in(7, 3, 4));
    QCOMPARE(usualLimits(project, owned).mostBlock, in(9, 1, 4));
    const Candidates found = candidatesFor(project, {{in(50), in(30)}, {}}, only(in(9), project), owned);
    QVERIFY2(!found.list.empty(), told(found));
    QCOMPARE(found.list.front().project.hoop.name, std::string("Q"));
    QVERIFY(found.list.front().otherHoop);
    QCOMPARE(found.list.front().plan.size.finished, (Pair{in(50), in(30)}));
    // A block the project's own hoop takes stays in it.
    const Candidates sixes = candidatesFor(project, {{in(49), in(21)}, {}}, only(in(6), project), owned);
    QCOMPARE(sixes.list.front().project.hoop.name, std::string("P"));
    QVERIFY(!sixes.list.front().otherHoop);
    QVERIFY(candidatesFor(project, {{in(50), in(30)}, {}}, only(in(9), project)).list.empty());
}

void CandidatesTest::oblongBlocksKeepTheirProportion()
{
    Project project = onTable({in(60), in(36), std::nullopt, {}});
    project.blocks.width = in(6);
    project.blocks.height = in(8);
    const Candidates found = candidatesFor(project, {{in(42), in(27)}, {}}, usualLimits(project, {}));
    QVERIFY2(!found.list.empty(), told(found));
    QCOMPARE(found.list.front().over, (Pair{})); // 6 × 8 itself: 6 of 7, 3 of 9
    for (const Candidate &candidate : found.list)
        QVERIFY((candidate.project.blocks.height * 6 - candidate.project.blocks.width * 8).magnitude() <=
                in(0, 1, 2));
}

void CandidatesTest::stiffLipIsCautioned()
{
    const Project project = onTable({in(45), in(21), std::nullopt, {}});
    const Candidates found = candidatesFor(project, {{in(49), in(21)}, {}}, only(in(6), project));
    QCOMPARE(found.list.front().plan.table->reveal.along, in(-2));
    QVERIFY(planhelp::has(found.list.front().plan.cautions, "stiff-lip"));
}

void CandidatesTest::nothingNearerExists_data()
{
    QTest::addColumn<int>("along"); // sixteenths
    QTest::addColumn<int>("across");
    QTest::newRow("48 × 24") << 768 << 384;
    QTest::newRow("49 1/2 × 22 3/8") << 792 << 358;
    QTest::newRow("83 × 14") << 1328 << 224;
    QTest::newRow("37 7/16 square") << 599 << 599;
    QTest::newRow("101 × 63 1/16") << 1616 << 1009;
}

// Every count to 40 each way, every block size and every width of sashing, in whole sixteenths:
// cT + (c−1)g with T = B + 16 and a = 8.
void CandidatesTest::nothingNearerExists()
{
    QFETCH(int, along);
    QFETCH(int, across);
    const Project project = onTable({in(120), in(80), std::nullopt, {}});
    FitLimits limits = usualLimits(project, {});
    limits.most = 15;
    const Candidates found = candidatesFor(project, {{in(0, along, 16), in(0, across, 16)}, {}}, limits);
    QCOMPARE(found.list.size(), std::size_t{15});

    std::map<std::pair<int, int>, int> best; // counts → least miss
    for (int block = 64; block <= 148; block += 4) {
        for (int gap = 0; gap <= 2; ++gap) {
            for (int columns = 1; columns <= 40; ++columns) {
                for (int rows = 1; rows <= 40 && rows * columns <= 200; ++rows) {
                    const int wide = columns * (block + 16) + (columns - 1) * gap - along;
                    const int deep = rows * (block + 16) + (rows - 1) * gap - across;
                    const int miss = std::abs(wide) + std::abs(deep);
                    const auto [at, added] = best.try_emplace({columns, rows}, miss);
                    if (!added)
                        at->second = std::min(at->second, miss);
                }
            }
        }
    }
    std::vector<int> misses;
    misses.reserve(best.size());
    for (const auto &[counts, miss] : best)
        misses.push_back(miss);
    std::sort(misses.begin(), misses.end());
    for (std::size_t i = 0; i < found.list.size(); ++i) {
        const Candidate &candidate = found.list[i];
        QCOMPARE(missOf(candidate), in(0, misses[i], 16));
        const auto counts = std::pair{static_cast<int>(candidate.project.blocks.columns),
                                      static_cast<int>(candidate.project.blocks.rows)};
        QCOMPARE(missOf(candidate), in(0, best.at(counts), 16));
    }
}

QTEST_APPLESS_MAIN(CandidatesTest)
#include "tst_candidates.moc"
