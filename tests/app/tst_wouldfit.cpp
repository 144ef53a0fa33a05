// SPDX-License-Identifier: MIT
//
// Choosing among the layouts that would fit: looked at, taken, undone, left.
#include "app/fitmodel.h"
#include "app/wouldfit.h"
#include "desk.h"

#include "testing.h"

using namespace matside;

namespace {

/// A 60 × 36 in table with 6 in to show all round (case 18 of the trade notes), 6 in blocks as yet.
Project onTable()
{
    Project project = desk::topper();
    project.table = Table{Length::inches(60), Length::inches(36), std::nullopt, {}};
    return project;
}

struct Choosing {
    explicit Choosing(const Project &project = onTable()) : open(project, Station::Fit) { would.begin(); }
    QString text(int row, int role) const { return would.data(would.index(row), role).toString(); }
    QVariantMap wish(const char *key) const
    {
        for (const QVariant &entry : would.wishes())
            if (entry.toMap().value(QStringLiteral("key")) == QLatin1String(key))
                return entry.toMap();
        return {};
    }
    bool want(const char *key, const char *typed)
    {
        return would.enter(QLatin1String(key), QLatin1String(typed)).value(QStringLiteral("ok")).toBool();
    }

    desk::Open open;
    HoopShelf hoops{open.workspace, open.session};
    WouldFit would{open.workspace, open.session, hoops};
    FitModel fit{open.workspace};
};

} // namespace

class WouldFitTest : public QObject {
    Q_OBJECT
private slots:
    void listsTheCase();
    void lookedAtIsNotSaved();
    void takenIsOneChange();
    void leavingPutsAllBack_data();
    void leavingPutsAllBack();
    void hangingOver();
    void workingBackFromASize();
    void washing();
    void saysWhyNothingFits();
    void followsAnUndo();
    void bothLengthsOfATableWithALeaf();
    void aSetOfMats();
    void matsAreTakenAndUndone();
    void matsThatDoNotLie();
};

void WouldFitTest::listsTheCase()
{
    Choosing c;
    QVERIFY(c.want("reveal-along", "6"));
    QVERIFY(c.want("reveal-across", "6"));
    QVERIFY(c.would.count() > 3);
    // 7 in blocks fit hoop P, whose field is 7 7/8.
    QCOMPARE(c.text(0, WouldFit::Says), QStringLiteral("6 × 3 blocks of 7\u00a0in"));
    QCOMPARE(c.text(0, WouldFit::SizeSays), QStringLiteral("{48} × {24 in}, {6 in} bare"));
    QVERIFY(c.text(0, WouldFit::TakesSays).startsWith(QStringLiteral("18 blocks, ")));
    // In short, as it hangs on the line.
    QCOMPARE(c.text(0, WouldFit::BriefSays), QStringLiteral("6 × 3 of {7 in}"));
    QCOMPARE(c.text(0, WouldFit::SidesSays), QStringLiteral("{48} × {24 in}"));
    QVERIFY(c.text(0, WouldFit::TakesSays).endsWith(c.text(0, WouldFit::HoursSays)));
    // What is wanted, as it is drawn: the table less what is to show of it.
    QCOMPARE(c.would.wantedView().finishedAlongMm, 48 * 25.4);
    QCOMPARE(c.would.wantedView().finishedAcrossMm, 24 * 25.4);
    QVERIFY(c.would.wantedMats().isEmpty() && c.would.shown().isEmpty());
    c.would.choose(0);
    QCOMPARE(c.would.shown().value(QStringLiteral("sizeSays")).toString(), c.text(0, WouldFit::SizeSays));
    c.would.leave();
    c.would.begin();
    const auto drawing = c.would.data(c.would.index(0), WouldFit::Drawing).value<TableView>();
    QCOMPARE(drawing.columns, 6);
    QCOMPARE(drawing.finishedAlongMm, 48 * 25.4);
}

