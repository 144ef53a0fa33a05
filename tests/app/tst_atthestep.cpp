// SPDX-License-Identifier: MIT
//
// What the step at hand says in time: what it is for, what comes first, and what was never read.
#include "app/edgemodel.h"
#include "app/hoopmodel.h"
#include "app/shelf.h"
#include "app/stockmodel.h"
#include "bench/record.h"
#include "stitched.h"

#include "testing.h"

using namespace matside;

namespace {

/// The first step of this kind at the station, in hand.
bool take(StepModel &steps, const char *doing)
{
    for (int row = 0; row < steps.steps()->count(); ++row) {
        steps.goTo(row);
        if (steps.doing() == QLatin1String(doing))
            return true;
    }
    return false;
}

Project unpressed()
{
    Project project = stitched::topper();
    project.made.cut.clear();
    return project;
}

} // namespace

class AtTheStep : public QObject {
    Q_OBJECT
private slots:
    void theSumOfASashingEndsAtWhatIsCut();
    void theTrialsStripSaysWhatItIsFor();
    void aBlockIsPressedAndDryBeforeItIsCut();
    void theBobbinSpeaksUpBeforeTheBlockItWillNotLastFor();
    void aReadingOfThePieceIsOneOnlyWhenItWasTaken();
    void clothIsListedWithThePieceOfIt();
    void aPieceInMillimetresIsToldAsOne();
};

void AtTheStep::theSumOfASashingEndsAtWhatIsCut()
{
    for (const System system : {System::Inch, System::Metric}) {
        Project project = system == System::Inch ? desk::topper() : inWholeMillimetres(desk::topper());
        project.made.trialPutOff = true;
        desk::Open desk(project, Station::Cut);
        QVERIFY(take(desk.steps, "cut-short"));
        const FigureView cut = desk.steps.figure();
        QVERIFY(cut.hasWorking);
        QVERIFY(desk.steps.workingSentence(cut.key).endsWith(QStringLiteral("{%1}").arg(cut.text)));
        // The length on the block, and the spare beside it.
        const QVariantList terms = desk.steps.workingFor(cut.key);
        QCOMPARE(terms.size(), 2);
        QCOMPARE(terms[0].toMap().value(QStringLiteral("figureKey")).toString(),
                 QStringLiteral("sashing.shorts.length"));
        QCOMPARE(terms[1].toMap().value(QStringLiteral("name")).toString(), QStringLiteral("spare"));
        QVERIFY(terms[0].toMap().value(QStringLiteral("text")).toString() != cut.text);
    }
}

void AtTheStep::theTrialsStripSaysWhatItIsFor()
{
    Project project = desk::topper();
    project.made.trialPutOff = false;
    desk::Open desk(project, Station::Cut);
    QVERIFY(take(desk.steps, "cut-strip"));
    QVERIFY(desk.steps.trial());
    QCOMPARE(desk.steps.title(), QStringLiteral("Trial strip"));
    QCOMPARE(desk.steps.trialSays(),
             QStringLiteral("This strip is for the test block: one more than the 3 that Fit counts."));
    QVERIFY(desk.steps.doesText().endsWith(QStringLiteral("for the test block.")));
    desk.steps.putOffTrial();
    QVERIFY(take(desk.steps, "cut-strip"));
    QCOMPARE(desk.steps.title(), QStringLiteral("Strip 1 of 3"));
    QCOMPARE(desk.steps.trialSays(), QString());
}

void AtTheStep::aBlockIsPressedAndDryBeforeItIsCut()
{
    desk::Open desk(unpressed(), Station::Trim);
    QCOMPARE(desk.steps.doing(), QStringLiteral("press-block"));
    QCOMPARE(desk.steps.block(), QStringLiteral("A1"));
    QVERIFY(desk.steps.doesText().contains(QStringLiteral("dry")));
    QVERIFY(!desk.steps.sided());
    QCOMPARE(desk.steps.actionText(), QStringLiteral("Pressed"));
    QCOMPARE(desk.steps.hazard(), QStringLiteral("Hot iron"));
    desk.steps.next();
    QCOMPARE(desk.steps.doing(), QStringLiteral("rough-apart"));
    QCOMPARE(desk.steps.block(), QStringLiteral("A1"));
    desk.steps.next();
    QCOMPARE(desk.steps.doing(), QStringLiteral("press-block"));
    QCOMPARE(desk.steps.block(), QStringLiteral("A2"));
    // Trimming is reached through the list, and waits for the iron too.
    QVERIFY(take(desk.steps, "trim-block"));
    QCOMPARE(desk.steps.block(), QStringLiteral("A1"));
    desk.steps.next();
    QVERIFY(!take(desk.steps, "trim-block"));
    QCOMPARE(desk.steps.doing(), QStringLiteral("press-block"));
    // What was pressed at the hoop is not asked for again.
    desk::Open pressed(stitched::topper(), Station::Trim);
    QCOMPARE(pressed.steps.doing(), QStringLiteral("trim-block"));
}

