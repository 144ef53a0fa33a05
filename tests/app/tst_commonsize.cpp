// SPDX-License-Identifier: MIT
//
// A size that off-size blocks have in common: told with its whole effect, then taken, and held (F23).
#include "app/findings.h"
#include "app/readings.h"
#include "app/stitched.h"

#include "testing.h"

using namespace matside;
using stitched::Desk;
using stitched::topper;

class CommonSizeTest : public QObject {
    Q_OBJECT
private slots:
    void aCommonSizeIsToldBeforeItIsTaken();
    void aCommonSizeOnceTakenHoldsForLargerBlocks();
    void whatIsTooSmallForTheCommonSizeIsNamed();
    void verdictAndCommonSizeAreOneAnswer();
    void aBlockAtItsFirstSizeIsTrimmedToTheCommonOne();
};

void CommonSizeTest::aCommonSizeIsToldBeforeItIsTaken()
{
    // F23's example brought to 7 in: 6 7/8 … 7 1/16 gives 6 15/16.
    Project project = topper(1);
    const auto own = [&](std::size_t i, Length size) { project.made.blocks[i].outline = {size, size}; };
    own(0, Length::inches(7));
    own(1, Length::inches(6, 7, 8));
    own(2, Length::inches(7, 1, 16));
    Desk desk(project, Station::Trim);
    const QString says = desk.measure.commonSays();
    QVERIFY2(says.contains(QStringLiteral("{6 15/16 in}")), qPrintable(says));
    QVERIFY(says.contains(QStringLiteral("{7 15/16 in}")));
    QVERIFY2(says.contains(QStringLiteral("A1")), qPrintable(says)); // cut already for another size
    QVERIFY(desk.kept() == project);
    desk.measure.takeCommonSize();
    QCOMPARE(desk.kept().blocks.width, Length::inches(6, 15, 16));
    // What was made stands as it was; that a strip is cut now holds its cloth's layout.
    QVERIFY(desk.kept().made.blocks == project.made.blocks);
    QVERIFY(desk.kept().made.cut == project.made.cut);
}

void CommonSizeTest::aCommonSizeOnceTakenHoldsForLargerBlocks()
{
    // F23: 6 7/8 … 7 1/16 … 7 1/8 gives 6 15/16; the largest then loses stippling and is off size no more.
    Project project = topper();
    project.table = Table{Length::inches(40), Length::inches(30), {}, {}};
    const auto read = [&](std::size_t i, Length size) {
        const Readings square = onMarks(readingsOfRectangle({size, size}), project.finest);
        project.made.blocks[i].sides = square.sides;
        project.made.blocks[i].diagonals = square.diagonals;
    };
    read(0, Length::inches(7, 1, 8));
    read(1, Length::inches(6, 7, 8));
    read(2, Length::inches(7));
    Desk desk(project, Station::Trim);
    const auto kindOf = [&](std::size_t i) {
        const Project &now = desk.workspace.project();
        return findingOf(now, desk.workspace.plan(), now.made.blocks[i])->kind;
    };
    QCOMPARE(kindOf(0), FindingKind::CommonSize);
    QVERIFY(desk.measure.mayTakeCommon());
    const QString says = desk.measure.commonSays();
    // 3 blocks of 7 15/16 are 23 13/16; (40 − 23 13/16) / 2 stays clear of the table at each end.
    QVERIFY2(says.contains(QStringLiteral("Of the table {8 1/16 in}")) ||
                 says.contains(QStringLiteral("Of the table {a ")),
             qPrintable(says));
    QVERIFY2(says.contains(QStringLiteral("A stitched line will show then: that of A2, by {1/32 in}")),
             qPrintable(says));
    QVERIFY2(says.contains(QStringLiteral("A1 loses {3/32 in}")), qPrintable(says));
    desk.measure.takeCommonSize();
    QVERIFY(!desk.measure.mayTakeCommon());
    QVERIFY2(desk.measure.commonSays().isEmpty(), qPrintable(desk.measure.commonSays()));
    QVERIFY(targetOf(desk.workspace.project(), desk.workspace.plan()).common);
    for (std::size_t i = 0; i < 3; ++i)
        QCOMPARE(kindOf(i), FindingKind::Plain);
    // What was made stands as it was; that a strip is cut now holds its cloth's layout.
    QVERIFY(desk.kept().made.blocks == project.made.blocks);
    QVERIFY(desk.kept().made.cut == project.made.cut);
    desk.session.undo();
    QCOMPARE(kindOf(0), FindingKind::CommonSize);
}

