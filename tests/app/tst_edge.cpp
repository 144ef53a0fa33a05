// SPDX-License-Identifier: MIT
//
// The Edge station as it is shown: the piece squared from its readings, the binding laid round, corners, and
// pins that must agree before it is finished.
#include "app/desk.h"
#include "app/edgemodel.h"
#include "app/wording.h"
#include "bench/record.h"

#include "testing.h"

#include <cmath>

using namespace matside;
using desk::topper;

namespace {

/// The project with every step before this one done.
Project upTo(Project project, Does wanted)
{
    for (int guard = 0; guard < 2000; ++guard) {
        const Plan made = plan(project);
        const std::vector<Step> all = steps(project, made);
        const auto next = nextStep(all);
        if (!next || all[*next].does == wanted)
            break;
        project = withDone(project, made, all[*next]);
    }
    return project;
}

struct Desk : desk::Open {
    explicit Desk(const Project &project) : Open(project, Station::Edge) {}
    EdgeModel edge{workspace, session, steps};
};

} // namespace

class EdgeTest : public QObject {
    Q_OBJECT
private slots:
    void nothingIsJudgedBeforeItIsMeasured();
    void aSquarePieceSaysWithinWhat();
    void aFramedPieceIsSquaredTwice();
    void aRoundPillowIsCutByItsFront();
    void aLeaningPieceIsSquaredSmaller();
    void readingsThatDisagreeGiveNoCuttingAdvice();
    void aPieceIsSquaredToItsMeasuredRows();
    void readingsAreSavedAtOnceAndUndone();
    void theBindingIsHeldAgainstTheMeasuredPiece();
    void theBindingIsLaidRound();
    void roundedCornersTakeBias();
    void aCircleAndScallopsTakeBias();
    void cornersStayOnceTheBindingIsCut();
    void pinsMustAgree();
    void pinsAreExplained();
    void theNextPieceIsCountedAnew();
    void whatIsSewnToIt();
    void theStandingProjectIsLeftAlone();
};

void EdgeTest::nothingIsJudgedBeforeItIsMeasured()
{
    Desk desk(upTo(topper(), Does::SquarePiece));
    QCOMPARE(desk.edge.phase(), QStringLiteral("square"));
    QVERIFY(!desk.edge.measured());
    QVERIFY(desk.edge.verdict().isEmpty() && desk.edge.remedy().isEmpty());
    const QVariantList readings = desk.edge.readings();
    QCOMPARE(readings.size(), 6);
    QCOMPARE(readings[0].toMap().value(QStringLiteral("figure")).value<FigureView>().text,
             QStringLiteral("21 in"));
    // 21 √2 = 29.698, on a tape of sixteenths 29 11/16.
    QCOMPARE(readings[4].toMap().value(QStringLiteral("figure")).value<FigureView>().text,
             QStringLiteral("29 11/16 in"));
}

void EdgeTest::aFramedPieceIsSquaredTwice()
{
    // 3 × 3 blocks of 6 in with sashings of 1 in: outlines 20, raw 21; a frame of 1 in and a binding of 1/2
    // in on each side make 23.
    Project project = topper();
    project.edge.kind = EdgeKind::Framed;
    Desk desk(desk::withAllCut(upTo(project, Does::SquarePiece)));
    QVERIFY(desk.edge.tells().contains(QStringLiteral("21\u00a0in across, raw")));
    QVERIFY(!desk.edge.view().framed && std::abs(desk.edge.view().alongMm - 21 * 25.4) < 0.001);
    desk.edge.nudge(5, 1);
    QVERIFY(desk.edge.measured());
    desk.steps.next();
    QCOMPARE(desk.edge.phase(), QStringLiteral("frame"));
    QVERIFY(!desk.edge.measured()); // what was measured without the frame says nothing of it
    QVERIFY(desk.edge.view().framed && std::abs(desk.edge.view().alongMm - 23 * 25.4) < 0.001);
    QCOMPARE(desk.edge.frameLines().size(), 3);
    QVERIFY2(desk.edge.frameLines()[0].contains(QStringLiteral("two of {21 in}")) &&
                 desk.edge.frameLines()[0].contains(QStringLiteral("two of {23 in}")),
             qPrintable(desk.edge.frameLines()[0]));
    QVERIFY(desk.edge.frameLines()[2].contains(QStringLiteral("{1 in} wide")));
    QVERIFY(desk.edge.tells().contains(QStringLiteral("cut 2\u00a0in wide")));
    desk.steps.next();
    QCOMPARE(desk.edge.phase(), QStringLiteral("frame"));
    QCOMPARE(desk.steps.figure().text, QStringLiteral("23 in"));
    desk.steps.next();
    QCOMPARE(desk.edge.phase(), QStringLiteral("square"));
    QVERIFY(desk.edge.tells().contains(QStringLiteral("23\u00a0in across, with its frame")));
    QCOMPARE(desk.edge.readings()[0].toMap().value(QStringLiteral("figure")).value<FigureView>().text,
             QStringLiteral("23 in"));
}

