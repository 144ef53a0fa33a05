// SPDX-License-Identifier: MIT
//
// What one tap on undo takes back, and what it never does.
#include "app/fitmodel.h"
#include "app/stitched.h"

#include "testing.h"

using namespace matside;

using stitched::Desk;
using stitched::topper;

class Undo : public QObject {
    Q_OBJECT
private slots:
    /// A piece in which work lies goes only by being held.
    void onTheShelfItNeverTakesAPieceThatWasWorkedOn()
    {
        Desk desk(topper(), Station::Fit);
        FitModel fit(desk.workspace);
        QStringList told;
        connect(&desk.session, &Session::undone, this, [&told](const QString &what) { told << what; });
        fit.nudge(QStringLiteral("/blocks/columns"), 2);
        desk.session.showShelf();
        QVERIFY(!desk.session.canUndo());
        desk.session.undo();
        QCOMPARE(desk.kept().blocks.columns, 5);
        QCOMPARE(told, QStringList());
        desk.session.setView(QStringLiteral("station"));
        desk.session.undo();
        QCOMPARE(told.size(), 1);
        desk.session.showShelf();
        QVERIFY2(desk.session.canUndo(), "a piece just made may be unmade");
    }

    /// What is taken back is named, whatever station is open.
    void itSaysWhatItTookBack()
    {
        Project project = topper();
        project.made.cut.clear();
        project.made.blocks.clear();
        Desk desk(project, Station::Cut);
        FitModel fit(desk.workspace);
        QStringList told;
        connect(&desk.session, &Session::undone, this, [&told](const QString &what) { told << what; });
        while (desk.steps.doing() != QLatin1String("cut-strip"))
            desk.steps.next();
        desk.steps.next();
        desk.session.setStation(static_cast<int>(Station::Hoop));
        desk.session.undo();
        QCOMPARE(told.size(), 1);
        QVERIFY2(told[0].startsWith(QStringLiteral("Cut a hoop strip of ")), qPrintable(told[0]));
        QVERIFY2(!told[0].endsWith(u'.'), qPrintable(told[0]));
        fit.nudge(QStringLiteral("/seam"), 1);
        desk.session.undo();
        QCOMPARE(told.back(), QStringLiteral("seam"));
        fit.nudge(QStringLiteral("/blocks/width"), 1);
        desk.session.undo();
        QCOMPARE(told.back(), QStringLiteral("block along"));
        fit.beginDrag(QStringLiteral("/blocks/width"));
        fit.dragTo(QStringLiteral("/blocks/width"), 200);
        fit.endDrag();
        desk.session.undo();
        QCOMPARE(told.back(), QStringLiteral("block along"));
        fit.choose(QStringLiteral("/edge/kind"), QStringLiteral("framed"));
        desk.session.undo();
        QCOMPARE(told.back(), QStringLiteral("edge"));
        // What has words of its own keeps them.
        QVERIFY(desk.workspace.commit("bought", [&] {
            Project next = desk.workspace.project();
            next.slack = next.slack + Length::inches(1);
            return next;
        }()));
        desk.session.undo();
        QCOMPARE(told.back(), QStringLiteral("ticked as bought"));
    }

    void aClothsFieldIsNamedWithItsCloth()
    {
        Project project = topper();
        Cloth cloth;
        cloth.id = "oat";
        cloth.name = "Oat linen";
        cloth.soldBy = "1/8 yd";
        cloth.soldStep = usualSoldStep(System::Inch);
        project.cloths.push_back(cloth);
        Desk desk(project, Station::Fit);
        FitModel fit(desk.workspace);
        QString told;
        connect(&desk.session, &Session::undone, this, [&told](const QString &what) { told = what; });
        QVERIFY(fit.enter(QStringLiteral("/cloths/0/usable"), QStringLiteral("41 1/2"))
                    .value(QStringLiteral("ok"))
                    .toBool());
        desk.session.undo();
        QVERIFY2(told.startsWith(QStringLiteral("Oat linen: ")), qPrintable(told));
    }

