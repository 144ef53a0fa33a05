// SPDX-License-Identifier: MIT
//
// What the screen is told, and when: every edit and every "done" lies in the store before it is shown.
#include "app/fitmodel.h"
#include "app/session.h"
#include "app/shelf.h"
#include "app/stepmodel.h"
#include "project/codec.h"

#include "testing.h"
#include "trialread.h"
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>

using namespace matside;

namespace {

QString example()
{
    QFile file(QStringLiteral(TEST_DATA_DIR "/project-example.json"));
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

/// A store in a folder of its own and everything that stands on it.
struct Bench {
    explicit Bench(const QString &document = example()) : store(std::move(openStore(dir.path()).value()))
    {
        id = store->create(document).value();
        session.openProject(id);
    }
    /// What lies in the store, written anew.
    Project kept() const
    {
        const std::string text = store->load(id).value().toStdString();
        return readProject(text).value().project;
    }

    QTemporaryDir dir;
    std::unique_ptr<Store> store;
    QString id;
    Workspace workspace{*store};
    Session session{workspace};
    Shelf shelf{workspace, session};
    FitModel fit{workspace};
    StepModel steps{workspace, session};
};

QVariant field(FitModel &fit, const char *pointer, int role)
{
    FieldsModel &fields = *fit.fields();
    for (int row = 0; row < fields.rowCount(); ++row)
        if (fields.index(row, 0).data(FieldsModel::Pointer).toString() == QLatin1String(pointer))
            return fields.index(row, 0).data(role);
    return {};
}

FigureView figure(FitModel &fit, const char *key)
{
    FiguresModel &figures = *fit.figures();
    for (int row = 0; row < figures.rowCount(); ++row) {
        const auto view = figures.index(row, 0).data(FiguresModel::Figure).value<FigureView>();
        if (view.key == QLatin1String(key))
            return view;
    }
    return {};
}

} // namespace

class TestEdits : public QObject {
    Q_OBJECT
private slots:
    void everyChangeIsKeptBeforeItIsShown()
    {
        Bench bench;
        int shown = 0;
        QStringList early;
        connect(&bench.workspace, &Workspace::changed, this, [&] {
            ++shown;
            if (!bench.workspace.previewing() && !(bench.kept() == bench.workspace.project()))
                early << QString::number(shown);
        });
        bench.fit.nudge(QStringLiteral("/blocks/rows"), 1);
        QVERIFY(bench.fit.enter(QStringLiteral("/strip/margin"), QStringLiteral("1 1/4"))
                    .value(QStringLiteral("ok"))
                    .toBool());
        bench.fit.choose(QStringLiteral("/edge/sewn"), QStringLiteral("machine"));
        bench.session.setStation(static_cast<int>(Station::Cut));
        bench.steps.next();
        bench.steps.wrong(QStringLiteral("done-already"));
        bench.session.undo();
        QCOMPARE(shown, 6);
        QVERIFY2(early.isEmpty(), qPrintable(early.join(u' ')));
    }

    void undoTakesEachChangeBack()
    {
        Bench bench;
        const Project before = bench.workspace.project();
        std::vector<Project> states{before};
        const auto step = [&] { states.push_back(bench.workspace.project()); };
        bench.fit.nudge(QStringLiteral("/blocks/columns"), 2);
        step();
        bench.fit.choose(QStringLiteral("/strip/tails"), true);
        step();
        bench.session.setStation(static_cast<int>(Station::Cut));
        bench.steps.next();
        step();
        QVERIFY(bench.session.canUndo());
        QVERIFY(!bench.session.undoText().isEmpty());
        for (std::size_t i = states.size() - 1; i > 0; --i) {
            QVERIFY(!(states[i] == states[i - 1]));
            bench.session.undo();
            QVERIFY(bench.workspace.project() == states[i - 1]);
            QVERIFY(bench.kept() == states[i - 1]);
        }
        QVERIFY(!bench.session.canUndo());
    }