void EdgeTest::aRoundPillowIsCutByItsFront()
{
    Project project = topper();
    const auto pillow = [&](CornerKind corner) {
        project.edge.corner.kind = corner;
        Desk desk(upTo(project, Does::LastLook));
        return desk.edge.useLines().constLast();
    };
    QVERIFY(pillow(CornerKind::Square).contains(QStringLiteral("envelope back of two pieces")));
    const QString round = pillow(CornerKind::Round);
    QVERIFY2(round.contains(QStringLiteral("round form")) && round.contains(QStringLiteral("across")),
             qPrintable(round));
    QVERIFY(!round.contains(QStringLiteral("form of")));
    QVERIFY(pillow(CornerKind::Rounded).contains(QStringLiteral("same round corners")));
    QVERIFY(pillow(CornerKind::Scalloped).contains(QStringLiteral("inside the scallops")));
}

void EdgeTest::aSquarePieceSaysWithinWhat()
{
    Desk desk(upTo(topper(), Does::SquarePiece));
    desk.edge.nudge(5, 1);
    QVERIFY(desk.edge.measured());
    QVERIFY2(desk.edge.verdict().startsWith(QStringLiteral("Square within {1/16 in}")),
             qPrintable(desk.edge.verdict()));
    // Of the other five nobody told yet.
    QCOMPARE(desk.edge.remedy(), QStringLiteral("Measure the rest before you cut."));
    for (int at = 0; at < 5; ++at)
        desk.edge.nudge(at, 0);
    QVERIFY(desk.edge.remedy().contains(QStringLiteral("plainly")));
}

void EdgeTest::aLeaningPieceIsSquaredSmaller()
{
    // Diagonals 29 7/8 and 29 1/2 of sides 21: lean 0.707 × 3/8 = 0.265 (F23); squared off one side the
    // largest true piece is 21 less the lean, split less half of it.
    Desk desk(upTo(topper(), Does::SquarePiece));
    QVERIFY(desk.edge.enter(4, QStringLiteral("29 7/8")).isEmpty());
    QVERIFY(desk.edge.enter(5, QStringLiteral("29 1/2")).isEmpty());
    QVERIFY2(desk.edge.verdict().contains(QStringLiteral("{3/8 in}")), qPrintable(desk.edge.verdict()));
    QCOMPARE(desk.edge.remedy(), QStringLiteral("Measure the rest before you cut."));
    for (int at = 0; at < 4; ++at)
        desk.edge.nudge(at, 0);
    QVERIFY2(desk.edge.remedy().contains(QStringLiteral("{20 13/16 in}")), qPrintable(desk.edge.remedy()));
}

void EdgeTest::readingsThatDisagreeGiveNoCuttingAdvice()
{
    Desk desk(upTo(topper(), Does::SquarePiece));
    QVERIFY(desk.edge.enter(4, QStringLiteral("31")).isEmpty());
    // The squares of a parallelogram's four sides are those of its diagonals: 4 × 21² − 31² = 803.
    const Length other = Length::inches(0, std::llround(std::sqrt(803.0) * 16), 16);
    QVERIFY2(desk.edge.verdict().contains(
                 figureText(other, desk.workspace.project().marks()).remove(QStringLiteral(" in"))),
             qPrintable(desk.edge.verdict()));
    QVERIFY(desk.edge.remedy().contains(QStringLiteral("Do not cut")));
    QVERIFY(!desk.steps.canGoNext());
    QCOMPARE(desk.steps.waiting(), QStringLiteral("First measure again"));
    QVERIFY(!desk.edge.enter(4, QStringLiteral("wide")).isEmpty());
    QVERIFY(!desk.edge.enter(4, QStringLiteral("0")).isEmpty());
    QVERIFY(desk.edge.enter(4, QStringLiteral("29 11/16")).isEmpty());
    QVERIFY(desk.steps.canGoNext());
}

