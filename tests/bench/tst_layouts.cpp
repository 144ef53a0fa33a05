// SPDX-License-Identifier: MIT
//
// Layouts fixed when a cloth was bought or first cut: what was bought is what is cut, and whatever happens,
// pieces already cut stay where they are, and what is cut and what is to cut make what is needed.
#include "bench/account.h"
#include "bench/clothlay.h"
#include "bench/mishap.h"
#include "bench/record.h"
#include "bench/relay.h"
#include "bench/shopping.h"
#include "benchhelp.h"

#include <map>
#include <set>
#include <tuple>

using namespace matside;
using planhelp::in;

namespace {

Cloth clothOf(const char *id, ClothRole role, Length usable = in(42))
{
    Cloth cloth;
    cloth.id = cloth.name = id;
    cloth.role = role;
    cloth.usable = usable;
    cloth.soldBy = "1/8 yd";
    cloth.soldStep = in(4, 1, 2);
    return cloth;
}

Patch patchOf(const char *name, Length width, Length height, const char *cloth)
{
    Patch patch;
    patch.name = name;
    patch.width = width;
    patch.height = height;
    patch.over = in(0, 1, 2);
    patch.cloth = cloth;
    return patch;
}

/// Nine blocks with two patches out of one cloth: 9 of 26 1/2 × 4 in and 9 of 14 × 3 in would be cut apart
/// as 9 rows of one and 3 rows of three; side by side, one of each makes a strip of 40 1/2 in.
Project twoPatches()
{
    Project project = benchhelp::nineBlocksOfCloth();
    project.cloths.push_back(clothOf("leaf", ClothRole::Patch));
    project.patches = {patchOf("long", in(25, 1, 2), in(3), "leaf"), patchOf("short", in(13), in(2), "leaf")};
    return project;
}

/// Where every piece cut so far lies: by the strip's step, which of its strips, and the distance from the
/// first edge. Found from the counts alone, place by place.
using Spot = std::tuple<std::string, std::int64_t, std::int64_t>;
std::map<std::string, std::vector<Spot>> spotsCut(const Project &project, const std::string &cloth)
{
    std::map<std::string, std::int64_t> cut;
    for (const MadeCut &made : project.made.cut)
        if (made.cloth == cloth)
            cut[made.does] += made.count;
    std::map<std::string, std::int64_t> number;
    std::map<std::string, std::vector<Spot>> spots;
    const MadeLayout *layout = project.made.layoutOf(cloth);
    for (const LaidStrip &strip : layout->strips)
        for (std::int64_t i = 0; i < strip.repeats; ++i) {
            const std::int64_t n = number[strip.does]++;
            const bool itself = strip.pieces.size() == 1 && strip.pieces.front().does == strip.does;
            if (!itself && n >= cut[strip.does])
                continue; // a band that is not cut yet
            Length at;
            for (const LaidPiece &piece : strip.pieces)
                for (std::int64_t k = 0; k < piece.count; ++k, at += piece.across)
                    if (!piece.does.empty() &&
                        static_cast<std::int64_t>(spots[piece.does].size()) < cut[piece.does])
                        spots[piece.does].emplace_back(strip.does, n, at.count());
        }
    return spots;
}

/// Nothing lies outside its strip, nothing overlaps, and what is planned and what is cut make what is needed.
void checkLayout(const Project &project, const MadeLayout &layout)
{
    const Plan p = plan(project);
    const std::vector<Step> all = steps(project, p);
    const LayoutState state = stateOf(project, all, layout);
    std::map<std::string, std::int64_t> planned = state.unfilled;
    for (const LaidStrip &strip : state.open) {
        Length run;
        for (const LaidPiece &piece : strip.pieces) {
            QVERIFY(piece.along <= strip.height);
            run += piece.across * piece.count;
            planned[piece.does] += piece.count * strip.repeats;
        }
        QVERIFY(strip.owned > 0 || run <= (strip.run > Length() ? strip.run : layout.usable));
    }
    QVERIFY(besideOf(state.open) == Length() || besideOf(layout.strips) <= layout.usable);
    for (const Wanted &want : wantedOf(project, p, all, layout.cloth))
        QCOMPARE(planned[want.does], want.count); // done + to cut = needed
    // What the steps cut is what the layout holds.
    Length bySteps;
    for (const Step &step : all)
        if (step.cloth == layout.cloth && step.station == Station::Cut && step.does != Does::CutPatch)
            bySteps += takenBy(step, p, step.count - step.done, layout.usable);
    Length byLayout;
    for (const LaidStrip &strip : state.open)
        if (!strip.does.starts_with("cut-patch") && strip.run <= Length())
            byLayout += strip.height * strip.repeats;
    QCOMPARE(bySteps, byLayout);
}

Project buyAll(const Project &project)
{
    Project next = project;
    for (const Buy &buy : shoppingList(project, plan(project), benchhelp::stepsOf(project), 2000))
        next = withBought(next, plan(next), benchhelp::stepsOf(next), buy.cloth);
    return next;
}

const Step *nextCut(const std::vector<Step> &all)
{
    for (const Step &step : all)
        if (step.station == Station::Cut && step.done < step.count)
            return &step;
    return nullptr;
}

} // namespace

