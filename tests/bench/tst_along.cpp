// SPDX-License-Identifier: MIT
//
// Strips along the selvage: taken where they buy less than strips across, of the whole of a cloth, and cut so
// that every piece comes out of it.
#include "alonghelp.h"
#include "bench/account.h"
#include "bench/mishap.h"
#include "bench/record.h"
#include "bench/relay.h"
#include "bench/shopping.h"

using namespace alonghelp;

namespace {

std::string alongId(Length width)
{
    return alongName(width) + "/leaf";
}

const Step &stepOf(const std::vector<Step> &all, const std::string &id)
{
    const std::ptrdiff_t at = benchhelp::placeOf(all, id);
    if (at < 0)
        qFatal("no step %s", id.c_str());
    return all[static_cast<std::size_t>(at)];
}

Project bought(const Project &project)
{
    return withBought(project, plan(project), benchhelp::stepsOf(project), "leaf");
}

Project done(const Project &project, const std::string &id, std::int64_t times)
{
    Project next = project;
    for (std::int64_t i = 0; i < times; ++i)
        next = afterChange(next, withDone(next, plan(next), stepOf(benchhelp::stepsOf(next), id)));
    return next;
}

} // namespace

class Along : public QObject {
    Q_OBJECT
private slots:
    void takenWhereTheySave();
    void tiesStayAcross();
    void grainOwnedClothAndBiasStayAcross();
    void reachIsWhatSheCanCut();
    void bandsAreCutAlongAndPiecesFromThem();
    void stripsThatGoRightAcrossAreCutToLength();
    void aSpoiledBandUsesTheRestOfTheLength();
    void accountAddsUp();
    void kitsAreLaidOutInOne();
    void byChanceNoPieceOverlaps();
};

void Along::takenWhereTheySave()
{
    // By hand. Across: the long ones turned, 60 in of cloth, 27 in wide; beside them three columns of one
    // small one; the other 33 in four rows of ten: 76, and 2 = 78 in → 2 1/4 yd (81). Along: 9 × 3 and 3 × 4
    // = 39 of 42 in, over 60 in, and 2 = 62 → 1 3/4 yd (63), the least: the long ones need 60.
    const Project project = longPatches();
    const Plan p = plan(project);
    QCOMPARE(p.problems.size(), std::size_t(0));
    const std::vector<Wanted> wanted = wantedOf(project, p, steps(project, p), "leaf");
    Ground across = groundOf(project, p, "leaf");
    across.reach = Length();
    QCOMPARE(layOut(wanted, across).bought, in(81));
    const ClothLay lay = layOf(project);
    QCOMPARE(lay.bought, in(63));
    QCOMPARE(lay.cut, in(61));
    QCOMPARE(lay.straighten, in(2));
    QCOMPARE(lay.least, std::optional(in(63)));
    QVERIFY(runs(lay.strips));
    checkSpots(spotsOf(lay.strips, lay.straighten), in(42), lay.bought, wanted);
    // The shop says the same.
    for (const Buy &buy : shoppingList(project, p, steps(project, p)))
        if (buy.cloth == "leaf") {
            QCOMPARE(buy.bought, in(63));
            QVERIFY(buy.proved());
            QVERIFY(std::all_of(buy.strips.begin(), buy.strips.end(),
                                [](const ShopStrip &strip) { return strip.run == in(61); }));
        }
}

void Along::tiesStayAcross()
{
    // Nine of 4 × 4 in: one row of nine across, or one strip along of 36 in. Of 36 × 36 in nothing is saved
    // either way.
    Project project = longPatches();
    project.patches = {patchOf("small", in(3), in(3), 1)};
    QVERIFY(!runs(layOf(project).strips));
    project.patches = {patchOf("square", in(35), in(35), 1)};
    const ClothLay lay = layOf(project);
    QVERIFY(!runs(lay.strips));
    QVERIFY(lay.least && *lay.least == lay.bought);
}

void Along::grainOwnedClothAndBiasStayAcross()
{
    Project project = longPatches();
    project.patches[0].width = in(40); // lies across too
    project.patches[0].height = in(1);
    project.patches[1].perBlock = 1;
    Cloth &leaf = project.cloths.back();
    leaf.directional = true;
    QCOMPARE(reachAlong(project, "leaf"), Length());
    QVERIFY(!runs(layOf(project).strips));

    Project owned = longPatches();
    owned.cloths.back().owned = {{in(10), in(20), {}}};
    QVERIFY(!runs(layOf(owned).strips));

    const Project plain = longPatches();
    const Plan p = plan(plain);
    std::vector<Wanted> wanted = wantedOf(plain, p, steps(plain, p), "leaf");
    QVERIFY(runs(layOut(wanted, groundOf(plain, p, "leaf")).strips));
    Wanted bias;
    bias.does = nameOf(Does::CutBias);
    bias.from = Wanted::From::Whole;
    bias.across = bias.along = bias.takes = in(2);
    bias.count = 1;
    bias.straightGrain = false;
    wanted.push_back(bias);
    QVERIFY(!runs(layOut(wanted, groundOf(plain, p, "leaf")).strips));
}

