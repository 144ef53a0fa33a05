// SPDX-License-Identifier: MIT
//
// The whole program on an empty folder, worked by touch alone from the first project to the last step, closed
// and opened again on the way. Only what lies in the store is read besides; no model is called.
#include "app/wording.h"
#include "bench/record.h"
#include "eyes.h"
#include "maker.h"
#include "piece.h"
#include "project/codec.h"
#include "warnings.h"

#include "testing.h"
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>

using namespace matside;
using namespace touching;

class TouchTest : public QObject {
    Q_OBJECT

private slots:
    void cleanup();
    void fromAnEmptyFolderToTheLastStep();
    void whatWasDoneIsTakenBackByTouch();
    void aPieceInMillimetres();
    void fromNothingToACutInOneTouch();
    void theBlockThatIsGoneIsChosenByTouch();

private:
    Warnings m_warnings;
};

namespace {

/// The sizes she may have her tablet in: 10.1 in lying and upright, 8 in.
constexpr QSize sizes[] = {QSize(1280, 800), QSize(800, 1280), QSize(1024, 600)};

/// So many touches, then the program is gone and started again.
constexpr int touchesAStart = 9;

} // namespace

void TouchTest::cleanup()
{
    const QString heard = m_warnings.taken();
    QVERIFY2(heard.isEmpty(), qPrintable(heard));
}

void TouchTest::fromAnEmptyFolderToTheLastStep()
{
    QTemporaryDir folder;
    Program program;
    Maker maker(program);
    maker.trialOutline = QStringLiteral("5 15/16");
    QVERIFY(program.open(folder.path(), sizes[0]));
    QVERIFY2(beginSmallPiece(maker), qPrintable(maker.trouble()));
    QCOMPARE(program.papers().project.blocks.columns, 2);
    QCOMPARE(program.papers().project.hoop.outside->along, Length::inches(9, 3, 4));
    QCOMPARE(program.papers().project.hoop.field->across, Length::inches(7, 7, 8));
    QVERIFY(program.papers().plan.problems.empty());

    int touches = 0;
    std::size_t start = 0;
    while (program.papers().next) {
        QVERIFY2(maker.workOnce(), qPrintable(maker.trouble()));
        QVERIFY(++touches < 400);
        if (touches % touchesAStart == 0) {
            const Papers before = program.papers();
            program.close();
            QVERIFY(program.open(folder.path(), sizes[++start % std::size(sizes)]));
            QCOMPARE(program.papers().next, before.next);
        }
    }
    // The trial was measured, its block a sixteenth short, and the rest was planned and made by it.
    QCOMPARE(maker.trialsMeasured(), 2);
    const Papers papers = program.papers();
    QVERIFY(papers.project.made.testBlock && papers.project.made.testJoin);
    QCOMPARE(papers.project.made.testBlock->outline[0], Length::inches(5, 15, 16));
    QVERIFY(papers.plan.basis.blockTried && papers.plan.basis.joinTried);
    for (const Step &step : papers.steps)
        QVERIFY2(step.done == step.count, step.id.c_str());
    QVERIFY(start > 2);
    QVERIFY(maker.figuresCompared().at(Station::Cut) > 10);
    // And every station says so, after one more start too.
    program.close();
    QVERIFY(program.open(folder.path(), sizes[0]));
    for (const Station station : {Station::Cut, Station::Hoop, Station::Trim, Station::Join, Station::Edge}) {
        QVERIFY2(maker.goTo(station), qPrintable(maker.trouble()));
        QTRY_VERIFY(!byObjectName(maker.screen(), QStringLiteral("action")));
    }
    qInfo("%d touches of the action over %zu starts", touches, start + 2);
}

void TouchTest::whatWasDoneIsTakenBackByTouch()
{
    QTemporaryDir folder;
    Program program;
    Maker maker(program);
    QVERIFY(program.open(folder.path(), sizes[0]));
    QVERIFY2(beginSmallPiece(maker), qPrintable(maker.trouble()));
    const auto begun = program.papers().next;
    QVERIFY2(maker.workOnce() && maker.workOnce(), qPrintable(maker.trouble()));
    const Papers before = program.papers();
    QVERIFY(before.next != begun);
    // Back asks whether it was a mistake; undo, at the foot of the band, takes back the one before.
    QVERIFY2(maker.touchObject(QStringLiteral("back")) && maker.touch(QStringLiteral("Tapped by mistake")),
             qPrintable(maker.trouble()));
    QTRY_VERIFY(program.papers().next != before.next);
    QVERIFY2(maker.touch(QStringLiteral("done")), qPrintable(maker.trouble()));
    QTRY_COMPARE(program.papers().next, begun);
}

