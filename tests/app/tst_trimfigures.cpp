// SPDX-License-Identifier: MIT
//
// The figures Trim shows for a block follow what was found on it (F23, F25).
#include "app/readings.h"
#include "app/stitched.h"

#include <QtTest>

using namespace matside;

using stitched::Desk;
using stitched::topper;

class TrimFigures : public QObject {
    Q_OBJECT
private slots:
    void aBlockLoggedOffItsSizeIsMeasuredFirst();
    void theFiguresFollowTheFinding();
    void noFigureIsShownForABlockNotToBeCut();
    void theButtonIsTheThingToDo();
    void theOtherBlocksAreMeasuredFromHere();
    void whatIsOffIsToldAndDrawn();
    void theSidesThatTiltAreDrawnTilting();
    void whatIsOffSizeIsDrawnAsASize();
    void lineOutlineAndLineAreTheTrimmedSizeAtACommonSize();
    void aCommonSizeIsNotSaidToBeEntered();
    void whatIsCutStaysCut();
    void whatWasConfirmedAsShownIsRead();
    void blocksApartAreTrimmedWhileTheNextStripIsStitched();
};

void TrimFigures::blocksApartAreTrimmedWhileTheNextStripIsStitched()
{
    // One strip of four is stitched, pressed and cut apart; the other strips are not begun.
    Project project = topper();
    project.made.blocks.resize(4);
    for (MadeCut &cut : project.made.cut)
        cut.count = 4;
    {
        Desk desk(project, Station::Trim);
        QVERIFY2(desk.steps.canGoNext(), qPrintable(desk.steps.waiting()));
        QVERIFY(desk.steps.current()->does == Does::TrimBlock);
        QCOMPARE(desk.steps.block(), QStringLiteral("A1"));
    }
    for (MadeBlock &block : project.made.blocks)
        block.state = BlockState::Trimmed;
    Desk desk(project, Station::Trim);
    QVERIFY(!desk.steps.canGoNext());
    QVERIFY(desk.steps.current()->does == Does::RoughApart); // the next strip comes first
}

void TrimFigures::aBlockLoggedOffItsSizeIsMeasuredFirst()
{
    // A sixteenth is at size, a quarter is not: common practice, no published limit.
    Project project = topper();
    const Pair planned = plan(project).block.outline;
    for (const auto &[sixteenths, told] : {std::pair(1, false), std::pair(4, true)}) {
        project.made.blocks.front().outline = {planned.along - Length::inches(0, sixteenths, 16),
                                               planned.across};
        Desk desk(project, Station::Trim);
        QVERIFY(desk.trim.trimming());
        QCOMPARE(desk.trim.remedy().contains(QStringLiteral("before you cut")), told);
    }
}

namespace {

/// The topper with the readings of its first block.
Project readAs(Project project, const Readings &readings)
{
    project.made.blocks.front().sides = readings.sides;
    project.made.blocks.front().diagonals = readings.diagonals;
    return project;
}

Readings square(Length side)
{
    return onMarks(readingsOfRectangle({side, side}), Length::inches(0, 1, 16));
}

} // namespace

void TrimFigures::theFiguresFollowTheFinding()
{
    // F23: the largest block, 7 1/8, is trimmed for a common size of 6 15/16: 7 15/16 cut, so that it lies
    // centred under a line of (7 15/16 − 7 1/8) / 2 = 13/32 in on each side, and loses 3/32 on each.
    Project project = readAs(topper(), square(Length::inches(7, 1, 8)));
    project.blocks.width = project.blocks.height = Length::inches(6, 15, 16);
    for (const auto &[at, side] : {std::pair(1U, Length::inches(6, 7, 8)), std::pair(2U, Length::inches(7))})
        project.made.blocks[at].outline = {side, side};
    Desk desk(project, Station::Trim);
    QCOMPARE(desk.trim.figure().text, QStringLiteral("a generous 3/8 in")); // on her sixteenths
    QVERIFY2(desk.trim.firstSays().contains(QStringLiteral("not {1/2 in}")),
             qPrintable(desk.trim.firstSays()));
    desk.trim.cut();
    desk.trim.cut();
    QCOMPARE(desk.trim.figure().text, QStringLiteral("7 15/16 in"));
    QCOMPARE(desk.trim.second().text, QStringLiteral("a generous 3/8 in"));
    // A block at its size is cut by the plan's own line.
    Desk plain(readAs(topper(), square(Length::inches(7))), Station::Trim);
    QCOMPARE(plain.trim.figure().text, QStringLiteral("1/2 in"));
    QVERIFY(!plain.trim.firstSays().contains(QStringLiteral("not {")));
    // Where it leans, stitches and cut side cannot agree: the cut side decides alone.
    Readings lean = square(Length::inches(7));
    lean.diagonals = {Length::inches(10), Length::inches(9, 3, 4)};
    Desk split(readAs(topper(), lean), Station::Trim);
    split.trim.cut();
    split.trim.cut();
    QCOMPARE(split.trim.figure().text, QStringLiteral("8 in"));
    QVERIFY(!split.trim.second().valid);
    QVERIFY(split.trim.firstSays().contains(QStringLiteral("decides")));
    QVERIFY(!split.trim.checkSays().contains(QStringLiteral("agree")));
}

