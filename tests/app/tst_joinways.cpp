// SPDX-License-Identifier: MIT
//
// Filling a sashing and closing the back, as they are offered and taken at the Join (F7, F10); a mishap that
// asks which block it is.
#include "app/stitched.h"

#include "testing.h"

using namespace matside;

using stitched::Desk;
using stitched::topper;

namespace {

QStringList kinds(const JoinModel &join)
{
    QStringList all;
    for (const QVariant &way : join.ways())
        all.append(way.toMap().value(QStringLiteral("kind")).toString() +
                   (way.toMap().value(QStringLiteral("chosen")).toBool() ? QStringLiteral("!") : QString()));
    return all;
}

QString detail(const JoinModel &join, const QString &kind)
{
    for (const QVariant &way : join.ways())
        if (way.toMap().value(QStringLiteral("kind")).toString() == kind)
            return way.toMap().value(QStringLiteral("detail")).toString();
    return {};
}

bool take(JoinModel &join, const char *kind)
{
    return join.takeWay(QString::fromLatin1(kind)).value(QStringLiteral("ok")).toBool();
}

} // namespace

class JoinWaysTest : public QObject {
    Q_OBJECT
private slots:
    void theBackIsTurnedOrDoubled();
    void aWideSashingIsFilledOrLeftMore();
    void aNarrowSashingIsPared();
    void trimmedBlocksKeepTheirAllowance();
    void aCleanBackHasNoBackToClose();
    void aLostBlockIsNamedByATouch();
    void aBlockCutThroughAtTheJoinIsGivenUp();
    void theRowOnTheTapeIsTheOneInHand();
};

void JoinWaysTest::theBackIsTurnedOrDoubled()
{
    Desk desk(topper(9), Station::Join);
    QCOMPARE(kinds(desk.join), (QStringList{QStringLiteral("turned!"), QStringLiteral("doubled")}));
    QVERIFY(detail(desk.join, QStringLiteral("doubled")).contains(QStringLiteral("{3 5/16 in}")));
    QVERIFY(take(desk.join, "doubled"));
    QVERIFY(desk.kept().fold.doubled);
    QCOMPARE(kinds(desk.join), (QStringList{QStringLiteral("turned"), QStringLiteral("doubled!")}));
    // Nothing is folded under; the figure is the catch.
    QVERIFY(!desk.join.fold().valid && !desk.join.missed().valid);
    QCOMPARE(desk.join.held().text, QStringLiteral("1/8 in"));
    QVERIFY(desk.join.section().doubled);
    QVERIFY(desk.join.pressSays().isEmpty() || desk.join.pressSays().contains(QStringLiteral("double")));
    QVERIFY(take(desk.join, "turned"));
    QCOMPARE(desk.join.fold().text, QStringLiteral("5/16 in"));
    QVERIFY(!take(desk.join, "filler")); // there is nothing to fill
}

void JoinWaysTest::aWideSashingIsFilledOrLeftMore()
{
    Project project = topper();
    project.sashing.finished = Length::inches(1, 1, 2);
    Desk desk(project, Station::Join);
    QVERIFY(kinds(desk.join).contains(QStringLiteral("filler!")));
    QVERIFY(desk.join.section().filled);
    const QString filled = detail(desk.join, QStringLiteral("filler"));
    QVERIFY2(filled.contains(QStringLiteral("6 of them {8 1/2 in}")), qPrintable(filled));
    QVERIFY(detail(desk.join, QStringLiteral("allowance")).contains(QStringLiteral("{8 1/2 in}")));
    QVERIFY(take(desk.join, "allowance"));
    QCOMPARE(desk.kept().sashing.allowance, std::optional(Length::inches(0, 3, 4)));
    QVERIFY(!desk.join.section().filled);
    QVERIFY(take(desk.join, "filler"));
    QVERIFY(!desk.kept().sashing.allowance);
}

