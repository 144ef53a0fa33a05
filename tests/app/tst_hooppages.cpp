// SPDX-License-Identifier: MIT
//
// What the Hoop station draws to be chosen from: strips, gaps, hoops, the draw-up; and what is laid up.
#include "app/desk.h"
#include "app/hoopmodel.h"
#include "app/hoopshelf.h"
#include "app/wording.h"

#include "testing.h"

using namespace matside;

namespace {

/// Case 1 of the trade notes, cut, and layered and marked as far as told.
Project topper(std::int64_t layered, std::int64_t marked)
{
    Project project = desk::topper();
    for (const char *cloth : {"front", "back", "batting"}) {
        project.made.cut.push_back({cloth, "straighten", 1, 0, {}});
        project.made.cut.push_back({cloth, "cut-strip", 3, 0, {}});
    }
    if (layered > 0)
        project.made.cut.push_back({"", "layer", layered, 0, {}});
    if (marked > 0)
        project.made.cut.push_back({"", "mark-strip", marked, 0, {}});
    return project;
}

struct Desk : desk::Open {
    explicit Desk(const Project &project) : Open(project, Station::Hoop) {}
    HoopModel hoop{workspace, session, steps};
    HoopShelf hoops{workspace, session};
};

QString valuesOf(const QVariantList &ways, const QString &key)
{
    QStringList all;
    for (const QVariant &way : ways)
        all += way.toMap().value(key).toString();
    return all.join(u' ');
}

QString chosenOf(const QVariantList &ways)
{
    for (const QVariant &way : ways)
        if (way.toMap().value(QStringLiteral("chosen")).toBool())
            return way.toMap().value(QStringLiteral("value")).toString();
    return {};
}

} // namespace

class HoopPages : public QObject {
    Q_OBJECT
private slots:
    void whatIsLaidUpIsAsLargeAsItsStrip();
    void gapsAreTakenAndGivenBack();
    void blocksGivenUpAreDrawn();
    void everyStripTellsWhatIsOnIt();
    void anOutlineThatCameOutShorterIsDrawnSo();
    void aHoopIsDrawnWithItsRoom();
};

void HoopPages::whatIsLaidUpIsAsLargeAsItsStrip()
{
    // Hoop P, 9 3/4 in outside, and 2 in: the strip is 11 3/4 in wide (trade notes, case 1).
    Desk desk(topper(0, 0));
    QCOMPARE(desk.steps.doing(), QStringLiteral("layer"));
    QVERIFY(desk.hoop.layering());
    QCOMPARE(desk.hoop.figure().text, QStringLiteral("11 3/4 in"));
    QVERIFY(desk.hoop.figure().hasWorking);
    QCOMPARE(desk.hoop.stripLength().text, QStringLiteral("40 1/2 in"));
    QVERIFY(desk.hoop.centreSays().isEmpty()); // no centre is needed yet
    QVERIFY(!desk.hoop.second().valid);
    for (int i = 0; i < 3; ++i)
        desk.steps.next();
    QVERIFY(!desk.hoop.layering());
    QCOMPARE(desk.hoop.figure().text, QStringLiteral("5 3/8 in"));
}

void HoopPages::gapsAreTakenAndGivenBack()
{
    Desk desk(topper(3, 0));
    const Project before = desk.kept();
    QCOMPARE(valuesOf(desk.hoop.gapWays(), QStringLiteral("value")), QStringLiteral("plain all"));
    QCOMPARE(chosenOf(desk.hoop.gapWays()), QStringLiteral("plain"));
    desk.hoop.takeGaps(QStringLiteral("some")); // all are free: there is no such way
    QVERIFY(desk.kept() == before);
    desk.hoop.takeGaps(QStringLiteral("all"));
    QVERIFY(desk.kept().strip.harvest);
    QCOMPARE(chosenOf(desk.hoop.gapWays()), QStringLiteral("all"));
    const QVariantMap all = desk.hoop.gapWays().at(1).toMap();
    // G_y = 1 + 2 + 1/8 (F3), six pairs.
    QCOMPARE(all.value(QStringLiteral("gap")).value<FigureView>().text, QStringLiteral("3 1/8 in"));
    QVERIFY(all.value(QStringLiteral("details")).toStringList().at(1).startsWith(QStringLiteral("6 ")));
    const QVariantMap gap = all.value(QStringLiteral("gaps")).toList().at(0).toMap();
    QCOMPARE(gap.value(QStringLiteral("toMm")).toDouble() - gap.value(QStringLiteral("fromMm")).toDouble(),
             Length::inches(3, 1, 8).asMm());
    QVERIFY(gap.value(QStringLiteral("yields")).toBool());
    desk.hoop.takeGaps(QStringLiteral("plain"));
    QVERIFY(!desk.kept().strip.harvest);
    QCOMPARE(desk.workspace.plan().strip.gap, Length::inches(1, 7, 8));
    desk.hoop.takeGaps(QStringLiteral("wide"));
    QVERIFY(!desk.kept().strip.harvest);
    // Once a block is stitched the gaps are what they are.
    Desk later(topper(3, 3));
    QVERIFY(!later.hoop.gapWays().isEmpty());
    later.steps.next();
    QVERIFY(later.hoop.gapWays().isEmpty());
}

