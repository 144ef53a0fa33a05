// SPDX-License-Identifier: MIT
//
// Trim and Join as they are shown: four sides, a measured block's finding, a common size, pairs of blocks in
// order, marks and rows.
#include "app/findings.h"
#include "app/stitched.h"

#include <nlohmann/json.hpp>

#include "testing.h"
#include "trialread.h"

using namespace matside;

using stitched::Desk;
using stitched::topper;

class TrimAndJoin : public QObject {
    Q_OBJECT
private slots:
    void fourSidesThenTheBlockIsTrimmed();
    void theThirdSideNamesBothReadings();
    void backGoesOneSideBackBeforeItUndoes();
    void aLeaningBlockIsSplit();
    void readingsThatDisagreeGiveNoCuttingAdvice();
    void onlyReadingsThatWereTakenAreDoubted();
    void readingsAreKeptWithTheirBlock();
    void theStripComesApartInTheMiddleOfEachGap();
    void aStripIsApartWithItsLastCut();
    void everyVerdictAndRemedyHasWords();
    void pairsFollowTheLayoutRowByRow();
    void theSectionIsThePlans();
    void aFoldThatWouldBeMissedIsNamed();
    void rowsAreJudgedAgainstTheirMean();
    void theTestJoinSetsTheSeam();
    void theTestJoinOfAWideSashingHasItsBattingIn();
    void orTheStripsAreCutAnew();
    void anOffSizeBlockIsSwappedToAnEnd();
    void whatIsSewnIsNotSwapped();
};

void TrimAndJoin::fourSidesThenTheBlockIsTrimmed()
{
    Desk desk(topper(), Station::Trim);
    QVERIFY(desk.trim.trimming());
    for (int side = 1; side <= 4; ++side) {
        QCOMPARE(desk.trim.side(), side);
        QCOMPARE(desk.steps.done(), 0);
        QVERIFY(desk.trim.title().contains(QStringLiteral("A1")));
        QVERIFY(!desk.trim.checkSays().isEmpty());
        desk.trim.cut();
    }
    QCOMPARE(desk.steps.done(), 1);
    QCOMPARE(desk.trim.side(), 1);
    QVERIFY(desk.trim.title().contains(QStringLiteral("A2")));
    QVERIFY(desk.kept().made.blocks[0].state == BlockState::Trimmed);
}

void TrimAndJoin::theThirdSideNamesBothReadings()
{
    Desk desk(topper(), Station::Trim);
    QCOMPARE(desk.trim.figure().text, QStringLiteral("1/2 in"));
    QVERIFY(!desk.trim.second().valid);
    desk.trim.cut();
    desk.trim.cut();
    QCOMPARE(desk.trim.figure().text, QStringLiteral("8 in"));
    QCOMPARE(desk.trim.second().text, QStringLiteral("1/2 in"));
}

void TrimAndJoin::backGoesOneSideBackBeforeItUndoes()
{
    Desk desk(topper(), Station::Trim);
    desk.trim.cut();
    desk.trim.cut();
    desk.steps.back();
    QCOMPARE(desk.trim.side(), 2);
    QVERIFY(!desk.steps.askUndoDone());
}

void TrimAndJoin::aLeaningBlockIsSplit()
{
    // Case 15 of the trade notes: sides 7, diagonals 10 and 9 13/16: lean 1/8; 9 3/4 gives 3/16.
    Desk desk(topper(), Station::Trim);
    desk.measure.begin();
    QCOMPARE(desk.measure.block(), QStringLiteral("A1"));
    QCOMPARE(desk.measure.kind(), QStringLiteral("plain"));
    QCOMPARE(desk.measure.times(), 1.0); // square: there is nothing to exaggerate, and nothing is said of it
    QVERIFY(desk.measure.enter(4, QStringLiteral("10")).isEmpty());
    QVERIFY(desk.measure.enter(5, QStringLiteral("9 3/4")).isEmpty());
    QCOMPARE(desk.measure.kind(), QStringLiteral("split"));
    QVERIFY(desk.measure.verdict().contains(QStringLiteral("3/16")));
    QCOMPARE(desk.measure.corners().size(), 4);
    QCOMPARE(desk.measure.times(), 5.0);
    QVERIFY(!desk.measure.enter(4, QStringLiteral("abc")).isEmpty());
}

