// SPDX-License-Identifier: MIT
//
// The whole program on an empty folder, worked by touch alone from the first project to the last step, closed
// and opened again on the way. Only what lies in the store is read besides; no model is called.
#include "app/wording.h"
#include "eyes.h"
#include "maker.h"
#include "piece.h"
#include "warnings.h"

#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QtTest>

using namespace matside;
using namespace touching;

class TouchTest : public QObject {
    Q_OBJECT

private slots:
    void cleanup();
    void fromAnEmptyFolderToTheLastStep();

private:
    Warnings m_warnings;
};

void TouchTest::cleanup()
{
    const QString heard = m_warnings.taken();
    QVERIFY2(heard.isEmpty(), qPrintable(heard));
}

namespace {

/// The sizes she may have her tablet in: 10.1 in lying and upright, 8 in.
constexpr QSize sizes[] = {QSize(1280, 800), QSize(800, 1280), QSize(1024, 600)};

} // namespace

void TouchTest::fromAnEmptyFolderToTheLastStep()
{
    QTemporaryDir folder;
    Program program;
    Maker maker(program);
    QVERIFY(program.open(folder.path(), sizes[0]));
    QVERIFY2(beginSmallPiece(maker), qPrintable(maker.trouble()));

    int touches = 0;
    while (program.papers().next) {
        QVERIFY2(maker.workOnce(), qPrintable(maker.trouble()));
        QVERIFY(++touches < 600);
    }
    for (const auto &[station, count] : maker.figuresCompared())
        qInfo("%s: %d", qPrintable(stationText(station)), count);
}

QTEST_MAIN(TouchTest)
#include "tst_touch.moc"
