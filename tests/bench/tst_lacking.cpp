// SPDX-License-Identifier: MIT
//
// No count runs ahead of what it takes. Random pieces are made from the first cut to the last look, whatever
// is free being done next; a ledger kept apart says what lies on the table.
#include "bench/lacking.h"
#include "bench/record.h"
#include "bench/relay.h"
#include "benchhelp.h"

#include <map>
#include <set>

using namespace matside;
using namespace benchhelp;

namespace {

using Ledger = std::map<std::string, std::int64_t>;

/// Takes what a step takes once from the table and lays down what it makes; what was missing, or nothing.
std::string doOnce(Ledger &table, const Step &step)
{
    for (const Piece &piece : step.takes) {
        std::int64_t &lies = table[piece.name];
        if (lies < piece.count)
            return step.id + " lacks " + piece.name;
        lies -= piece.count;
    }
    for (const Piece &piece : step.makes)
        table[piece.name] += piece.count;
    return {};
}

Project smallPiece(planhelp::Chance &chance)
{
    for (int i = 0; i < 200; ++i) {
        Project project = chance.project(chance.coin() ? System::Inch : System::Metric);
        project.blocks.columns = chance.between(1, 4);
        project.blocks.rows = chance.between(1, 3);
        project.kits = chance.between(1, 2);
        project.lesson.reset();
        project.made.trialPutOff = chance.coin();
        if (chance.coin())
            project.sashing.finished = project.seam * 2 + in(0, 1, 2);
        if (plan(project).problems.empty())
            return project;
    }
    return nineBlocks();
}

} // namespace

class LackingTest : public QObject {
    Q_OBJECT
private slots:
    void asManyAreLayeredAsAreCut();
    void noBlockIsJoinedUntrimmed();
    void noCountRunsAhead();
};

void LackingTest::asManyAreLayeredAsAreCut()
{
    Project project = nineBlocks();
    project.made.trialPutOff = true;
    const auto layer = [&] {
        const Plan p = plan(project);
        const std::vector<Step> all = steps(project, p);
        const auto found = lackingFor(all, all[static_cast<std::size_t>(placeOf(all, "layer"))]);
        return found ? all[found->maker].id + ' ' + std::to_string(found->more) : std::string();
    };
    QCOMPARE(layer(), std::string("cut-strip/front 1"));
    project.made.cut = {{"front", "cut-strip", 2, 0, {}}, {"back", "cut-strip", 1, 0, {}}};
    QCOMPARE(layer(), std::string("cut-strip/batting 1"));
    project.made.cut.push_back({"batting", "cut-strip", 1, 0, {}});
    QCOMPARE(layer(), std::string());
    project.made.cut.push_back({"", "layer", 1, 0, {}});
    QCOMPARE(layer(), std::string("cut-strip/back 1"));
    // A strip that was spoiled is not there.
    project.made.cut[1] = {"back", "cut-strip", 2, 1, {}};
    QCOMPARE(layer(), std::string("cut-strip/back 1"));
}

/// Row by row, from the left: the blocks that any join up to this one touches are counted one by one.
void LackingTest::noBlockIsJoinedUntrimmed()
{
    for (int joined = 0; joined < 6; ++joined) {
        std::set<std::pair<int, int>> touched;
        for (int join = 0; join <= joined; ++join)
            for (const int column : {join % 2, join % 2 + 1})
                touched.insert({join / 2, column});
        for (int trimmed = 0; trimmed <= 9; ++trimmed) {
            Project project = nineBlocks();
            project.made.trialPutOff = true;
            for (int block = 0; block < 9; ++block) {
                MadeBlock made;
                made.block =
                    std::string(1, static_cast<char>('A' + block / 3)) + std::to_string(block % 3 + 1);
                made.state = block < trimmed ? BlockState::Trimmed : BlockState::Stitched;
                project.made.blocks.push_back(made);
            }
            project.made.cut = {{"", "join-short", joined, 0, {}}};
            std::vector<Step> all = steps(project, plan(project));
            for (Step &cut : all) // the strips lie ready
                if (cut.does == Does::CutShort)
                    cut.done = cut.count;
            const Step &join = all[static_cast<std::size_t>(placeOf(all, "join-short"))];
            QCOMPARE(join.done, joined);
            const auto found = lackingFor(all, join);
            const std::int64_t lacks = static_cast<std::int64_t>(touched.size()) - trimmed;
            QCOMPARE(found ? found->more : 0, std::max<std::int64_t>(lacks, 0));
            QVERIFY(!found || all[found->maker].does == Does::TrimBlock);
        }
    }
}

void LackingTest::noCountRunsAhead()
{
    planhelp::Chance chance(planhelp::seed(65));
    int waited = 0;
    for (int piece = 0; piece < planhelp::count(10); ++piece) {
        Project project = smallPiece(chance);
        Ledger table;
        for (int turn = 0;; ++turn) {
            QVERIFY(turn < 5000);
            const Plan p = plan(project);
            const std::vector<Step> all = steps(project, p);
            std::vector<std::size_t> free;
            bool open = false;
            for (std::size_t i = 0; i < all.size(); ++i) {
                if (all[i].done >= all[i].count)
                    continue;
                open = true;
                const auto found = lackingFor(all, all[i]);
                waited += found ? 1 : 0;
                if (!found) {
                    free.push_back(i);
                    continue;
                }
                // What it waits for can be done, so many times, and makes something it takes.
                const Step &maker = all[found->maker];
                QVERIFY2(found->more >= 1 && maker.done + found->more <= maker.count, all[i].id.c_str());
                QVERIFY2(maker.id != all[i].id, all[i].id.c_str());
            }
            if (!open)
                break;
            QVERIFY2(!free.empty(), "nothing can be done, and not all is done");
            const auto pick =
                static_cast<std::size_t>(chance.between(0, static_cast<std::int64_t>(free.size()) - 1));
            const Step &step = all[free[pick]];
            const std::string wrong = doOnce(table, step);
            QVERIFY2(wrong.empty(), wrong.c_str());
            project = afterChange(project, withDone(project, p, step));
        }
        QVERIFY(table["finished-piece"] == project.kits);
    }
    QVERIFY(waited > 100);
}

QTEST_GUILESS_MAIN(LackingTest)
#include "tst_lacking.moc"