void AtTheStep::theBobbinSpeaksUpBeforeTheBlockItWillNotLastFor()
{
    Project project = desk::topper();
    for (const char *cloth : {"front", "back", "batting"}) {
        project.made.cut.push_back({cloth, "straighten", 1, 0, {}});
        project.made.cut.push_back({cloth, "cut-strip", 3, 0, {}});
    }
    project.made.cut.push_back({"", "layer", 3, 0, {}});
    project.made.cut.push_back({"", "mark-strip", 3, 0, {}});
    project.thread.bobbin = forecastOf(project, plan(project)).use.bobbin * 2; // for two blocks
    desk::Open desk(project, Station::Hoop);
    HoopModel hoop(desk.workspace, desk.session, desk.steps);
    QCOMPARE(hoop.bobbinDue(), QString());
    desk.steps.next();
    QCOMPARE(hoop.bobbinDue(), QString());
    QVERIFY(!hoop.bobbinSays().isEmpty());
    desk.steps.next();
    QCOMPARE(hoop.bobbinDue(), QStringLiteral("Bobbin: change it before this block"));
    desk.steps.newBobbin();
    QCOMPARE(hoop.bobbinDue(), QString());
}

void AtTheStep::aReadingOfThePieceIsOneOnlyWhenItWasTaken()
{
    Project project = stitched::topper(9);
    project.made.cut.push_back({"", "join-short", 6, 0, {}});
    project.made.cut.push_back({"", "join-row", 3, 0, {}});
    project.made.cut.push_back({"", "join-long-row", 2, 0, {}});
    desk::Open desk(project, Station::Edge);
    EdgeModel edge(desk.workspace, desk.session, desk.steps);
    QCOMPARE(edge.phase(), QStringLiteral("square"));
    const auto taken = [&](int at) {
        return edge.readings()[at].toMap().value(QStringLiteral("taken")).toBool();
    };
    QVERIFY(!taken(0));
    edge.nudge(0, 0); // read just as it is shown
    QVERIFY(edge.measured());
    QVERIFY(taken(0) && !taken(1));
    QCOMPARE(edge.unreadSays(), QStringLiteral("5 of 6 not yet read"));
    QVERIFY(edge.verdict().endsWith(QStringLiteral("if the rest is as planned.")));
    QCOMPARE(edge.remedy(), QStringLiteral("Measure the rest before you cut."));
    QVERIFY(!edge.squareEnough());
    for (int at = 1; at < 6; ++at)
        edge.nudge(at, 0);
    QCOMPARE(edge.unreadSays(), QString());
    QVERIFY(edge.squareEnough());
    QVERIFY(edge.remedy().startsWith(QStringLiteral("Trim it plainly")));
    // Taken back, it was not measured: nothing of it counts.
    for (int at = 0; at < 6; ++at)
        desk.session.undo();
    QVERIFY(!edge.measured() && !taken(0));
}

void AtTheStep::clothIsListedWithThePieceOfIt()
{
    Project project = desk::topper();
    QVERIFY(project.cloths.empty());
    desk::Open desk(project, Station::Shop);
    StockModel stock(desk.workspace, desk.session);
    QCOMPARE(stock.whyNot(), QString());
    QCOMPARE(stock.addText(), QStringLiteral("List front cloth at Fit, add this piece"));
    stock.pick(QStringLiteral("back"));
    stock.add();
    const Project kept = desk.kept();
    QCOMPARE(kept.cloths.size(), std::size_t(1));
    QVERIFY(kept.cloths[0].role == ClothRole::Back);
    QCOMPARE(kept.cloths[0].name, std::string("back cloth"));
    QCOMPARE(kept.cloths[0].owned.size(), std::size_t(1));
    QCOMPARE(stock.addText(), QStringLiteral("Add this piece"));
    QCOMPARE(stock.pieces().size(), 1);
    // The other uses can still be listed so, and one press takes both back.
    const auto choices = stock.amounts()[0].toMap().value(QStringLiteral("choices")).toList();
    QCOMPARE(choices[0].toMap().value(QStringLiteral("says")).toString(), QStringLiteral("back cloth"));
    QVERIFY(choices.size() >= 3);
    desk.session.undo();
    QVERIFY(desk.kept() == project || desk.kept().cloths.empty());
}

void AtTheStep::aPieceInMillimetresIsToldAsOne()
{
    desk::Open desk(desk::topper(), Station::Fit);
    Shelf shelf(desk.workspace, desk.session);
    shelf.reload();
    QCOMPARE(shelf.count(), 1);
    QVERIFY(!shelf.data(shelf.index(0), Shelf::Metric).toBool());
    shelf.metricCopy(desk.workspace.id());
    int metric = 0;
    for (int row = 0; row < shelf.count(); ++row)
        metric += shelf.data(shelf.index(row), Shelf::Metric).toBool() ? 1 : 0;
    QCOMPARE(shelf.count(), 2);
    QCOMPARE(metric, 1);
}

QTEST_GUILESS_MAIN(AtTheStep)
#include "tst_atthestep.moc"