void JoinWaysTest::aNarrowSashingIsPared()
{
    Project project = topper();
    project.sashing.finished = Length::inches(0, 3, 4);
    project.edge.outside = Length::inches(0, 1, 2);
    Desk desk(project, Station::Join);
    QVERIFY(kinds(desk.join).contains(QStringLiteral("pared")));
    QVERIFY(take(desk.join, "pared"));
    QCOMPARE(desk.kept().sashing.allowance, std::optional(Length::inches(0, 3, 8)));
    // Nothing is left to be wrong: the outer edge keeps what the blocks have.
    QVERIFY(desk.workspace.plan().problems.empty());
    QCOMPARE(desk.kept().edge.outside, std::optional(Length::inches(0, 3, 8)));
}

void JoinWaysTest::trimmedBlocksKeepTheirAllowance()
{
    Project project = topper(9);
    project.sashing.finished = Length::inches(1, 1, 2);
    Desk desk(project, Station::Join);
    QVERIFY(!kinds(desk.join).contains(QStringLiteral("allowance")));
    QVERIFY(!take(desk.join, "allowance"));
}

void JoinWaysTest::aCleanBackHasNoBackToClose()
{
    Project project = topper(9);
    project.build = Build::CleanBack;
    Desk desk(project, Station::Join);
    QVERIFY(desk.join.ways().isEmpty());
    QVERIFY(!take(desk.join, "doubled"));
}

void JoinWaysTest::aLostBlockIsNamedByATouch()
{
    Desk desk(topper(9), Station::Join);
    QCOMPARE(desk.steps.blocksMade().size(), 9);
    QCOMPARE(desk.steps.blocksMade().first(), QStringLiteral("A1"));
    bool asked = false;
    for (const QVariant &answer : desk.steps.wrongAnswers())
        if (answer.toMap().value(QStringLiteral("kind")).toString() == QStringLiteral("block-gone"))
            asked = answer.toMap().value(QStringLiteral("block")).toBool();
    QVERIFY(asked);
    QVERIFY(desk.steps.wrong(QStringLiteral("block-gone"), QStringLiteral("B2"))
                .value(QStringLiteral("ok"))
                .toBool());
    QVERIFY2(desk.steps.lastAnswer().contains(QStringLiteral("Block B2 is stitched again")),
             qPrintable(desk.steps.lastAnswer()));
    QCOMPARE(desk.kept().made.blocks[4].state, BlockState::Lost);
    QCOMPARE(desk.steps.blocksMade().size(), 8);
}

void JoinWaysTest::theRowOnTheTapeIsTheOneInHand()
{
    Desk desk(topper(9), Station::Join);
    for (int i = 0; i < 6; ++i)
        desk.steps.next();
    const auto inHand = [&desk] {
        QStringList names;
        for (const QVariant &block : desk.join.blocks())
            if (block.toMap().value(QStringLiteral("now")).toBool())
                names.append(block.toMap().value(QStringLiteral("block")).toString());
        return names.join(u' ');
    };
    QVERIFY(desk.join.measuring());
    QCOMPARE(inHand(), QStringLiteral("A1 A2 A3"));
    desk.steps.next();
    QVERIFY(desk.join.measuring());
    QCOMPARE(inHand(), QStringLiteral("B1 B2 B3"));
}

void JoinWaysTest::aBlockCutThroughAtTheJoinIsGivenUp()
{
    Desk desk(topper(9), Station::Join);
    QVERIFY(desk.steps.wrong(QStringLiteral("cut-into"), QStringLiteral("1/8"))
                .value(QStringLiteral("ok"))
                .toBool());
    QVERIFY(desk.steps.mayRemake() && desk.steps.asksBlock());
    desk.steps.remake(QStringLiteral("C3"));
    QCOMPARE(desk.kept().made.blocks[8].state, BlockState::Spoiled);
    QVERIFY(!desk.steps.mayRemake());
    // At the edge the keypad asks for what is left there, and a typed nonsense is answered.
    QVERIFY(!desk.steps.wrong(QStringLiteral("cut-into"), QStringLiteral("x"))
                 .value(QStringLiteral("ok"))
                 .toBool());
}

QTEST_GUILESS_MAIN(JoinWaysTest)
#include "tst_joinways.moc"