void TouchTest::aPieceInMillimetres()
{
    QTemporaryDir folder;
    Program program;
    Maker maker(program);
    QVERIFY(program.open(folder.path(), sizes[1]));
    QVERIFY2(maker.touch(QStringLiteral("New, in mm")) && maker.touch(QStringLiteral("The hoop,"), true),
             qPrintable(maker.trouble()));
    for (const auto &[value, text] : {std::pair("outside, along", "248"), std::pair("outside, across", "248"),
                                      std::pair("field, along", "200"), std::pair("field, across", "200")})
        QVERIFY2(maker.enter(QLatin1String(value), QLatin1String(text)), qPrintable(maker.trouble()));
    QCOMPARE(program.papers().project.hoop.outside->along, Length::mm(248));
    QVERIFY(program.papers().plan.problems.empty());
    for (int touches = 0; touches < 4; ++touches)
        QVERIFY2(maker.workOnce(), qPrintable(maker.trouble()));
    QVERIFY(!maker.figuresCompared().empty());
}

/// The first run: from an empty folder to a step that can be cut, by one touch on every size of screen.
void TouchTest::fromNothingToACutInOneTouch()
{
    for (const QSize size : sizes) {
        QTemporaryDir folder;
        Program program;
        Maker maker(program);
        QVERIFY(program.open(folder.path(), size));
        QVERIFY2(maker.touch(QStringLiteral("Open the demo"), true), qPrintable(maker.trouble()));
        QCOMPARE(program.room().session().station(), static_cast<int>(Station::Cut));
        QVERIFY(program.room().steps().canGoNext());
        QVERIFY(maker.face().contains(program.room().steps().title()));
    }
}

void TouchTest::theBlockThatIsGoneIsChosenByTouch()
{
    // Two rows of two, made as far as the first join; on every size of screen one of its blocks is given
    // away.
    for (const QSize size : sizes) {
        QTemporaryDir folder;
        {
            Project project = freshProject(System::Inch);
            project.blocks.columns = project.blocks.rows = 2;
            project.hoop.outside = Pair{Length::inches(9, 3, 4), Length::inches(9, 3, 4)};
            project.hoop.field = Pair{Length::inches(7, 7, 8), Length::inches(7, 7, 8)};
            project.made.trialPutOff = true;
            for (;;) {
                const Plan planned = plan(project);
                const std::vector<Step> all = steps(project, planned);
                const auto next = nextStep(all);
                QVERIFY(next);
                if (all[*next].does == Does::JoinShort)
                    break;
                project = withDone(project, planned, all[*next]);
            }
            auto store = openStore(folder.path());
            QVERIFY(store);
            const auto id = store.value()->create(QString::fromStdString(writeProject(project)));
            QVERIFY(id && store.value()->setSetting(settings::openProject, id.value()));
        }
        Program program;
        Maker maker(program);
        QVERIFY(program.open(folder.path(), size));
        QVERIFY2(maker.goTo(Station::Join), qPrintable(maker.trouble()));
        QVERIFY2(maker.notFinishedYet(), qPrintable(maker.trouble()));
        QVERIFY2(maker.touchObject(QStringLiteral("wrong")), qPrintable(maker.trouble()));
        QVERIFY2(maker.touch(wordsOrCode(mishapWords(), "block-gone")), qPrintable(maker.trouble()));
        QTRY_VERIFY(maker.face().contains(QStringLiteral("Which block?")));
        // Back asks again what went wrong; then she chooses.
        QVERIFY2(maker.touchObject(QStringLiteral("close")), qPrintable(maker.trouble()));
        QTRY_VERIFY(!maker.face().contains(QStringLiteral("Which block?")));
        QVERIFY2(maker.touch(wordsOrCode(mishapWords(), "block-gone")) && maker.touch(QStringLiteral("B1")),
                 qPrintable(maker.trouble()));
        QTRY_VERIFY(!program.papers().project.made.goodBlock("B1"));
        const Made &made = program.papers().project.made;
        QCOMPARE(QByteArray::fromStdString(made.events.back().event), QByteArray("block-gone"));
        QCOMPARE(QByteArray::fromStdString(made.events.back().block), QByteArray("B1"));
        QVERIFY(made.goodBlock("A1") && made.goodBlock("A2") && made.goodBlock("B2"));
        // It is to be made again, and nothing can be joined before its strip is cut.
        std::int64_t toStitch = 0;
        for (const Step &step : program.papers().steps)
            toStitch += step.does == Does::StitchBlock ? step.count - step.done : 0;
        QCOMPARE(toStitch, 1);
        QCOMPARE(program.papers().nextStep()->does, Does::CutStrip);
        QVERIFY2(maker.touch(QStringLiteral("On with the work")), qPrintable(maker.trouble()));
    }
}

QTEST_MAIN(TouchTest)
#include "tst_touch.moc"
