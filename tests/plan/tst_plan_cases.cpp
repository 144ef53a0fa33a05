// SPDX-License-Identifier: MIT
//
// The worked cases of the trade notes. They were reckoned by hand, apart from this program.
#include "planhelp.h"

using namespace matside;
using planhelp::in;

namespace {
QString shown(Length length, const Project &project, Round round = Round::Nearest)
{
    return QString::fromStdString(text(show(length, project.marks(), round)));
}
} // namespace

class PlanCases : public QObject {
    Q_OBJECT
private slots:
    void plainTopperOfNineBlocks();
    void runnerInAMagneticFrame();
    void runnerWithDrawUpLosesAPlace();
    void oneBlockHasNoJoins();
    void wholeMillimetresAndNoInches();
    void quarterInchSeamsNeedAWiderBack();
    void doubledBackStripIsCutForItsCatch();
    void aWideSashingIsFilledOrTakesLargerAllowances();
    void aNarrowSashingHasItsAllowancesPared();
    void quarterInchSeamsWithDrawUp();
    void oblongInACloseHoop();
    void tableFits();
    void roundTableCorners();
    void baggedCleanBack();
    void layeredCleanBack();
    void widerSashingKeepsMarksSymmetric();
    void harvestIsFreeWhenTheRemainderPaysForIt();
    void washedSizeIsMadeLarger();
    void kitsByHand();
    void wrongTestJoinMovesTheFold();
};

void PlanCases::plainTopperOfNineBlocks()
{
    const Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    const Plan p = plan(project);
    QVERIFY2(p.problems.empty(), planhelp::codes(p.problems));
    QCOMPARE(p.strip.width, in(11, 3, 4));
    QCOMPARE(p.block.trimmed.along, in(7));
    QCOMPARE(p.sashing.finished, in(1));
    QCOMPARE(p.sashing.cutFront, in(2));
    QCOMPARE(*p.sashing.cutBack, in(2));
    QCOMPARE(p.strip.reach, in(1, 7, 8));
    QCOMPARE(p.strip.gap, in(1, 7, 8));
    QCOMPARE(p.strip.end, in(2, 3, 8));
    QCOMPARE(p.strip.perStrip, 4);
    QCOMPARE(p.strip.used, in(34, 3, 8));
    QCOMPARE(p.strip.remainder, in(6, 1, 8));
    QCOMPARE(p.strip.starts, (std::vector<Length>{in(2, 3, 8), in(10, 1, 4), in(18, 1, 8), in(26)}));
    QCOMPARE(p.strip.centres, (std::vector<Length>{in(5, 3, 8), in(13, 1, 4), in(21, 1, 8), in(29)}));
    QCOMPARE(p.strip.strips, 3);
    QCOMPARE(p.sashing.shorts, 6);
    QCOMPARE(p.sashing.shortLength + p.sashing.shortSpare, in(7, 1, 2));
    QCOMPARE(p.sashing.longs, 2);
    QCOMPARE(p.sashing.longLength + p.sashing.longSpare, in(22));
    QVERIFY(p.sashing.front.pieces.empty());
    QCOMPARE(p.size.raw.along, in(21));
    QCOMPARE(p.size.outline.along, in(20));
    QCOMPARE(p.size.finished.across, in(21));
    QCOMPARE(p.binding->cut, in(3, 1, 2));
    QCOMPARE(p.binding->strips, 3);
    QCOMPARE(shown(p.fold->under, project, Round::Down), QStringLiteral("5/16 in"));
    QCOMPARE(shown(p.fold->catchShown, project, Round::Fine), QStringLiteral("5/32 in"));
}