class Layouts : public QObject {
    Q_OBJECT
private slots:
    void mixedStripsAreBoughtAndCut();
    void aTickTakenAwayFreesTheLayout();
    void theFirstCutFixesIt();
    void aSpoiledBandIsLaidOutAgain();
    void shortClothIsBoughtAsOneLength();
    void ownedPiecesAreUsedFirst();
    void ownedPiecesByChance();
    void cutPiecesNeverMove();
};

void Layouts::mixedStripsAreBoughtAndCut()
{
    // By hand: apart 9 × 4 + 3 × 3 = 45, and 2 to straighten = 47 in → 1 3/8 yd (49 1/2); side by side
    // 9 × 4 = 36, and 2 = 38 → 1 1/8 yd (40 1/2).
    const Project project = twoPatches();
    const std::vector<Step> before = benchhelp::stepsOf(project);
    const Plan p = plan(project);
    QCOMPARE(p.problems.size(), std::size_t(0));
    const ClothLay apart = layApart(wantedOf(project, p, before, "leaf"), groundOf(project, p, "leaf"));
    QCOMPARE(apart.bought, in(49, 1, 2));
    const ClothLay lay = layOut(wantedOf(project, p, before, "leaf"), groundOf(project, p, "leaf"));
    QCOMPARE(lay.cut, in(36));
    QCOMPARE(lay.bought, in(40, 1, 2));
    QCOMPARE(lay.least, std::optional(in(40, 1, 2)));

    const Project bought = withBought(project, p, before, "leaf");
    QCOMPARE(bought.made.layoutOf("leaf")->bought, in(40, 1, 2));
    const std::vector<Step> all = benchhelp::stepsOf(bought);
    const std::ptrdiff_t band = benchhelp::placeOf(all, bandName(in(4), false) + "/leaf");
    QVERIFY(band >= 0);
    QCOMPARE(all[static_cast<std::size_t>(band)].count, 9);
    QVERIFY(band < benchhelp::placeOf(all, "cut-patch-1/leaf"));
    QVERIFY(benchhelp::placeOf(all, "straighten/leaf") < band);
    checkLayout(bought, *bought.made.layoutOf("leaf"));
    // Buying again asks for the same, and says that nothing is short.
    for (const Buy &buy : shoppingList(bought, plan(bought), all))
        if (buy.cloth == "leaf") {
            QVERIFY(buy.fixed);
            QCOMPARE(buy.bought, in(40, 1, 2));
            QCOMPARE(buy.more, Length());
        }
}