    void aDragIsOneChange()
    {
        Bench bench;
        const Project before = bench.kept();
        const QString pointer = QStringLiteral("/blocks/width");
        bench.fit.beginDrag(pointer);
        for (double mm = 177.8; mm > 150; mm -= 0.9)
            bench.fit.dragTo(pointer, mm);
        QVERIFY2(bench.kept() == before, "a drag saves nothing before its end");
        // 150.8 mm lies nearest to the mark 5 15/16 in; the plan follows while the finger is still down.
        const Length dragged = bench.workspace.project().blocks.width;
        QVERIFY(dragged < before.blocks.width);
        QCOMPARE(dragged.nearestTo(before.finest).count(), dragged.count());
        QCOMPARE(bench.workspace.plan().block.outline.along.count(), dragged.count());
        bench.fit.endDrag();
        QCOMPARE(bench.kept().blocks.width.count(), dragged.count());
        bench.session.undo();
        QVERIFY(bench.kept() == before);
        QVERIFY(!bench.session.canUndo());
    }

    void theCornerMovesByWholeBlocks()
    {
        Bench bench;
        // 6 × 3 blocks of 7 in with 1 in sashing and 1/2 in kept outside finish 48 × 24 in (F13).
        bench.fit.beginDrag(QStringLiteral("/blocks/columns"));
        bench.fit.dragCorner(40.0 * 25.4 + 12, 32.0 * 25.4 - 12);
        QCOMPARE(bench.workspace.project().blocks.columns, 5);
        QCOMPARE(bench.workspace.project().blocks.rows, 4);
        bench.fit.endDrag();
        QCOMPARE(bench.kept().blocks.rows, 4);
        QCOMPARE(bench.fit.finishedAlong().text, QStringLiteral("40 in"));
    }

    void badEntriesChangeNothing()
    {
        Bench bench;
        const Project before = bench.kept();
        for (const auto &[pointer, text] :
             {std::pair{"/seam", "soft"}, std::pair{"/blocks/columns", "-1"}, std::pair{"/blocks/width", "0"},
              std::pair{"/drawUp/along", "70 %"}, std::pair{"/nowhere", "1"},
              std::pair{"/edge/kind", "frilled"}}) {
            const QVariantMap said = bench.fit.enter(QLatin1String(pointer), QLatin1String(text));
            QVERIFY2(!said.value(QStringLiteral("ok")).toBool(), pointer);
            QVERIFY2(!said.value(QStringLiteral("says")).toString().isEmpty(), pointer);
        }
        QVERIFY(bench.kept() == before);
    }

    void problemsStandAtTheirFieldAndOffersMendThem()
    {
        Bench bench;
        bench.fit.enter(QStringLiteral("/sashing/finished"), QStringLiteral("7/8"));
        QVERIFY(!field(bench.fit, "/sashing/finished", FieldsModel::ProblemText).toString().isEmpty());
        ProblemsModel &problems = *bench.fit.problems();
        QVERIFY(problems.rowCount() > 0);
        QVERIFY(!problems.index(0, 0).data(ProblemsModel::Caution).toBool());
        const QVariantList offers = problems.index(0, 0).data(ProblemsModel::Offers).toList();
        QVERIFY(!offers.isEmpty());
        bench.fit.takeOffer(0, offers.first().toMap().value(QStringLiteral("index")).toInt());
        QVERIFY(field(bench.fit, "/sashing/finished", FieldsModel::ProblemText).toString().isEmpty());
        QVERIFY(bench.kept() == bench.workspace.project());
    }

    void figuresFollowAndSayTheyAreUntried()
    {
        Bench bench;
        QCOMPARE(figure(bench.fit, "strip.width").text, QStringLiteral("13 1/4 in"));
        QVERIFY(figure(bench.fit, "strip.width").hasWorking);
        QVERIFY(figure(bench.fit, "block.sent.along").untried);
        QVERIFY(!figure(bench.fit, "strip.width").untried);
        bench.fit.enter(QStringLiteral("/strip/margin"), QStringLiteral("1 1/4"));
        QCOMPARE(figure(bench.fit, "strip.width").text, QStringLiteral("13 3/4 in"));
        QCOMPARE(figure(bench.fit, "strip.width").whole, QStringLiteral("13"));
        QCOMPARE(figure(bench.fit, "strip.width").num, QStringLiteral("3"));
        QCOMPARE(figure(bench.fit, "strip.width").den, QStringLiteral("4"));
    }

