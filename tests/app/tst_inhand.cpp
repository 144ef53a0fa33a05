// SPDX-License-Identifier: MIT
//
// What is told of the thing in hand: which size and which side is meant, figures on the marks of the ruler
// they are laid with, what was noted of a block, one of a thing as one.
#include "app/figures.h"
#include "app/hoopmodel.h"
#include "app/kitsmodel.h"
#include "app/readings.h"
#include "app/wording.h"
#include "store/photonotes.h"

#include "stitched.h"
#include "testing.h"

using namespace matside;
using namespace matside::stitched;

namespace {

Readings square(Length side)
{
    return onMarks(readingsOfRectangle({side, side}), Length::inches(0, 1, 16));
}

Project readAs(Project project, const Readings &readings)
{
    project.made.blocks.front().sides = readings.sides;
    project.made.blocks.front().diagonals = readings.diagonals;
    return project;
}

/// A note of a block, kept with the project as the log keeps it.
void note(Desk &desk, const char *block, const QStringList &flags, const QString &words)
{
    Note one;
    one.id = QStringLiteral("note-%1-%2").arg(QLatin1String(block)).arg(flags.size());
    one.block = QLatin1String(block);
    one.flags = flags;
    one.words = words;
    Project next = desk.workspace.project();
    next.made.goodBlock(block)->notes.push_back(one.id.toStdString());
    NoteBook book(*desk.store);
    QVERIFY(desk.workspace.commitBy("log", next, {}, [&](const Command &command) {
        return book.log(desk.workspace.id(), command, one);
    }));
}

} // namespace

class InHand : public QObject {
    Q_OBJECT
private slots:
    void cutAndStitchedSizesAreNamed();
    void theLineIsOnTheRulersMarks();
    void theSideInHandIsTheBlocksOwn();
    void aBlockThatIsNotSquareIsMeasuredAcrossTheBlade();
    void whatWasNotedIsToldAgain();
    void aTickThatNoLongerHoldsIsSaid();
    void lengthsAreNotParted();
    void oneIsSaidAsOne();
};

void InHand::cutAndStitchedSizesAreNamed()
{
    Desk desk(readAs(topper(), square(Length::inches(6, 7, 8))), Station::Trim);
    QVERIFY2(desk.trim.firstSays().startsWith(QStringLiteral("Planned cut {8 in}")),
             qPrintable(desk.trim.firstSays()));
    // By F23 half of what 8 in is longer than 7 1/8 in lies outside the stitches.
    Desk larger(readAs(topper(), square(Length::inches(7, 1, 16))), Station::Trim);
    QVERIFY2(larger.trim.firstSays().contains(QStringLiteral("stitched {7 1/16 in}")),
             qPrintable(larger.trim.firstSays()));
}

void InHand::theLineIsOnTheRulersMarks()
{
    // Centred under 8 in, a block of 7 1/16 in lies (8 − 7 1/16) / 2 = 15/32 in inside the cut; her ruler has
    // sixteenths: 7/16 in and a little over.
    Desk desk(readAs(topper(), square(Length::inches(7, 1, 16))), Station::Trim);
    QCOMPARE(desk.trim.figure().text, QStringLiteral("a generous 7/16 in"));
    desk.trim.cut();
    desk.trim.cut();
    QCOMPARE(desk.trim.second().text, QStringLiteral("a generous 7/16 in"));
}

void InHand::theSideInHandIsTheBlocksOwn()
{
    for (const Hand hand : {Hand::Right, Hand::Left}) {
        Project project = topper();
        Desk desk(project, Station::Trim);
        const bool right = hand == Hand::Right;
        desk.session.setLeftHanded(!right); // as set on the tablet
        // Turned so that what was cut lies at the foot, the side before it comes to the blade. Where it lies
        // there is no left nor right of its own: they are counted.
        for (int side = 0; side < 4; ++side) {
            QCOMPARE(desk.trim.title(), QStringLiteral("A1, side %1 of 4").arg(side + 1));
            QCOMPARE(desk.trim.lies().value(QStringLiteral("turns")).toInt(), right ? side : (4 - side) % 4);
            desk.trim.cut();
        }
    }
    // F25: with one side tilted the truest is cut first, and the words and the drawing mean the same one.
    Readings tilted = square(Length::inches(7));
    tilted.sides[0] += Length::inches(0, 1, 8);
    tilted.diagonals[1] += Length::inches(0, 1, 8);
    Desk desk(readAs(topper(), tilted), Station::Trim);
    QVERIFY2(desk.trim.checkSays().contains(QStringLiteral("truest side")),
             qPrintable(desk.trim.checkSays()));
    const QString own = desk.trim.title().section(QStringLiteral(": "), 1);
    QVERIFY2(desk.trim.checkSays().contains(own), qPrintable(desk.trim.title()));
}