void TrimFigures::noFigureIsShownForABlockNotToBeCut()
{
    // F25: 1/8 in under is a matter of a common size; 1/2 in under is made again; logged off size: measured.
    Project logged = topper();
    logged.made.blocks.front().outline = {Length::inches(6, 3, 4), Length::inches(7)};
    for (const Project &project : {readAs(topper(), square(Length::inches(6, 7, 8))),
                                   readAs(topper(), square(Length::inches(6, 1, 2))), logged}) {
        Desk desk(project, Station::Trim);
        for (int side = 1; side <= 4; ++side) {
            QVERIFY(!desk.trim.figure().valid && !desk.trim.second().valid);
            QVERIFY(desk.trim.firstSays().startsWith(QStringLiteral("Planned cut {8 in}")));
            if (desk.trim.anywayText().isEmpty() && side > 1)
                break;
            QVERIFY(!desk.trim.verdict().isEmpty() && !desk.trim.remedy().isEmpty());
            QCOMPARE(desk.trim.corners().size(), 4);
            QCOMPARE(desk.trim.times(), 5.0); // too small is drawn so, against its planned size
            desk.trim.cut();
            QCOMPARE(desk.trim.side(), side); // the button is no cut
            desk.trim.cutAnyway();
        }
        if (desk.trim.anywayText().isEmpty() && !desk.trim.figure().valid) {
            QVERIFY(desk.kept() == project); // not measured: no cut at all
            continue;
        }
        // The next block is cut by the plan again, and what was made of the first stands.
        QCOMPARE(desk.trim.figure().text, QStringLiteral("1/2 in"));
        QVERIFY(desk.kept().made.blocks[0].sides == project.made.blocks[0].sides);
        QVERIFY(desk.kept().made.blocks[0].outline == project.made.blocks[0].outline);
    }
    // Two blocks of 6 7/8 and 7: F23 gives min(7, 6 7/8 + 1/16) = 6 15/16, so 7 15/16 if it is taken.
    Project two = readAs(topper(), square(Length::inches(6, 7, 8)));
    two.made.blocks[1].outline = {Length::inches(7), Length::inches(7)};
    Desk desk(two, Station::Trim);
    QVERIFY2(desk.trim.firstSays().contains(QStringLiteral("{7 15/16 in}")),
             qPrintable(desk.trim.firstSays()));
}

