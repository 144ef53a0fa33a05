// SPDX-License-Identifier: MIT
//
// What Shop asks and tells beside the price: ticks and the list to take, kits for a class; and
// requests that make no sense, which are answered in words.
#include "app/plancommand.h"
#include "app/shopwords.h"
#include "counter.h"

#include "testing.h"
#include <QRegularExpression>

using namespace matside;
using namespace shopping;

class ShopModels : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QLocale::setDefault(QLocale::c()); }
    void ticksAreKeptAndUndone();
    void whatIsThereIsNotOnTheList();
    void clothsOfOneNameAreToldApart();
    void widthStandsBesideTheLength();
    void aClassIsAskedFor();
    void battingByThePackage();
    void threadInYards();
    void sillyRequests_data();
    void sillyRequests();
};

void ShopModels::ticksAreKeptAndUndone()
{
    Counter at;
    const int rows = at.list.count();
    QVERIFY(rows >= 5); // three cloths, thread and needles
    QVERIFY(at.take(0, TakeModel::Says).contains(QStringLiteral("oat")));
    // Each is drawn as what it is.
    QCOMPARE(at.take(0, TakeModel::DrawnAs), QStringLiteral("front"));
    QCOMPARE(at.take(rows - 2, TakeModel::DrawnAs), QStringLiteral("thread"));
    QCOMPARE(at.take(rows - 1, TakeModel::DrawnAs), QStringLiteral("needles"));
    QVERIFY(!at.ticked(0));
    at.list.tick(0);
    QVERIFY(at.ticked(0));
    QVERIFY(at.open.kept().made.layoutOf("oat")); // bought: its layout is fixed
    at.list.tick(rows - 1);
    QVERIFY(at.ticked(rows - 1));
    QCOMPARE(at.list.leftSays(), QStringLiteral("%1 things to find").arg(rows - 2));
    // Read anew the ticks still stand, and each is undone by itself.
    QVERIFY(at.open.workspace.open(at.open.workspace.id()));
    QVERIFY(at.ticked(0) && at.ticked(rows - 1));
    QVERIFY(at.open.workspace.undo());
    QVERIFY(at.ticked(0) && !at.ticked(rows - 1));
    QVERIFY(at.open.workspace.undo());
    QVERIFY(!at.ticked(0));
    QVERIFY(!at.open.kept().made.layoutOf("oat"));
    at.list.tick(0);
    at.list.tick(0); // ticked and unticked
    QVERIFY(!at.ticked(0));
    QVERIFY(at.take(rows - 1, TakeModel::Says).endsWith(QStringLiteral("needle")) ||
            at.take(rows - 1, TakeModel::Says).endsWith(QStringLiteral("needles")));
    QVERIFY(!at.shop.sundriesSays().contains(QStringLiteral(" 1 needles")));
}

void ShopModels::whatIsThereIsNotOnTheList()
{
    Project project = cloths();
    project.cloths.front().owned = {{Length::inches(72), Length::inches(44), {}}};
    Counter at(project);
    for (int row = 0; row < at.list.count(); ++row)
        QVERIFY(!at.take(row, TakeModel::Says).contains(QStringLiteral("oat")));
    const QModelIndex oat = at.shop.index(0);
    QVERIFY(at.shop.data(oat, ShopModel::ProofSays).toString().contains(QStringLiteral("nothing to buy")));
    QVERIFY(at.shop.data(oat, ShopModel::CutSays).toString().contains(QStringLiteral("from what you have")));
}

