// SPDX-License-Identifier: MIT
//
// Sashings wider than two allowances are filled with batting (F7): how many strips, from what batting.
#include "bench/account.h"
#include "bench/clothlay.h"
#include "bench/packages.h"
#include "benchhelp.h"

#include <functional>

using namespace matside;
using namespace benchhelp;

namespace {

/// The pieces one after another, longest first, each into the first strip with room; what is longer than a
/// strip is butted from whole ones and a rest.
std::int64_t laidStripByStrip(std::vector<Length> pieces, Length strip)
{
    std::int64_t strips = 0;
    for (Length &piece : pieces)
        while (piece > strip) {
            piece -= strip;
            ++strips;
        }
    std::sort(pieces.begin(), pieces.end(), std::greater<>());
    std::vector<Length> room;
    for (const Length piece : pieces) {
        const auto fits = std::find_if(room.begin(), room.end(), [&](Length left) { return left >= piece; });
        if (fits != room.end())
            *fits -= piece;
        else
            room.push_back(strip - piece);
    }
    return strips + static_cast<std::int64_t>(room.size());
}

/// The pieces of one kit.
std::vector<Length> piecesOf(const Plan &p)
{
    std::vector<Length> pieces;
    for (std::int64_t i = 0; i < p.sashing.shorts; ++i)
        pieces.push_back(p.sashing.shortLength + p.sashing.shortSpare);
    for (std::int64_t i = 0; i < p.sashing.longs; ++i)
        pieces.push_back(p.sashing.longLength + p.sashing.longSpare);
    return pieces;
}

Project filled(Project project)
{
    project.sashing.finished = project.seam * 2 + in(0, 1, 2);
    return project;
}

Length cutOfBatting(const Project &project)
{
    const Plan p = plan(project);
    for (const Buy &buy : shoppingList(project, p, steps(project, p)))
        if (buy.cloth == "batting")
            return buy.cut;
    return Length();
}

} // namespace

class FillerTest : public QObject {
    Q_OBJECT
private slots:
    void nineBlocksByHand();
    void theTestJoinIsFilledLikeEveryJoin();
    void nothingIsCutWhereNothingIsFilled();
    void piecesAreLaidStripByStrip();
    void battingIsCountedWithIt();
    void packagesHoldItToo();
};

void FillerTest::nineBlocksByHand()
{
    // Six shorts of 7 1/2 and two longs of 3 × 7 + 2 × 1/2 + 1 = 23 in on 40 1/2: a long and two shorts make
    // 38 in, twice; the last two shorts lie on a third strip.
    const Project project = filled(nineBlocks());
    const std::vector<Step> all = stepsOf(project);
    QCOMPARE(total(all, Does::CutSashingFiller), 3);
    const Step &cut = all[static_cast<std::size_t>(placeOf(all, "cut-sashing-filler/batting"))];
    QCOMPARE(cut.size->across, in(0, 1, 2));
    QCOMPARE(cut.size->along, in(40, 1, 2));
    QVERIFY(cut.ruler && cut.caution == "blade" && cut.station == Station::Cut);
    QVERIFY(placeOf(all, "cut-sashing-filler/batting") < placeOf(all, "join-short"));
    for (const char *id : {"join-short", "join-long-row"}) {
        const Step &join = all[static_cast<std::size_t>(placeOf(all, id))];
        QVERIFY2(std::any_of(join.takes.begin(), join.takes.end(),
                             [](const Piece &piece) { return piece.name == "sashing-filler"; }),
                 id);
    }
}

void FillerTest::theTestJoinIsFilledLikeEveryJoin()
{
    // One piece 1/2 in wide, as long as a short sashing of 7 1/2 in, before the join that takes it.
    Project project = filled(nineBlocksOfCloth());
    project.made.trialPutOff = false;
    const std::vector<Step> all = stepsOf(project);
    const char *id = "trial/cut-sashing-filler/batting";
    const auto place = placeOf(all, id);
    QVERIFY(place >= 0 && place < placeOf(all, "trial/test-join"));
    const Step &cut = all[static_cast<std::size_t>(place)];
    QVERIFY(cut.trial && cut.count == 1 && cut.caution == "blade" && cut.station == Station::Cut);
    QCOMPARE(cut.size->along, in(7, 1, 2));
    QCOMPARE(cut.size->across, in(0, 1, 2));
    const Step &join = all[static_cast<std::size_t>(placeOf(all, "trial/test-join"))];
    QVERIFY(std::any_of(join.takes.begin(), join.takes.end(), [&](const Piece &piece) {
        return piece.name == cut.makes.front().name && piece.count == 1;
    }));
    // It is bought with the rest: one row of its width more on the batting, and it lies in the layout.
    Project off = project;
    off.made.trialPutOff = true;
    Project narrow = nineBlocksOfCloth();
    narrow.made.trialPutOff = false;
    Project narrowOff = narrow;
    narrowOff.made.trialPutOff = true;
    const Length trialStrip = cutOfBatting(narrow) - cutOfBatting(narrowOff);
    QCOMPARE(cutOfBatting(project) - cutOfBatting(off), trialStrip + in(0, 1, 2));
    const Plan p = plan(project);
    const ClothLay lay = layKits(project, p, all, "batting");
    std::int64_t pieces = 0;
    for (const LaidStrip &strip : lay.strips)
        for (const LaidPiece &piece : strip.pieces)
            pieces += piece.does == "trial/cut-sashing-filler" ? piece.count * strip.repeats : 0;
    QCOMPARE(pieces, 1);
}

