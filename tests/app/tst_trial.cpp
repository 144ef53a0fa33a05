// SPDX-License-Identifier: MIT
//
// The trial is read off, reading by reading: what was only planned is never taken for measured.
#include "app/stitched.h"

#include "testing.h"

#include <cmath>

using namespace matside;

using stitched::Desk;
using stitched::topper;

namespace {

enum Reading { Seam, Gap, Between, Loft };

Project toBeTried()
{
    Project project = topper();
    project.made = Made();
    return project;
}

QVariantMap field(const Desk &desk, int at)
{
    return desk.steps.trialFields().value(at).toMap();
}

QString text(const Desk &desk, int at)
{
    return field(desk, at).value(QStringLiteral("text")).toString();
}

/// The test join's readings lie there to be taken; the test block was measured.
void toTheJoin(Desk &desk)
{
    Project next = desk.workspace.project();
    const Pair sent = plan(next).block.sent;
    const Pair outline = plan(next).block.outline;
    next.made.testBlock = TestBlock{{sent.along, sent.across}, {outline.along, outline.across}, {}};
    QVERIFY(desk.workspace.commit("trial", next));
    desk.session.setStation(static_cast<int>(Station::Join));
    QCOMPARE(desk.steps.trialKind(), QStringLiteral("test-join"));
}

} // namespace

class TrialTest : public QObject {
    Q_OBJECT
private slots:
    void nothingIsTakenBeforeItIsRead();
    void aGapSteppedUnderNothingIsAnOverlap();
    void aTypedReadingIsAskedWhetherItCanBe();
    void whatIsReadIsDrawn();
    void theTestBlockIsReadByItsOutline();
};

void TrialTest::nothingIsTakenBeforeItIsRead()
{
    Desk desk(toBeTried(), Station::Join);
    toTheJoin(desk);
    QCOMPARE(desk.steps.trialFields().size(), 4);
    QCOMPARE(desk.steps.trialUnread(), 3); // the batting's thickness may stay as planned
    QVERIFY(!desk.steps.takeTrial().value(QStringLiteral("ok")).toBool());
    for (const int at : {Seam, Gap, Between}) {
        QVERIFY(!desk.kept().made.testJoin);
        QVERIFY(!field(desk, at).value(QStringLiteral("taken")).toBool());
        desk.steps.nudgeTrial(at, 0); // read, just as it is shown
        QVERIFY(field(desk, at).value(QStringLiteral("taken")).toBool());
    }
    QCOMPARE(desk.steps.trialUnread(), 0);
    const Plan before = desk.workspace.plan();
    QVERIFY(desk.steps.takeTrial().value(QStringLiteral("ok")).toBool());
    const auto join = desk.kept().made.testJoin;
    QVERIFY(join);
    QCOMPARE(join->seam->count(), before.basis.seam.count());
    QCOMPARE(join->gap->count(), before.sashing.allowanceGap.count());
    QCOMPARE(join->between->count(), before.sashing.finished.count());
    QCOMPARE(join->loft->count(), before.basis.loft.count());
    // Taken back, it is to be read anew.
    desk.session.undo();
    QCOMPARE(desk.steps.trialUnread(), 3);
}

void TrialTest::aGapSteppedUnderNothingIsAnOverlap()
{
    Desk desk(toBeTried(), Station::Join);
    toTheJoin(desk);
    QCOMPARE(text(desk, Gap), QStringLiteral("0 in"));
    // Two edges are read to 1/32 in (trade notes, F0: seams and catches).
    desk.steps.nudgeTrial(Gap, -1);
    desk.steps.nudgeTrial(Gap, -1);
    QCOMPARE(text(desk, Gap), QStringLiteral("1/16 in"));
    QVERIFY(field(desk, Gap).value(QStringLiteral("overlap")).toBool());
    QCOMPARE(desk.steps.trialReading("gap")->count(), -Length::inches(0, 1, 16).count());
    desk.steps.turnTrial(Gap);
    QVERIFY(!field(desk, Gap).value(QStringLiteral("overlap")).toBool());
    desk.steps.turnTrial(Gap);
    // A figure typed has no sign: it stays an overlap.
    QCOMPARE(desk.steps.typeTrial(Gap, QStringLiteral("3/32")), QString());
    QCOMPARE(desk.steps.trialReading("gap")->count(), -Length::inches(0, 3, 32).count());
    // A seam is never less than nothing.
    for (int step = 0; step < 40; ++step)
        desk.steps.nudgeTrial(Seam, -1);
    QVERIFY(*desk.steps.trialReading("seam") > Length());
}

void TrialTest::aTypedReadingIsAskedWhetherItCanBe()
{
    Desk desk(toBeTried(), Station::Join);
    toTheJoin(desk);
    for (const char *wrong : {"0", "-1/2", "seam"}) {
        QVERIFY2(!desk.steps.typeTrial(Seam, QLatin1String(wrong)).isEmpty(), wrong);
        QVERIFY(!desk.steps.trialReading("seam"));
    }
    QVERIFY(!desk.steps.typeTrial(9, QStringLiteral("1/2")).isEmpty());
    QCOMPARE(desk.steps.typeTrial(Seam, QStringLiteral("15/32")), QString());
    QCOMPARE(text(desk, Seam), QStringLiteral("15/32 in"));
}

void TrialTest::whatIsReadIsDrawn()
{
    Desk desk(toBeTried(), Station::Join);
    toTheJoin(desk);
    QVERIFY(!desk.join.trialSection().tested);
    desk.steps.nudgeTrial(Gap, -2);
    const SectionView view = desk.join.trialSection();
    QVERIFY(view.tested);
    // 1/16 in is 1.5875 mm by the agreement of 1959; seams of 1/2 in that lie so far over each other.
    QVERIFY(std::abs(view.gapMm + 1.5875) < 1e-9);
    QVERIFY(std::abs(view.finishedMm - (25.4 - 1.5875)) < 1e-9);
}

void TrialTest::theTestBlockIsReadByItsOutline()
{
    Desk desk(toBeTried(), Station::Trim);
    for (int station = 0; station < 7 && desk.steps.trialKind().isEmpty(); ++station) {
        desk.session.setStation(station);
        for (int row = 0; row < desk.steps.steps()->count() && desk.steps.trialKind().isEmpty(); ++row)
            desk.steps.goTo(row);
    }
    QCOMPARE(desk.steps.trialKind(), QStringLiteral("measure-test"));
    QCOMPARE(desk.steps.trialUnread(), 2); // what was sent is known
    const Pair outline = desk.workspace.plan().block.outline;
    desk.steps.nudgeTrial(2, -1); // a mark of her ruler
    desk.steps.nudgeTrial(3, 0);
    QVERIFY(desk.steps.takeTrial().value(QStringLiteral("ok")).toBool());
    QCOMPARE(desk.kept().made.testBlock->outline[0].count(),
             (outline.along - Length::inches(0, 1, 16)).count());
    QCOMPARE(desk.kept().made.testBlock->outline[1].count(), outline.across.count());
}

QTEST_GUILESS_MAIN(TrialTest)
#include "tst_trial.moc"
