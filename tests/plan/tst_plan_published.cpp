// SPDX-License-Identifier: MIT
//
// Figures that stand outside this project. Each row names where it was printed or how it was derived.
#include "plan/formulas.h"
#include "planhelp.h"

#include <cmath>

using namespace matside;
using planhelp::in;

class PlanPublished : public QObject {
    Q_OBJECT
private slots:
    void shrinkageIsMadeUpByTheQuotient_data();
    void shrinkageIsMadeUpByTheQuotient();
    void bindingStripsAllowForTheJoins_data();
    void bindingStripsAllowForTheJoins();
    void bulkLiesBetweenThePublishedStrips_data();
    void bulkLiesBetweenThePublishedStrips();
    void squareWithSeamsGrowsByTwoAllowances();
    void clothOverATableIsTableAndTwoDrops_data();
    void clothOverATableIsTableAndTwoDrops();
    void errorsOfASeamAddUpOverARow();
    void diagonalAgreesWithTheMathLibrary();
};

void PlanPublished::shrinkageIsMadeUpByTheQuotient_data()
{
    QTest::addColumn<double>("wanted");
    QTest::addColumn<int>("percent");
    QTest::addColumn<double>("made");
    // Mathematics, cut = finished / (1 − s); lengths and shares as in three printed lessons on shrinkage.
    QTest::newRow("12 1/2 in at 3 %") << 12.5 << 3 << 12.8866;
    QTest::newRow("90 in at 5 %, where one page adds 5 % instead and is short") << 90.0 << 5 << 94.7368;
    QTest::newRow("12 in at 2 %") << 12.0 << 2 << 12.2449;
}
// F21 | published figure | lengths and shares of three printed lessons on shrinkage, cut = finished /
//    | (1 − s)
void PlanPublished::shrinkageIsMadeUpByTheQuotient()
{
    QFETCH(double, wanted);
    QFETCH(int, percent);
    QFETCH(double, made);
    const Length outline = Length::ticks(std::llround(wanted * 8128));
    const Length sent = sentFor(outline, Share{percent * 10'000});
    QVERIFY2(std::abs(sent.asInches() - made) < 0.0001, qPrintable(QString::number(sent.asInches(), 'f', 6)));
}

void PlanPublished::bindingStripsAllowForTheJoins_data()
{
    QTest::addColumn<int>("perimeterEighths");
    QTest::addColumn<int>("slack");
    QTest::addColumn<int>("cloth");
    QTest::addColumn<Length>("cut");
    QTest::addColumn<int>("strips");
    // Geometry: n strips joined at 45 degrees corner to corner yield n W − (n − 1) w. The lengths, slacks and
    // widths are those of printed binding lessons, whose plain division gives one strip too few.
    QTest::newRow("196 in, slack 12, 42 in cloth") << 196 * 8 << 12 << 42 << in(2, 1, 2) << 6;
    QTest::newRow("184 in, slack 10, 40 in cloth") << 184 * 8 << 10 << 40 << in(2, 1, 4) << 6;
    QTest::newRow("38 1/2 in square, slack 12") << 154 * 8 << 12 << 42 << in(2, 1, 2) << 5;
}
// F15 | published figure | perimeters, slacks and widths of printed binding lessons; strips added one
//    | by one with their joins
void PlanPublished::bindingStripsAllowForTheJoins()
{
    QFETCH(int, perimeterEighths);
    QFETCH(int, slack);
    QFETCH(int, cloth);
    QFETCH(Length, cut);
    QFETCH(int, strips);
    // A one-block piece whose perimeter is the published one, bound in a cut width as near as may be.
    Project project =
        planhelp::piece(1, 1, in(0, 1, 8) * (perimeterEighths / 4) - in(1), planhelp::hoopP(), in(60));
    project.slack = in(slack);
    project.strip.usable = in(cloth);
    project.loft = Length();
    project.edge.seam = (cut - in(0, 1, 4)).scaled(1, 6);
    const Plan p = plan(project);
    QCOMPARE(p.binding->cut, cut);
    QCOMPARE((p.size.finished.along + p.size.finished.across) * 2, in(0, 1, 8) * perimeterEighths);
    QCOMPARE(p.binding->strips, strips);
    // The other way round: adding strips one by one until the tape is long enough.
    Length tape = in(cloth);
    int needed = 1;
    while (tape < in(0, 1, 8) * perimeterEighths + in(slack) + cut) {
        tape += in(cloth)-cut;
        ++needed;
    }
    QVERIFY(std::abs(needed - strips) <= 1);
    QVERIFY(in(cloth)*p.binding->strips - cut * (p.binding->strips - 1) >=
            in(0, 1, 8) * perimeterEighths + in(slack));
}

void PlanPublished::bulkLiesBetweenThePublishedStrips_data()
{
    QTest::addColumn<Length>("loft");
    QTest::newRow("thin") << in(0, 1, 16);
    QTest::newRow("low") << in(0, 1, 8);
    QTest::newRow("middling") << in(0, 3, 16);
}
// F9 | published figure | two guild hand-outs for 1/4 in seams: front strips of 1 in and of 1 1/8 in
//    | bracket the bulk
void PlanPublished::bulkLiesBetweenThePublishedStrips()
{
    // Two guild hand-outs for 1/4 in seams print front strips of 1 in (nothing for the bulk) and of 1 1/8 in
    // whose allowances then meet (1/8 in for the bulk): the model must lie between them.
    QFETCH(Length, loft);
    const Length bulk = overTheBulk(loft);
    QVERIFY(bulk > Length());
    QVERIFY(bulk < in(0, 1, 8));
}

// F6 | published figure | L. Clements, The Quilter's Bible, on-line reader page 48: 1/4 in seams add
//    | 1/2 in to a square
void PlanPublished::squareWithSeamsGrowsByTwoAllowances()
{
    // L. Clements, The Quilter's Bible, on-line reader page 48: with 1/4 in seams a square is cut 1/2 in
    // larger.
    Project project = planhelp::piece(1, 1, in(6), planhelp::hoopP(), in(40));
    project.seam = in(0, 1, 4);
    QCOMPARE(plan(project).block.trimmed.along, in(6, 1, 2));
}

void PlanPublished::clothOverATableIsTableAndTwoDrops_data()
{
    QTest::addColumn<int>("table");
    QTest::addColumn<int>("cloth");
    QTest::addColumn<int>("dropTenths");
    // Hotel-management course notes of 2010 (cm): cloth = table + 2 × drop.
    QTest::newRow("76 under 137") << 76 << 137 << 305;
    QTest::newRow("92 under 183") << 92 << 183 << 455;
}
// F22 | published figure | hotel-management course notes of 2010 (cm): cloth = table + 2 × drop
void PlanPublished::clothOverATableIsTableAndTwoDrops()
{
    QFETCH(int, table);
    QFETCH(int, cloth);
    QFETCH(int, dropTenths);
    Project project = freshProject(System::Metric);
    project.blocks.columns = project.blocks.rows = 1;
    project.blocks.width = project.blocks.height = Length::mm(cloth * 10) - project.seam * 2;
    project.table = Table{Length::mm(table * 10), Length::mm(table * 10), std::nullopt, {}};
    QCOMPARE(plan(project).table->reveal.along, -Length::mm(dropTenths));
}

// F24 | published figure | home-school quilting notes: 1/32 in over 16 seams is 1/2 in
void PlanPublished::errorsOfASeamAddUpOverARow()
{
    // Home-school quilting notes: 1/32 in over 16 seams is 1/2 in. Four seams stand in a row of three blocks,
    // so the pitch equation must lose 4 × 1/32 = 1/8 in a join: 1/2 in over four joins.
    const Project project = planhelp::piece(5, 1, in(6), planhelp::hoopP(), in(40));
    const Plan p = plan(project);
    const Length deeper = in(0, 1, 32);
    const Length asPlanned = p.sashing.longLength;
    const Length asSewn = p.block.trimmed.along * 5 + p.sashing.cutFront * 4 - (project.seam + deeper) * 16;
    QCOMPARE(asPlanned - asSewn, in(0, 1, 2));
}

// F22 | general-purpose library | std::hypot of the C++ standard library, for the corners over a round
//    | table
void PlanPublished::diagonalAgreesWithTheMathLibrary()
{
    // General-purpose library: std::hypot of the C++ standard library, in tenths of a millimetre.
    planhelp::Chance chance(planhelp::seed(7));
    for (int i = 0; i < 1000; ++i) {
        const Length a = Length::mmTenths(chance.between(1, 100'000));
        const Length b = Length::mmTenths(chance.between(1, 100'000));
        QVERIFY(std::abs(diagonalOf(a, b).asMm() - std::hypot(a.asMm(), b.asMm())) < 0.002);
    }
    QCOMPARE(diagonalOf(in(3), in(4)), in(5));
}

QTEST_GUILESS_MAIN(PlanPublished)
#include "tst_plan_published.moc"