void ShopModels::clothsOfOneNameAreToldApart()
{
    // Front and back of one name, and two patch cloths of that name too: no two lines say the same.
    Project project = cloths();
    project.cloths[1].name = project.cloths[0].name;
    for (const char *id : {"leaf", "stem"}) {
        Cloth cloth = project.cloths[0];
        cloth.id = id;
        cloth.role = ClothRole::Patch;
        project.cloths.push_back(cloth);
        Patch patch;
        patch.name = patch.cloth = id;
        patch.width = patch.height = Length::inches(3);
        patch.over = Length::inches(0, 1, 2);
        project.patches.push_back(patch);
    }
    Counter at(project);
    QStringList names;
    for (const Cloth &cloth : project.cloths)
        if (cloth.id != "wool")
            names << clothAmongAll(project, cloth.id);
    QCOMPARE(names, QStringList({QStringLiteral("oat (front)"), QStringLiteral("oat (back)"),
                                 QStringLiteral("oat (patch 1)"), QStringLiteral("oat (patch 2)")}));
    QCOMPARE(clothAmongAll(project, "wool"), QStringLiteral("wool"));
    for (const QString &name : names) {
        int listed = 0;
        for (int row = 0; row < at.list.count(); ++row)
            listed += at.take(row, TakeModel::Says).endsWith(u' ' + name) ? 1 : 0;
        QCOMPARE(listed, 1);
    }
}

void ShopModels::widthStandsBesideTheLength()
{
    Project project = cloths();
    project.cloths[1].usable = Length::inches(42);
    Counter at(project);
    const auto says = [&](int row, int role) {
        return at.shop.data(at.shop.index(row), role).toString().replace(QChar::Nbsp, u' ');
    };
    // Both are written along the cloth as it is drawn; the length is the one to buy.
    QCOMPARE(says(0, ShopModel::WidthSays), QStringLiteral("{40 1/2 in}"));
    QCOMPARE(says(1, ShopModel::WidthSays), QStringLiteral("{42 in}"));
    QCOMPARE(says(0, ShopModel::LengthSays), says(0, ShopModel::BuyLine));
    // The list to take says it once, beneath.
    QVERIFY(!at.take(0, TakeModel::Says).contains(QStringLiteral("40")));
    QVERIFY(at.take(0, TakeModel::Detail).contains(QStringLiteral("{40 1/2 in}")));
    // What is there already is no length of cloth.
    project.cloths.front().owned = {{Length::inches(72), Length::inches(44), {}}};
    Counter owned(project);
    QCOMPARE(owned.shop.data(owned.shop.index(0), ShopModel::LengthMm).toDouble(), 0.0);
}

void ShopModels::aClassIsAskedFor()
{
    Counter at;
    QCOMPARE(at.kits.headSays(), QString());
    at.kits.setOpen(true);
    QVERIFY(
        at.kits.enter(QStringLiteral("students"), QStringLiteral("12")).value(QStringLiteral("ok")).toBool());
    QCOMPARE(at.kits.headSays(), QStringLiteral("15 kits: 12 students, yours, and 2 spare"));
    QCOMPARE(at.open.kept().kits, 15);
    QCOMPARE(at.kits.cloths().size(), at.shop.count());
    QVERIFY(at.kits.cloths().first().toMap().value(QStringLiteral("together")).toDouble() > 0);
    QVERIFY(!at.kits.cuts().isEmpty());
    // The bundles are the kits, and one of them is hers.
    int bundles = 0;
    QStringList kinds;
    for (const QVariant &bundle : at.kits.bundles()) {
        bundles += bundle.toMap().value(QStringLiteral("count")).toInt();
        kinds << bundle.toMap().value(QStringLiteral("kind")).toString();
    }
    QCOMPARE(bundles, 15);
    QCOMPARE(kinds.join(u' '), QStringLiteral("student yours spare"));
    QCOMPARE(at.kits.folded().size(), at.shop.count());
    // What is cut is drawn to one scale, the longest piece as long as there is room.
    double longest = 0;
    for (const QVariant &cut : at.kits.cuts()) {
        longest = std::max(longest, cut.toMap().value(QStringLiteral("wide")).toDouble());
        QVERIFY(cut.toMap().value(QStringLiteral("deep")).toDouble() <=
                cut.toMap().value(QStringLiteral("wide")).toDouble());
    }
    QCOMPARE(longest, 1.0);
    QVERIFY(at.kits.hoursSay().contains(QStringLiteral("hours at the machine")));
    QCOMPARE(at.kits.cautionSays(), QString());
    at.kits.pick(QStringLiteral("young"), true);
    QVERIFY(at.kits.room().value(QStringLiteral("young")).toBool());
    QVERIFY(at.kits.cautionSays().contains(QStringLiteral("an adult at each cutting place")));
    at.kits.nudge(QStringLiteral("spare"), -2);
    QCOMPARE(at.open.kept().kits, 13);
    QVERIFY(!at.kits.enter(QStringLiteral("students"), QStringLiteral("9000"))
                 .value(QStringLiteral("ok"))
                 .toBool());
    QVERIFY(
        at.kits.enter(QStringLiteral("students"), QStringLiteral("0")).value(QStringLiteral("ok")).toBool());
    QCOMPARE(at.open.kept().kits, 1);
    QVERIFY(!at.open.kept().lesson);
    QVERIFY(at.kits.bundles().isEmpty());
}

