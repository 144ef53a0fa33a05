// SPDX-License-Identifier: MIT
//
// Batting from the roll and by the package: the same strips counted another way, and cut from what is bought.
#include "bench/clothlay.h"
#include "bench/packages.h"
#include "bench/record.h"
#include "bench/relay.h"
#include "benchhelp.h"

using namespace matside;
using planhelp::in;

namespace {

Cloth &battingIn(Project &project)
{
    for (Cloth &cloth : project.cloths)
        if (cloth.role == ClothRole::Batting)
            return cloth;
    qFatal("no batting");
}

Project withSizes(std::vector<Package> packages)
{
    Project project = benchhelp::nineBlocksOfCloth();
    battingIn(project).packages = std::move(packages);
    return project;
}

BattingChoice choiceOf(const Project &project)
{
    const Plan p = plan(project);
    const auto choice = battingChoice(project, p, steps(project, p));
    if (!choice)
        qFatal("no choice");
    return *choice;
}

const Buy *battingBuy(const std::vector<Buy> &list)
{
    for (const Buy &buy : list)
        if (buy.cloth == "batting")
            return &buy;
    return nullptr;
}

std::vector<Buy> listOf(const Project &project)
{
    const Plan p = plan(project);
    return shoppingList(project, p, steps(project, p));
}

} // namespace

class Packages : public QObject {
    Q_OBJECT
private slots:
    void cribSizeByHand();
    void packagesAreFilledPieceByPiece();
    void packagesTakenAreCut();
    void wideRollHoldsStripsSideBySide();
    void wideRollIsCutToTheEnd();
    void tooManyPackagesAreRefused();
};

// F17 | hand-worked case only | the package of 45 × 60 in of the trade notes, counted both ways round
void Packages::cribSizeByHand()
{
    // Strips of 11 3/4 × 40 1/2, three for the piece and the trial's one (whatever the plan says of the
    // places). 45 long less 2 to square it: 43/11 3/4 = 3 strips of 60, each one of 40 1/2. Turned: 60 − 2 =
    // 58, 58/11 3/4 = 4 strips of 45, each one of 40 1/2: four from a package.
    Project project = withSizes({{in(45), in(60), "18.00", {}}, {in(38), in(38), {}, {}}});
    const BattingChoice choice = choiceOf(project);
    QCOMPARE(choice.strip.across, in(11, 3, 4));
    QCOMPARE(choice.strip.along, in(40, 1, 2));
    const PackageBuy &crib = choice.packages.front();
    QVERIFY(crib.turned);
    QCOMPARE(crib.each, 4);
    QCOMPARE(crib.count, (choice.strips + 3) / 4);
    QCOMPARE(crib.cents, std::optional<std::int64_t>(1800 * crib.count));
    // Waste by hand: 1 − strips × 11.75 × 40.5 / (packages × 45 × 60).
    const double waste =
        1 - static_cast<double>(choice.strips) * 11.75 * 40.5 / (static_cast<double>(crib.count) * 45.0 * 60);
    QVERIFY(std::abs(static_cast<double>(crib.waste) - waste * 1000) <= 0.5);
    QCOMPARE(choice.packages[1].each, 0); // shorter than a strip both ways
}

// F17 | independent derivation | strips are laid into a package one by one, each at the first free place of a
//     | grid of ticks
void Packages::packagesAreFilledPieceByPiece()
{
    planhelp::Chance chance(planhelp::seed(71));
    for (int i = 0; i < planhelp::count(300); ++i) {
        const Pair strip{in(chance.between(5, 45)), in(chance.between(3, 14))};
        const Length along = in(chance.between(10, 120));
        const Length across = in(chance.between(10, 120));
        std::int64_t laid = 0;
        for (Length y; y + strip.across <= along; y += strip.across)
            for (Length x; x + strip.along <= across; x += strip.along)
                ++laid;
        QCOMPARE(stripsIn(along, across, strip), laid);
        // Never more than the area holds.
        QVERIFY(laid * strip.along.count() * strip.across.count() <= along.count() * across.count());
    }
}

