// SPDX-License-Identifier: MIT
//
// From an empty start to the last step, killed and opened again: what the screen was told was saved first.
#include "app/demo.h"
#include "app/fitmodel.h"
#include "app/shelf.h"
#include "app/wording.h"
#include "bench/account.h"
#include "bench/relay.h"
#include "project/codec.h"

#include "testing.h"
#include "trialread.h"
#include <QAbstractItemModelTester>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <cmath>

using namespace matside;

namespace {

/// The models as main wires them, over a store in a folder.
struct Desk {
    explicit Desk(const QString &dir)
        : store(std::move(openStore(dir)).value()), workspace(*store), session(workspace),
          shelf(workspace, session), fit(workspace), steps(workspace, session)
    {
    }
    std::unique_ptr<Store> store;
    Workspace workspace;
    Session session;
    Shelf shelf;
    FitModel fit;
    StepModel steps;
};

bool enter(Desk &desk, const char *pointer, const char *text)
{
    return desk.fit.enter(QLatin1String(pointer), QLatin1String(text)).value(QStringLiteral("ok")).toBool();
}

void setUp(Desk &desk)
{
    desk.shelf.createProject(QStringLiteral("Topper"), QStringLiteral("inch"));
    for (const char *side : {"/hoop/outside/0", "/hoop/outside/1"})
        QVERIFY(enter(desk, side, "9 3/4"));
    for (const char *side : {"/hoop/field/0", "/hoop/field/1"})
        QVERIFY(enter(desk, side, "7 7/8"));
}

} // namespace

class ModelsTest : public QObject {
    Q_OBJECT
private slots:
    void listsKeepTheirPromises();
    void aSecondNewPieceIsNumbered();
    void theShelfTellsHowFarAPieceIs();
    void aSumTellsPresetFromEntered();
    void emptyStartToTheLastStepAcrossStarts();
    void everyEditIsSavedBeforeItIsShown();
    void badEntriesLoseNothing();
    void dragsPlanAtEachStepAndAreOneChange();
    void spoiledPiecesAreToBeMadeAgain();
    void whatWasPutAwayIsNotOpenedAtTheStart();
    void theTrialComesBeforeAllTheCloth();
    void everySumCanBeOpened();
    void theFigureIsWhatTheRulerMeasures();
};

void ModelsTest::theShelfTellsHowFarAPieceIs()
{
    Project project = readProject(demoProject().toStdString()).value().project;
    project.made = {};
    const ShelfPiece fresh = shelfPiece(project);
    QVERIFY(fresh.goesOn);
    QVERIFY2(fresh.next.startsWith(QStringLiteral("Go on: ")), qPrintable(fresh.next));
    QCOMPARE(fresh.share, 0.0);
    const auto places = static_cast<int>(project.blocks.columns * project.blocks.rows);
    QCOMPARE(fresh.made.size(), places);
    QCOMPARE(fresh.made.count(true), 0);
    QCOMPARE(fresh.stitched, QStringLiteral("0 of %1 blocks stitched").arg(places));
    QVERIFY(fresh.view.finishedAlongMm > fresh.view.finishedAcrossMm);

    const auto made = [](const char *name, BlockState state, const char *replaces = "") {
        MadeBlock block;
        block.block = name;
        block.state = state;
        block.replaces = replaces;
        return block;
    };
    project.made.blocks = {made("A1", BlockState::Trimmed), made("A2", BlockState::Spoiled),
                           made("A3", BlockState::Spoiled), made("A3b", BlockState::Stitched, "A3")};
    const ShelfPiece begun = shelfPiece(project);
    QCOMPARE(begun.stitched, QStringLiteral("2 of %1 blocks stitched").arg(places));
    QCOMPARE(begun.made.at(0), QVariant(true));
    QCOMPARE(begun.made.at(1), QVariant(false));
    QCOMPARE(begun.made.at(2), QVariant(true));
    QVERIFY(begun.share > 0 && begun.share < 1);

    // Of a class the blocks of every piece are counted, and one piece is drawn.
    project.kits = 3;
    const ShelfPiece taught = shelfPiece(project);
    QCOMPARE(taught.made.size(), places);
    QVERIFY2(taught.stitched.contains(QString::number(3 * places)), qPrintable(taught.stitched));
}