void ShopModels::battingByThePackage()
{
    Counter at;
    QVERIFY(at.batting.known());
    QCOMPARE(at.batting.headSays(), QStringLiteral("from the roll"));
    at.batting.setOpen(true);
    const auto way = [&](int row, const char *what) {
        return at.batting.ways().value(row).toMap().value(QLatin1String(what)).toString();
    };
    const auto wool = [&](int role) {
        for (int row = 0; row < at.shop.count(); ++row)
            if (at.shop.data(at.shop.index(row), ShopModel::Name).toString() == QStringLiteral("wool"))
                return at.shop.data(at.shop.index(row), role).toString();
        return QString();
    };
    QCOMPARE(at.batting.ways().size(), 1);
    const StripPlan &planned = at.open.workspace.plan().strip;
    QVERIFY2(at.batting.verdictSays().startsWith(QString::number(planned.strips) +
                                                 QStringLiteral(" hoop strips of ")),
             qPrintable(at.batting.verdictSays()));
    // The size being entered is drawn before it is added, the roll with all its strips.
    const auto strips = [](const QVariantMap &told) {
        int count = 0;
        for (const QVariant &strip : told.value(QStringLiteral("strips")).toList())
            for (const QVariant &piece : strip.toMap().value(QStringLiteral("pieces")).toList())
                if (!piece.toMap().value(QStringLiteral("gap")).toBool())
                    count += strip.toMap().value(QStringLiteral("repeats")).toInt() *
                             piece.toMap().value(QStringLiteral("count")).toInt();
        return count;
    };
    QVERIFY(strips(at.batting.ways().first().toMap()) > 0);
    QCOMPARE(strips(at.batting.offered()), 4);
    QVERIFY(at.batting.mostWidthMm() >= 45 * 25.4);
    const QString roll = wool(ShopModel::BuyText);
    QVERIFY(way(0, "says").contains(roll));
    at.batting.pick(0); // 45 × 60 in
    QVERIFY(
        at.batting.enter(QStringLiteral("price"), QStringLiteral("18")).value(QStringLiteral("ok")).toBool());
    at.batting.add();
    at.batting.add(); // refused: it is on the list
    QVERIFY(!at.batting.whyNot().isEmpty());
    QCOMPARE(at.batting.ways().size(), 2);
    QCOMPARE(strips(at.batting.ways().last().toMap()), 4);
    QVERIFY(at.batting.offered().isEmpty()); // it stands among the ways
    QVERIFY(way(1, "says").contains(QStringLiteral("{45 in} × {60 in}")));
    QVERIFY(way(1, "more").contains(QStringLiteral("4 strips from each")));
    QVERIFY(way(1, "more").contains(QStringLiteral("Costs 18.00")) ||
            way(1, "more").contains(QStringLiteral("Costs 36.00")));
    at.batting.take(1);
    QVERIFY(way(1, "taken") == QStringLiteral("true") && way(0, "taken") == QStringLiteral("false"));
    QVERIFY(wool(ShopModel::BuyText).contains(QStringLiteral("45 in × 60 in")));
    bool listed = false;
    for (int row = 0; row < at.list.count(); ++row)
        listed = listed || at.take(row, TakeModel::Says).contains(QStringLiteral("{45 in} × {60 in} wool"));
    QVERIFY(listed);
    QVERIFY(wool(ShopModel::ProofSays).contains(QStringLiteral("packages yield all of it")));
    at.batting.take(0);
    QCOMPARE(wool(ShopModel::BuyText), roll);
    // A roll 90 in wide holds two strips side by side: less of it is bought.
    QVERIFY(
        at.batting.enter(QStringLiteral("roll"), QStringLiteral("90")).value(QStringLiteral("ok")).toBool());
    QVERIFY(wool(ShopModel::BuyText) != roll);
    QVERIFY(!at.batting.enter(QStringLiteral("length"), QStringLiteral("2"))
                 .value(QStringLiteral("ok"))
                 .toBool());
    at.batting.forget();
    QCOMPARE(at.batting.ways().size(), 1);
    QVERIFY(at.open.kept().cloths.back().packages.empty());
}