void Packages::packagesTakenAreCut()
{
    const Project project = withSizes({{in(45), in(60), {}, {}}});
    const BattingChoice choice = choiceOf(project);
    const auto taken = withPackages(project, choice, 0);
    QVERIFY(taken.has_value());
    const std::vector<Buy> list = listOf(*taken);
    const Buy *buy = battingBuy(list);
    QVERIFY(buy != nullptr);
    QCOMPARE(buy->bought, Length()); // nothing from the roll
    QCOMPARE(buy->packages.size(), std::size_t(1));
    QCOMPARE(buy->packages.front().count, choice.packages.front().count);
    // Every strip wanted lies in one of the packages.
    std::int64_t strips = 0;
    for (const ShopStrip &strip : buy->strips) {
        QVERIFY(strip.owned >= 1 && strip.owned <= choice.packages.front().count);
        for (const ShopPiece &piece : strip.pieces)
            strips += piece.gap ? 0 : piece.count * strip.repeats;
    }
    QCOMPARE(strips, choice.strips);
    // And back to the roll.
    const Project roll = withoutPackages(*taken, "batting");
    QVERIFY(battingBuy(listOf(roll))->bought > Length());
}

// F17 | independent derivation | rows of strips are laid down one after another across the roll
void Packages::wideRollHoldsStripsSideBySide()
{
    planhelp::Chance chance(planhelp::seed(72));
    int wide = 0;
    for (int i = 0; i < planhelp::count(40); ++i) {
        Project project = benchhelp::nineBlocksOfCloth();
        project.blocks.rows = chance.between(1, 12);
        battingIn(project).usable = in(chance.between(41, 130));
        const Plan p = plan(project);
        const std::vector<Step> all = steps(project, p);
        const std::vector<Buy> list = shoppingList(project, p, all);
        std::int64_t wanted = 0;
        for (const Step &step : all)
            wanted += step.cloth == "batting" && step.does == Does::CutStrip ? step.count : 0;
        Length cut;
        Length beside;
        for (std::int64_t n = 0; n < wanted; ++n) {
            if (n == 0 || beside + p.strip.usable > *battingIn(project).usable) {
                cut += p.strip.width;
                beside = {};
            }
            beside += p.strip.usable;
        }
        // Turned, each as long down the roll as a strip is wide.
        const std::int64_t abreast = battingIn(project).usable->floorDiv(p.strip.width);
        const Length turned =
            abreast > 0 ? p.strip.usable * ((wanted + abreast - 1) / abreast) : Length::inches(100'000);
        wide += *battingIn(project).usable >= p.strip.usable * 2 ? 1 : 0;
        const Buy *buy = battingBuy(list);
        QVERIFY(buy != nullptr);
        // Along the selvage only where it buys less; such a strip is as long as what is bought, by the step.
        if (buy->cut != cut)
            QVERIFY(turned < cut && buy->cut >= turned && buy->cut < turned + in(4, 1, 2));
        QVERIFY(buy->proved());
    }
    QVERIFY(wide > 5);
}

void Packages::wideRollIsCutToTheEnd()
{
    // From the first to the last cut, counted as she counts them: the layout is fixed at the first one, and
    // no cut ever asks for more cloth.
    Project project = benchhelp::nineBlocksOfCloth();
    project.blocks.rows = 6;
    battingIn(project).usable = in(90);
    Plan p = plan(project);
    std::vector<Step> all = steps(project, p);
    project = withBought(project, p, all, "batting");
    const Length bought = battingBuy(listOf(project))->bought;
    for (int turn = 0; turn < 60; ++turn) {
        p = plan(project);
        all = steps(project, p);
        const auto next = std::find_if(all.begin(), all.end(), [](const Step &step) {
            return step.cloth == "batting" && step.station == Station::Cut && step.done < step.count;
        });
        if (next == all.end())
            break;
        const Project before = project;
        project = afterChange(before, withDone(before, p, *next));
        const std::vector<Buy> list = listOf(project);
        const Buy *buy = battingBuy(list);
        QVERIFY(buy == nullptr || buy->more == Length());
        QVERIFY(buy == nullptr || buy->bought == bought);
    }
    p = plan(project);
    for (const Step &step : steps(project, p))
        if (step.cloth == "batting" && step.station == Station::Cut)
            QCOMPARE(step.done, step.count);
}

void Packages::tooManyPackagesAreRefused()
{
    Project project = withSizes({{in(45), in(60), {}, {}}});
    project.kits = 40;
    const BattingChoice choice = choiceOf(project);
    QVERIFY(choice.packages.front().count > static_cast<std::int64_t>(mostOwned));
    QVERIFY(!withPackages(project, choice, 0));
    QVERIFY(!withPackages(project, choice, 7));
}

QTEST_APPLESS_MAIN(Packages)
#include "tst_packages.moc"