void TrimFigures::theButtonIsTheThingToDo()
{
    // F25: measured before it is cut; 1/2 in under is stitched anew and measured again; 1/8 in under wants a
    // common size, of the others too, and then it is that size that is shown.
    Project logged = topper();
    logged.made.blocks.front().outline = {Length::inches(6, 3, 4), Length::inches(7)};
    Project common = readAs(topper(), square(Length::inches(6, 7, 8)));
    for (MadeBlock &block : common.made.blocks)
        block.outline = {Length::inches(6, 7, 8), Length::inches(6, 7, 8)};
    Readings apart = square(Length::inches(7));
    apart.sides[0] = Length::inches(7, 3, 4); // no figure has these sides
    struct Case {
        Project project;
        const char *way;
        const char *says;
        bool anyway;
    };
    for (const Case &each :
         {Case{logged, "measure", "Measure the block", false},
          Case{readAs(topper(), apart), "measure", "Measure it again", false},
          Case{readAs(topper(), square(Length::inches(6, 1, 2))), "measure", "Stitched again: measure it",
               true},
          Case{readAs(topper(), square(Length::inches(6, 7, 8))), "others", "Measure A2 too", true},
          Case{common, "common", "See the common size", true},
          Case{readAs(topper(), square(Length::inches(7))), "cut", "Side 1 cut, blade closed", false}}) {
        Desk desk(each.project, Station::Trim);
        QCOMPARE(desk.trim.way(), QString::fromLatin1(each.way));
        QCOMPARE(desk.trim.actionText(), QString::fromLatin1(each.says));
        QCOMPARE(!desk.trim.anywayText().isEmpty(), each.anyway);
        desk.trim.cut();
        QCOMPARE(desk.trim.side(), desk.trim.way() == QStringLiteral("cut") ? 2 : 1);
        desk.trim.cutAnyway();
        QCOMPARE(desk.trim.side() > 1, each.anyway || desk.trim.way() == QStringLiteral("cut"));
    }
}

void TrimFigures::theOtherBlocksAreMeasuredFromHere()
{
    Desk desk(readAs(topper(), square(Length::inches(6, 7, 8))), Station::Trim);
    desk.measure.beginOther();
    QCOMPARE(desk.measure.block(), QStringLiteral("A2"));
    desk.measure.nudge(0, -2);
    desk.measure.nudge(0, 2);
    QVERIFY(desk.measure.save());
    QVERIFY(desk.kept().made.blocks[1].sides.has_value());
    QCOMPARE(desk.steps.block(), QStringLiteral("A1"));
    // 6 7/8 and 7 are sizes enough to choose from.
    QCOMPARE(desk.trim.way(), QStringLiteral("common"));
    desk.measure.begin();
    QCOMPARE(desk.measure.block(), QStringLiteral("A1"));
}

namespace {

double at(const QVariantList &corners, int corner, const char *way)
{
    return corners[corner].toMap()[QString::fromLatin1(way)].toDouble();
}

} // namespace

void TrimFigures::whatIsOffIsToldAndDrawn()
{
    // 7 − 6 5/8 = 3/8; drawn five times over that is 7 − 15/8 = 5 1/8 in of the 7.
    Desk desk(readAs(topper(), square(Length::inches(6, 5, 8))), Station::Trim);
    QVERIFY2(desk.trim.verdict().startsWith(QStringLiteral("It is {3/8 in} off")),
             qPrintable(desk.trim.verdict()));
    const QVariantList corners = desk.trim.corners(), planned = desk.trim.planned();
    QCOMPARE(at(planned, 2, "x") - at(planned, 0, "x"), 1.0);
    QVERIFY(std::abs(at(corners, 2, "x") - at(corners, 0, "x") - 5.125 / 7) < 0.01);
    QVERIFY(std::abs(at(corners, 2, "y") - at(corners, 0, "y") - 5.125 / 7) < 0.01);
    // 1 1/2 in is seen as it is: five times over, little of the block would be left.
    Desk far(readAs(topper(), square(Length::inches(5, 1, 2))), Station::Trim);
    QCOMPARE(far.trim.times(), 1.0);
    QVERIFY(std::abs(at(far.trim.corners(), 2, "x") - at(far.trim.corners(), 0, "x") - 5.5 / 7) < 0.01);
    // Diagonals 5/8 in apart: λ = (p² − q²) / (4 · 7) = 0.441 in, over 7/16 (F23).
    Readings lean = square(Length::inches(7));
    lean.diagonals = {Length::inches(10, 3, 16), Length::inches(9, 9, 16)};
    Desk leaning(readAs(topper(), lean), Station::Trim);
    QVERIFY2(leaning.trim.verdict().startsWith(QStringLiteral("It leans by {a generous 7/16 in}")),
             qPrintable(leaning.trim.verdict()));
}