void Layouts::aTickTakenAwayFreesTheLayout()
{
    Project project = twoPatches();
    project = withBought(project, plan(project), benchhelp::stepsOf(project), "leaf");
    QVERIFY(tickedAsBought(project, "leaf"));
    const Project free = withoutBought(project, benchhelp::stepsOf(project), "leaf");
    QVERIFY(!tickedAsBought(free, "leaf"));
    QVERIFY(!free.made.layoutOf("leaf"));
    // Once it is cut the layout stays.
    const std::vector<Step> all = benchhelp::stepsOf(project);
    const Step &square = all[static_cast<std::size_t>(benchhelp::placeOf(all, "straighten/leaf"))];
    const Project begun = afterChange(project, withDone(project, plan(project), square));
    QVERIFY(withoutBought(begun, benchhelp::stepsOf(begun), "leaf").made.layoutOf("leaf"));
}

void Layouts::theFirstCutFixesIt()
{
    const Project project = twoPatches();
    const std::vector<Step> all = benchhelp::stepsOf(project);
    const Step &square = all[static_cast<std::size_t>(benchhelp::placeOf(all, "straighten/leaf"))];
    const Project begun = afterChange(project, withDone(project, plan(project), square));
    QVERIFY(begun.made.layoutOf("leaf"));
    QCOMPARE(begun.made.layoutOf("leaf")->bought, in(40, 1, 2)); // what Shop has shown
    QVERIFY(!begun.made.layoutOf("ground"));                     // nothing was cut of that
    // A patch cut without more ado fixes what the steps were: rows of one size.
    const Step &patch = all[static_cast<std::size_t>(benchhelp::placeOf(all, "cut-patch-1/leaf"))];
    const Project straight = afterChange(project, withDone(project, plan(project), patch));
    QCOMPARE(straight.made.layoutOf("leaf")->bought, in(49, 1, 2));
    checkLayout(straight, *straight.made.layoutOf("leaf"));
}

void Layouts::aSpoiledBandIsLaidOutAgain()
{
    Project project = twoPatches();
    project = withBought(project, plan(project), benchhelp::stepsOf(project), "leaf");
    const std::string band = bandName(in(4), false) + "/leaf";
    const auto bandOf = [&](const std::vector<Step> &all) {
        return all[static_cast<std::size_t>(benchhelp::placeOf(all, band))];
    };
    project = afterChange(project, withDone(project, plan(project), bandOf(benchhelp::stepsOf(project))));
    const std::vector<Step> all = benchhelp::stepsOf(project);
    const Answered answer = answerTo(project, plan(project), all, bandOf(all), Mishap::TooNarrow);
    // 40 1/2 bought, 2 for the end, two strips of 4 cut: 30 1/2 in left, and 8 strips of 4 wanted, so one
    // strip is short: 4 and 2 to straighten → 1/4 yd.
    const auto said = [&](const char *code) {
        return std::any_of(answer.says.begin(), answer.says.end(),
                           [&](const Said &line) { return line.code == code; });
    };
    QVERIFY(said("rest-short"));
    QVERIFY(said("buy"));
    const Project after = afterChange(project, answer.next);
    const MadeLayout &layout = *after.made.layoutOf("leaf");
    QCOMPARE(stillToBuy(after, benchhelp::stepsOf(after), layout), in(9));
    QVERIFY(std::any_of(layout.strips.begin(), layout.strips.end(),
                        [](const LaidStrip &strip) { return strip.spoiled && strip.repeats == 1; }));
    checkLayout(after, layout);
    const Project again = withBought(after, plan(after), benchhelp::stepsOf(after), "leaf");
    QCOMPARE(again.made.layoutOf("leaf")->bought, in(49, 1, 2));
    QCOMPARE(stillToBuy(again, benchhelp::stepsOf(again), *again.made.layoutOf("leaf")), Length());
}