void WouldFitTest::lookedAtIsNotSaved()
{
    Choosing c;
    QVERIFY(c.want("reveal-along", "6"));
    QVERIFY(c.want("reveal-across", "6"));
    QVERIFY(!c.would.canTake());
    c.would.choose(0);
    QVERIFY(c.would.canTake());
    QCOMPARE(c.fit.drawing().columns, 6);
    QCOMPARE(c.fit.finishedAlong().text, QStringLiteral("48 in"));
    QCOMPARE(c.open.kept().blocks.columns, 3);
    QVERIFY(c.text(0, WouldFit::MoreSays).startsWith(QStringLiteral("Strips take ")));
    QCOMPARE(c.text(1, WouldFit::MoreSays).contains(QStringLiteral("Strips take ")), false);
}

void WouldFitTest::takenIsOneChange()
{
    Choosing c;
    const Project before = c.open.kept();
    QVERIFY(c.want("reveal-along", "6"));
    QVERIFY(c.want("reveal-across", "6"));
    c.would.choose(1);
    c.would.choose(0);
    QVERIFY(c.would.take());
    const Project kept = c.open.kept();
    QCOMPARE(kept.blocks.columns, 6);
    QCOMPARE(kept.blocks.rows, 3);
    QCOMPARE(kept.blocks.width, Length::inches(7));
    QVERIFY(!c.would.take()); // nothing is chosen any more
    QVERIFY(c.open.session.canUndo());
    QVERIFY(c.open.session.undoText().contains(QStringLiteral("layout")));
    c.open.session.undo();
    QVERIFY(c.open.kept() == before);
    QVERIFY(!c.open.session.canUndo());
}

void WouldFitTest::leavingPutsAllBack_data()
{
    QTest::addColumn<int>("way");
    QTest::newRow("back") << 0;
    QTest::newRow("to another station") << 1;
    QTest::newRow("to the shelf") << 2;
    QTest::newRow("to the settings") << 3;
    QTest::newRow("to another project") << 4;
}

void WouldFitTest::leavingPutsAllBack()
{
    QFETCH(int, way);
    Choosing c;
    const Project before = c.open.kept();
    const QString id = c.open.workspace.id();
    QVERIFY(c.would.count() > 1);
    c.would.choose(1);
    QVERIFY(c.open.workspace.previewing());
    if (way == 0)
        c.would.leave();
    else if (way == 1)
        c.open.session.setStation(static_cast<int>(Station::Cut));
    else if (way == 2)
        c.open.session.showShelf();
    else if (way == 3)
        c.open.session.setView(QStringLiteral("settings"));
    else
        c.open.lay(desk::topper(), Station::Fit);
    QVERIFY(!c.open.workspace.previewing());
    QCOMPARE(c.would.chosen(), -1);
    QVERIFY(!c.would.take());
    const auto kept = readProject(c.open.store->load(id).value().toStdString());
    QVERIFY(kept.value().project == before);
    if (way < 4)
        QVERIFY(c.open.workspace.project() == before);
    if (way < 2) // on the shelf undo is about the shelf
        QVERIFY(!c.open.session.canUndo());
}

// Case 18 (b): a runner on 72 × 38, 6 over at the ends and 12 bare at the sides, 6 in blocks.
void WouldFitTest::hangingOver()
{
    Project project = onTable();
    project.table = Table{Length::inches(72), Length::inches(38), std::nullopt, {}};
    Choosing c(project);
    QVERIFY(c.want("reveal-along", "6"));
    c.would.pick(QStringLiteral("hangs-along"), true);
    QVERIFY(c.want("reveal-across", "12"));
    QVERIFY(c.want("least", "6"));
    QVERIFY(c.want("most", "6"));
    QCOMPARE(c.text(0, WouldFit::Says), QStringLiteral("12 × 2 blocks of 6\u00a0in"));
    QCOMPARE(c.text(0, WouldFit::SizeSays),
             QStringLiteral("{84} × {14 in}, {6 in} over at the ends, {12 in} bare at the sides"));
    QCOMPARE(c.text(0, WouldFit::CautionSays), QString());
    // Through nothing to the other side: 6 over, stepped down by halves.
    for (int i = 0; i < 13; ++i)
        c.would.nudge(QStringLiteral("reveal-along"), -1);
    QCOMPARE(c.wish("hangs-along").value(QStringLiteral("value")).toBool(), false);
    QCOMPARE(c.wish("reveal-along").value(QStringLiteral("figure")).value<FigureView>().text,
             QStringLiteral("1/2 in"));
    // 2 in over is a stiff lip: 72 + 4 = 76 wanted; of 6 in blocks 11 come to 77.
    QVERIFY(c.want("reveal-along", "2"));
    c.would.pick(QStringLiteral("hangs-along"), true);
    QVERIFY(!c.text(0, WouldFit::CautionSays).isEmpty());
}

