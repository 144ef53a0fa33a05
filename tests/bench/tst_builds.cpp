// SPDX-License-Identifier: MIT
//
// Other builds than the plain one: clean backs, bagged edges, shorts from the gaps, pieces with few joins.
#include "benchhelp.h"

#include <set>

using namespace matside;
using namespace benchhelp;

class BuildsTest : public QObject {
    Q_OBJECT
private slots:
    void harvestedShortsAreNotCutTwice();
    void aCleanBackHasNoBackStripAndNoBackSashing();
    void aBaggedPieceIsClosedWithoutBinding();
    void smallPiecesHaveNoJoinsToMake();
    void clothsFallBackOnFrontAndBack();
    void theOtherHandChangesNothing();
};

void BuildsTest::harvestedShortsAreNotCutTwice()
{
    Project project = nineBlocks();
    project.strip.harvest = true;
    const std::vector<Step> all = stepsOf(project);
    QCOMPARE(total(all, Does::HarvestShort), 12);
    QCOMPARE(total(all, Does::CutShort), 0);
    QVERIFY(placeOf(all, "trim-block") < placeOf(all, "harvest-short/front"));
    // A gap piece is made of the blocks' own cloth, whatever the sashings are cut from (F3).
    Project example = exampleProject();
    example.strip.harvest = true;
    example.strip.usable = in(60);
    const std::vector<Step> own = stepsOf(example);
    QVERIFY(placeOf(own, "harvest-short/ground") > 0 && placeOf(own, "harvest-short/back") > 0);
    // One more column: five pairs from the gaps of a last strip that is not full, the rest from bands.
    project.blocks.columns = 4;
    project.blocks.rows = 2;
    project.blocks.spare = 0;
    const Plan p = plan(project);
    const std::vector<Step> more = steps(project, p);
    QCOMPARE(total(more, Does::HarvestShort), p.strip.harvestedPairs * 2);
    QCOMPARE(total(more, Does::HarvestShort) + total(more, Does::CutShort), 12);
}

void BuildsTest::aCleanBackHasNoBackStripAndNoBackSashing()
{
    for (const CleanBack way : {CleanBack::Layered, CleanBack::Bagged}) {
        Project project = nineBlocks();
        project.build = Build::CleanBack;
        project.cleanBack = way;
        const std::vector<Step> all = stepsOf(project);
        for (const Step &step : all) {
            if (step.cloth == "back")
                QVERIFY2(step.does == Does::CutBacking || step.does == Does::Straighten, step.id.c_str());
            QVERIFY(step.cloth != "sashing-back");
            QVERIFY(!step.fold);
            for (const Piece &piece : step.makes)
                QVERIFY2(!piece.name.ends_with("/back") || piece.name == "straight/back", step.id.c_str());
        }
        QCOMPARE(total(all, Does::CutBacking), 1);
        QVERIFY(placeOf(all, "join-long-row") < placeOf(all, "cut-backing/back"));
        // Laid under the rows it is squared with them; for bagging it is cut to the squared piece.
        const bool before = placeOf(all, "cut-backing/back") < placeOf(all, "square-piece");
        QCOMPARE(before, way == CleanBack::Layered);
        QCOMPARE(total(all, Does::LayBacking), way == CleanBack::Layered ? 1 : 0);
        QCOMPARE(total(all, Does::BagOut), way == CleanBack::Bagged ? 1 : 0);
        QCOMPARE(total(all, Does::SewBinding), way == CleanBack::Layered ? 1 : 0);
    }
}

void BuildsTest::aBaggedPieceIsClosedWithoutBinding()
{
    Project project = nineBlocks();
    project.edge.kind = EdgeKind::Bagged;
    const Plan p = plan(project);
    const std::vector<Step> all = steps(project, p);
    QVERIFY(!p.binding);
    QCOMPARE(total(all, Does::CutBinding), 0);
    QCOMPARE(total(all, Does::BagOut), 1);
    const Step &cut = all[static_cast<std::size_t>(placeOf(all, "cut-backing/back"))];
    QVERIFY(cut.size == p.size.backing);
    QCOMPARE(all.back().does, Does::LastLook);
}

void BuildsTest::smallPiecesHaveNoJoinsToMake()
{
    const auto sized = [](std::int64_t columns, std::int64_t rows) {
        return stepsOf(planhelp::piece(columns, rows, in(6), planhelp::hoopP(), in(40, 1, 2)));
    };
    const std::vector<Step> column = sized(1, 4);
    QCOMPARE(total(column, Does::CutShort), 0);
    QCOMPARE(total(column, Does::JoinShort), 0);
    QCOMPARE(total(column, Does::JoinLongRow), 3);
    QCOMPARE(total(column, Does::TestJoin, true), 1);
    const std::vector<Step> row = sized(4, 1);
    QCOMPARE(total(row, Does::JoinShort), 3);
    QCOMPARE(total(row, Does::CutLong) + total(row, Does::JoinLong) + total(row, Does::JoinLongRow), 0);
    const std::vector<Step> mat = sized(1, 1);
    QCOMPARE(total(mat, Does::TestJoin, true), 0);
    QVERIFY(std::none_of(mat.begin(), mat.end(), cutsSashing));
    QCOMPARE(total(mat, Does::StitchTest, true), 1);
}

void BuildsTest::clothsFallBackOnFrontAndBack()
{
    Project project = nineBlocks();
    QVERIFY(placeOf(stepsOf(project), "cut-band/front") > 0);
    QVERIFY(placeOf(stepsOf(project), "cut-band/back") > 0);
    QVERIFY(placeOf(stepsOf(project), "cut-binding/front") > 0);
    Cloth cloth;
    cloth.id = "back"; // a front that goes by another part's name
    cloth.role = ClothRole::Front;
    project.cloths.push_back(cloth);
    std::set<std::string> ids;
    for (const Step &step : stepsOf(project))
        QVERIFY2(ids.insert(step.id).second, step.id.c_str());
    QVERIFY(ids.count("cut-strip/back") == 1 && ids.count("cut-strip/back-cloth") == 1);
}

void BuildsTest::theOtherHandChangesNothing()
{
    // The picture is mirrored, never a figure (common practice, no published source).
    Project project = exampleProject();
    const std::vector<Step> right = stepsOf(project);
    project.hand = Hand::Left;
    const std::vector<Step> left = stepsOf(project);
    QCOMPARE(left.size(), right.size());
    for (std::size_t i = 0; i < left.size(); ++i) {
        QCOMPARE(left[i].id, right[i].id);
        QCOMPARE(left[i].count, right[i].count);
        QVERIFY(left[i].size == right[i].size && left[i].at == right[i].at);
        QCOMPARE(left[i].ruler.has_value(), right[i].ruler.has_value());
        if (!left[i].ruler)
            continue;
        QCOMPARE(left[i].ruler->first, right[i].ruler->first);
        QCOMPARE(left[i].ruler->line, right[i].ruler->line);
        QCOMPARE(left[i].ruler->keep, right[i].ruler->keep);
        QVERIFY(left[i].ruler->second == right[i].ruler->second);
    }
}

QTEST_GUILESS_MAIN(BuildsTest)
#include "tst_builds.moc"