void Layouts::shortClothIsBoughtAsOneLength()
{
    // Three hoop strips of 11 3/4; only 20 in are there. One strip fits, two are bought: 23 1/2 and 2 to
    // straighten = 25 1/2 → 3/4 yd (27 in); 35 1/4 − 18 = 17 1/4 and 2 would have been a strip too short.
    Project project = benchhelp::nineBlocksOfCloth();
    project = withBought(project, plan(project), benchhelp::stepsOf(project), "ground");
    project.made.recordOf("ground").length = in(20);
    QCOMPARE(stillToBuy(project, benchhelp::stepsOf(project), *project.made.layoutOf("ground")), in(27));
}

void Layouts::ownedPiecesAreUsedFirst()
{
    // Three strips of 11 3/4 in and three bands of 2 for the sashings. A remnant of 26 in holds two of the
    // strips once 2 in of its end are squared off (23 1/2 of 24). Bought: 11 3/4 + 6 and 2 = 19 3/4 in, 5
    // steps of 4 1/2 = 22 1/2 in.
    Project project = benchhelp::nineBlocksOfCloth();
    project.cloths.front().owned = {{in(26), in(40, 1, 2), {}}};
    const auto buyIn = [](const Project &of, const char *id) {
        for (const Buy &buy : shoppingList(of, plan(of), benchhelp::stepsOf(of)))
            if (buy.cloth == id)
                return buy;
        return Buy();
    };
    const Buy ground = buyIn(project, "ground");
    QCOMPARE(ground.cut, in(17, 3, 4));
    QCOMPARE(ground.bought, in(22, 1, 2));
    QCOMPARE(ground.least, std::optional(in(22, 1, 2)));
    QVERIFY(std::any_of(ground.strips.begin(), ground.strips.end(), [](const ShopStrip &strip) {
        return strip.owned == 1 && strip.height == in(11, 3, 4);
    }));
    // 41 1/4 in a whole length of 44: nothing is bought. A remnant too narrow for the strips yields the
    // sashings: 35 1/4 and 2 = 37 1/4 in are bought as 40 1/2.
    project.cloths.front().owned = {{in(44), in(41), {}}};
    QCOMPARE(buyIn(project, "ground").bought, Length());
    project.cloths.front().owned = {{in(40), in(30), {}}};
    QCOMPARE(buyIn(project, "ground").bought, in(40, 1, 2));
    // Bought and cut: the strips of the remnant are steps like the others, and its cloth is not counted.
    project.cloths.front().owned = {{in(26), in(40, 1, 2), {}}};
    const Project fixed = withBought(project, plan(project), benchhelp::stepsOf(project), "ground");
    QCOMPARE(fixed.made.layoutOf("ground")->bought, in(22, 1, 2));
    QCOMPARE(stillToBuy(fixed, benchhelp::stepsOf(fixed), *fixed.made.layoutOf("ground")), Length());
    checkLayout(fixed, *fixed.made.layoutOf("ground"));
}

void Layouts::ownedPiecesByChance()
{
    planhelp::Chance chance(planhelp::seed(12));
    int used = 0;
    for (int i = 0; i < planhelp::count(60); ++i) {
        Project project = twoPatches();
        project.patches[0].width = in(chance.between(2, 24));
        project.patches[1].height = in(chance.between(1, 6));
        if (!plan(project).problems.empty())
            continue;
        const std::vector<Step> all = benchhelp::stepsOf(project);
        const Plan p = plan(project);
        const std::vector<Wanted> wanted = wantedOf(project, p, all, "leaf");
        Cloth &leaf = project.cloths.back();
        const Length without = layOut(wanted, groundOf(project, p, "leaf")).bought;
        for (std::int64_t pieces = chance.between(1, 3); pieces > 0; --pieces)
            leaf.owned.push_back({in(chance.between(1, 40)), in(chance.between(1, 44)), {}});
        const Ground ground = groundOf(project, p, "leaf");
        const ClothLay lay = layOut(wanted, ground);
        QVERIFY(lay.bought <= without);
        QVERIFY(!lay.least || *lay.least <= lay.bought);
        // Nothing overlaps and nothing lies beyond a piece: strip by strip, on each ground.
        std::vector<Length> run(leaf.owned.size());
        std::map<std::string, std::int64_t> laid;
        for (const LaidStrip &strip : lay.strips) {
            Length across;
            for (const LaidPiece &piece : strip.pieces) {
                across += piece.across * piece.count;
                laid[piece.does] += piece.count * strip.repeats;
                QVERIFY(piece.along <= strip.height);
            }
            const auto owned = static_cast<std::size_t>(strip.owned);
            QVERIFY(across <= (owned > 0 ? leaf.owned[owned - 1].width : ground.usable));
            if (owned > 0)
                run[owned - 1] += strip.height * strip.repeats;
            used += owned > 0 ? 1 : 0;
        }
        for (std::size_t k = 0; k < run.size(); ++k)
            QVERIFY(run[k] == Length() || run[k] + in(2) <= leaf.owned[k].length);
        for (const Wanted &want : wanted)
            QCOMPARE(laid[want.does], want.count);
    }
    QVERIFY(used > 30);
}