void PlanCases::runnerInAMagneticFrame()
{
    Project project = planhelp::piece(3, 1, in(8), planhelp::hoopQ(), in(42));
    project.blocks.spare = 1;
    project.edge.outside = project.edge.seam = in(0, 1, 4);
    const Plan p = plan(project);
    QVERIFY2(p.problems.empty(), planhelp::codes(p.problems));
    QCOMPARE(p.strip.width, in(13, 1, 4));
    QCOMPARE(p.strip.gap, in(1, 5, 8));
    QCOMPARE(p.strip.end, in(2, 1, 8));
    QCOMPARE(p.strip.perStrip, 4);
    QCOMPARE(p.strip.used, in(41, 1, 8));
    QCOMPARE(p.strip.remainder, in(0, 7, 8));
    QCOMPARE(p.strip.starts, (std::vector<Length>{in(2, 1, 8), in(11, 3, 4), in(21, 3, 8), in(31)}));
    QVERIFY(planhelp::has(p.cautions, "strip-is-tight"));
    QCOMPARE(p.sashing.shorts, 2);
    QCOMPARE(p.sashing.longs, 0);
    QCOMPARE(p.size.outline, (Pair{in(26), in(8)}));
    QCOMPARE(p.size.finished, (Pair{in(26, 1, 2), in(8, 1, 2)}));
    QCOMPARE(p.binding->cut, in(2));
    QCOMPARE(p.binding->strips, 2);
}