void Along::reachIsWhatSheCanCut()
{
    // 61 in are folded to 30 1/2: with a ruler of 12 in slid along once that is too far.
    Project project = longPatches();
    QCOMPARE(reachAlong(project, "leaf"), in(72));
    project.rulers = {rulerOf(in(12), in(4))};
    QCOMPARE(reachAlong(project, "leaf"), in(48));
    QVERIFY(!runs(layOf(project).strips));
    QCOMPARE(layOf(project).bought, in(81));
    project.rulers = {rulerOf(in(24), in(6))};
    QCOMPARE(reachAlong(project, "leaf"), in(72));
    QVERIFY(runs(layOf(project).strips));
}

void Along::bandsAreCutAlongAndPiecesFromThem()
{
    const Project project = bought(longPatches());
    const std::vector<Step> all = benchhelp::stepsOf(project);
    const Step &wide = stepOf(all, alongId(in(4)));
    const Step &band = stepOf(all, alongId(in(3)));
    QCOMPARE(wide.count, 3);
    QCOMPARE(band.count, 9);
    QCOMPARE(band.size->along, in(61));
    QCOMPARE(band.size->across, in(3));
    QCOMPARE(band.check, std::string("along-single")); // pieces over 30 in: no bend at a fold
    QCOMPARE(wide.check, std::string("along-folded"));
    QCOMPARE(wide.ruler->layers, 2);
    QVERIFY(benchhelp::placeOf(all, "straighten/leaf") < benchhelp::placeOf(all, band.id));
    const Step &patch = stepOf(all, "cut-patch-1/leaf");
    QVERIFY(benchhelp::placeOf(all, band.id) < benchhelp::placeOf(all, patch.id));
    QVERIFY(std::any_of(patch.takes.begin(), patch.takes.end(),
                        [&](const Piece &piece) { return piece.name == band.id; }));
    QVERIFY(outOfAlong(patch));
    QCOMPARE(patch.ruler->line + patch.ruler->secondWidth, in(60)); // across its band, by its length
}

void Along::stripsThatGoRightAcrossAreCutToLength()
{
    // Two blocks: a hoop strip of 11 3/4 in, sashings, and a patch of 60 × 3 in each, all of one cloth.
    // Across 11 3/4 + 60 and the bands; along, the strip and the bands lie beside the patches.
    Project project = longPatches();
    project.blocks.columns = 2;
    project.blocks.rows = 1;
    project.patches[0].cloth = "ground";
    project.patches.pop_back();
    const Plan p = plan(project);
    QCOMPARE(p.problems.size(), std::size_t(0));
    const ClothLay lay = layOf(project, "ground");
    QVERIFY(runs(lay.strips));
    checkSpots(spotsOf(lay.strips, lay.straighten), in(40, 1, 2), lay.bought,
               wantedOf(project, p, steps(project, p), "ground"));
    const Project fixed = withBought(project, p, steps(project, p), "ground");
    const std::vector<Step> all = benchhelp::stepsOf(fixed);
    const Step &strip = stepOf(all, "cut-strip/ground");
    QVERIFY(outOfAlong(strip));
    QCOMPARE(strip.check, std::string("ends-square"));
    QCOMPARE(strip.ruler->line + strip.ruler->secondWidth, in(40, 1, 2));
    QVERIFY(strip.figure.empty()); // not the strip's width, which its band has
    QCOMPARE(takenBy(strip, plan(fixed), 1), Length());
    // Nothing is asked for again, whatever else is cut first.
    QCOMPARE(stillToBuy(fixed, all, *fixed.made.layoutOf("ground")), Length());
}

void Along::aSpoiledBandUsesTheRestOfTheLength()
{
    // 39 of 42 in are planned: one more band of 3 in comes out of the same length, a second does not.
    Project project = done(bought(longPatches()), "straighten/leaf", 1);
    project = done(project, alongId(in(3)), 2);
    const auto spoil = [&] {
        const std::vector<Step> all = benchhelp::stepsOf(project);
        project = afterChange(
            project,
            answerTo(project, plan(project), all, stepOf(all, alongId(in(3))), Mishap::TooNarrow).next);
    };
    const auto more = [&] {
        return stillToBuy(project, benchhelp::stepsOf(project), *project.made.layoutOf("leaf"));
    };
    spoil();
    QCOMPARE(more(), Length());
    QCOMPARE(besideOf(project.made.layoutOf("leaf")->strips), in(42));
    spoil();
    // Across a new length the one that is missing is turned: 60 and 2 in → 63.
    QCOMPARE(more(), in(63));
    QCOMPARE(besideOf(project.made.layoutOf("leaf")->strips), in(42));
}