    void aSideCutIsKeptAndTakenBackAlone()
    {
        Desk desk(topper(), Station::Trim);
        desk.trim.cut();
        desk.trim.cut();
        QCOMPARE(desk.kept().made.events.size(), std::size_t(2));
        // A program started anew finds the block where it lies.
        TrimModel again(desk.workspace, desk.steps);
        QCOMPARE(again.side(), 3);
        desk.session.undo();
        QCOMPARE(desk.trim.side(), 2);
        desk.trim.cut();
        desk.trim.cut();
        desk.trim.cut();
        QCOMPARE(desk.steps.done(), 1);
        desk.session.undo();
        QCOMPARE(desk.steps.done(), 0);
        QCOMPARE(desk.trim.side(), 4);
    }

    /// The block made in place of a spoiled one has none of its sides cut.
    void aSpoiledBlockTakesItsSidesWithIt()
    {
        Desk desk(topper(), Station::Trim);
        desk.trim.cut();
        desk.trim.cut();
        Project next = desk.workspace.project();
        next.made.events.push_back({"spoiled", "trim-block", "", "A1", 0, 0, {}, {}});
        QVERIFY(desk.workspace.commit("spoiled", next));
        QCOMPARE(desk.trim.side(), 1);
    }

    void aStripIsNotLayeredBeforeItsClothsAreCut()
    {
        Project project = topper();
        project.made.cut.clear();
        project.made.blocks.clear();
        Desk desk(project, Station::Cut);
        desk.session.setStation(static_cast<int>(Station::Hoop));
        const auto toLayer = [&] {
            for (int row = 0;
                 row < desk.steps.steps()->count() && desk.steps.doing() != QLatin1String("layer"); ++row)
                desk.steps.goTo(row);
            return desk.steps.doing() == QLatin1String("layer");
        };
        QVERIFY(toLayer());
        QVERIFY(!desk.steps.canGoNext());
        QVERIFY2(desk.steps.waiting().contains(QStringLiteral("Cut")), qPrintable(desk.steps.waiting()));
        // One strip of each of the three cloths is enough for the first.
        project = desk.workspace.project();
        for (const Step &step : desk.workspace.steps())
            if (step.does == Does::CutStrip)
                countUp(project, step, 1, 0);
        QVERIFY(desk.workspace.commit("cut", project));
        QVERIFY(toLayer());
        QVERIFY2(desk.steps.canGoNext(), qPrintable(desk.steps.waiting()));
    }

    void aStripIsNotCutApartBeforeItsBlocksAreStitched()
    {
        Project project = topper();
        project.made.cut.clear();
        const std::int64_t full = plan(project).strip.perStrip;
        QVERIFY(full > 1);
        project.made.blocks.resize(static_cast<std::size_t>(full - 1));
        Desk early(project, Station::Trim);
        QCOMPARE(early.steps.doing(), QStringLiteral("rough-apart"));
        QVERIFY(!early.steps.canGoNext());
        QVERIFY2(early.steps.waiting().contains(QStringLiteral("1")), qPrintable(early.steps.waiting()));
        project.made.blocks = topper().made.blocks;
        project.made.blocks.resize(static_cast<std::size_t>(full));
        Desk whole(project, Station::Trim);
        QVERIFY2(whole.steps.canGoNext(), qPrintable(whole.steps.waiting()));
    }

    void nothingIsJudgedBeforeItIsMeasured()
    {
        Desk desk(topper(), Station::Trim);
        desk.measure.begin();
        QVERIFY(!desk.measure.measured());
        QCOMPARE(desk.measure.verdict() + desk.measure.remedy(), QString());
        desk.measure.nudge(0, 1);
        QVERIFY(desk.measure.measured());
        QVERIFY(!desk.measure.verdict().isEmpty());
        QVERIFY(desk.measure.save());
        desk.measure.begin();
        QVERIFY2(desk.measure.measured(), "readings that were kept are readings");
    }
};

QTEST_GUILESS_MAIN(Undo)
#include "tst_undo.moc"