void EdgeTest::aPieceIsSquaredToItsMeasuredRows()
{
    // Cloth cannot be trimmed longer than it is: rows of 20 3/4 and 21 in are eased to their mean.
    Project project = upTo(topper(), Does::SquarePiece);
    project.made.rows = {{"A", Length::inches(20, 3, 4), {}, {}}, {"B", Length::inches(21), {}, {}}};
    Desk desk(project);
    QCOMPARE(desk.steps.figure().text, QStringLiteral("20 7/8 in"));
    QVERIFY(!desk.steps.figure().hasWorking);
    QVERIFY2(desk.edge.tells().contains(QStringLiteral("as the rows measure")),
             qPrintable(desk.edge.tells()));
    desk.edge.nudge(5, 1);
    QCOMPARE(desk.kept().made.piece->sides[0], Length::inches(20, 7, 8));
}

void EdgeTest::readingsAreSavedAtOnceAndUndone()
{
    Desk desk(upTo(topper(), Does::SquarePiece));
    QVERIFY(desk.edge.enter(1, QStringLiteral("21 1/8")).isEmpty());
    QCOMPARE(desk.kept().made.piece->sides[1], Length::inches(21, 1, 8));
    desk.edge.nudge(1, -1);
    QCOMPARE(desk.kept().made.piece->sides[1], Length::inches(21, 1, 16));
    desk.session.undo();
    desk.session.undo();
    QVERIFY(!desk.kept().made.piece);
    // What a newer program wrote with the piece stays with it.
    Project project = upTo(topper(), Does::SquarePiece);
    project.made.piece =
        MadePiece{{Length::inches(21), Length::inches(21), Length::inches(21), Length::inches(21)},
                  {Length::inches(29, 3, 4), Length::inches(29, 3, 4)},
                  R"({"by":"tape"})"};
    Desk other(project);
    other.edge.nudge(0, 1);
    QVERIFY(other.kept().made.piece->rest.find("tape") != std::string::npos);
}

void EdgeTest::theBindingIsHeldAgainstTheMeasuredPiece()
{
    // Three strips of 40 1/2 in give 3 × 40 1/2 − 2 × 3 1/2 = 114 1/2 in; 84 round want 95 1/2 (case 1), so
    // up to 19 in more still reach.
    Desk desk(upTo(topper(), Does::SquarePiece));
    QVERIFY(desk.edge.roundSays().isEmpty());
    QVERIFY(desk.edge.enter(0, QStringLiteral("21 1/8")).isEmpty());
    QVERIFY(desk.edge.roundSays().isEmpty()); // within the tape's marks
    QVERIFY(desk.edge.enter(0, QStringLiteral("26")).isEmpty());
    QVERIFY(desk.edge.enter(2, QStringLiteral("26")).isEmpty());
    QVERIFY2(desk.edge.roundSays().contains(QStringLiteral("{10 in} more")),
             qPrintable(desk.edge.roundSays()));
    QVERIFY(desk.edge.roundSays().contains(QStringLiteral("reach")));
    QVERIFY(desk.edge.enter(1, QStringLiteral("26")).isEmpty());
    QVERIFY(desk.edge.enter(3, QStringLiteral("26")).isEmpty());
    QVERIFY(desk.edge.roundSays().contains(QStringLiteral("one binding strip more")));
    for (int side = 0; side < 4; ++side)
        QVERIFY(desk.edge.enter(side, QStringLiteral("20 1/2")).isEmpty());
    QVERIFY(desk.edge.roundSays().contains(QStringLiteral("{2 in} less")));
}

void EdgeTest::theBindingIsLaidRound()
{
    Desk desk(upTo(topper(), Does::SewBinding));
    QCOMPARE(desk.edge.phase(), QStringLiteral("bind"));
    const QVariantList lay = desk.edge.lay();
    QCOMPARE(lay.size(), 3); // it closes once and is joined twice
    QVERIFY(lay[0].toMap().value(QStringLiteral("says")).toString().startsWith(QStringLiteral("Begin")));
    for (const QVariant &place : lay) {
        // Not on a sashing's end (6 1/2 to 7 1/2 and 13 1/2 to 14 1/2 in from either corner), nor at a
        // corner.
        const double from = place.toMap().value(QStringLiteral("fromMm")).toDouble() / 25.4;
        for (const auto &[a, b] :
             {std::pair(-1.0, 0.0), std::pair(6.5, 7.5), std::pair(13.5, 14.5), std::pair(21.0, 22.0)})
            QVERIFY(from - 1.75 >= b - 0.001 || from + 1.75 <= a + 0.001);
    }
    QVERIFY(desk.edge.laySays().contains(QStringLiteral("No join falls on a corner")));
    QVERIFY(desk.edge.laySays().contains(QStringLiteral("{4 in}")));
    QCOMPARE(desk.edge.bindingCut().text, QStringLiteral("3 1/2 in"));
    QCOMPARE(desk.edge.bindingFolded().text, QStringLiteral("1 3/4 in"));
    QVERIFY(desk.edge.sewSays().contains(QStringLiteral("{1/2 in}")));
    QVERIFY(desk.edge.sewSays().contains(QStringLiteral("{3 1/2 in}")));
}