void TrimFigures::theSidesThatTiltAreDrawnTilting()
{
    // The right end is wider by 1/8: top and bottom tilt by 1/16 each, the ends stand upright.
    Desk desk(topper(), Station::Trim);
    desk.measure.begin();
    desk.measure.nudge(1, 2);
    desk.measure.nudge(4, 1);
    desk.measure.nudge(5, 1);
    QCOMPARE(desk.measure.kind(), QStringLiteral("taper"));
    const QVariantList corners = desk.measure.corners();
    QVERIFY(std::abs(at(corners, 0, "x") - at(corners, 3, "x")) < 0.001);
    const double top = at(corners, 0, "y") - at(corners, 1, "y");
    const double bottom = at(corners, 2, "y") - at(corners, 3, "y");
    // Five times 1/16 in 7.
    QVERIFY2(std::abs(top - 5.0 / 16 / 7) < 0.004, qPrintable(QString::number(top)));
    QVERIFY2(std::abs(bottom - 5.0 / 16 / 7) < 0.004, qPrintable(QString::number(bottom)));
}

void TrimFigures::whatIsOffSizeIsDrawnAsASize()
{
    // Its top is wider by 3/16, so that it is 7 3/32 on the mean: over 1/16 off, and that is what is said of
    // it.
    Desk desk(topper(), Station::Trim);
    desk.measure.begin();
    desk.measure.nudge(0, 3);
    desk.measure.nudge(4, 1);
    desk.measure.nudge(5, 1);
    QCOMPARE(desk.measure.kind(), QStringLiteral("common-size"));
    const QVariantList corners = desk.measure.corners();
    QCOMPARE(at(corners, 0, "x"), at(corners, 3, "x"));
    QCOMPARE(at(corners, 1, "x"), at(corners, 2, "x"));
    // Five times 3/32 in 7, half of it at either side.
    QVERIFY(std::abs(at(corners, 1, "x") - 0.5 - 5.0 * 3 / 32 / 7 / 2) < 0.001);
    // Readings that make no shape have none drawn, but the planned one is.
    desk.measure.nudge(0, 12);
    QCOMPARE(desk.measure.kind(), QStringLiteral("measure-again"));
    QCOMPARE(desk.measure.corners().size(), 0);
    QCOMPARE(desk.measure.planned().size(), 4);
}

namespace {

/// The lines on the stitches of sides 1 to 4, each side cut after it was read; the cut side's at 3 and 4.
struct Lines {
    QString first[4], second[4];
};

Lines linesOf(Desk &desk)
{
    Lines lines;
    for (int side = 0; side < 4; ++side) {
        lines.first[side] = desk.trim.figure().text;
        lines.second[side] = desk.trim.second().text;
        desk.trim.cut();
    }
    return lines;
}

} // namespace

void TrimFigures::lineOutlineAndLineAreTheTrimmedSizeAtACommonSize()
{
    // A1 came out 6 7/8 × 7; A2 was logged 7, A3 logged 6 15/16, B1 not logged, sent for 7. F23: 6 7/8 + 1/16
    // is the common size, trimmed to 7 15/16.
    Project project = topper();
    project.made.blocks[1].outline = {Length::inches(7), Length::inches(7)};
    project.made.blocks[2].outline = {Length::inches(6, 15, 16), Length::inches(6, 15, 16)};
    const Pair sent = plan(project).block.sent;
    for (MadeBlock &block : project.made.blocks)
        block.sent = {sent.along, sent.across};
    Desk desk(project, Station::Trim);
    desk.measure.begin();
    for (const int side : {0, 2})
        QVERIFY(desk.measure.enter(side, QStringLiteral("6 7/8")).isEmpty());
    for (const int diagonal : {4, 5})
        QVERIFY(desk.measure.enter(diagonal, QStringLiteral("9 13/16")).isEmpty());
    desk.measure.takeCommonSize();
    QCOMPARE(desk.kept().blocks.width, Length::inches(6, 15, 16));
    // (7 15/16 − 6 7/8) / 2 = 17/32, (7 15/16 − 7) / 2 = 15/32, (7 15/16 − 6 15/16) / 2 = 1/2; in sixteenths.
    const QString over = QStringLiteral("a generous 1/2 in"), under = QStringLiteral("a generous 7/16 in");
    const QStringList along{over, under, QStringLiteral("1/2 in"), under};
    const QStringList across{under, under, QStringLiteral("1/2 in"), under};
    for (int block = 0; block < 4; ++block) {
        const QString &one = along[block], &other = across[block];
        const Lines lines = linesOf(desk);
        QCOMPARE(lines.first[0], one);
        QCOMPARE(lines.first[1], other);
        QCOMPARE(lines.first[2], QStringLiteral("7 15/16 in"));
        QCOMPARE(lines.second[2], one);
        QCOMPARE(lines.first[3], QStringLiteral("7 15/16 in"));
        QCOMPARE(lines.second[3], other);
    }
}

