// SPDX-License-Identifier: MIT
//
// Strips in work: positions from one zero, re-zero from the real last outline, spares before new cloth.
#include "plan/onstrip.h"
#include "planhelp.h"

#include <set>

using namespace matside;
using planhelp::in;

namespace {

MadeBlock stitched(const char *name, std::int64_t strip, std::int64_t place)
{
    MadeBlock block;
    block.block = name;
    block.strip = strip;
    block.place = place;
    return block;
}

MadeStrip ended(std::int64_t strip, Length at)
{
    MadeStrip made;
    made.strip = strip;
    made.ended = at;
    return made;
}

} // namespace

class OnStrip : public QObject {
    Q_OBJECT
private slots:
    void blocksAreNamedFrontViewFromTheTopLeft();
    void nextStartsAtTheRealOutlinePlusTheGap();
    void loggedOutlinesMoveTheRestOfTheirStrip();
    void aReZeroHoldsForTheOutlineItWasOf();
    void aStripThatNoLongerTakesTheBlockSaysByHowMuch();
    void aTailOrASmallerGapIsOfferedOnlyWhenItHelps();
    void blocksThatNoLongerFitGoToTheNextStrip();
    void aSpoiledBlockEatsASpareBeforeNewCloth();
    void leftHandedPlacesAreTheSameFromTheRightEnd();
    void drawnInClothIsNeverMixedWithFlat();
    void outlinesAloneTellHowFarAStripIs();
    void harvestIsFreeOnlyWhenTheRemainderPays();
    void someGapsWidenedCostNoBlock();
    void noBlockIsLostOrDoubledOnRandomStrips();
};