void ModelsTest::aSecondNewPieceIsNumbered()
{
    const QTemporaryDir dir;
    Desk desk(dir.path());
    for (int piece = 0; piece < 3; ++piece)
        desk.shelf.createProject(QStringLiteral("New piece"), QStringLiteral("inch"));
    QStringList names;
    for (int row = 0; row < desk.shelf.rowCount(); ++row)
        names << desk.shelf.data(desk.shelf.index(row), Shelf::Name).toString();
    names.sort();
    QCOMPARE(names, QStringList({QStringLiteral("New piece"), QStringLiteral("New piece 2"),
                                 QStringLiteral("New piece 3")}));
}

void ModelsTest::aSumTellsPresetFromEntered()
{
    const QTemporaryDir dir;
    Desk desk(dir.path());
    setUp(desk);
    const auto told = [&desk] {
        QStringList list;
        for (const QVariant &term : desk.steps.workingFor(QStringLiteral("strip.width"))) {
            const QVariantMap row = term.toMap();
            list << (row.value(QStringLiteral("entered")).toBool()  ? QStringLiteral("entered")
                     : row.value(QStringLiteral("preset")).toBool() ? QStringLiteral("preset")
                                                                    : QStringLiteral("-"));
        }
        return list.join(QLatin1Char(' '));
    };
    // Hoop, margin, the block as sent, seam, what frays.
    QCOMPARE(told(), QStringLiteral("entered preset - preset -"));
    QVERIFY(enter(desk, "/seam", "3/8"));
    QCOMPARE(told(), QStringLiteral("entered preset - entered -"));
}

void ModelsTest::listsKeepTheirPromises()
{
    QTemporaryDir dir;
    Desk desk(dir.path());
    const auto fatal = QAbstractItemModelTester::FailureReportingMode::QtTest;
    const QAbstractItemModelTester shelf(&desk.shelf, fatal);
    const QAbstractItemModelTester fields(desk.fit.fields(), fatal);
    const QAbstractItemModelTester figures(desk.fit.figures(), fatal);
    const QAbstractItemModelTester problems(desk.fit.problems(), fatal);
    const QAbstractItemModelTester steps(desk.steps.steps(), fatal);
    setUp(desk);
    for (int station = 0; station <= 6; ++station)
        desk.session.setStation(station);
    desk.session.showShelf();
    QCOMPARE(desk.shelf.count(), 1);
    const QString id = desk.shelf.data(desk.shelf.index(0), Shelf::Id).toString();
    desk.shelf.makeAgain(id);
    desk.shelf.metricCopy(id);
    QCOMPARE(desk.shelf.count(), 3);
    desk.shelf.throwAway(id);
    QCOMPARE(desk.shelf.count(), 2);
    desk.session.undo();
    QCOMPARE(desk.shelf.count(), 3);
}

void ModelsTest::emptyStartToTheLastStepAcrossStarts()
{
    QTemporaryDir dir;
    {
        Desk desk(dir.path());
        setUp(desk);
        QCOMPARE(desk.fit.problems()->count(), 0);
    }
    int done = 0;
    bool more = true;
    while (more) {
        // A fresh start each round, as after a dead battery.
        Desk desk(dir.path());
        desk.session.resume();
        for (int tap = 0; tap < 25 && more; ++tap) {
            const auto next = nextStep(desk.workspace.steps());
            more = next.has_value();
            if (!more)
                break;
            const Step step = desk.workspace.steps()[*next];
            desk.session.setStation(static_cast<int>(step.station));
            QVERIFY(!desk.steps.finished());
            if (step.does == Does::LastLook) {
                // Not finished before the pins are counted.
                QVERIFY(!desk.steps.canGoNext());
                Project counted = desk.workspace.project();
                counted.made.pins = Pins{6, 6, false, {}};
                QVERIFY(desk.workspace.commit("pins", counted));
            }
            if (desk.steps.trialKind().isEmpty())
                desk.steps.next();
            else
                QVERIFY(readTrial(desk.steps, desk.session, desk.workspace, desk.steps.trialKind())
                            .value(QStringLiteral("ok"))
                            .toBool());
            ++done;
            QVERIFY(done < 500);
        }
        QCOMPARE(desk.store->load(desk.workspace.id()).value(), desk.workspace.document());
    }
    Desk desk(dir.path());
    desk.session.resume();
    QVERIFY(!nextStep(desk.workspace.steps()));
    QVERIFY(desk.workspace.plan().basis.blockTried && desk.workspace.plan().basis.joinTried);
}

