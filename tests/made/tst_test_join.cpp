// SPDX-License-Identifier: MIT
//
// The test join and the test block (F9, F21).
#include "made/testjoin.h"
#include "madehelp.h"

using namespace matside;
using namespace madehelp;

namespace {

Basis halfInch()
{
    Project project = freshProject(System::Inch);
    return basisOf(project);
}
JoinAnswer answered(std::optional<Length> seam, Length gap)
{
    TestJoin join;
    join.seam = seam;
    join.gap = gap;
    return *answerOf(join, halfInch(), in(2), usualTolerances(System::Inch));
}

} // namespace

class TestJoinTest : public QObject {
    Q_OBJECT
private slots:
    void caseEight();
    void workedOverlap();
    void gapMovesFourTimesAsFastAsTheSeam();
    void followingTheAnswerGivesTheWantedGap();
    void handOutsBracketTheBulk_data();
    void handOutsBracketTheBulk();
    void paringStopsAtTheLeastAllowance();
    void scantSeamLeavesTheOutlineInView();
    void measuredBetweenSetsTheTurn();
    void agreesWithTheBasis();
    void aGapThePlanLeavesIsWanted();
    void nothingMeasured();
    void drawUpEachWay();
    void drawUpIsBounded_data();
    void drawUpIsBounded();
    void sentAgainItComesOutAtSize();
    void publishedSample();
};

void TestJoinTest::caseEight()
{
    // Worked by hand in the trade notes: 1 × 4, T = 7, W = 2, sewn 17/32.
    const Length seam = in(0, 17, 32), gap = gapLeft(in(2), seam, Length());
    QCOMPARE(gap, in(0, -1, 8));
    QCOMPARE(visibleWidth(in(2), seam), in(0, 15, 16));
    QCOMPARE(pitch(in(7), gap), in(6, 7, 8));
    QCOMPARE(rowLength(4, in(7), gap), in(27, 5, 8));
    const JoinAnswer answer = answered(seam, gap);
    QVERIFY(!answer.good);
    QVERIFY(std::abs(answer.newSeam.asInches() - 0.492) < 0.0005);
    QCOMPARE(show(answer.newSeam, sixteenths(), Round::Fine).mark, in(0, 1, 2));
    QCOMPARE(answer.pare, in(0, 1, 16));
    QCOMPARE(answer.allowanceLeft, in(0, 15, 32));
    QVERIFY(answer.mayPare);
    // Nothing went over the bulk: it is the paper's W − 2 s′.
    QVERIFY((answer.visible - visibleWidth(in(2), answer.newSeam)).magnitude() <= Length::ticks(2));
}

void TestJoinTest::workedOverlap()
{
    // Worked in the trade notes (F9): overlap 1/16 at 1/2: sew a needle's width scant, or cut 2 3/32.
    const JoinAnswer answer = answered({}, in(0, -1, 16));
    QVERIFY(std::abs(answer.newSeam.asInches() - 0.4765625) < 1e-9 + 0.0001);
    QCOMPARE(show(answer.newSeam, sixteenths(), Round::Fine).mark, in(0, 15, 32));
    QCOMPARE(answer.newStrip, in(2, 3, 32));
    QVERIFY(answer.good); // an overlap of 1/16 may stay
}

void TestJoinTest::gapMovesFourTimesAsFastAsTheSeam()
{
    const Length deeper = in(0, 1, 32);
    QCOMPARE(gapLeft(in(2), in(0, 1, 2) + deeper, Length()), in(0, -1, 8));
    QCOMPARE(gapLeft(in(2), in(0, 1, 2) - deeper, Length()), in(0, 1, 8));
}

