// SPDX-License-Identifier: MIT
#include "planhelp.h"

#include "plan/hours.h"

using namespace matside;
using planhelp::in;

class HoursTest : public QObject {
    Q_OBJECT
private slots:
    void hoursByHand();
};

// Case 1 by hand from F20: 9 blocks trimmed at 3; 6 shorts at 9; 2 longs of 21 in at 2.5 × 1.75 + 5 = 9.375,
// taken as 9.4; 84 in of edge at 1.5 by hand, 0.6 by machine.
void HoursTest::hoursByHand()
{
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    Hours hours = hoursFor(project, plan(project));
    QCOMPARE(hours.trimming, 270);
    QCOMPARE(hours.joining, 540 + 2 * 94);
    QCOMPARE(hours.edging, 1260);
    QCOMPARE(hours.machine % 9, 0);
    QVERIFY(!hours.ownMinutes);
    project.edge.sewn = Sewn::Machine;
    project.kits = 2;
    hours = hoursFor(project, plan(project));
    QCOMPARE(hours.edging, 504 * 2);
    QCOMPARE(hours.trimming, 540);
    // Her own: three blocks of 20 minutes.
    for (const char *name : {"A1", "A2", "A3"}) {
        MadeBlock block;
        block.block = name;
        block.minutes = 20;
        project.made.blocks.push_back(block);
    }
    hours = hoursFor(project, plan(project));
    QVERIFY(hours.ownMinutes);
    QCOMPARE(hours.machine, 200 * 18);
}

QTEST_APPLESS_MAIN(HoursTest)
#include "tst_hours.moc"
