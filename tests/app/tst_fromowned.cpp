// SPDX-License-Identifier: MIT
//
// What lies there is cut before what is bought, and Cut says so at each strip that comes from it.
#include "app/desk.h"

#include "testing.h"

using namespace matside;

class FromOwnedTest : public QObject {
    Q_OBJECT
private slots:
    void whatLiesThereIsCutFirst_data();
    void whatLiesThereIsCutFirst();
};

void FromOwnedTest::whatLiesThereIsCutFirst_data()
{
    QTest::addColumn<int>("inches");
    QTest::addColumn<bool>("package");
    QTest::addColumn<bool>("serves");
    // Case 1 of the trade notes cuts sashing bands of 2 in: a piece of 8 in yields some of them, one of 1 in
    // none.
    QTest::newRow("a piece that yields bands") << 8 << false << true;
    QTest::newRow("too short for any") << 1 << false << false;
    QTest::newRow("a package, not there yet") << 8 << true << false;
}

void FromOwnedTest::whatLiesThereIsCutFirst()
{
    QFETCH(int, inches);
    QFETCH(bool, package);
    QFETCH(bool, serves);
    Project project = desk::topper();
    for (const auto &[id, role] : {std::pair("oat", ClothRole::Front), std::pair("blue", ClothRole::Back),
                                   std::pair("wool", ClothRole::Batting)}) {
        Cloth cloth;
        cloth.id = cloth.name = id;
        cloth.role = role;
        cloth.usable = Length::inches(40, 1, 2);
        cloth.soldBy = "1/8 yd";
        cloth.soldStep = usualSoldStep(System::Inch);
        project.cloths.push_back(cloth);
    }
    project.cloths.front().owned = {{Length::inches(inches), Length::inches(44), {}, package}};
    desk::Open open;
    open.session.openProject(open.store->create(QString::fromStdString(writeProject(project))).value());
    open.session.setStation(static_cast<int>(Station::Cut));
    int told = 0, looked = 0;
    std::string last; // the step whose pieces no longer come from there
    for (int guard = 0; guard < 60 && open.steps.canGoNext(); ++guard) {
        const Step &step = *open.steps.current();
        const bool said = open.steps.clothName() == QStringLiteral("oat, from the piece you have");
        QVERIFY2(!said || step.cloth == "oat", qPrintable(open.steps.doesText()));
        QVERIFY2(!said || step.id != last, "what lies there comes first");
        looked += step.cloth == "oat";
        told += said;
        if (!said)
            last = step.id;
        open.steps.next();
    }
    QVERIFY(looked > 3);
    QCOMPARE(told > 0, serves);
    QVERIFY(told < looked);
}

QTEST_GUILESS_MAIN(FromOwnedTest)
#include "tst_fromowned.moc"