void TestJoinTest::followingTheAnswerGivesTheWantedGap()
{
    Chance chance(seed(3));
    for (int i = 0; i < count(2'000); ++i) {
        const Length strip = in(0, 1, 16) * std::int64_t(16 + chance.below(40));
        const Length seam = in(0, 1, 64) * std::int64_t(12 + chance.below(30));
        const Length bulk = inch(chance.between(0, 0.13));
        TestJoin join;
        join.seam = seam;
        join.gap = gapLeft(strip, seam, bulk);
        const auto answer = answerOf(join, halfInch(), strip, usualTolerances(System::Inch));
        QVERIFY((gapLeft(strip, answer->newSeam, bulk) - in(0, 1, 32)).magnitude() <= Length::ticks(2));
        QCOMPARE(gapLeft(answer->newStrip, seam, bulk), in(0, 1, 32));
        // A ruler over the sashing reads the strip between its seams less what goes over the bulk.
        const Length lying = strip - answer->newSeam * 2 - bulk;
        QVERIFY((answer->visible - lying).magnitude() <= Length::ticks(2));
    }
}

void TestJoinTest::handOutsBracketTheBulk_data()
{
    QTest::addColumn<Length>("strip");
    QTest::addColumn<Length>("bulk");
    // Two printed hand-outs for 1/4 in seams: strips of 1 in, and strips of 1 1/8 in whose allowances meet.
    QTest::newRow("1 in") << in(1) << Length();
    QTest::newRow("1 1/8 in") << in(1, 1, 8) << in(0, 1, 8);
}
// F9 | published figure | the same two hand-outs: their strips leave no gap, and a gap asks for a
//    | deeper seam
// F7 | published figure | a hand-out for 1/4 in seams prints strips of 1 in, four seams wide, where
//    | nothing is used by the bulk
void TestJoinTest::handOutsBracketTheBulk()
{
    QFETCH(Length, strip);
    QFETCH(Length, bulk);
    QCOMPARE(gapLeft(strip, in(0, 1, 4), bulk), Length());
    // The same hand-out in words: a gap, sew deeper; an overlap, sew scanter.
    QVERIFY(answered(in(0, 1, 2), in(0, 1, 8)).newSeam > in(0, 1, 2));
    QVERIFY(answered(in(0, 1, 2), in(0, -1, 8)).newSeam < in(0, 1, 2));
}

void TestJoinTest::paringStopsAtTheLeastAllowance()
{
    QVERIFY(answered({}, in(0, -1, 4)).mayPare); // 3/8 is left
    QCOMPARE(answered({}, in(0, -1, 4)).allowanceLeft, in(0, 3, 8));
    QVERIFY(!answered({}, in(0, -9, 32)).mayPare);
    QCOMPARE(answered({}, in(0, 1, 8)).pare, Length());
    QCOMPARE(leastAllowance(in(0, 3, 8), System::Inch).pare, in(0, 1, 4));
    QCOMPARE(leastAllowance(in(0, 1, 4), System::Inch).pare, in(0, 3, 16));
    QCOMPARE(leastAllowance(Length::mm(12), System::Metric).pare, Length::mm(9));
    QCOMPARE(leastAllowance(in(0, 1, 2), System::Inch).remake, in(0, 1, 4));
    // Half the seam at the most, a quarter inch at the most (common practice, no published source).
    QCOMPARE(leastAllowance(in(0, 1, 4), System::Inch).remake, in(0, 1, 8));
    QCOMPARE(leastAllowance(in(0, 3, 4), System::Inch).remake, in(0, 1, 4));
}

void TestJoinTest::scantSeamLeavesTheOutlineInView()
{
    const JoinAnswer scant = answered({}, in(0, -3, 32)); // 1/32 scanter
    QCOMPARE(scant.newSeam, in(0, 15, 32));
    QCOMPARE(scant.outlineShows, in(0, 1, 32));
    QCOMPARE(scant.trimInside, in(0, 15, 32));
    QCOMPARE(answered({}, in(0, 3, 32)).outlineShows, Length());
    QCOMPARE(answered({}, in(0, 3, 32)).trimInside, in(0, 1, 2));
}

void TestJoinTest::measuredBetweenSetsTheTurn()
{
    // F10: e_b = 3/64 in for a loft of 1/8, 0.033 for 1/16, 0.062 for 3/16, 0.077 for 1/4 (worked by hand).
    const std::array<std::pair<Length, double>, 4> lofts{
        {{in(0, 1, 16), 0.033}, {in(0, 1, 8), 0.048}, {in(0, 3, 16), 0.063}, {in(0, 1, 4), 0.078}}};
    for (const auto &[loft, turn] : lofts) {
        TestJoin join;
        join.gap = Length();
        join.between = in(0, 31, 32);
        join.loft = loft;
        const auto answer = answerOf(join, halfInch(), in(2), usualTolerances(System::Inch));
        QVERIFY(std::abs(answer->turn->asInches() - turn) < 0.0015);
        QCOMPARE(answer->between, in(0, 31, 32));
    }
    QVERIFY(!answered({}, Length()).turn);
    QCOMPARE(answered({}, Length()).between, in(1));
}

void TestJoinTest::agreesWithTheBasis()
{
    // What the plan takes from the test join and what is told of it are the same figures.
    for (const System system : {System::Inch, System::Metric}) {
        Project project = freshProject(system);
        TestJoin join;
        join.gap = system == System::Inch ? in(0, -1, 16) : Length::mmTenths(-15);
        join.between = project.seam * 2 - Length::mmTenths(10);
        project.made.testJoin = join;
        const Basis basis = basisOf(project);
        const auto answer = answerOf(join, basis, project.seam * 4, usualTolerances(system));
        QCOMPARE(answer->newSeam, basis.nextSeam);
        QCOMPARE(*answer->turn, basis.turn);
        QCOMPARE(answer->between, basis.between);
    }
}

void TestJoinTest::aGapThePlanLeavesIsWanted()
{
    // Sashing 1/8 in wider than its two allowances: the paper leaves 1/8 in between them, which may stay open
    // (F7). A test join that shows just this has nothing to teach.
    Project project = freshProject(System::Inch);
    project.sashing.finished = in(1, 1, 8);
    TestJoin join;
    join.gap = in(0, 1, 8);
    project.made.testJoin = join;
    const Basis basis = basisOf(project);
    QCOMPARE(basis.nextSeam, project.seam);
    const auto answer = answerOf(join, basis, in(2, 1, 8), usualTolerances(System::Inch));
    QVERIFY(answer->good);
    QCOMPARE(answer->newSeam, project.seam);
    QCOMPARE(answer->newStrip, in(2, 1, 8));
    QCOMPARE(answer->visible, in(1, 1, 8));
    // Wider than that is filled with batting, and the batting is to meet the allowances as they meet
    // elsewhere.
    project.sashing.finished = in(1, 1, 4);
    QCOMPARE(basisOf(project).gapWanted, in(0, 1, 32));
}

void TestJoinTest::nothingMeasured()
{
    QVERIFY(!answerOf({}, halfInch(), in(2), usualTolerances(System::Inch)));
}

void TestJoinTest::drawUpEachWay()
{
    // Worked by hand in the trade notes: sent 6, got 5 7/8 by 5 15/16: 2.1 % and 1.0 %, send 6 1/8 by 6 1/16.
    TestBlock test;
    test.sent = {in(6), in(6)};
    test.outline = {in(5, 7, 8), in(5, 15, 16)};
    const DrawUpAnswer answer = drawUpOf(test, {in(6), in(6)});
    QVERIFY(answer.problems.empty());
    QCOMPARE(answer.drawUp.along.millionths, std::int64_t(20'833));
    QCOMPARE(answer.drawUp.across.millionths, std::int64_t(10'417));
    QCOMPARE(show(answer.sendNext.along, sixteenths()).mark, in(6, 1, 8));
    QCOMPARE(show(answer.sendNext.across, sixteenths()).mark, in(6, 1, 16));
    QVERIFY(std::abs(answer.sendNext.along.asInches() - 6.128) < 0.0005);
}

void TestJoinTest::drawUpIsBounded_data()
{
    QTest::addColumn<Length>("outline");
    QTest::addColumn<int>("problems");
    QTest::addColumn<std::int64_t>("nearest");
    QTest::newRow("none") << in(10) << 0 << std::int64_t(0);
    QTest::newRow("15 %") << in(8, 1, 2) << 0 << std::int64_t(0);
    QTest::newRow("more") << in(8, 7, 16) << 1 << std::int64_t(150'000);
    QTest::newRow("grew") << in(10, 1, 16) << 1 << std::int64_t(0);
}
void TestJoinTest::drawUpIsBounded()
{
    QFETCH(Length, outline);
    QFETCH(int, problems);
    QFETCH(std::int64_t, nearest);
    TestBlock test;
    test.sent = {in(10), in(10)};
    test.outline = {outline, in(10)};
    const DrawUpAnswer answer = drawUpOf(test, {in(8), in(8)});
    QCOMPARE(int(answer.problems.size()), problems);
    if (problems == 0)
        return;
    QCOMPARE(answer.problems[0].at, std::string("/drawUp/along"));
    QCOMPARE(answer.problems[0].code, std::string("draw-up-out-of-range"));
    QCOMPARE(std::get<Share>(answer.problems[0].offers.at(0).value).millionths, nearest);
    QCOMPARE(answer.sendNext, Pair{});
}

void TestJoinTest::sentAgainItComesOutAtSize()
{
    Chance chance(seed(14));
    for (int i = 0; i < count(2'000); ++i) {
        const double d = chance.between(0, 0.149);
        TestBlock test;
        test.sent = {inch(6), inch(7)};
        test.outline = {inch(6 * (1 - d)), inch(7 * (1 - d / 2))};
        const DrawUpAnswer answer = drawUpOf(test, {in(8), in(5)});
        QVERIFY(answer.problems.empty());
        QVERIFY(std::abs(answer.sendNext.along.asInches() * (1 - d) - 8) < 0.001);
        QVERIFY(std::abs(answer.sendNext.across.asInches() * (1 - d / 2) - 5) < 0.001);
    }
}

// F21 | published figure | an independent maker's measured sample of January 2020: 9 × 20 in drawn in
//    | to 8 3/4 × 19 1/2
void TestJoinTest::publishedSample()
{
    // An independent maker's measured sample of January 2020: 9 × 20 in drawn in to 8 3/4 × 19 1/2 by a grid
    // quilted at 1 1/2 in: 2.8 and 2.5 percent.
    TestBlock test;
    test.sent = {in(20), in(9)};
    test.outline = {in(19, 1, 2), in(8, 3, 4)};
    const DrawUpAnswer answer = drawUpOf(test, {in(20), in(9)});
    QCOMPARE(answer.drawUp.along.millionths, std::int64_t(25'000));
    QCOMPARE(answer.drawUp.across.millionths, std::int64_t(27'778));
}

QTEST_APPLESS_MAIN(TestJoinTest)
#include "tst_test_join.moc"