void HoopPages::blocksGivenUpAreDrawn()
{
    // 37 1/2 in: four blocks need 2 · 2 3/8 + 4 · 6 + 3 · 1 7/8 = 34 3/8; with 3 1/8 it would be 38 1/8.
    Project project = topper(3, 0);
    project.strip.usable = Length::inches(37, 1, 2);
    Desk desk(project);
    const QVariantList ways = desk.hoop.gapWays();
    QCOMPARE(valuesOf(ways, QStringLiteral("value")), QStringLiteral("plain some all"));
    const QVariantMap all = ways.at(2).toMap();
    const auto blocks = all.value(QStringLiteral("starts")).toList().size();
    const auto lost = all.value(QStringLiteral("lost")).toList();
    QCOMPARE(blocks + lost.size(), 4);
    QCOMPARE(all.value(QStringLiteral("tails")).toBool(), lost.isEmpty());
    QVERIFY(ways.at(1).toMap().value(QStringLiteral("lost")).toList().isEmpty());
    desk.hoop.takeGaps(QStringLiteral("some"));
    QCOMPARE(desk.kept().strip.harvestGaps, 2);
    QCOMPARE(chosenOf(desk.hoop.gapWays()), QStringLiteral("some"));
}

void HoopPages::everyStripTellsWhatIsOnIt()
{
    Desk desk(topper(3, 3));
    desk.steps.next();
    QCOMPARE(desk.hoop.stripCount(), 3);
    const QVariantMap first = desk.hoop.stripAt(1);
    QCOMPARE(first.value(QStringLiteral("names")).toString(), QStringLiteral("A1 – B1"));
    QVERIFY(first.value(QStringLiteral("chosen")).toBool());
    QCOMPARE(valuesOf(first.value(QStringLiteral("places")).toList(), QStringLiteral("state")),
             QStringLiteral("stitched next open open"));
    const QVariantMap second = desk.hoop.stripAt(2);
    QVERIFY(!second.value(QStringLiteral("chosen")).toBool());
    QCOMPARE(valuesOf(second.value(QStringLiteral("places")).toList(), QStringLiteral("state")),
             QStringLiteral("open open open open"));
    desk.hoop.setStrip(2);
    QVERIFY(desk.hoop.stripAt(2).value(QStringLiteral("chosen")).toBool());
    QVERIFY(desk.hoop.stripAt(0).isEmpty());
    QVERIFY(desk.hoop.stripAt(4).isEmpty());
}

void HoopPages::anOutlineThatCameOutShorterIsDrawnSo()
{
    Project project = topper(3, 3);
    MadeBlock block;
    block.block = "A1";
    block.strip = 1;
    block.place = 1;
    block.outline = {Length::inches(5, 3, 4), Length::inches(6)};
    project.made.blocks.push_back(block);
    Desk desk(project);
    const QVariantMap made = desk.hoop.view().places.at(0).toMap();
    const QVariantMap next = desk.hoop.view().places.at(1).toMap();
    QCOMPARE(made.value(QStringLiteral("alongMm")).toDouble(), Length::inches(5, 3, 4).asMm());
    // 2 3/8, 5 3/4 and 1 7/8: the next begins at 10.
    QCOMPARE(next.value(QStringLiteral("startMm")).toDouble(), Length::inches(10).asMm());
}

void HoopPages::aHoopIsDrawnWithItsRoom()
{
    Desk desk(topper(3, 3));
    desk.steps.next();
    const QModelIndex own = desk.hoops.index(0);
    QCOMPARE(own.data(HoopShelf::Room).value<FigureView>().text, QStringLiteral("1 7/8 in"));
    QCOMPARE(own.data(HoopShelf::View)
                 .toMap()
                 .value(QStringLiteral("outside"))
                 .toMap()
                 .value(QStringLiteral("alongMm"))
                 .toDouble(),
             Length::inches(9, 3, 4).asMm());
    QCOMPARE(desk.hoops.largestMm(), Length::inches(9, 3, 4).asMm());
    QCOMPARE(own.data(HoopShelf::TakesShort).toString(), QStringLiteral("3 strips of 4 blocks"));
    QCOMPARE(desk.hoops.takesSays(), own.data(HoopShelf::TakesSays).toString());
    desk.hoops.add();
    const QModelIndex bare = desk.hoops.index(1);
    QVERIFY(!bare.data(HoopShelf::Room).value<FigureView>().valid);
    QVERIFY(bare.data(HoopShelf::View).toMap().isEmpty());
    QVERIFY(bare.data(HoopShelf::TakesShort).toString().isEmpty());
    desk.hoops.choose(0);
}

QTEST_GUILESS_MAIN(HoopPages)
#include "tst_hooppages.moc"