void ModelsTest::everyEditIsSavedBeforeItIsShown()
{
    QTemporaryDir dir;
    Desk desk(dir.path());
    setUp(desk);
    int shown = 0;
    connect(&desk.workspace, &Workspace::changed, this, [&] {
        ++shown;
        QCOMPARE(desk.store->load(desk.workspace.id()).value(), desk.workspace.document());
    });
    desk.fit.nudge(QStringLiteral("/blocks/columns"), 1);
    QVERIFY(enter(desk, "/seam", "3/8"));
    desk.session.setStation(static_cast<int>(Station::Cut));
    desk.steps.next();
    QCOMPARE(shown, 3);
    desk.session.undo();
    desk.session.undo();
    QCOMPARE(desk.workspace.project().seam, Length::inches(0, 1, 2));
    QCOMPARE(desk.workspace.project().blocks.columns, 4);
}

void ModelsTest::badEntriesLoseNothing()
{
    QTemporaryDir dir;
    Desk desk(dir.path());
    setUp(desk);
    const QString before = desk.workspace.document();
    for (const char *text : {"", "seven", "-3", "0", "7 1/0", "99999999 m"}) {
        const QVariantMap answer = desk.fit.enter(QStringLiteral("/blocks/width"), QLatin1String(text));
        QVERIFY2(!answer.value(QStringLiteral("ok")).toBool(), text);
        QVERIFY2(!answer.value(QStringLiteral("says")).toString().isEmpty(), text);
    }
    QCOMPARE(desk.workspace.document(), before);
    // Too large a block is taken, told at its field, and mended by its own remedy.
    QVERIFY(enter(desk, "/blocks/width", "8"));
    QVERIFY(desk.fit.problems()->count() > 0);
    desk.fit.takeOffer(0, 0);
    QCOMPARE(desk.workspace.project().blocks.width, Length::inches(7, 7, 8));
}

void ModelsTest::dragsPlanAtEachStepAndAreOneChange()
{
    QTemporaryDir dir;
    Desk desk(dir.path());
    setUp(desk);
    const QString before = desk.workspace.document();
    desk.fit.beginDrag(QStringLiteral("/blocks/width"));
    QSet<QString> figures;
    for (int mm = 150; mm < 190; ++mm) {
        desk.fit.dragTo(QStringLiteral("/blocks/width"), mm);
        figures.insert(desk.fit.finishedAlong().text);
        QCOMPARE(desk.store->load(desk.workspace.id()).value(), before);
    }
    QVERIFY(figures.size() > 15);
    desk.fit.endDrag();
    QVERIFY(desk.store->load(desk.workspace.id()).value() != before);
    desk.session.undo();
    QCOMPARE(readProject(desk.workspace.document().toStdString()).value().project,
             readProject(before.toStdString()).value().project);
}

void ModelsTest::whatWasPutAwayIsNotOpenedAtTheStart()
{
    QTemporaryDir dir;
    Desk desk(dir.path());
    setUp(desk);
    desk.session.showShelf();
    desk.shelf.putAway(desk.workspace.id());
    desk.session.resume();
    QCOMPARE(desk.session.view(), QStringLiteral("shelf"));
    desk.shelf.setShowPutAway(true);
    desk.shelf.bringBack(desk.workspace.id()); // none is left to hide
    QVERIFY(desk.shelf.putAwayCount() == 0 && desk.shelf.count() == 1 && !desk.shelf.showPutAway());
}

void ModelsTest::theTrialComesBeforeAllTheCloth()
{
    QTemporaryDir dir;
    Desk desk(dir.path());
    setUp(desk);
    for (desk.session.setStation(static_cast<int>(Station::Cut)); desk.steps.trial(); desk.steps.next())
        QVERIFY(desk.steps.canGoNext());
    QCOMPARE(desk.steps.waiting(), QStringLiteral("First, at Hoop: test block"));
    QCOMPARE(desk.steps.waitsAt(), static_cast<int>(Station::Hoop));
    desk.steps.putOffTrial(); // and nothing is held up
    desk.steps.next();
    desk.steps.takeTrialBack(); // nor once she began without it
    QVERIFY(desk.steps.canGoNext());
}