void OnStrip::blocksAreNamedFrontViewFromTheTopLeft()
{
    Project project = planhelp::piece(2, 2, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.blocks.spare = 1;
    QCOMPARE(blockNames(project), (std::vector<std::string>{"A1", "A2", "B1", "B2", "+1"}));
    project.blocks.columns = 1;
    project.blocks.rows = 28;
    QCOMPARE(blockNames(project)[26], std::string("AA1"));
    project.kits = 2;
    QCOMPARE(blockNames(project)[29], std::string("A1.2"));
}

void OnStrip::nextStartsAtTheRealOutlinePlusTheGap()
{
    // Case 1 of the trade notes with the second block found 1/8 in short of the plan.
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.made.blocks = {stitched("A1", 1, 1), stitched("A2", 1, 2)};
    project.made.strips = {ended(1, in(16, 1, 8))};
    const Plan p = plan(project);
    const StripWork work = stripWork(project, p, 1);
    QVERIFY(work.next.has_value());
    QCOMPARE(work.next->place, 3);
    QCOMPARE(QByteArray::fromStdString(work.next->block), QByteArray("A3"));
    QCOMPARE(work.next->gap, in(1, 7, 8));
    QCOMPARE(work.next->start, in(18));
    QCOMPARE(work.next->centre, in(21));
    QCOMPARE(work.next->expected, in(18, 1, 8));
    QVERIFY(work.next->fits);
    QCOMPARE(work.places[3].drawn, in(25, 7, 8));
    QCOMPARE(work.places[3].centre, in(29)); // the flat marks stay where they were drawn
    // The second lies from 10 1/4 to where it was found to end.
    QCOMPARE(work.places[1].drawn, in(10, 1, 4));
    QCOMPARE(work.places[1].along, in(5, 7, 8));
    QCOMPARE(work.places[0].along, in(6));
}

void OnStrip::loggedOutlinesMoveTheRestOfTheirStrip()
{
    // Walked along the strip: 2 3/8, an outline of 5 15/16, the gap of 1 7/8, one of 6 1/16, which ends at
    // 16 1/4; then the gap again.
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.made.blocks = {stitched("A1", 1, 1), stitched("A2", 1, 2)};
    project.made.blocks[0].outline = {in(5, 15, 16), in(6)};
    StripWork work = stripWork(project, plan(project), 1);
    QCOMPARE(work.far, in(16, 3, 16));
    project.made.blocks[1].outline = {in(6, 1, 16), in(6)};
    work = stripWork(project, plan(project), 1);
    QCOMPARE(work.far, in(16, 1, 4));
    QVERIFY(!work.ended); // nobody measured where it ended
    QCOMPARE(work.next->start, in(18, 1, 8));
    QCOMPARE(work.next->expected, in(18, 1, 8));
    project.made.blocks[1].outline = {in(5, 7, 8), in(6)};
    work = stripWork(project, plan(project), 1);
    QCOMPARE(work.next->start, in(17, 15, 16));
    QCOMPARE(work.places[3].drawn, in(25, 13, 16));
    // 2 3/8, 5 15/16 and 1 7/8: there the second begins.
    QCOMPARE(work.places[0].along, in(5, 15, 16));
    QCOMPARE(work.places[1].drawn, in(10, 3, 16));
    QCOMPARE(work.places[1].along, in(5, 7, 8));
    QCOMPARE(work.places[1].drawn + work.places[1].along, work.far);
}

void OnStrip::aReZeroHoldsForTheOutlineItWasOf()
{
    // Measured after the first block, at 8 1/8 where 8 3/8 was planned; the next was stitched since: it
    // begins 1 7/8 on and is 6 long.
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.made.blocks = {stitched("A1", 1, 1)};
    project.made.strips = {ended(1, in(8, 1, 8))};
    QCOMPARE(stripWork(project, plan(project), 1).ended.value_or(Length()), in(8, 1, 8));
    QCOMPARE(stripWork(project, plan(project), 1).next->start, in(10));
    project.made.blocks.push_back(stitched("A2", 1, 2));
    StripWork work = stripWork(project, plan(project), 1);
    QVERIFY(!work.ended);
    QCOMPARE(work.far, in(16));
    QCOMPARE(work.next->start, in(17, 7, 8));
    project.made.blocks[1].outline = {in(5, 15, 16), in(6)};
    work = stripWork(project, plan(project), 1);
    QCOMPARE(work.far, in(15, 15, 16));
    QCOMPARE(work.places[1].drawn, in(10)); // from where the first was found to end
    QCOMPARE(work.places[1].drawn + work.places[1].along, work.far);
}

void OnStrip::aStripThatNoLongerTakesTheBlockSaysByHowMuch()
{
    // far edge + gap + sent + end ≤ the strip's end: 30 1/2 + 1 7/8 + 6 + 2 3/8 = 40 3/4 > 40 1/2.
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.made.blocks = {stitched("A1", 1, 1), stitched("A2", 1, 2), stitched("A3", 1, 3)};
    project.made.strips = {ended(1, in(30, 1, 4))};
    const Plan p = plan(project);
    QVERIFY(stripWork(project, p, 1).next->fits); // exactly full
    project.made.strips = {ended(1, in(30, 1, 2))};
    const StripWork work = stripWork(project, p, 1);
    QVERIFY(!work.next.has_value());
    QCOMPARE(work.capacity, 3);
    QVERIFY(work.over.has_value());
    QCOMPARE(work.over->missing, in(0, 1, 4));
}

void OnStrip::aTailOrASmallerGapIsOfferedOnlyWhenItHelps()
{
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.made.blocks = {stitched("A1", 1, 1), stitched("A2", 1, 2), stitched("A3", 1, 3)};
    project.made.strips = {ended(1, in(30, 1, 2))};
    Plan p = plan(project);
    StripWork work = stripWork(project, p, 1);
    QVERIFY(work.over->fitsWithTail); // a tail gives 2 3/8 − 3/4
    QVERIFY(!work.over->fitsWithGap); // 1 5/8 is under the frame's reach of 1 7/8
    project.hoop.kind = HoopKind::Magnetic;
    project.strip.frameMayOverlap = true;
    project.strip.gap = in(1, 7, 8);
    p = plan(project);
    work = stripWork(project, p, 1);
    QCOMPARE(work.over->fitsWithGap.value_or(Length()), in(1, 5, 8));
    project.made.strips = {ended(1, in(35))};
    work = stripWork(project, p, 1);
    QVERIFY(!work.over->fitsWithTail);
    QVERIFY(!work.over->fitsWithGap);
}

void OnStrip::blocksThatNoLongerFitGoToTheNextStrip()
{
    Project project = planhelp::piece(4, 2, in(6), planhelp::hoopP(), in(40, 1, 2));
    Plan p = plan(project);
    QCOMPARE(p.strip.strips, 2);
    project.made.blocks = {stitched("A1", 1, 1), stitched("A2", 1, 2), stitched("A3", 1, 3)};
    project.made.strips = {ended(1, in(31))};
    p = plan(project);
    const auto all = stripsInWork(project, p);
    QCOMPARE(all.size(), std::size_t(3));
    QCOMPARE(QByteArray::fromStdString(all[1].places[0].block), QByteArray("A4"));
    QCOMPARE(QByteArray::fromStdString(all[2].places[0].block), QByteArray("B4"));
    QVERIFY(all[2].places[1].block.empty());
    QCOMPARE(stripsNeeded(project, p), 3);
    // Nothing measured, but one of eight blocks spoiled: the ninth needs a strip of its own.
    project.made.strips.clear();
    QCOMPARE(stripsNeeded(project, plan(project)), 2);
    project.made.blocks[0].state = BlockState::Spoiled;
    QCOMPARE(stripsNeeded(project, plan(project)), 3);
}

void OnStrip::aSpoiledBlockEatsASpareBeforeNewCloth()
{
    Project project = planhelp::piece(2, 1, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.blocks.spare = 1;
    QCOMPARE(blocksToStitch(project), (std::vector<std::string>{"A1", "A2", "+1"}));
    MadeBlock spoiled = stitched("A1", 1, 1);
    spoiled.state = BlockState::Spoiled;
    project.made.blocks = {spoiled};
    QCOMPARE(blocksToStitch(project), (std::vector<std::string>{"A1", "A2"}));
    spoiled.place = 2;
    project.made.blocks.push_back(spoiled);
    QCOMPARE(blocksToStitch(project), (std::vector<std::string>{"A1", "A2"}));
    MadeBlock spare = stitched("+1", 1, 3);
    spare.replaces = "A1";
    project.made.blocks.push_back(spare);
    QCOMPARE(blocksToStitch(project), (std::vector<std::string>{"A2"}));
    QCOMPARE(blockAt(project, "A1")->block, std::string("+1"));
}

void OnStrip::leftHandedPlacesAreTheSameFromTheRightEnd()
{
    // Case 13: measured from the right end the starts are those of case 1; from the left 40 1/2 − 6 − start.
    const Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    const Plan p = plan(project);
    const StripWork work = stripWork(project, p, 1);
    const std::vector<Length> left{in(32, 1, 8), in(24, 1, 4), in(16, 3, 8), in(8, 1, 2)};
    for (std::size_t i = 0; i < 4; ++i)
        QCOMPARE(work.usable - p.block.sent.along - work.places[i].start, left[i]);
}

void OnStrip::drawnInClothIsNeverMixedWithFlat()
{
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.drawUp.along = Share{20'000};
    const Plan p = plan(project);
    const StripWork fresh = stripWork(project, p, 1);
    QCOMPARE(fresh.places[2].start, p.strip.starts[2]);
    QCOMPARE(fresh.places[2].drawn, p.strip.drawn[2]);
    QVERIFY(fresh.places[2].drawn < fresh.places[2].start);
    project.made.blocks = {stitched("A1", 1, 1)};
    const StripWork begun = stripWork(project, p, 1);
    QCOMPARE(begun.next->start, p.strip.drawn[1]);
    QCOMPARE(begun.end, begun.usable - (p.block.sent.along - p.block.outline.along));
    QCOMPARE(begun.capacity, p.strip.perStrip); // what was planned to fit still does
}

void OnStrip::outlinesAloneTellHowFarAStripIs()
{
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    MadeStrip made;
    made.strip = 1;
    made.outlines = {{in(2, 3, 8), in(8, 1, 4), {}}, {in(10, 1, 8), in(16), {}}};
    project.made.strips = {made};
    const Plan p = plan(project);
    QCOMPARE(stripWork(project, p, 1).next->place, 3);
    QCOMPARE(stripWork(project, p, 1).next->start, in(17, 7, 8));
    project.made.strips = {ended(1, in(16))}; // only the end: the nearest count of outlines
    QCOMPARE(stripWork(project, p, 1).next->place, 3);
}

void OnStrip::harvestIsFreeOnlyWhenTheRemainderPays()
{
    // F3's example: 3 × 1 1/4 = 3 3/4 in of 6 1/8 in.
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    auto offer = harvestOffer(project, plan(project));
    QVERIFY(offer.has_value());
    QCOMPARE(offer->gap, in(3, 1, 8));
    QCOMPARE(offer->extra, in(3, 3, 4));
    QVERIFY(offer->free);
    QCOMPARE(offer->perStrip, 4);
    QCOMPARE(offer->pairs, 6);
    QVERIFY(!offer->exact); // 11 3/4 − 1/2 leaves room for a short of 7 and its spare
    project.strip.margin = -in(1, 3, 8);
    QCOMPARE(plan(project).strip.width, in(7, 1, 2)); // − 1/2 = 7: a short without its spare
    QVERIFY(harvestOffer(project, plan(project))->exact);
    project.strip.margin = in(1);
    project.strip.usable = in(35);
    offer = harvestOffer(project, plan(project));
    QVERIFY(!offer->free);
    QCOMPARE(offer->perStrip, 3);
    QCOMPARE(offer->someGaps, 0);
    QCOMPARE(offer->perStripTails, 4); // (35 − 1 1/2 + 3 1/8) / 9 1/8 = 4.01
    project.strip.usable = in(37, 1, 2);
    offer = harvestOffer(project, plan(project));
    QCOMPARE(offer->someGaps, 2);
    QCOMPARE(offer->perStripTails, 4);
    project.strip.usable = in(40, 1, 2);
    QCOMPARE(harvestOffer(project, plan(project))->someGaps, 3); // all there are between four blocks
}

void OnStrip::someGapsWidenedCostNoBlock()
{
    // F3 by hand, hoop P: G = 1 7/8, G_y = 3 1/8; on 37 1/2 in the remainder of 3 1/8 pays for two wider gaps
    // of 1 1/4 each: starts 2 3/8, 2 3/8 + 6 + 3 1/8 = 11 1/2, 20 5/8, 20 5/8 + 7 7/8 = 28 1/2; used 36 7/8.
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(37, 1, 2));
    project.strip.harvest = true;
    project.strip.harvestGaps = 2;
    const Plan p = plan(project);
    QCOMPARE(p.strip.perStrip, 4);
    QCOMPARE(p.strip.gap, in(1, 7, 8));
    QCOMPARE(p.strip.wideGap, in(3, 1, 8));
    QCOMPARE(p.strip.wideGaps, 2);
    QCOMPARE(p.strip.starts, (std::vector<Length>{in(2, 3, 8), in(11, 1, 2), in(20, 5, 8), in(28, 1, 2)}));
    QCOMPARE(p.strip.used, in(36, 7, 8));
    QCOMPARE(p.strip.remainder, in(0, 5, 8));
    // Two full strips of four yield two pairs each, the last with one block none; six are needed.
    QCOMPARE(p.strip.harvestedPairs, 4);
    // Asked for more than the strip has room for, it widens what costs no block.
    project.strip.harvestGaps = 3;
    QCOMPARE(plan(project).strip.wideGaps, 2);
    // No room for one: nothing is widened and nothing is promised.
    project.strip.usable = in(35);
    QCOMPARE(plan(project).strip.wideGaps, 0);
    QCOMPARE(plan(project).strip.harvestedPairs, 0);
    // Two blocks on a strip have one gap, and it may be the wide one.
    project.strip.usable = in(20);
    QCOMPARE(plan(project).strip.perStrip, 2);
    QCOMPARE(plan(project).strip.wideGaps, 1);
    project.strip.harvest = false; // how many, but not that any
    QCOMPARE(plan(project).strip.wideGaps, 0);
    project.strip.harvest = true;
    // In work: the gap after the third block is a plain one, and a measured end moves what lies behind it.
    project.strip.usable = in(37, 1, 2);
    project.made.blocks = {stitched("A1", 1, 1)};
    StripWork work = stripWork(project, p, 1);
    QCOMPARE(work.next->gap, in(3, 1, 8));
    QCOMPARE(work.next->start, in(11, 1, 2));
    project.made.strips = {MadeStrip{1, in(8, 1, 4), {}, false, {}, {}}};
    work = stripWork(project, p, 1);
    QCOMPARE(work.next->start, in(11, 3, 8));
    QCOMPARE(work.places[3].drawn, in(28, 3, 8));
    project.made.blocks.push_back(stitched("A2", 1, 2));
    project.made.blocks.push_back(stitched("A3", 1, 3));
    project.made.strips.clear();
    work = stripWork(project, p, 1);
    QCOMPARE(work.next->gap, in(1, 7, 8));
    QCOMPARE(work.next->start, in(28, 1, 2));
}

void OnStrip::noBlockIsLostOrDoubledOnRandomStrips()
{
    planhelp::Chance chance(planhelp::seed(31));
    int tried = 0;
    for (int i = 0; i < planhelp::count(400); ++i) {
        Project project = chance.project(chance.coin() ? System::Inch : System::Metric);
        project.kits = 1;
        const Plan p = plan(project);
        if (!p.problems.empty())
            continue;
        ++tried;
        const std::size_t wanted = blockNames(project).size();
        for (std::int64_t step = chance.between(0, 30); step > 0; --step) {
            const auto all = stripsInWork(project, p);
            const auto open =
                std::find_if(all.begin(), all.end(), [](const StripWork &w) { return w.next.has_value(); });
            if (open == all.end())
                break;
            MadeBlock block = stitched(open->next->block.c_str(), open->strip, open->next->place);
            if (chance.between(0, 5) == 0)
                block.state = BlockState::Spoiled;
            project.made.blocks.push_back(block);
            if (chance.between(0, 2) == 0)
                project.made.strips.push_back(
                    ended(100'000 + step, open->next->start + p.block.outline.along)); // of another strip
        }
        std::multiset<std::string> named;
        for (const StripWork &work : stripsInWork(project, p))
            for (const StripPlace &place : work.places)
                if (!place.stitched && !place.block.empty())
                    named.insert(place.block);
        const auto left = blocksToStitch(project);
        QCOMPARE(std::multiset<std::string>(left.begin(), left.end()), named);
        std::int64_t good = 0;
        std::int64_t spoiled = 0;
        for (const MadeBlock &block : project.made.blocks)
            (block.state == BlockState::Spoiled ? spoiled : good) += 1;
        const std::int64_t eaten = std::min(spoiled, project.blocks.spare);
        QCOMPARE(static_cast<std::int64_t>(left.size()) + good,
                 static_cast<std::int64_t>(wanted) - std::min(eaten, project.blocks.spare));
    }
    QVERIFY2(tried > planhelp::count(400) / 10, qPrintable(QString::number(tried)));
}

QTEST_APPLESS_MAIN(OnStrip)
#include "tst_on_strip.moc"
