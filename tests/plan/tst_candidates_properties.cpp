// SPDX-License-Identifier: MIT
//
// Layouts for random tables: ranked, possible, and just what plan() makes of them.
#include "candidatehelp.h"

using namespace matside;
using candidatehelp::missOf;
using planhelp::in;

class CandidatesProperties : public QObject {
    Q_OBJECT
private slots:
    void randomTables();
};

void CandidatesProperties::randomTables()
{
    planhelp::Chance chance(planhelp::seed(20'518));
    int listed = 0;
    for (int i = 0; i < planhelp::count(120); ++i) {
        const System system = chance.coin() ? System::Inch : System::Metric;
        const Length unit = system == System::Inch ? in(1) : Length::mm(25);
        Project project = chance.project(system);
        if (chance.coin())
            project.table = Table{unit * chance.between(20, 120), unit * chance.between(20, 60), {}, {}};
        else
            project.table = Table{{}, {}, unit * chance.between(20, 70), {}};
        const Pair reveal{unit * chance.between(-8, 10), unit * chance.between(-8, 10)};
        const Wish wish{*sizeLeaving(*project.table, reveal), Share{chance.between(0, 50'000)}};
        const Candidates found = candidatesFor(project, wish, usualLimits(project, {}));
        QVERIFY(found.list.empty() == found.none.has_value());
        const Candidates again = candidatesFor(project, wish, usualLimits(project, {}));
        QCOMPARE(again.list.size(), found.list.size());
        std::optional<Length> before;
        for (std::size_t row = 0; row < found.list.size(); ++row) {
            const Candidate &candidate = found.list[row];
            ++listed;
            QVERIFY(again.list[row].project == candidate.project);
            QVERIFY(!before || *before <= missOf(candidate));
            before = missOf(candidate);
            const Plan anew = plan(candidate.project);
            QVERIFY2(anew.problems.empty(), planhelp::codes(anew.problems));
            QCOMPARE(anew.size.finished, candidate.plan.size.finished);
            QCOMPARE(candidate.over.along, anew.size.finished.along - found.asked.along);
            QCOMPARE(candidate.over.across, anew.size.finished.across - found.asked.across);
            QVERIFY(anew.table->reveal == candidate.plan.table->reveal);
            QCOMPARE(candidate.cloth, anew.strip.width * anew.strip.strips);
            // Nothing but the layout was touched.
            Project back = candidate.project;
            back.blocks = project.blocks;
            back.sashing.finished = project.sashing.finished;
            QVERIFY(back == project);
        }
    }
    QVERIFY(listed >= planhelp::count(120));
}

QTEST_APPLESS_MAIN(CandidatesProperties)
#include "tst_candidates_properties.moc"
