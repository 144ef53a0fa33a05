// SPDX-License-Identifier: MIT
//
// A measure changed after something was made to it: what no longer fits is told, and stays as it is.
#include "bench/otherwise.h"
#include "bench/record.h"
#include "bench/relay.h"
#include "benchhelp.h"

using namespace matside;
using namespace benchhelp;
using planhelp::codes;

namespace {

/// The work done as it is kept, until a step of this kind is at hand and so many of it done.
Project upTo(Project project, Does wanted, std::int64_t more = 0)
{
    for (int guard = 0; guard < 600; ++guard) {
        const Plan now = plan(project);
        const std::vector<Step> all = steps(project, now);
        const auto next = nextStep(all);
        if (!next || (all[*next].does == wanted && all[*next].done >= more))
            break;
        project = afterChange(project, withDone(project, now, all[*next]));
    }
    return project;
}

std::vector<Problem> found(const Project &project)
{
    const Plan now = plan(project);
    return madeOtherwise(project, now, steps(project, now));
}

const Problem *told(const std::vector<Problem> &found, std::string_view code)
{
    const auto at =
        std::find_if(found.begin(), found.end(), [&](const Problem &p) { return p.code == code; });
    return at == found.end() ? nullptr : &*at;
}

} // namespace

class OtherwiseTest : public QObject {
    Q_OBJECT
private slots:
    void whatIsMadeToThePlanFits();
    void anotherBlockSizeIsToldOf();
    void anotherSeamIsToldOf();
    void fewerColumnsLeaveBlocksOver();
    void anotherNumberOfColumnsIsToldOfRowsAndLongs();
    void drawUpIsNoOtherSize();
    void aTestJoinIsNoOtherSeam();
    void aClothThatTakesAPartOverIsToldOf();
};

void OtherwiseTest::whatIsMadeToThePlanFits()
{
    QVERIFY(found(nineBlocksOfCloth()).empty());
    Project harvested = nineBlocksOfCloth();
    harvested.strip.harvest = true;
    Project example = exampleProject();
    example.made.trialPutOff = true;
    for (const Project &other : {harvested, example, planhelp::metricPiece()}) {
        const Project project = upTo(other, Does::LastLook);
        QVERIFY2(found(project).empty(), codes(found(project)).constData());
    }
    for (const Does does : {Does::CutShort, Does::Layer, Does::RoughApart, Does::SquarePiece}) {
        const Project project = upTo(nineBlocksOfCloth(), does);
        QVERIFY(!project.made.cut.empty());
        QVERIFY2(found(project).empty(), codes(found(project)).constData());
    }
}

void OtherwiseTest::anotherBlockSizeIsToldOf()
{
    const Project before = upTo(nineBlocksOfCloth(), Does::StitchBlock, 3);
    Project larger = before;
    larger.blocks.width = larger.blocks.height = in(7);
    const Project kept = afterChange(before, larger);
    const std::vector<Problem> says = found(kept);
    const Problem *blocks = told(says, "blocks-otherwise");
    QVERIFY(blocks);
    QCOMPARE(blocks->at, std::string("/blocks/width"));
    QCOMPARE(std::get<std::int64_t>(blocks->args[0]), 3);
    QCOMPARE(std::get<Told>(blocks->args[1]).length, in(6));
    QCOMPARE(std::get<Told>(blocks->args[2]).length, in(7));
    // The strips hold the hoop, which is wider than either block: they fit as before.
    QVERIFY(plan(kept).strip.width != plan(before).strip.width || !told(says, "hoop-strips-otherwise"));
    QVERIFY(kept.made.blocks == before.made.blocks && kept.made.cut == before.made.cut);
    // Changed back, all fits again.
    QVERIFY(found(afterChange(kept, before)).empty());

    Project hoop = before;
    hoop.strip.margin += in(1);
    const std::vector<Problem> wider = found(afterChange(before, hoop));
    const Problem *strips = told(wider, "hoop-strips-otherwise");
    QVERIFY2(strips, codes(wider).constData());
    QCOMPARE(std::get<Told>(strips->args[1]).length, plan(before).strip.width);
    QCOMPARE(std::get<Told>(strips->args[2]).length, plan(hoop).strip.width);
    QVERIFY(!told(wider, "blocks-otherwise"));
}

void OtherwiseTest::anotherSeamIsToldOf()
{
    const Project before = upTo(nineBlocksOfCloth(), Does::SewBinding);
    Project deeper = before;
    deeper.seam += in(0, 1, 8);
    const std::vector<Problem> says = found(afterChange(before, deeper));
    const Problem *sashing = told(says, "sashing-strips-otherwise");
    QVERIFY2(sashing, codes(says).constData());
    QCOMPARE(sashing->at, std::string("/seam"));
    QVERIFY(std::get<std::int64_t>(sashing->args[0]) > 0);
    QCOMPARE(std::get<Told>(sashing->args[1]).length, plan(before).sashing.cutFront);
    QVERIFY2(told(says, "binding-strips-otherwise"), codes(says).constData());
    QVERIFY(!told(says, "blocks-otherwise"));
}