void InHand::aBlockThatIsNotSquareIsMeasuredAcrossTheBlade()
{
    // 7 along and 6 across, 8 and 7 cut: with its top or bottom at the blade the long line is at 7 in.
    Project project = topper();
    project.blocks.height = Length::inches(6);
    Readings tilted =
        onMarks(readingsOfRectangle({Length::inches(7), Length::inches(6)}), Length::inches(0, 1, 16));
    tilted.sides[1] += Length::inches(0, 1, 8);
    tilted.diagonals[0] += Length::inches(0, 1, 16);
    Desk desk(readAs(project, tilted), Station::Trim);
    for (int side = 1; side <= 4; ++side) {
        const QString own = desk.trim.title().section(QStringLiteral(": "), 1);
        const bool upright = own == QStringLiteral("left") || own == QStringLiteral("right");
        const QVariantMap lies = desk.trim.lies();
        QCOMPARE(lies.value(QStringLiteral("alongMm")).toDouble(), (upright ? 8 : 7) * 25.4);
        if (side > 2)
            QCOMPARE(desk.trim.figure().text, upright ? QStringLiteral("8 in") : QStringLiteral("7 in"));
        desk.trim.cut();
    }
}

void InHand::whatWasNotedIsToldAgain()
{
    Desk desk(topper(), Station::Trim);
    QVERIFY(desk.trim.remembered().isEmpty());
    note(desk, "A1", {QStringLiteral("pleat")}, QStringLiteral("near  the top"));
    note(desk, "A3", {QStringLiteral("mark"), QStringLiteral("look")}, {});
    QCOMPARE(desk.trim.remembered(), QStringLiteral("Pleat on the back; near the top"));
    for (int cut = 0; cut < 4; ++cut)
        desk.trim.cut();
    QVERIFY(desk.trim.title().startsWith(QStringLiteral("A2")));
    QVERIFY(desk.trim.remembered().isEmpty());

    Project trimmed = topper(9);
    trimmed.made.cut.push_back({"", "trim-block", 9, 0, {}});
    Desk join(trimmed, Station::Join);
    note(join, "A1", {QStringLiteral("pleat")}, {});
    for (int row = 0; row < join.steps.steps()->count() && join.steps.doing() != QStringLiteral("join-short");
         ++row)
        join.steps.goTo(row);
    QCOMPARE(join.join.title(), QStringLiteral("A1 to A2"));
    QCOMPARE(join.join.remembered(), QStringLiteral("A1: Pleat on the back"));
}

void InHand::aTickThatNoLongerHoldsIsSaid()
{
    Project project = desk::topper();
    for (const char *cloth : {"front", "back", "batting"}) {
        project.made.cut.push_back({cloth, "straighten", 1, 0, {}});
        project.made.cut.push_back({cloth, "cut-strip", 3, 0, {}});
    }
    project.made.cut.push_back({"", "layer", 3, 0, {}});
    project.made.cut.push_back({"", "mark-strip", 3, 0, {}});
    desk::Open open(project, Station::Hoop);
    HoopModel hoop(open.workspace, open.session, open.steps);
    open.steps.next();
    QVERIFY(!hoop.centreSays().contains(QStringLiteral("mark")));
    hoop.nudgeEnd(-2); // the first block ended 1/8 in short of the plan
    QVERIFY2(hoop.centreSays().contains(QStringLiteral("not at its mark")), qPrintable(hoop.centreSays()));
    QVERIFY2(hoop.expectSays().contains(QStringLiteral("A2, A3")), qPrintable(hoop.expectSays()));
    QVERIFY(!hoop.expectSays().contains(QStringLiteral("A1")));
    hoop.nudgeEnd(2);
    QVERIFY(!hoop.expectSays().contains(QStringLiteral("A2")));
}

void InHand::lengthsAreNotParted()
{
    QString whole = QStringLiteral("A scant 7~1/4~in is left, 2~in by 15~mm, in 3 strips; 12 mats.");
    whole.replace(u'~', QChar::Nbsp);
    QCOMPARE(figuresWhole(QStringLiteral("A scant 7 1/4 in is left, 2 in by 15 mm, in 3 strips; 12 mats.")),
             whole);
}

void InHand::oneIsSaidAsOne()
{
    Project project = topper();
    project.lesson = Lesson();
    project.lesson->students = 1;
    desk::Open open(project, Station::Shop);
    ShopModel shop(open.workspace, open.session);
    KitsModel kits(open.workspace, open.session, shop);
    const auto says = [&](int at) {
        return kits.amounts().at(at).toMap().value(QStringLiteral("counted")).toString();
    };
    QCOMPARE(says(0), QStringLiteral("student"));
    QCOMPARE(says(1), QStringLiteral("spare kit"));
    QCOMPARE(says(2), QStringLiteral("machine in the room"));
    kits.nudge(QStringLiteral("machines"), 1);
    QCOMPARE(says(2), QStringLiteral("machines in the room"));
}

QTEST_GUILESS_MAIN(InHand)
#include "tst_inhand.moc"