void EdgeTest::roundedCornersTakeBias()
{
    // Case 20 with the seam of 1/4 in and a single fold: 78 7/8 round, from a square of 14 in; bites 0.54 in.
    Project project = topper();
    project.edge.seam = Length::inches(0, 1, 4);
    project.edge.binding = Binding::Single;
    Desk desk(project);
    QCOMPARE(desk.edge.corner(), QStringLiteral("square"));
    QCOMPARE(desk.edge.cornerSays(), QStringLiteral("Square corners, mitred."));
    desk.edge.setCorner(QStringLiteral("rounded"));
    QCOMPARE(desk.edge.corner(), QStringLiteral("rounded"));
    QCOMPARE(desk.edge.radius().text, QStringLiteral("3 in"));
    QVERIFY2(desk.edge.cornerSays().contains(QStringLiteral("78 7/8 in")),
             qPrintable(desk.edge.cornerSays()));
    QVERIFY(desk.edge.cornerSays().contains(QStringLiteral("{14 in}")));
    QVERIFY2(desk.edge.biteSays().contains(QStringLiteral("9/16\u00a0in")), qPrintable(desk.edge.biteSays()));
    QVERIFY(desk.edge.enterRadius(QStringLiteral("1 1/2")).isEmpty());
    QVERIFY(!desk.edge.biteSays().contains(QStringLiteral("stippling")));
    QVERIFY(desk.edge.biteSays().contains(QStringLiteral("{2\u00a01/2\u00a0in}"))); // tight for the fold
    QVERIFY(!desk.edge.enterRadius(QStringLiteral("11")).isEmpty());
    desk.edge.nudgeRadius(1);
    QCOMPARE(*desk.kept().edge.corner.radius, Length::inches(1, 3, 4));
    desk.edge.setCorner(QStringLiteral("square"));
    QCOMPARE(desk.edge.corner(), QStringLiteral("square"));
    // It has its own cut, and the binding closes on a straight.
    desk.edge.setCorner(QStringLiteral("rounded"));
    QVERIFY(std::any_of(desk.workspace.steps().begin(), desk.workspace.steps().end(),
                        [](const Step &step) { return step.does == Does::CutBias; }));
    QCOMPARE(desk.edge.lay().size(), 1);
}

void EdgeTest::aCircleAndScallopsTakeBias()
{
    Project project = topper();
    project.edge.seam = Length::inches(0, 1, 4);
    project.edge.binding = Binding::Single;
    Desk desk(project);
    desk.edge.setCorner(QStringLiteral("circle"));
    QCOMPARE(desk.edge.cornerName(), QStringLiteral("A circle"));
    QVERIFY2(desk.edge.cornerSays().contains(QStringLiteral("{21 in} across")),
             qPrintable(desk.edge.cornerSays()));
    // π · 21 = 65.97
    QVERIFY2(desk.edge.cornerSays().contains(QStringLiteral("66 in} round")),
             qPrintable(desk.edge.cornerSays()));
    QVERIFY(desk.edge.lay().isEmpty());
    QVERIFY(!desk.edge.radius().valid);
    desk.edge.setCorner(QStringLiteral("scalloped"));
    QCOMPARE(desk.edge.depth().text, QStringLiteral("1 in"));
    QCOMPARE(desk.edge.scallopsAlong(), 3);
    QCOMPARE(desk.edge.view().scallopsAcross, 3);
    QVERIFY(desk.edge.biteSays().contains(QStringLiteral("stippling")));
    QVERIFY(desk.edge.sewSays().contains(QStringLiteral("crown")));
    desk.edge.nudgeScallops(true, 1);
    QCOMPARE(desk.edge.scallopsAlong(), 4);
    desk.edge.nudgeDepth(-4);
    QCOMPARE(desk.edge.depth().text, QStringLiteral("1/2 in"));
    QVERIFY(!desk.edge.biteSays().contains(QStringLiteral("stippling")));
    QVERIFY(!desk.edge.enterDepth(QStringLiteral("4")).isEmpty());
    QVERIFY(desk.edge.enterDepth(QStringLiteral("3/4")).isEmpty());
    QCOMPARE(*desk.kept().edge.corner.depth, Length::inches(0, 3, 4));
    desk.edge.setCorner(QStringLiteral("nonsense"));
    QCOMPARE(desk.edge.corner(), QStringLiteral("scalloped"));
}