void WouldFitTest::workingBackFromASize()
{
    Choosing c(desk::topper());
    QVERIFY(c.wish("reveal-along").isEmpty());
    QCOMPARE(c.wish("size-along").value(QStringLiteral("figure")).value<FigureView>().text,
             QStringLiteral("21 in"));
    QVERIFY(c.want("size-along", "48"));
    QVERIFY(c.want("size-across", "24"));
    QCOMPARE(c.text(0, WouldFit::Says), QStringLiteral("6 × 3 blocks of 7\u00a0in"));
    QCOMPARE(c.text(0, WouldFit::SizeSays), QStringLiteral("{48} × {24 in}"));
}

// F21: 48 × 24 after 4 % is made at 50 × 25.
void WouldFitTest::washing()
{
    Choosing c(desk::topper());
    QVERIFY(c.want("size-along", "48"));
    QVERIFY(c.want("size-across", "24"));
    QVERIFY(c.want("washing", "4 %"));
    QVERIFY(c.would.wishSays().contains(QStringLiteral("{50} × {25 in}")));
    c.would.pick(QStringLiteral("fine"), true);
    c.would.pick(QStringLiteral("widen"), false);
    bool found = false;
    for (int row = 0; row < c.would.count(); ++row)
        found = found || c.text(row, WouldFit::Says) == QStringLiteral("6 × 3 blocks of 7\u00a05/16\u00a0in");
    QVERIFY(found);
}

void WouldFitTest::saysWhyNothingFits()
{
    Choosing c;
    QVERIFY(!c.want("most", "much"));
    QVERIFY(!c.want("least", "0"));
    QVERIFY(!c.want("blocks", "0"));
    QVERIFY(!c.want("nothing of the kind", "1"));
    QVERIFY(c.would.noneSays().isEmpty());
    QVERIFY(c.want("reveal-along", "40"));
    QCOMPARE(c.would.count(), 0);
    QVERIFY(c.would.noneSays().contains(QStringLiteral("table")));
    QVERIFY(c.want("reveal-along", "6"));
    QVERIFY(c.want("least", "30"));
    QCOMPARE(c.would.count(), 0);
    QVERIFY(c.would.noneSays().contains(QStringLiteral("hoop")));
    QVERIFY(c.want("least", "4"));
    QVERIFY(c.want("blocks", "2"));
    QCOMPARE(c.would.count(), 0);
    QVERIFY(c.would.noneSays().contains(QStringLiteral("blocks")));
    c.would.choose(0);
    QCOMPARE(c.would.chosen(), -1);
}

void WouldFitTest::followsAnUndo()
{
    Choosing c;
    c.would.leave();
    c.fit.nudge(QStringLiteral("/blocks/columns"), 1);
    c.would.begin();
    c.would.choose(0);
    c.open.session.undo();
    QCOMPARE(c.would.chosen(), -1);
    QVERIFY(!c.open.workspace.previewing());
    QCOMPARE(c.open.workspace.project().blocks.columns, 3);
    // What is taken now starts from the piece as it was undone to.
    QVERIFY(c.want("reveal-along", "6"));
    QVERIFY(c.want("reveal-across", "6"));
    c.would.choose(0);
    QVERIFY(c.would.take());
    QCOMPARE(c.open.kept().blocks.columns, 6);
}