void OtherwiseTest::fewerColumnsLeaveBlocksOver()
{
    // A1 to A3 and B1 are stitched; of two columns A3 has no place, of one row B1 has none.
    const Project before = upTo(nineBlocksOfCloth(), Does::StitchBlock, 4);
    QCOMPARE(before.made.blocks.size(), std::size_t(4));
    Project narrower = before;
    narrower.blocks.columns = 2;
    const std::vector<Problem> says = found(afterChange(before, narrower));
    const Problem *over = told(says, "blocks-without-place");
    QVERIFY2(over, codes(says).constData());
    QCOMPARE(over->at, std::string("/blocks/columns"));
    QCOMPARE(std::get<std::int64_t>(over->args[0]), 1);
    QCOMPARE(std::get<std::string>(over->args[1]), std::string("A3"));
    Project lower = before;
    lower.blocks.rows = 1;
    const std::vector<Problem> rows = found(afterChange(before, lower));
    over = told(rows, "blocks-without-place");
    QVERIFY2(over, codes(rows).constData());
    QCOMPARE(over->at, std::string("/blocks/rows"));
    QCOMPARE(std::get<std::string>(over->args[1]), std::string("B1"));
    // One more of either takes nothing from what is made.
    Project wider = before;
    ++wider.blocks.columns;
    ++wider.blocks.rows;
    QVERIFY2(found(afterChange(before, wider)).empty(), codes(found(wider)).constData());
    // A block that was spoiled needs no place.
    narrower.made.blocks[2].state = BlockState::Spoiled;
    QVERIFY(!told(found(narrower), "blocks-without-place"));
}

void OtherwiseTest::anotherNumberOfColumnsIsToldOfRowsAndLongs()
{
    const Project before = upTo(nineBlocksOfCloth(), Does::SewBinding);
    Project wider = before;
    wider.blocks.columns = 4;
    const std::vector<Problem> says = found(afterChange(before, wider));
    const Problem *longs = told(says, "longs-otherwise");
    QVERIFY2(longs, codes(says).constData());
    // Two faces, two long sashings each: 3 blocks of 6 in, 2 sashings, the outer allowances and the spare; of
    // 4 blocks one block and one sashing more.
    QCOMPARE(std::get<std::int64_t>(longs->args[0]), 4);
    QCOMPARE(std::get<Told>(longs->args[1]).length, in(22));
    QCOMPARE(std::get<Told>(longs->args[2]).length, in(29));
    // Rows that were measured say what they were joined of, and their longs go by them.
    Project measured = before;
    measured.made.rows = {{"A", in(21), {in(7), in(14)}, {}}};
    QVERIFY(!told(found(measured), "rows-otherwise"));
    measured.blocks.columns = 4;
    const std::vector<Problem> joined = found(measured);
    const Problem *row = told(joined, "rows-otherwise");
    QVERIFY2(row, codes(joined).constData());
    QCOMPARE(row->at, std::string("/blocks/columns"));
    QCOMPARE(std::get<std::int64_t>(row->args[1]), 3);
    QCOMPARE(std::get<std::int64_t>(row->args[2]), 4);
    // One more row: the longs that are cut are as long as before.
    Project taller = before;
    taller.blocks.rows = 4;
    const std::vector<Problem> more = found(afterChange(before, taller));
    QVERIFY2(!told(more, "longs-otherwise") && !told(more, "rows-otherwise"), codes(more).constData());
}

void OtherwiseTest::drawUpIsNoOtherSize()
{
    // Blocks to come are sent larger, so that they come off the hoop as planned: the first ones were not.
    Project project = upTo(nineBlocksOfCloth(), Does::StitchBlock, 3);
    project.made.drawUp = DrawUp{Share{30'000}, Share{20'000}, {}};
    QVERIFY(plan(project).block.sent.along > in(6));
    QVERIFY2(!told(found(project), "blocks-otherwise"), codes(found(project)).constData());
    project.blocks.width = in(6, 1, 2);
    QVERIFY(told(found(project), "blocks-otherwise"));
}

void OtherwiseTest::aTestJoinIsNoOtherSeam()
{
    // It sets the seam that is sewn; strips are cut as before.
    Project project = upTo(nineBlocksOfCloth(), Does::JoinShort);
    project.made.testJoin = TestJoin{project.seam, in(0, 3, 16), std::nullopt, std::nullopt, {}};
    QVERIFY(plan(project).basis.nextSeam != project.seam);
    QVERIFY2(found(project).empty(), codes(found(project)).constData());
}

void OtherwiseTest::aClothThatTakesAPartOverIsToldOf()
{
    const auto lost = [](const Project &project) {
        const Plan now = plan(project);
        return cutOfAnother(project, steps(project, now));
    };
    Project project = upTo(nineBlocksOfCloth(), Does::JoinShort);
    QVERIFY2(lost(project).empty(), codes(lost(project)).constData());
    Cloth cloth;
    cloth.id = cloth.name = "moss";
    cloth.role = ClothRole::SashingFront; // so far the front's cloth gave it
    Project next = project;
    next.cloths.push_back(cloth);
    const std::vector<Problem> says = lost(next);
    QCOMPARE(says.size(), std::size_t(1));
    QCOMPARE(says[0].at, std::string("/cloths/4/role"));
    QCOMPARE(std::get<std::string>(says[0].args[0]), std::string("ground"));
    // A second front takes nothing over: the first one stays it.
    next = project;
    cloth.role = ClothRole::Front;
    next.cloths.push_back(cloth);
    QVERIFY2(lost(next).empty(), codes(lost(next)).constData());
}

QTEST_GUILESS_MAIN(OtherwiseTest)
#include "tst_otherwise.moc"