void TrimAndJoin::readingsThatDisagreeGiveNoCuttingAdvice()
{
    Desk desk(topper(), Station::Trim);
    desk.measure.begin();
    QVERIFY(desk.measure.enter(4, QStringLiteral("10 3/4")).isEmpty());
    QCOMPARE(desk.measure.kind(), QStringLiteral("measure-again"));
    QVERIFY(desk.measure.remedy().contains(QStringLiteral("Do not cut")));
}

void TrimAndJoin::onlyReadingsThatWereTakenAreDoubted()
{
    // A true 6 1/2 in square under a planned 7: four sides and one diagonal (9 3/16) are read, the other
    // still stands at 9 7/8 in. K = (9.1875² + 9.875² − 4 · 6.5²) / 13 = 0.99 in: it is asked for.
    Desk desk(topper(), Station::Trim);
    desk.measure.begin();
    const auto suspects = [&desk] {
        int found = 0;
        for (const QVariant &reading : desk.measure.readings())
            found += reading.toMap()[QStringLiteral("suspect")].toBool() ? 1 : 0;
        return found;
    };
    for (int side = 0; side < 4; ++side)
        QVERIFY(desk.measure.enter(side, QStringLiteral("6 1/2")).isEmpty());
    QVERIFY(desk.measure.enter(4, QStringLiteral("9 3/16")).isEmpty());
    QCOMPARE(desk.measure.kind(), QStringLiteral("measure-again"));
    QCOMPARE(suspects(), 0);
    QCOMPARE(desk.measure.remedy(),
             QStringLiteral("Still to read: diagonal from top right. Do not cut yet."));
    QVERIFY(!desk.measure.mayKeep() && !desk.measure.save());
    QVERIFY(!desk.kept().made.blocks[0].sides);
    // The same value typed is a reading: now all six are taken, and one of them is doubted.
    QVERIFY(desk.measure.enter(5, QStringLiteral("9 7/8")).isEmpty());
    QVERIFY(desk.measure.mayKeep());
    QCOMPARE(suspects(), 1);
    QVERIFY(desk.measure.save());
    desk.measure.begin(); // and stays so when they are opened again
    QCOMPARE(suspects(), 1);
    QVERIFY(desk.measure.enter(5, QStringLiteral("9 3/16")).isEmpty());
    QCOMPARE(desk.measure.kind(), QStringLiteral("remake"));
}

void TrimAndJoin::readingsAreKeptWithTheirBlock()
{
    Desk desk(topper(), Station::Trim);
    desk.measure.begin();
    desk.measure.nudge(0, 1);
    QVERIFY(desk.measure.save());
    QCOMPARE((*desk.kept().made.blocks[0].sides)[0], Length::inches(7, 1, 16));
    const auto file = findingsFile(desk.workspace.project(), desk.workspace.plan());
    QCOMPARE(file.size(), std::size_t(1));
    QCOMPARE(file[0]["block"], "A1");
    desk.session.undo();
    QVERIFY(!desk.kept().made.blocks[0].sides);
}

void TrimAndJoin::theStripComesApartInTheMiddleOfEachGap()
{
    Project project = topper();
    project.made.cut.back().count = 5; // the first strip and one block of the second
    Desk desk(project, Station::Trim);
    QCOMPARE(desk.steps.doing(), QStringLiteral("rough-apart"));
    const Plan &plan = desk.workspace.plan();
    const QVariantMap apart = desk.trim.apart();
    const auto full = plan.strip.perStrip;
    QCOMPARE(apart[QStringLiteral("done")].toInt(), int(5 % full));
    const QVariantList starts = apart[QStringLiteral("starts")].toList();
    const QVariantList cuts = apart[QStringLiteral("cuts")].toList();
    QCOMPARE(cuts.size(), starts.size() - 1);
    for (int i = 0; i < cuts.size(); ++i) {
        // As far from the outline before as from the one after.
        const double before = starts[i].toDouble() + 7 * 25.4, after = starts[i + 1].toDouble();
        QVERIFY(std::abs((before + after) / 2 - cuts[i].toDouble()) < 0.01);
    }
    desk.steps.next();
    QCOMPARE(desk.trim.apart()[QStringLiteral("done")].toInt(), int(6 % full));
}