void CommonSizeTest::whatIsTooSmallForTheCommonSizeIsNamed()
{
    // All blocks are larger than planned, so the longs cut for the planned size come out too short.
    Project project = topper();
    for (MadeBlock &block : project.made.blocks)
        block.outline = {Length::inches(7, 3, 16), Length::inches(7, 3, 16)};
    project.made.blocks[0].outline = {Length::inches(7, 1, 8), Length::inches(7, 1, 8)};
    const Plan before = plan(project);
    const std::vector<Step> cuts = steps(project, before);
    const auto isLong = [](const Step &step) { return step.does == Does::CutLong; };
    const auto longs = std::find_if(cuts.begin(), cuts.end(), isLong);
    QVERIFY(longs != cuts.end());
    Desk uncut(project, Station::Trim);
    const QString clear = uncut.measure.commonSays();
    QVERIFY2(!clear.contains(QStringLiteral("old measure")), qPrintable(clear));
    project.made.cut.push_back({longs->cloth, std::string(nameOf(longs->does)), 1, 0, {}});
    Desk desk(project, Station::Trim);
    const QString says = desk.measure.commonSays();
    QVERIFY2(says.contains(QStringLiteral("old measure")), qPrintable(says));
    desk.measure.takeCommonSize();
    // What was made stands as it was; that a strip is cut now holds its cloth's layout.
    QVERIFY(desk.kept().made.blocks == project.made.blocks);
    QVERIFY(desk.kept().made.cut == project.made.cut);
}

void CommonSizeTest::verdictAndCommonSizeAreOneAnswer()
{
    // All came out 3/16 and 1/4 in under: by itself each would be made again (F25), beside its fellows none
    // is. F23: min(6 13/16, 6 3/4 + 1/16) = 6 13/16; the smaller shows its line by 1/32.
    Project project = topper();
    for (MadeBlock &block : project.made.blocks)
        block.outline = {Length::inches(6, 3, 4), Length::inches(6, 3, 4)};
    Desk desk(project, Station::Trim);
    const auto readAll = [&](const QString &side, const QString &diagonal) {
        desk.measure.begin();
        for (int at = 0; at < 6; ++at)
            QCOMPARE(desk.measure.enter(at, at < 4 ? side : diagonal), QString());
    };
    readAll(QStringLiteral("6 13/16"), QStringLiteral("9 5/8"));
    QCOMPARE(desk.measure.kind(), QStringLiteral("common-size"));
    QVERIFY2(desk.measure.remedy().contains(QStringLiteral("{6 13/16 in}")),
             qPrintable(desk.measure.remedy()));
    const QString says = desk.measure.commonSays();
    QVERIFY2(says.contains(QStringLiteral("Common size {6 13/16 in}")), qPrintable(says));
    QVERIFY2(says.contains(QStringLiteral("A stitched line will show then: that of A2, by {1/32 in}")),
             qPrintable(says));
    QVERIFY(desk.measure.save());
    QCOMPARE(desk.trim.way(), QStringLiteral("common"));
    QVERIFY(desk.trim.verdict().contains(QStringLiteral("off size")));
    QVERIFY(desk.trim.remedy().contains(QStringLiteral("{6 13/16 in}")));
    desk.measure.begin();
    desk.measure.takeCommonSize();
    QCOMPARE(desk.trim.way(), QStringLiteral("cut"));
    // Far smaller than its fellows it is made again, and no size is offered beside that.
    desk.session.undo();
    readAll(QStringLiteral("6 3/8"), QStringLiteral("9"));
    QCOMPARE(desk.measure.kind(), QStringLiteral("remake"));
    QVERIFY(!desk.measure.mayTakeCommon());
    QVERIFY2(!desk.measure.commonSays().contains(QStringLiteral("Common size")),
             qPrintable(desk.measure.commonSays()));
    QVERIFY(desk.measure.save());
    QCOMPARE(desk.trim.way(), QStringLiteral("measure"));
}