void PlanCases::runnerWithDrawUpLosesAPlace()
{
    Project project = planhelp::piece(3, 1, in(8), planhelp::hoopQ(), in(42));
    project.drawUp.along = project.drawUp.across = Share{25'000};
    QCOMPARE(plan(project).strip.perStrip, 4);
    project.drawUp.along = project.drawUp.across = Share{30'000};
    QCOMPARE(plan(project).strip.perStrip, 3);
}

void PlanCases::oneBlockHasNoJoins()
{
    Project project = planhelp::piece(1, 1, in(8), planhelp::hoopQ(), in(40, 1, 2));
    project.edge.seam = in(0, 1, 4);
    const Plan p = plan(project);
    QCOMPARE(p.sashing.shorts, 0);
    QCOMPARE(p.sashing.longs, 0);
    QVERIFY(p.sashing.marks.empty());
    QCOMPARE(p.strip.end * 2 + p.block.sent.along, in(12, 1, 4));
    project.strip.tails = true;
    const Plan tailed = plan(project);
    QCOMPARE(tailed.strip.end * 2 + tailed.block.sent.along, in(9, 1, 2));
    QCOMPARE(p.size.raw, (Pair{in(9), in(9)}));
    QCOMPARE(p.size.finished, (Pair{in(9), in(9)}));
    QCOMPARE(p.binding->cut, in(2));
    QCOMPARE(p.binding->strips, 2);
}

void PlanCases::wholeMillimetresAndNoInches()
{
    const Project project = planhelp::metricPiece();
    const Plan p = plan(project);
    QVERIFY2(p.problems.empty(), planhelp::codes(p.problems));
    const auto mm = [](std::int64_t n) { return Length::mm(n); };
    QCOMPARE(p.block.trimmed.along, mm(174));
    QCOMPARE(p.sashing.finished, mm(24));
    QCOMPARE(p.sashing.cutFront, mm(48));
    QCOMPARE(p.strip.width, mm(298));
    QCOMPARE(p.strip.reach, mm(49));
    QCOMPARE(p.strip.gap, mm(50));
    QCOMPARE(p.strip.end, mm(62));
    QCOMPARE(p.strip.perStrip, 4);
    QCOMPARE(p.strip.used, mm(874));
    QCOMPARE(p.strip.remainder, mm(186));
    QCOMPARE(p.strip.starts, (std::vector<Length>{mm(62), mm(262), mm(462), mm(662)}));
    QCOMPARE(p.strip.centres, (std::vector<Length>{mm(137), mm(337), mm(537), mm(737)}));
    QCOMPARE(p.sashing.shorts, 8);
    QCOMPARE(p.sashing.shortLength, mm(174));
    QCOMPARE(p.sashing.longs, 3);
    QCOMPARE(p.sashing.longLength, mm(522));
    QCOMPARE(p.size.raw, (Pair{mm(522), mm(696)}));
    QCOMPARE(p.fold->under, Length::mmTenths(82));
    QCOMPARE(shown(p.fold->under, project, Round::Down), QStringLiteral("8 mm"));
    QCOMPARE(p.fold->catchShown, Length::mmTenths(32));
    QCOMPARE(p.binding->width, Length::mmTenths(466));
    QCOMPARE(p.binding->cut, mm(47));
    QCOMPARE(p.binding->strips, 3);
    QCOMPARE(shown(p.strip.width, project), QStringLiteral("298 mm"));
}

void PlanCases::quarterInchSeamsNeedAWiderBack()
{
    Project project = planhelp::piece(4, 2, in(5), planhelp::hoopP(), in(40, 1, 2));
    project.seam = in(0, 1, 4);
    project.fold.fold_catch = in(0, 3, 32);
    const Plan p = plan(project);
    QVERIFY2(p.problems.empty(), planhelp::codes(p.problems));
    QCOMPARE(p.block.trimmed.along, in(5, 1, 2));
    QCOMPARE(p.sashing.finished, in(0, 1, 2));
    QCOMPARE(p.sashing.cutFront, in(1));
    QCOMPARE(*p.sashing.cutBack, in(1, 1, 8));
    QCOMPARE(p.fold->under, in(0, 1, 4));
    QCOMPARE(p.fold->catchShown, in(0, 3, 32));
    QCOMPARE(p.strip.gap, in(2, 3, 8));
    QCOMPARE(p.strip.end, in(2, 7, 8));
    QCOMPARE(p.strip.perStrip, 5);
    QCOMPARE(p.strip.used, in(40, 1, 4));
    QCOMPARE(p.strip.remainder, in(0, 1, 4));
    QVERIFY(planhelp::has(p.cautions, "strip-is-tight"));
    QCOMPARE(p.size.raw, (Pair{in(22), in(11)}));
    // With the usual catch the back strip grows by a sixteenth.
    project.fold.fold_catch = in(0, 1, 8);
    QCOMPARE(*plan(project).sashing.cutBack, in(1, 3, 16));
}

// F10 | published figure | two teachers' hand-outs cut the doubled back strip of a 1/4 in seam 1 3/4 in wide
void PlanCases::doubledBackStripIsCutForItsCatch()
{
    Project project = planhelp::piece(4, 2, in(5), planhelp::hoopP(), in(40, 1, 2));
    project.seam = in(0, 1, 4);
    project.fold.fold_catch = in(0, 3, 32);
    project.fold.doubled = true;
    Plan p = plan(project);
    QVERIFY2(p.problems.empty(), planhelp::codes(p.problems));
    QCOMPARE(*p.sashing.cutBack, in(1, 3, 4));
    QCOMPARE(p.sashing.cutFront, in(1));
    QCOMPARE(p.fold->catchShown, in(0, 3, 32));
    // Trade notes, F10: 3 5/16 in for a seam of 1/2 in.
    project.seam = in(0, 1, 2);
    project.fold.fold_catch = in(0, 1, 8);
    p = plan(project);
    QCOMPARE(*p.sashing.cutBack, in(3, 5, 16));
    QCOMPARE(p.fold->catchShown, in(0, 1, 8));
    // Cut to another width, half of what is added goes into the catch.
    project.sashing.cutBack = in(3, 3, 8);
    QCOMPARE(plan(project).fold->catchShown, in(0, 5, 32));
    project.sashing.cutBack = in(3, 1, 8);
    QVERIFY(planhelp::has(plan(project).problems, "doubled-too-narrow"));
}

void PlanCases::aWideSashingIsFilledOrTakesLargerAllowances()
{
    // Trade notes, F7: f = 1 1/2 with s = 1/2.
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.sashing.finished = in(1, 1, 2);
    Plan p = plan(project);
    QVERIFY2(p.problems.empty(), planhelp::codes(p.problems));
    QCOMPARE(p.sashing.cutFront, in(2, 1, 2));
    QCOMPARE(*p.sashing.filler, in(0, 1, 2));
    QCOMPARE(p.block.trimmed.along, in(7));
    project.sashing.allowance = in(0, 3, 4);
    p = plan(project);
    QVERIFY2(p.problems.empty(), planhelp::codes(p.problems));
    QCOMPARE(p.sashing.cutFront, in(2, 1, 2));
    QCOMPARE(p.block.trimmed.along, in(7, 1, 2));
    QCOMPARE(p.sashing.allowanceGap, Length());
    QVERIFY(!p.sashing.filler);
    // The outline is where it was: only the raw edge lies farther out.
    QCOMPARE(p.size.outline.along, in(21));
    // An eighth may stay open in low loft.
    project.sashing.allowance.reset();
    project.sashing.finished = in(1, 1, 8);
    QVERIFY(!plan(project).sashing.filler);
}

void PlanCases::aNarrowSashingHasItsAllowancesPared()
{
    // Trade notes, part 7: f = 3/4 with s = 1/2 is refused; 3/8 in is left of each when they are pared.
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.sashing.finished = in(0, 3, 4);
    QVERIFY(!plan(project).problems.empty());
    project.sashing.allowance = in(0, 3, 8);
    const Plan p = plan(project);
    QVERIFY2(p.problems.empty(), planhelp::codes(p.problems));
    QCOMPARE(p.sashing.allowanceGap, Length());
    QCOMPARE(p.block.trimmed.along, in(6, 3, 4));
    QCOMPARE(p.sashing.cutFront, in(1, 3, 4));
}

void PlanCases::quarterInchSeamsWithDrawUp()
{
    Project project = planhelp::piece(4, 2, in(5), planhelp::hoopP(), in(40, 1, 2));
    project.seam = in(0, 1, 4);
    project.drawUp.along = project.drawUp.across = Share{20'000};
    QCOMPARE(plan(project).strip.perStrip, 4);
}

void PlanCases::oblongInACloseHoop()
{
    Project project = planhelp::piece(3, 3, in(5), planhelp::hoopR(), in(40, 1, 2));
    project.blocks.height = in(7);
    const Plan p = plan(project);
    QVERIFY2(p.problems.empty(), planhelp::codes(p.problems));
    QVERIFY(planhelp::has(p.cautions, "hoop-is-close"));
    QCOMPARE(p.block.trimmed, (Pair{in(6), in(8)}));
    QCOMPARE(p.sashing.shortLength, in(8));
    project.strip.placing = in(0, 1, 16);
    QVERIFY(!planhelp::has(plan(project).cautions, "hoop-is-close"));
}

void PlanCases::tableFits()
{
    Project project = planhelp::piece(6, 3, in(7), planhelp::hoopP(), in(40, 1, 2));
    project.table = Table{in(60), in(36), std::nullopt, {}};
    Plan p = plan(project);
    QCOMPARE(p.size.finished, (Pair{in(48), in(24)}));
    QCOMPARE(p.table->reveal, (Pair{in(6), in(6)}));
    project.blocks.columns = 7;
    project.blocks.width = project.blocks.height = in(6);
    p = plan(project);
    QCOMPARE(p.size.finished, (Pair{in(49), in(21)}));
    QCOMPARE(p.table->reveal, (Pair{in(5, 1, 2), in(7, 1, 2)}));
    project.table = Table{in(72), in(38), std::nullopt, {}};
    project.blocks.columns = 12;
    project.blocks.rows = 2;
    p = plan(project);
    QCOMPARE(p.table->reveal, (Pair{in(-6), in(12)}));
}

void PlanCases::roundTableCorners()
{
    Project project = planhelp::piece(5, 5, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.table = Table{std::nullopt, std::nullopt, in(48), {}};
    Plan p = plan(project);
    QCOMPARE(p.table->reveal.along, in(6, 1, 2));
    QVERIFY(qAbs(p.table->corner.asInches() + 0.7487) < 0.0005); // 24 − 35/√2
    QVERIFY(planhelp::has(p.cautions, "corner-hangs"));
    project.blocks.columns = project.blocks.rows = 4;
    p = plan(project);
    QVERIFY(qAbs(p.table->corner.asInches() - 4.2010) < 0.0005);
    QVERIFY(!planhelp::has(p.cautions, "corner-hangs"));
}

void PlanCases::baggedCleanBack()
{
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.build = Build::CleanBack;
    project.cleanBack = CleanBack::Bagged;
    const Plan p = plan(project);
    QCOMPARE(p.size.finished, (Pair{in(20), in(20)}));
    QCOMPARE(*p.size.backing, (Pair{in(20, 7, 8), in(20, 7, 8)}));
    QVERIFY(!p.sashing.cutBack);
    QVERIFY(!p.fold);
    QVERIFY(!p.binding);
}

void PlanCases::layeredCleanBack()
{
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.build = Build::CleanBack;
    const Plan p = plan(project);
    QCOMPARE(*p.size.backing, (Pair{in(23), in(23)}));
    QVERIFY(p.binding.has_value());
    QVERIFY(!p.sashing.cutBack);
}

void PlanCases::widerSashingKeepsMarksSymmetric()
{
    Project project = planhelp::piece(5, 2, in(6), planhelp::hoopP(), in(40, 1, 2));
    QCOMPARE(plan(project).sashing.marks, (std::vector<Length>{in(7), in(14), in(21), in(28)}));
    project.sashing.finished = in(1, 1, 4);
    const Plan p = plan(project);
    QCOMPARE(p.sashing.allowanceGap, in(0, 1, 4));
    QCOMPARE(p.sashing.marks, (std::vector<Length>{in(7, 1, 8), in(14, 3, 8), in(21, 5, 8), in(28, 7, 8)}));
    QCOMPARE(p.sashing.longLength, in(36));
}

void PlanCases::harvestIsFreeWhenTheRemainderPaysForIt()
{
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.strip.harvest = true;
    const Plan p = plan(project);
    QCOMPARE(p.strip.gap, in(3, 1, 8));
    QCOMPARE(p.strip.perStrip, 4);
    QCOMPARE(p.strip.remainder, in(2, 3, 8)); // 6 1/8 less 3 × 1 1/4
    QCOMPARE(p.strip.harvestedPairs, 6);      // 3 + 3 from the full strips, none from the last; 6 are needed
}

void PlanCases::washedSizeIsMadeLarger()
{
    // F21: 48 in wanted after 4 % shrinkage is made at 50 in; the same quotient sends a block.
    QCOMPARE(matside::drawUp(in(50), in(48)), Share{40'000});
    Project project = planhelp::piece(1, 1, in(48), planhelp::hoopP(), in(80));
    project.drawUp.along = Share{40'000};
    QCOMPARE(plan(project).block.sent.along, in(50));
}

void PlanCases::kitsByHand()
{
    // F28's class: fifteen kits of a strip each; three blocks and one for practice on each strip.
    Project project = planhelp::piece(3, 1, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.blocks.spare = 1;
    project.kits = 15;
    QCOMPARE(plan(project).strip.strips, 15);
    project.blocks.spare = 0;
    QCOMPARE(plan(project).strip.strips, 15);
    project.kitsShareStrips = true;
    QCOMPARE(plan(project).strip.strips, 12); // 45 blocks, four to a strip
}

void PlanCases::wrongTestJoinMovesTheFold()
{
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.made.testJoin = TestJoin{in(0, 1, 2), in(0, -1, 16), in(0, 15, 16), in(0, 1, 8), {}};
    const Plan p = plan(project);
    // F10: 2 − 1/2 − 15/16 − e_b − 1/8 with e_b = 1.5 · 0.012 + 0.24 · 1/8 = 0.048.
    QVERIFY(qAbs(p.fold->under.asInches() - (2 - 0.5 - 0.9375 - 0.048 - 0.125)) < 0.0005);
    // F9's example: an overlap of 1/16 asks for a seam of 0.477.
    QVERIFY(qAbs(p.basis.nextSeam.asInches() - 0.4766) < 0.0005);
    QCOMPARE(p.block.trimmed.along, in(7)); // blocks are not recut
}

QTEST_GUILESS_MAIN(PlanCases)
#include "tst_plan_cases.moc"