void TrimAndJoin::aStripIsApartWithItsLastCut()
{
    // n blocks lie on a strip with n − 1 gaps: so many cuts are drawn, and so many are asked for.
    Project project = topper();
    project.made.cut.pop_back();
    Desk desk(project, Station::Trim);
    const std::int64_t full = desk.workspace.plan().strip.perStrip, blocks = 9;
    QVERIFY(full > 1);
    std::int64_t cuts = 0;
    for (int press = 0; press < blocks && desk.steps.doing() == QStringLiteral("rough-apart"); ++press) {
        const QVariantMap apart = desk.trim.apart();
        const bool drawn =
            apart[QStringLiteral("done")].toInt() < apart[QStringLiteral("cuts")].toList().size();
        QCOMPARE(desk.steps.caution().isEmpty(), !drawn);
        QCOMPARE(desk.steps.actionText().contains(QStringLiteral("blade closed")), drawn);
        QCOMPARE(desk.steps.doesText().startsWith(QStringLiteral("No cut")), !drawn);
        cuts += drawn ? 1 : 0;
        desk.steps.next();
    }
    QVERIFY(desk.steps.sided()); // all are apart
    QCOMPARE(cuts, blocks - (blocks + full - 1) / full);
}

void TrimAndJoin::everyVerdictAndRemedyHasWords()
{
    for (int i = 0; i <= static_cast<int>(FindingKind::MeasureAgain); ++i)
        QVERIFY(wordsFor(verdictWords(), nameOf(static_cast<FindingKind>(i))).has_value());
    QVERIFY(wordsFor(verdictWords(), nameOf(Remedy::ReadTheRest)).has_value());
    for (int i = 0; i <= static_cast<int>(Remedy::ReadTheRest); ++i)
        QVERIFY(wordsFor(remedyWords(), nameOf(static_cast<Remedy>(i))).has_value());
    for (std::size_t i = 0; i < 6; ++i)
        QVERIFY(!readingText(i).isEmpty());
}

void TrimAndJoin::pairsFollowTheLayoutRowByRow()
{
    Desk desk(topper(9), Station::Join);
    const QStringList pairs{QStringLiteral("A1 to A2"), QStringLiteral("A2 to A3"),
                            QStringLiteral("B1 to B2"), QStringLiteral("B2 to B3"),
                            QStringLiteral("C1 to C2"), QStringLiteral("C2 to C3")};
    for (const QString &pair : pairs) {
        QCOMPARE(desk.steps.doing(), QStringLiteral("join-short"));
        QCOMPARE(desk.join.title(), pair);
        int now = 0;
        for (const QVariant &block : desk.join.blocks())
            now += block.toMap().value(QStringLiteral("now")).toBool() ? 1 : 0;
        QCOMPARE(now, 2);
        desk.steps.next();
    }
    QCOMPARE(desk.join.title(), QStringLiteral("Row A"));
}

void TrimAndJoin::theSectionIsThePlans()
{
    Desk desk(topper(9), Station::Join);
    const SectionView view = desk.join.section();
    QVERIFY(view.backed);
    QCOMPARE(view.seamMm, 12.7);
    QCOMPARE(view.finishedMm, 25.4);
    QCOMPARE(desk.join.fold().text, QStringLiteral("5/16 in"));
    QCOMPARE(desk.join.held().text, QStringLiteral("5/32 in"));
    QCOMPARE(view.foldMm, Length::inches(0, 5, 16).asMm());
    Project clean = topper(9);
    clean.build = Build::CleanBack;
    Desk other(clean, Station::Join);
    QVERIFY(!other.join.section().backed);
    QVERIFY(!other.join.fold().valid);
}

void TrimAndJoin::aFoldThatWouldBeMissedIsNamed()
{
    // F10's table for a 1/2 in seam: 3/8 in still catches 3/32, 7/16 in would be missed.
    Desk desk(topper(9), Station::Join);
    QCOMPARE(desk.join.missed().text, QStringLiteral("7/16 in"));
}