void WouldFitTest::bothLengthsOfATableWithALeaf()
{
    Project project = onTable();
    project.table->leaf = Length::inches(18);
    Choosing c(project);
    QVERIFY(c.want("reveal-along", "6"));
    QVERIFY(c.want("reveal-across", "6"));
    // 48 on 60: 6 at each end; on 60 + 18 it is 15.
    QCOMPARE(c.text(0, WouldFit::SizeSays),
             QStringLiteral("{48} × {24 in}, {6 in} bare; leaf in: {15 in} bare at the ends"));
    QCOMPARE(c.wish("leaf").value(QStringLiteral("value")).toBool(), false);
    QVERIFY(c.would.wishSays().endsWith(QStringLiteral("leaf out")));
    // Looked for with the leaf in: the same 6 in of bare wood ask for 66 in.
    c.would.pick(QStringLiteral("leaf"), true);
    QVERIFY(c.would.wishSays().endsWith(QStringLiteral("leaf in")));
    QVERIFY(c.text(0, WouldFit::SizeSays).contains(QStringLiteral("leaf out: ")));
    const auto drawing = c.would.data(c.would.index(0), WouldFit::Drawing).value<TableView>();
    QCOMPARE(drawing.tableAlongMm, 78 * 25.4);
    QCOMPARE(drawing.leafMm, 18 * 25.4);
    QVERIFY(std::abs(drawing.finishedAlongMm - 66 * 25.4) < 2 * 25.4);
    QCOMPARE(c.open.kept().table->leafIn, false);
    c.would.choose(0);
    QVERIFY(c.would.take());
    QCOMPARE(c.open.kept().table->leafIn, true);
}

// 72 in take three mats of 18 in 4 in apart, 42 in two facing each other 1 in from the edge (F22).
void WouldFitTest::aSetOfMats()
{
    Project project = onTable();
    project.table = Table{Length::inches(72), Length::inches(42), std::nullopt, {}};
    project.blocks.spare = 2;
    Choosing c(project);
    c.would.pick(QStringLiteral("set"), true);
    QCOMPARE(c.would.wishSays(), QStringLiteral("6 mats of {18} × {12 in}"));
    QCOMPARE(c.would.wantedMats().size(), 6);
    QCOMPARE(c.would.wantedView().finishedAlongMm, 18 * 25.4);
    QVERIFY(c.wish("reveal-along").isEmpty());
    QCOMPARE(c.wish("mats").value(QStringLiteral("says")).toString(), QStringLiteral("mats, 6 at most"));
    QCOMPARE(c.text(0, WouldFit::Says), QStringLiteral("3 × 2 blocks of 5\u00a0in"));
    QCOMPARE(c.text(0, WouldFit::SizeSays), QStringLiteral("{18} × {12 in}"));
    QVERIFY(c.text(0, WouldFit::TakesSays).startsWith(QStringLiteral("6 mats: 36 blocks and 3 spare, ")));
    for (int row = 0; row < c.would.count(); ++row) {
        const auto drawing = c.would.data(c.would.index(row), WouldFit::Drawing).value<TableView>();
        QCOMPARE(c.would.data(c.would.index(row), WouldFit::MatPlaces).toList().size(), 6);
        QVERIFY(3 * drawing.finishedAlongMm + 2 * 4 * 25.4 <= 72 * 25.4 + 0.1);
        QVERIFY(2 * (drawing.finishedAcrossMm + 25.4) + 4 * 25.4 <= 42 * 25.4 + 0.1);
    }
    c.would.nudge(QStringLiteral("mats"), -2);
    QVERIFY(c.text(0, WouldFit::TakesSays).startsWith(QStringLiteral("4 mats: 24 blocks and 2 spare, ")));
    c.would.nudge(QStringLiteral("mats"), 9);
    QVERIFY(c.want("mats", "5"));
    QVERIFY(c.text(0, WouldFit::TakesSays).startsWith(QStringLiteral("5 mats: 30 blocks and 3 spare, ")));
    // 20 in: (72 + 4)/24 = 3.2.
    c.would.pick(QStringLiteral("mat-size"), true);
    QVERIFY(c.want("mats", "6"));
    QCOMPARE(c.would.wishSays(), QStringLiteral("6 mats of {20} × {14 in}"));
}