    void workingsLeadDownToWhatWasEntered()
    {
        Bench bench;
        // Every term either was entered, leads to a figure with its own sum, or is a fixed measure.
        for (const char *key : {"strip.width", "sashing.cutBack", "fold.under", "binding.cut"}) {
            const QString name = QLatin1String(key);
            QVERIFY2(!bench.steps.workingSentence(name).isEmpty(), key);
            const QVariantList terms = bench.steps.workingFor(name);
            QVERIFY2(!terms.isEmpty(), key);
            for (const QVariant &term : terms) {
                const QVariantMap map = term.toMap();
                QVERIFY(!map.value(QStringLiteral("name")).toString().isEmpty());
                const QString deeper = map.value(QStringLiteral("figureKey")).toString();
                QVERIFY(deeper.isEmpty() || !bench.steps.workingFor(deeper).isEmpty());
            }
        }
        QVERIFY(bench.steps.workingFor(QStringLiteral("no.such")).isEmpty());
    }

    void aCutIsCountedSpoiledAndTakenBack()
    {
        Bench bench;
        bench.steps.putOffTrial();
        bench.session.setStation(static_cast<int>(Station::Cut));
        while (bench.steps.count() < 5)
            bench.steps.next();
        QCOMPARE(bench.steps.done(), 0);
        QCOMPARE(bench.steps.title(), QStringLiteral("Strip 1 of 5"));
        QVERIFY(bench.steps.ruler().show);
        QVERIFY(!bench.steps.lines().isEmpty() && bench.steps.lines().size() <= 2);
        QVERIFY(bench.steps.wrongAnswers().size() <= 6);
        bench.steps.next();
        bench.steps.next();
        QCOMPARE(bench.steps.done(), 2);
        bench.steps.wrong(QStringLiteral("spoiled"));
        QCOMPARE(bench.steps.done(), 2);
        QVERIFY(!bench.steps.lastAnswer().isEmpty());
        QCOMPARE(bench.kept().made.cut.back().spoiled, 1);
        QCOMPARE(bench.kept().made.cut.back().count, 3);
        bench.steps.next();
        QCOMPARE(bench.steps.done(), 3);
        bench.steps.back();
        QVERIFY(bench.steps.askUndoDone());
        bench.steps.answerUndo(QStringLiteral("mistake"));
        QCOMPARE(bench.steps.done(), 2);
        bench.steps.next();
        bench.steps.back();
        bench.steps.answerUndo(QStringLiteral("spoiled"));
        QCOMPARE(bench.steps.done(), 2);
        QCOMPARE(bench.kept().made.cut.back().spoiled, 2);
        QCOMPARE(bench.kept().made.cut.back().count, 4);
    }

    void theLastPieceDoneIsTheOneSpoiled()
    {
        Bench bench;
        bench.steps.putOffTrial();
        bench.session.setStation(static_cast<int>(Station::Cut));
        // Two steps worked in turn: what is called spoiled is the one touched last, not the newest record.
        bench.steps.goTo(1);
        bench.steps.next();
        const std::string first = bench.kept().made.cut.back().cloth + bench.kept().made.cut.back().does;
        bench.steps.goTo(3);
        bench.steps.next();
        bench.steps.goTo(1);
        bench.steps.next();
        QVERIFY(bench.kept().made.cut.size() == 2);
        bench.steps.back();
        bench.steps.answerUndo(QStringLiteral("spoiled"));
        const MadeCut last = bench.kept().made.cut.back();
        QCOMPARE(last.cloth + last.does, first);
        QCOMPARE(last.spoiled, 1);
    }

    void onlySomethingDoneCanBeSpoiled()
    {
        Bench bench;
        bench.fit.nudge(QStringLiteral("/blocks/rows"), 1);
        bench.session.setStation(static_cast<int>(Station::Cut));
        bench.steps.back();
        QVERIFY(!bench.steps.askUndoDone());
        QCOMPARE(bench.kept().blocks.rows, 3);
    }