void EdgeTest::cornersStayOnceTheBindingIsCut()
{
    Desk desk(upTo(topper(), Does::SewBinding));
    QVERIFY(!desk.edge.cornersFixed().isEmpty());
    desk.edge.setCorner(QStringLiteral("rounded"));
    QCOMPARE(desk.edge.corner(), QStringLiteral("square"));
}

void EdgeTest::pinsMustAgree()
{
    Desk desk(upTo(topper(), Does::LastLook));
    QCOMPARE(desk.edge.phase(), QStringLiteral("last"));
    QVERIFY(!desk.steps.canGoNext());
    QVERIFY(!desk.steps.waiting().isEmpty());
    desk.steps.next();
    QVERIFY(desk.steps.doing() == QStringLiteral("last-look"));
    QVERIFY(desk.edge.enterPins(true, QStringLiteral("24")).isEmpty());
    desk.edge.nudgePins(false, 23);
    QVERIFY(!desk.edge.pinsMatch());
    QVERIFY2(desk.edge.pinsSay().startsWith(QStringLiteral("1 ")), qPrintable(desk.edge.pinsSay()));
    QVERIFY(!desk.steps.canGoNext());
    desk.edge.nudgePins(false, 1);
    QVERIFY(desk.edge.pinsMatch());
    QCOMPARE(desk.kept().made.pins->out, std::int64_t(24));
    QVERIFY(desk.steps.canGoNext());
    desk.steps.next();
    QVERIFY(desk.steps.finished());
    QVERIFY(!desk.edge.enterPins(true, QStringLiteral("many")).isEmpty());
}

void EdgeTest::pinsAreExplained()
{
    Desk desk(upTo(topper(), Does::LastLook));
    desk.edge.nudgePins(true, 3);
    desk.edge.explainPins();
    QVERIFY(desk.steps.canGoNext());
    // Counted again, what was explained no longer holds.
    desk.edge.nudgePins(true, 1);
    QVERIFY(!desk.steps.canGoNext());
    // None used at all is said too, not taken for granted.
    Desk other(upTo(topper(), Does::LastLook));
    other.edge.explainPins();
    QVERIFY(other.steps.canGoNext());
    QVERIFY(other.kept().made.pins->explained);
}

void EdgeTest::theNextPieceIsCountedAnew()
{
    Project project = topper();
    project.kits = 2;
    Desk desk(upTo(project, Does::LastLook));
    desk.edge.nudgePins(true, 5);
    desk.edge.nudgePins(false, 5);
    desk.edge.nudge(0, 1);
    desk.steps.next();
    QCOMPARE(desk.steps.doing(), QStringLiteral("last-look"));
    QVERIFY(!desk.steps.canGoNext());
    QVERIFY(!desk.kept().made.pins && !desk.kept().made.piece);
}

void EdgeTest::whatIsSewnToIt()
{
    Desk desk(topper());
    const QStringList lines = desk.edge.useLines();
    QCOMPARE(lines.size(), 3);
    // Published show rules: 8 1/2–9 in wide, 1–2 in shorter than the width.
    QVERIFY(lines[1].contains(QStringLiteral("{19 in}")) && lines[1].contains(QStringLiteral("{8 1/2 in}")));
    QVERIFY(lines[2].contains(QStringLiteral("{22 in}")));
    QVERIFY(desk.edge.careLines()[0].contains(QStringLiteral("Not a hot mat")));
}

void EdgeTest::theStandingProjectIsLeftAlone()
{
    const Project project = upTo(topper(), Does::SquarePiece);
    Desk desk(project);
    (void)desk.edge.view();
    (void)desk.edge.readings();
    (void)desk.edge.lay();
    (void)desk.edge.binding();
    desk.edge.nudge(9, 1);
    QVERIFY(desk.kept() == project);
}

QTEST_GUILESS_MAIN(EdgeTest)
#include "tst_edge.moc"