void CommonSizeTest::aBlockAtItsFirstSizeIsTrimmedToTheCommonOne()
{
    // Sent for 7 in, A1 … A3 came out at 6 7/8, which is taken. B1 comes out at 7, as first planned: it is
    // not off size, the common size does not follow it, and its line centres it: (7 7/8 − 7) / 2 = 7/16.
    Project project = topper();
    const Pair sent = plan(project).block.sent;
    for (std::size_t i = 0; i < project.made.blocks.size(); ++i) {
        project.made.blocks[i].sent = {sent.along, sent.across};
        if (i < 3)
            project.made.blocks[i].outline = {Length::inches(6, 7, 8), Length::inches(6, 7, 8)};
    }
    Desk desk(project, Station::Trim);
    const auto readAll = [&](const QString &side, const QString &diagonal) {
        desk.measure.begin();
        for (int at = 0; at < 6; ++at)
            QCOMPARE(desk.measure.enter(at, at < 4 ? side : diagonal), QString());
    };
    readAll(QStringLiteral("6 7/8"), QStringLiteral("9 3/4"));
    // What it comes to is told at once, and only once.
    QVERIFY(desk.measure.remedy().startsWith(QStringLiteral("Common size {6 7/8 in}: trim to {7 7/8 in}")));
    QVERIFY(!desk.measure.commonLines().join(u' ').contains(QStringLiteral("Common size")));
    desk.measure.takeCommonSize();
    QCOMPARE(desk.kept().blocks.width, Length::inches(6, 7, 8));
    readAll(QStringLiteral("7"), QStringLiteral("9 7/8"));
    QCOMPARE(desk.measure.kind(), QStringLiteral("plain"));
    QCOMPARE(desk.measure.verdict(), QStringLiteral("It came out as first planned: {7 in}."));
    QCOMPARE(desk.measure.remedy(), QStringLiteral("Trim it to the common size, cut to {7 7/8 in}."));
    QVERIFY(!desk.measure.mayTakeCommon());
    QVERIFY(desk.measure.save());
    QCOMPARE(desk.trim.verdict(), desk.measure.verdict());
    QCOMPARE(desk.trim.remedy(), desk.measure.remedy());
    QCOMPARE(desk.trim.way(), QStringLiteral("cut"));
    QCOMPARE(desk.trim.figure().text, QStringLiteral("7/16 in"));
    // One that came out larger than it was ever planned is said to be just that.
    readAll(QStringLiteral("7 1/8"), QStringLiteral("10 1/16"));
    QCOMPARE(desk.measure.verdict(), QStringLiteral("It is larger than the common size: {7 1/8 in}."));
    // Only logged, not read: it is cut by its own line too.
    Project logged = desk.kept();
    logged.made.blocks[0].sides.reset();
    logged.made.blocks[0].diagonals.reset();
    logged.made.blocks[0].outline = {Length::inches(7), Length::inches(7)};
    Desk other(logged, Station::Trim);
    QCOMPARE(other.trim.way(), QStringLiteral("cut"));
    QCOMPARE(other.trim.figure().text, QStringLiteral("7/16 in"));
}

QTEST_GUILESS_MAIN(CommonSizeTest)
#include "tst_commonsize.moc"