void ModelsTest::spoiledPiecesAreToBeMadeAgain()
{
    QTemporaryDir dir;
    Desk desk(dir.path());
    setUp(desk);
    desk.steps.putOffTrial();
    desk.session.setStation(static_cast<int>(Station::Cut));
    desk.steps.next(); // the end is straight
    const int before = desk.steps.done();
    desk.steps.next();
    desk.steps.wrong(QStringLiteral("spoiled"));
    QCOMPARE(desk.steps.done(), before + 1);
    QVERIFY(!desk.steps.lastAnswer().isEmpty());
    desk.steps.back(); // what went wrong is taken back at once; only work done asks which it was
    QVERIFY(!desk.steps.askUndoDone());
    desk.steps.back();
    QVERIFY(desk.steps.askUndoDone());
    desk.steps.answerUndo(QStringLiteral("mistake"));
    QVERIFY(!desk.steps.askUndoDone());
}

void ModelsTest::everySumCanBeOpened()
{
    QTemporaryDir dir;
    Desk desk(dir.path());
    setUp(desk);
    for (int row = 0; row < desk.fit.figures()->count(); ++row) {
        const auto figure = desk.fit.figures()
                                ->data(desk.fit.figures()->index(row), FiguresModel::Figure)
                                .value<FigureView>();
        QVERIFY2(figure.hasWorking, qPrintable(figure.key));
        QVERIFY2(!desk.steps.workingFor(figure.key).isEmpty(), qPrintable(figure.key));
        QVERIFY2(desk.steps.workingSentence(figure.key).contains(figure.text), qPrintable(figure.key));
        // A sum is said, not written as a program has it.
        static const QRegularExpression called(QStringLiteral("[A-Za-z]\\("));
        QVERIFY2(!desk.steps.workingSentence(figure.key).contains(called), qPrintable(figure.key));
    }
    QVERIFY(
        desk.steps.workingSentence(QStringLiteral("strip.width")).contains(QStringLiteral("the larger of ")));
}

/// Whatever is cut, the large figure is the width that the ruler's line, and the second ruler against it,
/// come to: first from the cloth, then, once its layout is fixed, out of bands.
void ModelsTest::theFigureIsWhatTheRulerMeasures()
{
    QFile file(QStringLiteral(TEST_DATA_DIR "/../../assets/demo-project.json"));
    QVERIFY(file.open(QIODevice::ReadOnly));
    auto read = readProject(file.readAll().toStdString());
    QVERIFY(read.ok());
    Project project = read.value().project;
    project.made.trialPutOff = true;
    QTemporaryDir dir;
    Desk desk(dir.path());
    int fromCloth = 0, fromBands = 0;
    const auto look = [&] {
        desk.session.openProject(desk.store->create(QString::fromStdString(writeProject(project))).value());
        desk.session.setStation(static_cast<int>(Station::Cut));
        std::vector<Step> cuts;
        for (const Step &step : desk.workspace.steps())
            if (step.station == Station::Cut)
                cuts.push_back(step);
        QCOMPARE(desk.steps.steps()->count(), static_cast<int>(cuts.size()));
        for (int row = 0; row < desk.steps.steps()->count(); ++row) {
            const Step &step = cuts[static_cast<std::size_t>(row)];
            desk.steps.goTo(row);
            if (!step.ruler || step.ruler->on != LineOn::CutEdge)
                continue;
            const Length width = step.ruler->line + step.ruler->secondWidth;
            QVERIFY2(desk.steps.figure().text == figureText(width, project.marks()), step.id.c_str());
            // The picture: as much is kept as the ruler measures off, and the blade goes along the other
            // side.
            const RulerView drawn = desk.steps.ruler();
            QVERIFY2(std::abs(drawn.keepIn - width.asInches()) < 1e-6, step.id.c_str());
            if (step.size) {
                const Length other = width == step.size->across ? step.size->along : step.size->across;
                QVERIFY2(std::abs(drawn.cutLengthIn * drawn.layers - other.asInches()) < 1e-6,
                         step.id.c_str());
            }
            if (step.does == Does::CutPatch)
                ++(outOfBands(step) ? fromBands : fromCloth);
        }
    };
    look();
    // On one cloth the smaller patches are cut out of the larger ones' strips.
    for (Patch &patch : project.patches)
        patch.cloth = project.patches.front().cloth;
    for (const Cloth &cloth : std::vector(project.cloths))
        project = withLayout(project, plan(project), steps(project, plan(project)), cloth.id, false);
    look();
    QVERIFY(fromCloth > 0);
    QVERIFY(fromBands > 0);
}

QTEST_GUILESS_MAIN(ModelsTest)
#include "tst_models.moc"