void FillerTest::nothingIsCutWhereNothingIsFilled()
{
    for (Project project : {nineBlocks(), filled(nineBlocks()), exampleProject()}) {
        if (project.sashing.finished == project.seam * 2 + in(0, 1, 2))
            project.sashing.allowance = project.sashing.finished->scaled(1, 2); // left on the blocks instead
        for (const Step &step : stepsOf(project)) {
            QVERIFY(step.does != Does::CutSashingFiller);
            for (const Piece &piece : step.takes)
                QVERIFY(piece.name != "sashing-filler");
        }
    }
}

// F7 | independent derivation | a batting piece for every sashing is laid into strips one by one, longest
// first
void FillerTest::piecesAreLaidStripByStrip()
{
    planhelp::Chance chance(planhelp::seed(63));
    int made = 0;
    int butted = 0;
    for (int i = 0; i < planhelp::count(400); ++i) {
        const Project project = filled(chance.project(chance.coin() ? System::Inch : System::Metric));
        const Plan p = plan(project);
        if (!p.problems.empty() || !p.sashing.filler || project.lesson)
            continue;
        ++made;
        const std::vector<Length> pieces = piecesOf(p);
        butted += !pieces.empty() && pieces.back() > p.basis.usableBatting ? 1 : 0;
        QCOMPARE(total(steps(project, p), Does::CutSashingFiller),
                 laidStripByStrip(pieces, p.basis.usableBatting) * project.kits);
    }
    QVERIFY(made > 20 && butted > 5);
}

void FillerTest::battingIsCountedWithIt()
{
    // The filler's strips lie on the cloth beside the hoop's, so they are bought with them.
    const Project narrow = nineBlocksOfCloth();
    const Project wide = filled(narrow);
    QCOMPARE(cutOfBatting(wide) - cutOfBatting(narrow), in(0, 1, 2) * 3);
    const Plan p = plan(wide);
    const ClothAccount account = clothAccount(wide, p, steps(wide, p), "batting");
    QCOMPARE(account.toDo - cutOfBatting(narrow), in(0, 1, 2) * 3 + straightening(System::Inch, {}));
}

// F17 | independent derivation | hoop strips and fillers are laid into packages row by row
void FillerTest::packagesHoldItToo()
{
    planhelp::Chance chance(planhelp::seed(64));
    int more = 0;
    for (int i = 0; i < planhelp::count(12); ++i) {
        Project project = filled(nineBlocksOfCloth());
        project.blocks.rows = chance.between(1, 9);
        if (chance.coin())
            project.edge.kind = EdgeKind::Framed;
        const Package package{in(chance.between(42, 64)), in(chance.between(42, 64)), {}, {}};
        for (Cloth &cloth : project.cloths)
            if (cloth.role == ClothRole::Batting)
                cloth.packages = {package};
        const Plan p = plan(project);
        if (!p.problems.empty())
            continue;
        const auto choice = battingChoice(project, p, steps(project, p));
        QVERIFY(choice && !choice->fillers.empty());
        const PackageBuy &buy = choice->packages.front();
        QVERIFY(buy.each > 0);
        // Row under row, the widest first, each row in the first package with the height for it.
        const Length along = (buy.turned ? package.width : package.length) - in(2);
        const Length across = buy.turned ? package.length : package.width;
        std::vector<Length> left;
        const auto lay = [&](Pair strip, std::int64_t count) {
            for (std::int64_t abreast = across.floorDiv(strip.along); count > 0; count -= abreast) {
                auto room =
                    std::find_if(left.begin(), left.end(), [&](Length rest) { return rest >= strip.across; });
                if (room == left.end())
                    room = left.insert(left.end(), along);
                *room -= strip.across;
            }
        };
        lay(choice->strip, choice->strips);
        const std::size_t without = left.size();
        for (const FillerStrips &filler : choice->fillers)
            lay(filler.strip, filler.count);
        QCOMPARE(buy.count, static_cast<std::int64_t>(left.size()));
        more += left.size() > without ? 1 : 0;
        const auto taken = withPackages(project, *choice, 0);
        if (!taken)
            continue;
        const Plan after = plan(*taken);
        for (const Buy &bought : shoppingList(*taken, after, steps(*taken, after)))
            if (bought.cloth == "batting")
                QCOMPARE(bought.bought, Length()); // nothing from the roll
    }
    qInfo("%d times the filler asks for a package more", more);
}

QTEST_GUILESS_MAIN(FillerTest)
#include "tst_filler.moc"