    void theTrialSetsTheRest()
    {
        Bench bench;
        // Sent 7 1/4 in, outline 7 in: a draw-up of 1 − 7 / 7 1/4 = 3.4483 % (F21).
        const auto read = [&](const QString &kind, const QMap<QString, QString> &typed) {
            return readTrial(bench.steps, bench.session, bench.workspace, kind, typed);
        };
        const QVariantMap said = read(QStringLiteral("measure-test"),
                                      {{QStringLiteral("sentAlong"), QStringLiteral("7 1/4")},
                                       {QStringLiteral("sentAcross"), QStringLiteral("7 1/4")},
                                       {QStringLiteral("outlineAlong"), QStringLiteral("7")},
                                       {QStringLiteral("outlineAcross"), QStringLiteral("7 1/8")}});
        QVERIFY2(said.value(QStringLiteral("ok")).toBool(),
                 qPrintable(said.value(QStringLiteral("says")).toString()));
        QCOMPARE(bench.workspace.plan().basis.drawAlong.millionths, 34'483);
        QVERIFY(bench.kept().made.testBlock.has_value());
        QVERIFY(!figure(bench.fit, "block.sent.along").untried);
        QVERIFY(figure(bench.fit, "sashing.cutBack").untried);
        QVERIFY(read(QStringLiteral("test-join"), {{QStringLiteral("gap"), QStringLiteral("-1/16")}})
                    .value(QStringLiteral("ok"))
                    .toBool());
        QVERIFY(!figure(bench.fit, "sashing.cutBack").untried);
        bench.session.undo();
        QVERIFY(!bench.kept().made.testJoin.has_value());
        QVERIFY(!read(QStringLiteral("measure-test"), {{QStringLiteral("outlineAlong"), QStringLiteral("9")}})
                     .value(QStringLiteral("ok"))
                     .toBool());
        QCOMPARE(bench.kept().made.testBlock->outline[0].count(), Length::inches(7).count());
    }

    void aMetricCopyLeavesTheOriginal()
    {
        Bench bench;
        bench.session.setStation(static_cast<int>(Station::Cut));
        bench.steps.next();
        const Project before = bench.kept();
        QVERIFY(before.made.started());
        bench.shelf.metricCopy(bench.id);
        QVERIFY(bench.kept() == before);
        QCOMPARE(bench.shelf.rowCount(), 2);
        bool found = false;
        for (int row = 0; row < bench.shelf.rowCount(); ++row) {
            const QString id = bench.shelf.index(row, 0).data(Shelf::Id).toString();
            if (id == bench.id)
                continue;
            bench.session.openProject(id);
            found = bench.session.units() == QStringLiteral("mm");
            QVERIFY(!bench.workspace.project().made.started());
            QCOMPARE(bench.workspace.project().blocks.width.count(), Length::mm(178).count());
        }
        QVERIFY(found);
    }

    void startsWhereItWasLeft()
    {
        QTemporaryDir dir;
        QString id;
        {
            auto store = std::move(openStore(dir.path()).value());
            id = store->create(example()).value();
            Workspace workspace(*store);
            Session session(workspace);
            StepModel steps(workspace, session);
            session.openProject(id);
            session.setStation(static_cast<int>(Station::Cut));
            steps.next();
        }
        auto store = std::move(openStore(dir.path()).value());
        Workspace workspace(*store);
        Session session(workspace);
        StepModel steps(workspace, session);
        session.resume();
        steps.askAboutLast();
        QCOMPARE(workspace.id(), id);
        QCOMPARE(session.station(), static_cast<int>(Station::Cut));
        QVERIFY(steps.resuming());
        QVERIFY(!steps.resumeLast().isEmpty() && !steps.resumeNext().isEmpty());
        const std::size_t before = workspace.project().made.cut.size();
        steps.answerResume(true);
        QVERIFY(!steps.resuming());
        QVERIFY(workspace.project().made.cut.size() > before ||
                workspace.project().made.cut.back().count > 1);
    }

    void aSecondWindowOnlyLooks()
    {
        Bench bench;
        auto second = openStore(bench.dir.path());
        QVERIFY(second.ok());
        Workspace workspace(*second.value());
        Session session(workspace);
        FitModel fit(workspace);
        StepModel steps(workspace, session);
        session.openProject(bench.id);
        QVERIFY(session.readOnly());
        QVERIFY(!session.notice().isEmpty());
        const Project before = bench.kept();
        QSignalSpy told(&session, &Session::noticeChanged);
        fit.nudge(QStringLiteral("/blocks/rows"), 1);
        QCOMPARE(told.size(), 1);
        QVERIFY(workspace.project() == before);
        session.setStation(static_cast<int>(Station::Cut));
        steps.next();
        QVERIFY(workspace.project() == before);
        QVERIFY(!session.canUndo());
    }
};

QTEST_GUILESS_MAIN(TestEdits)
#include "tst_edits.moc"
