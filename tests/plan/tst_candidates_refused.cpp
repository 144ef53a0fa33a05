// SPDX-License-Identifier: MIT
//
// Requests no layout answers: each is refused in a code the app has words for, and quickly.
#include "candidatehelp.h"

using namespace matside;
using candidatehelp::onTable;
using candidatehelp::told;
using planhelp::in;

class CandidatesRefused : public QObject {
    Q_OBJECT
private slots:
    void silly_data();
    void silly();
    void hoopMustBeKnown();
};

void CandidatesRefused::silly_data()
{
    QTest::addColumn<double>("along"); // in
    QTest::addColumn<double>("across");
    QTest::addColumn<int>("least"); // block, in
    QTest::addColumn<int>("most");
    QTest::addColumn<int>("mostBlocks");
    QTest::addColumn<QString>("code");
    QTest::newRow("no size left") << 0.0 << 20.0 << 4 << 9 << 200 << "fit-no-size";
    QTest::newRow("no width left") << 48.0 << 0.0 << 4 << 9 << 200 << "fit-no-size";
    QTest::newRow("less than nothing") << -8.0 << 20.0 << 4 << 9 << 200 << "fit-no-size";
    QTest::newRow("block larger than the piece") << 6.0 << 20.0 << 6 << 9 << 200 << "fit-block-over-size";
    QTest::newRow("no blocks wanted") << 48.0 << 24.0 << 4 << 9 << 0 << "fit-too-many-blocks";
    QTest::newRow("a hall") << 90000.0 << 90000.0 << 4 << 9 << 200 << "fit-too-many-blocks";
    QTest::newRow("beyond every length") << 1e13 << 24.0 << 4 << 9 << 200 << "fit-too-many-blocks";
    QTest::newRow("least above most") << 48.0 << 24.0 << 9 << 4 << 200 << "fit-no-block-in-limits";
    QTest::newRow("larger than the hoop") << 48.0 << 24.0 << 12 << 14 << 200 << "fit-no-block-in-limits";
    QTest::newRow("blocks of no size") << 48.0 << 24.0 << 0 << 9 << 200 << "fit-no-block-in-limits";
}

void CandidatesRefused::silly()
{
    QFETCH(double, along);
    QFETCH(double, across);
    QFETCH(int, least);
    QFETCH(int, most);
    QFETCH(int, mostBlocks);
    QFETCH(QString, code);
    const Project project = onTable({in(60), in(36), std::nullopt, {}});
    const auto ticks = [](double inches) {
        return Length::ticks(static_cast<std::int64_t>(inches * Length::ticksPerInch));
    };
    FitLimits limits = usualLimits(project, {});
    limits.leastBlock = in(least);
    limits.mostBlock = in(most);
    limits.mostBlocks = mostBlocks;
    const Candidates found = candidatesFor(project, {{ticks(along), ticks(across)}, {}}, limits);
    QVERIFY2(found.list.empty(), told(found));
    QVERIFY(found.none.has_value());
    QCOMPARE(QString::fromStdString(found.none->code), code);
}

void CandidatesRefused::hoopMustBeKnown()
{
    Project project = onTable({in(60), in(36), std::nullopt, {}});
    project.hoop = {};
    Candidates found = candidatesFor(project, {{in(48), in(24)}, {}}, usualLimits(project, {}));
    QVERIFY(found.list.empty());
    QCOMPARE(found.none->code, std::string("hoop-unknown"));
    project.hoop = planhelp::hoopQ();
    found = candidatesFor(project, {{in(48), in(24)}, Share{500'000}}, usualLimits(project, {}));
    QCOMPARE(found.none->code, std::string("fit-washing-out-of-range"));
    QVERIFY(!sizeLeaving({}, {}));
    // A fault that has nothing to do with the layout is named as plan() names it.
    project.fold.fold_catch = in(1);
    found = candidatesFor(project, {{in(48), in(24)}, {}}, usualLimits(project, {}));
    QVERIFY(found.list.empty());
    QVERIFY(planhelp::has(plan(project).problems, found.none->code));
}

QTEST_APPLESS_MAIN(CandidatesRefused)
#include "tst_candidates_refused.moc"