void WouldFitTest::matsAreTakenAndUndone()
{
    Project project = onTable();
    project.table = Table{Length::inches(72), Length::inches(42), std::nullopt, {}};
    project.blocks.spare = 2;
    Choosing c(project);
    const Project before = c.open.kept();
    c.would.pick(QStringLiteral("set"), true);
    c.would.choose(0);
    QCOMPARE(c.fit.mats().size(), 6);
    QCOMPARE(c.open.kept().kits, 1);
    QVERIFY(c.would.take());
    // What was counted in kits is counted in mats, as long as they are some.
    const auto labelAt = [&](const char *pointer) {
        const FieldsModel &fields = *c.fit.fields();
        for (int row = 0; row < fields.rowCount(); ++row)
            if (fields.index(row).data(FieldsModel::Pointer).toString() == QLatin1String(pointer))
                return fields.index(row).data(FieldsModel::Label).toString();
        return QString();
    };
    QCOMPARE(labelAt("/kits"), QStringLiteral("place mats"));
    const Project kept = c.open.kept();
    QCOMPARE(kept.kits, 6);
    QVERIFY(kept.kitsShareStrips);
    QCOMPARE(kept.blocks.spare, 0); // every mat would have them
    QCOMPARE(kept.blocks.spareInAll, usualSpares(kept.blocks.columns * kept.blocks.rows * 6));
    QCOMPARE(labelAt("/blocks/spareInAll"), QStringLiteral("spare blocks for all"));
    for (int row = 0; row < c.fit.figures()->count(); ++row) {
        const QModelIndex at = c.fit.figures()->index(row);
        QVERIFY(!at.data(FiguresModel::Figure).value<FigureView>().key.startsWith(QStringLiteral("table.")));
    }
    // Who looks for layouts of it again is asked for mats, and may have one piece instead.
    WouldFit again(c.open.workspace, c.open.session, c.hoops);
    again.begin();
    QCOMPARE(again.wishSays(), QStringLiteral("6 mats of {18} × {12 in}"));
    again.pick(QStringLiteral("set"), false);
    again.choose(0);
    QVERIFY(again.take());
    QCOMPARE(c.open.kept().kits, 1);
    QCOMPARE(labelAt("/kits"), QStringLiteral("kits"));
    c.open.session.undo();
    QCOMPARE(c.open.kept().kits, 6);
    c.open.session.undo();
    QVERIFY(c.open.kept() == before);
}

void WouldFitTest::matsThatDoNotLie()
{
    Project project = onTable();
    project.table = Table{Length::inches(60), Length::inches(12), std::nullopt, {}};
    Choosing c(project);
    c.would.pick(QStringLiteral("set"), true);
    QCOMPARE(c.would.count(), 0);
    QVERIFY(c.would.noneSays().contains(QStringLiteral("13\u00a0in wide")));
    QVERIFY(c.wish("mats").isEmpty());
    c.would.nudge(QStringLiteral("mats"), 1);
    QCOMPARE(c.would.count(), 0);
    QVERIFY(!c.want("mats", "1"));
    // Without a table there is nothing to lay them on: it is asked for one piece.
    Choosing none(desk::topper());
    QVERIFY(none.wish("set").isEmpty());
    none.would.pick(QStringLiteral("set"), true);
    QVERIFY(!none.want("mats", "4"));
    QVERIFY(none.would.count() > 0);
    // On a round table of 46 in the outer edges lie √(22² − 9²) = 20.07 in from the middle, the inner 8.07:
    // of three 8.07·sin 60° − 9·cos 60° = 2.49 in to the line between, of four less than the 2 in wanted.
    project.table = Table{std::nullopt, std::nullopt, Length::inches(46), {}};
    Choosing round(project);
    round.would.pick(QStringLiteral("set"), true);
    QVERIFY(round.wish("mat-ends").isEmpty());
    QVERIFY(!round.want("mats", "4"));
    QCOMPARE(round.would.wishSays(), QStringLiteral("3 mats of {18} × {12 in}"));
}

QTEST_GUILESS_MAIN(WouldFitTest)
#include "tst_wouldfit.moc"