void Layouts::cutPiecesNeverMove()
{
    planhelp::Chance chance(planhelp::seed(11));
    int cut = 0;
    int relaid = 0;
    int mixed = 0;
    for (int i = 0; i < planhelp::count(25); ++i) {
        Project project = twoPatches();
        project.patches[0].width = in(chance.between(2, 24));
        project.patches[0].height = in(chance.between(1, 6));
        project.patches[1].width = in(chance.between(2, 12));
        project.made.trialPutOff = chance.coin();
        project.kits = chance.between(1, 3);
        if (!plan(project).problems.empty())
            continue;
        project = buyAll(project);
        for (const MadeLayout &layout : project.made.layouts)
            for (const LaidStrip &strip : layout.strips)
                mixed += strip.does.starts_with("cut-band-") ? 1 : 0;
        for (int turn = 0; turn < 60; ++turn) {
            const Plan p = plan(project);
            const std::vector<Step> all = steps(project, p);
            const Step *step = nextCut(all);
            if (!step)
                break;
            Project next = project;
            const std::int64_t dice = chance.between(0, 11);
            if (dice == 0 && step->does != Does::Straighten)
                next = answerTo(project, p, all, *step, Mishap::Spoiled).next;
            else if (dice == 1 && step->does != Does::Straighten)
                next = answerTo(project, p, all, *step, Mishap::ClothNarrower,
                                usableOf(project, p, step->cloth) - in(0, 1, 2))
                           .next;
            else if (dice == 2)
                next.blocks.spare += 1;
            else if (dice == 3)
                next.patches[1].height += in(0, 1, 4);
            else
                next = withDone(project, p, *step);
            next = afterChange(project, next);
            if (!plan(next).problems.empty())
                continue;
            for (const MadeLayout &layout : next.made.layouts) {
                const MadeLayout *was = project.made.layoutOf(layout.cloth);
                QVERIFY(was);
                relaid += was->strips != layout.strips ? 1 : 0;
                const auto before = spotsCut(project, layout.cloth);
                const auto after = spotsCut(next, layout.cloth);
                for (const auto &[does, spots] : before) {
                    const auto now = after.find(does);
                    if (spots.empty())
                        continue;
                    QVERIFY(now != after.end() && now->second.size() >= spots.size());
                    for (std::size_t k = 0; k < spots.size(); ++k)
                        QVERIFY2(spots[k] == now->second[k], does.c_str());
                    cut += static_cast<int>(now->second.size() - spots.size());
                }
                checkLayout(next, layout);
                if (QTest::currentTestFailed())
                    return;
            }
            project = std::move(next);
        }
    }
    QVERIFY(cut > 300);
    QVERIFY(relaid > 100);
    QVERIFY(mixed > 10);
}

QTEST_APPLESS_MAIN(Layouts)
#include "tst_layouts.moc"