void TrimAndJoin::rowsAreJudgedAgainstTheirMean()
{
    Desk desk(topper(9), Station::Join);
    for (int i = 0; i < 6; ++i)
        desk.steps.next();
    QVERIFY(desk.join.measuring());
    QVERIFY(!desk.join.measureRow(QStringLiteral("2")).value(QStringLiteral("ok")).toBool());
    QVERIFY(desk.join.measureRow(QStringLiteral("24")).value(QStringLiteral("ok")).toBool());
    QCOMPARE(desk.kept().made.rows[0].joins, (std::vector<Length>{Length::inches(8), Length::inches(16)}));
    QVERIFY(desk.join.measureRow(QStringLiteral("24 1/16")).value(QStringLiteral("ok")).toBool());
    QVERIFY(desk.join.rowSays().contains(QStringLiteral("leave it")));
    // Three columns may be eased by 3/16 in (F24); 1/2 in is past it.
    QVERIFY(desk.join.measureRow(QStringLiteral("24 1/2")).value(QStringLiteral("ok")).toBool());
    QVERIFY2(desk.join.rowSays().contains(QStringLiteral("resew")), qPrintable(desk.join.rowSays()));
}

namespace {

/// The trade notes' example: strips of 2 in, a seam of 1/2, and the allowances overlap by 1/16 in.
Project overlapping()
{
    Project project = topper(9);
    project.made.testJoin =
        TestJoin{Length::inches(0, 1, 2), Length::inches(0, -1, 16), std::nullopt, std::nullopt, {}};
    return project;
}

} // namespace

void TrimAndJoin::theTestJoinSetsTheSeam()
{
    Desk plain(topper(9), Station::Join);
    QVERIFY(!plain.join.tested() && plain.join.testSays().isEmpty() && plain.join.otherSays().isEmpty());
    QVERIFY(!plain.join.useOther().value(QStringLiteral("ok")).toBool());
    // New seam 1/2 + (−1/16 − 1/32) / 4 = 0.477 in, shown as 15/32; the outline then shows by 1/32 in.
    Desk desk(overlapping(), Station::Join);
    QVERIFY(desk.join.testSays().contains(QStringLiteral("overlap by {1/16 in}")));
    QVERIFY2(desk.join.mendSays().contains(QStringLiteral("15/32 in")), qPrintable(desk.join.mendSays()));
    QVERIFY(desk.join.testLines().join(u' ').contains(QStringLiteral("outline")));
    // Its section is the join as it was sewn: from seam to seam two allowances less what lies over each
    // other.
    const SectionView sewn = desk.join.testSection();
    QVERIFY(sewn.tested && !desk.join.section().tested);
    QVERIFY(qFuzzyCompare(sewn.gapMm, -25.4 / 16) && qFuzzyCompare(sewn.seamMm, 12.7));
    QVERIFY(qFuzzyCompare(sewn.finishedMm, 25.4 * 15 / 16));
    QCOMPARE(desk.join.testGap().text, QStringLiteral("1/16 in"));
    QVERIFY(!plain.join.testSection().tested && !plain.join.testGap().valid);
    QCOMPARE(desk.join.otherSays(), QStringLiteral("Cut strips a generous 2 1/16 in instead"));
}

void TrimAndJoin::theTestJoinOfAWideSashingHasItsBattingIn()
{
    // Sashing 1 1/2 in, allowances of 1/2: 1/2 in of batting lies between. With it in, as planned, no gap is
    // left: (0 − 1/32) / 4 off the seam is 0.492 in, not the 0.617 that the batting's own 1/2 in would ask
    // for.
    Project project = topper();
    project.made = Made();
    project.sashing.finished = Length::inches(1, 1, 2);
    const auto all = steps(project, plan(project));
    const auto test =
        std::find_if(all.begin(), all.end(), [](const Step &step) { return step.does == Does::TestJoin; });
    QVERIFY(test != all.end());
    QVERIFY2(doesText(*test, project).contains(QStringLiteral("batting")),
             qPrintable(doesText(*test, project)));
    Desk desk(project, Station::Join);
    QVERIFY(readTrial(desk.steps, desk.session, desk.workspace, QStringLiteral("test-join"))
                .value(QStringLiteral("ok"))
                .toBool());
    QCOMPARE(desk.kept().made.testJoin->gap, Length());
    const Length next = plan(desk.kept()).basis.nextSeam;
    QVERIFY(next < Length::inches(0, 1, 2) && next > Length::inches(0, 31, 64));
    QVERIFY2(desk.join.testSays().contains(QStringLiteral("batting")), qPrintable(desk.join.testSays()));
}