// F19 | independent derivation | the yards and the metres of one piece are one length
void ShopModels::threadInYards()
{
    const auto number = [](const QString &says) {
        static const QRegularExpression of(QStringLiteral("about ([0-9]+) (yd|m) of thread"));
        const auto found = of.match(says);
        return std::pair(found.captured(1).toDouble(), found.captured(2));
    };
    Project inches = cloths();
    inches.thread.spacing = Length::mm(6);
    inches.thread.stitch = Length::mmTenths(25);
    const auto yards = number(Counter(inches).shop.sundriesSays());
    Project same = inches;
    same.system = System::Metric; // every length stands as it is
    const auto metres = number(Counter(same).shop.sundriesSays());
    QCOMPARE(yards.second, QStringLiteral("yd"));
    QCOMPARE(metres.second, QStringLiteral("m"));
    QVERIFY(metres.first > 20);
    QVERIFY(std::abs(yards.first * 0.9144 - metres.first) <= 1.5);
}

void ShopModels::sillyRequests_data()
{
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<bool>("listed"); // a shopping list stands all the same
    const auto row = [](const char *name, const Project &project, bool listed) {
        QTest::newRow(name) << QByteArray::fromStdString(writeProject(project)) << listed;
    };
    Project project = cloths();
    project.blocks.width = project.blocks.height = Length::inches(200);
    project.table = Table{Length::inches(60), Length::inches(36), {}, {}};
    row("block larger than the table", project, false);
    project = cloths();
    for (Cloth &cloth : project.cloths)
        cloth.usable = Length::inches(5);
    project.strip.usable.reset();
    row("cloth 5 in wide", project, false);
    project = cloths();
    project.blocks.columns = 0;
    row("no blocks", project, false);
    project = cloths();
    project.kits = 10'000;
    row("10 000 kits", project, true);
    project.lesson = Lesson{mostStudents, mostSpareKits, 1, false, {}};
    row("the largest class", project, true);
}

void ShopModels::sillyRequests()
{
    QFETCH(QByteArray, text);
    QFETCH(bool, listed);
    const PlanAnswer told = planText(text);
    QVERIFY(!told.file.isEmpty());
    QVERIFY2(!told.sentences.isEmpty(), "not a word");
    if (!listed)
        QVERIFY(told.exit != 0);
    const auto read = readProject(text.toStdString());
    QVERIFY(read.ok());
    if (!read.value().problems.empty())
        return; // refused when it was read, in the words above
    Counter at(read.value().project);
    QCOMPARE(at.shop.count() > 0, listed);
    if (!listed) {
        QVERIFY(!at.open.workspace.plan().problems.empty());
        return;
    }
    at.kits.setOpen(true);
    for (int i = 0; i < at.shop.count(); ++i) {
        QVERIFY(!at.shop.data(at.shop.index(i), ShopModel::BuyText).toString().isEmpty());
        at.shop.tick(i);
        QVERIFY(at.open.workspace.faults().empty()); // what is kept can be read again
    }
}

QTEST_GUILESS_MAIN(ShopModels)
#include "tst_shopmodels.moc"