void Along::accountAddsUp()
{
    Project project = bought(longPatches());
    const auto account = [&] {
        return clothAccount(project, plan(project), benchhelp::stepsOf(project), "leaf");
    };
    QCOMPARE(account().toDo, in(63));
    QCOMPARE(account().left, std::optional(in(63)));
    project = done(project, "straighten/leaf", 1);
    QCOMPARE(account().left, std::optional(in(61)));
    // The squared end is counted once: the length left is just what the bands are long.
    QCOMPARE(stillToBuy(project, benchhelp::stepsOf(project), *project.made.layoutOf("leaf")), Length());
    project = done(project, alongId(in(3)), 1);
    // The length is begun: nothing goes across it any more.
    QCOMPARE(account().used, in(63));
    QCOMPARE(account().toDo, Length());
    QCOMPARE(account().left, std::optional(Length()));
    const std::vector<Step> all = benchhelp::stepsOf(project);
    project = afterChange(
        project, answerTo(project, plan(project), all, stepOf(all, alongId(in(3))), Mishap::Spoiled).next);
    const ClothAccount lost = account();
    QVERIFY(lost.spoiled > Length());
    QCOMPARE(lost.used + lost.spoiled + *lost.left, *lost.owned);
}

void Along::kitsAreLaidOutInOne()
{
    Project project = longPatches();
    project.kits = 2;
    project.blocks.columns = 2;
    project.blocks.rows = 1;
    const Plan p = plan(project);
    const std::vector<Step> all = steps(project, p);
    const ClothLay lay = layKits(project, p, all, "leaf");
    const std::vector<Wanted> wanted = wantedOf(project, p, all, "leaf");
    checkSpots(spotsOf(lay.strips, lay.straighten), in(42), lay.bought, wanted);
    Ground across = groundOf(project, p, "leaf");
    across.reach = Length();
    QVERIFY(lay.bought <= layOut(wanted, across).bought);
}

void Along::byChanceNoPieceOverlaps()
{
    planhelp::Chance chance(planhelp::seed(31));
    int along = 0;
    for (int i = 0; i < planhelp::count(80); ++i) {
        Project project = longPatches();
        project.patches[0].width = in(chance.between(10, 68));
        project.patches[0].height = in(chance.between(1, 8));
        project.patches[1].width = in(chance.between(2, 20));
        project.patches[1].height = in(chance.between(1, 8));
        project.patches[1].perBlock = chance.between(1, 4);
        project.blocks.columns = chance.between(1, 3);
        const Plan p = plan(project);
        if (!p.problems.empty())
            continue;
        const std::vector<Step> all = steps(project, p);
        const std::vector<Wanted> wanted = wantedOf(project, p, all, "leaf");
        const Ground ground = groundOf(project, p, "leaf");
        Ground only = ground;
        only.reach = Length();
        const ClothLay lay = layOut(wanted, ground), across = layOut(wanted, only);
        const bool turned = runs(lay.strips);
        along += turned ? 1 : 0;
        QVERIFY(turned ? lay.bought < across.bought : lay.strips == across.strips);
        QVERIFY(!lay.least || *lay.least <= lay.bought);
        if (lay.least && turned) {
            QVERIFY(lay.cut <= ground.reach);
            checkSpots(spotsOf(lay.strips, lay.straighten), ground.usable, lay.bought, wanted);
        }
        if (QTest::currentTestFailed())
            return;
        if (!turned)
            continue;
        // Cut to the end, step by step: all pieces come, nothing more is bought.
        Project cut = bought(project);
        for (int turn = 0; turn < 400; ++turn) {
            const std::vector<Step> now = benchhelp::stepsOf(cut);
            const auto next = std::find_if(now.begin(), now.end(), [](const Step &step) {
                return step.cloth == "leaf" && step.station == Station::Cut && step.done < step.count;
            });
            if (next == now.end())
                break;
            cut = afterChange(cut, withDone(cut, plan(cut), *next));
            QCOMPARE(stillToBuy(cut, benchhelp::stepsOf(cut), *cut.made.layoutOf("leaf")), Length());
        }
        for (const Step &step : benchhelp::stepsOf(cut))
            QVERIFY(step.cloth != "leaf" || step.station != Station::Cut || step.done == step.count);
    }
    QVERIFY2(along > 5, qPrintable(QString::number(along)));
}

QTEST_APPLESS_MAIN(Along)
#include "tst_along.moc"