void TrimAndJoin::orTheStripsAreCutAnew()
{
    Desk desk(overlapping(), Station::Join);
    QVERIFY(desk.join.useOther().value(QStringLiteral("ok")).toBool());
    const Project kept = desk.kept();
    const Plan after = plan(kept);
    QCOMPARE(after.sashing.cutFront, Length::inches(2, 3, 32));
    QCOMPARE(after.basis.nextSeam, Length::inches(0, 1, 2)); // not mended twice
    QVERIFY(after.problems.empty());
    QVERIFY(desk.join.otherSays().isEmpty());
    QVERIFY(desk.join.mendSays().contains(QStringLiteral("{a generous 2 1/16 in}")));
    // F9 the other way about: with those strips the gap the same bulk leaves is the wanted 1/32 in.
    const Length bulk =
        gapLeft(Length::inches(2), Length::inches(0, 1, 2), Length()) - Length::inches(0, -1, 16);
    QCOMPARE(gapLeft(after.sashing.cutFront, after.basis.nextSeam, bulk), Length::inches(0, 1, 32));
    QCOMPARE(writeProject(readProject(writeProject(kept)).value().project), writeProject(kept));
    desk.session.undo();
    QVERIFY(desk.kept().made.testJoin->mend == MendedBy::Seam);
    // Strips that are cut stay as they are.
    Project cut = overlapping();
    cut.made.cut.push_back({"front", "cut-band", 1, 0, {}});
    Desk other(cut, Station::Join);
    QVERIFY(other.join.otherSays().isEmpty());
    QVERIFY(other.join.tested());
}

void TrimAndJoin::anOffSizeBlockIsSwappedToAnEnd()
{
    Project project = topper(9);
    for (MadeBlock &block : project.made.blocks)
        block.outline = {Length::inches(7), Length::inches(7)};
    project.made.blocks[4].outline = {Length::inches(7, 1, 8), Length::inches(7)}; // B2
    Desk desk(project, Station::Join);
    QVERIFY(desk.join.mayLay());
    QVERIFY2(desk.join.swapSays().startsWith(QStringLiteral("Swap B2 and B1: B2 is {1/8 in} off size")),
             qPrintable(desk.join.swapSays()));
    QVERIFY(desk.join.takeSwap().value(QStringLiteral("ok")).toBool());
    QVERIFY(desk.join.swapSays().isEmpty());
    const Project kept = desk.kept();
    QCOMPARE(kept.made.blocks[4].block, "B2"); // the label stays with the block
    QCOMPARE(kept.made.blocks[4].lies, "B1");
    QCOMPARE(kept.made.blocks[3].lies, "B2");
    QCOMPARE(desk.join.blocks()[3].toMap().value(QStringLiteral("block")).toString(), QStringLiteral("B2"));
    // The pairs to join follow where the blocks lie; the rows keep their letters.
    desk.steps.next();
    desk.steps.next();
    QCOMPARE(desk.join.title(), QStringLiteral("B2 to B1"));
    QVERIFY(!desk.join.takeSwap().value(QStringLiteral("ok")).toBool());
    // Swapped back by hand, nothing is left on record.
    QVERIFY(desk.join.swapPlaces(3, 4).value(QStringLiteral("ok")).toBool());
    QVERIFY(desk.kept().made.blocks[3].lies.empty() && desk.kept().made.blocks[4].lies.empty());
}

void TrimAndJoin::whatIsSewnIsNotSwapped()
{
    Project project = topper(9);
    Desk desk(project, Station::Join);
    desk.steps.next(); // A1 to A2
    QVERIFY(!desk.join.swapPlaces(0, 8).value(QStringLiteral("ok")).toBool());
    QVERIFY(!desk.join.swapPlaces(1, 8).value(QStringLiteral("ok")).toBool());
    QVERIFY(desk.join.swapPlaces(2, 8).value(QStringLiteral("ok")).toBool());
    QVERIFY(!desk.join.swapPlaces(2, 9).value(QStringLiteral("ok")).toBool());
    QCOMPARE(desk.join.title(), QStringLiteral("A2 to C3"));
    for (int i = 0; i < 5; ++i)
        desk.steps.next();
    QCOMPARE(desk.join.title(), QStringLiteral("Row A"));
    QVERIFY(!desk.join.mayLay());
    project.kits = 2; // the labels of several pieces are not told apart on one layout
    Desk two(project, Station::Join);
    QVERIFY(!two.join.mayLay());
}

QTEST_GUILESS_MAIN(TrimAndJoin)
#include "tst_trimjoin.moc"