void TrimFigures::aCommonSizeIsNotSaidToBeEntered()
{
    Project project = topper();
    for (const auto &[at, size] : {std::pair(0U, Length::inches(6, 7, 8)), std::pair(1U, Length::inches(7))})
        project.made.blocks[at].outline = {size, size};
    Desk desk(project, Station::Trim);
    const auto outline = [&](const char *told) {
        return desk.steps.workingFor(QStringLiteral("block.trimmed.along"))[0]
            .toMap()[QString::fromLatin1(told)]
            .toBool();
    };
    QVERIFY(outline("entered") && !outline("common"));
    desk.measure.takeCommonSize();
    QVERIFY(!outline("entered") && outline("common"));
    QVERIFY(!desk.steps.workingFor(QStringLiteral("block.trimmed.along"))[1]
                 .toMap()[QStringLiteral("common")]
                 .toBool());
}

void TrimFigures::whatIsCutStaysCut()
{
    Desk desk(topper(), Station::Trim);
    desk.trim.cut();
    desk.trim.cut();
    QCOMPARE(desk.trim.side(), 3);
    // Something bought, or a bobbin wound for another block, is no cut into this one.
    Project next = desk.workspace.project();
    next.made.events.push_back({"bought", "", "back", "", 0, 0, {}, {}});
    next.made.events.push_back({"new-bobbin", "stitch-block", "", "B1", 0, 4, {}, {}});
    QVERIFY(desk.workspace.commit("bought", next));
    QCOMPARE(desk.trim.side(), 3);
    desk.measure.begin();
    QVERIFY(desk.measure.save());
    QCOMPARE(desk.trim.side(), 3);
    QCOMPARE(desk.trim.second().text, QStringLiteral("1/2 in"));
    // Found to be 6 15/16 after it was cut by a line of 1/2: 8 − 1/2 − 6 15/16 = 9/16 is left on this side.
    desk.measure.begin();
    for (int at = 0; at < 6; ++at)
        QVERIFY(
            desk.measure.enter(at, at < 4 ? QStringLiteral("6 15/16") : QStringLiteral("9 13/16")).isEmpty());
    QVERIFY(desk.measure.save());
    QCOMPARE(desk.trim.side(), 3);
    QCOMPARE(desk.trim.second().text, QStringLiteral("9/16 in"));
}

void TrimFigures::whatWasConfirmedAsShownIsRead()
{
    // Logged 6 7/8 × 7 at the hoop, and all six confirmed as shown: none is left to read, now or at a common
    // size.
    Project project = topper();
    project.made.blocks[0].outline = {Length::inches(6, 7, 8), Length::inches(7)};
    project.made.blocks[1].outline = {Length::inches(7), Length::inches(7)};
    Desk desk(project, Station::Trim);
    desk.measure.begin();
    QVERIFY(desk.measure.save());
    desk.measure.begin();
    QCOMPARE(desk.measure.asShownSays(), QString());
    desk.measure.takeCommonSize();
    QCOMPARE(desk.measure.kind(), QStringLiteral("plain"));
    QVERIFY2(desk.measure.verdict() == desk.trim.verdict(), qPrintable(desk.measure.verdict()));
    desk.measure.begin();
    QCOMPARE(desk.measure.asShownSays(), QString());
    // Where some were stepped and others not, those are still to be read.
    Desk part(topper(), Station::Trim);
    part.measure.begin();
    part.measure.nudge(0, 1);
    QCOMPARE(part.measure.asShownSays(), QStringLiteral("5 of 6 not yet read"));
}

QTEST_GUILESS_MAIN(TrimFigures)
#include "tst_trimfigures.moc"
