// SPDX-License-Identifier: MIT
//
// Every page and sheet of the real program, on every size of screen it stands for and at two densities of
// each, measured in the millimetres of the calibrated screen. The least sizes are the house's table, with its
// sources, in survey.cpp.
#include "eyes.h"
#include "main/scenes.h"
#include "survey.h"
#include "warnings.h"

#include <QElapsedTimer>
#include <QFile>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QtTest>

using namespace matside;
using namespace touching;

namespace {

/// The four sizes a screen may have, each as large as it is sold and as the other of 10 in and 8 in.
constexpr Sheet walked[] = {{1280, 800, 5.87}, {1280, 800, 7.41}, {800, 1280, 5.87},  {800, 1280, 7.41},
                            {1024, 600, 5.84}, {1024, 600, 4.63}, {2000, 1200, 8.83}, {2000, 1200, 11.48}};
constexpr const char *lights[] = {"day", "lamp", "contrast"};

} // namespace

class WalkTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void cleanupTestCase();
    void knownContrasts();
    void knownAngles();
    void everyScreen_data();
    void everyScreen();
    void theWholeTable();

private:
    Warnings m_warnings;
    Survey m_survey;
    int m_faults = 0;
};

void WalkTest::initTestCase()
{
    QVERIFY(QFile::exists(QStringLiteral(TEST_DATA_DIR "/project-example.json")));
}

void WalkTest::cleanupTestCase()
{
    const QString heard = m_warnings.taken();
    QVERIFY2(heard.isEmpty(), qPrintable(heard));
}

void WalkTest::knownContrasts()
{
    // Black on white is 21:1; #767676 is the lightest grey that stands 4.5:1 from white (W3C, Understanding
    // WCAG 2.2, SC 1.4.3 and the definition of contrast ratio; the grey reckoned apart from its luminance
    // 0.1812).
    QVERIFY(std::abs(contrast(Qt::black, Qt::white) - 21) < 0.001);
    QVERIFY(contrast(QColor(0x76, 0x76, 0x76), Qt::white) >= 4.5);
    QVERIFY(contrast(QColor(0x77, 0x77, 0x77), Qt::white) < 4.5);
}

void WalkTest::knownAngles()
{
    // 3.84 mm at 0.6 m are 22 minutes: 3.84 / 600 rad, and a radian is 3437.75 minutes.
    QVERIFY(std::abs(arcMinutes(3.84, 600) - 3.84 / 600 * 3437.7468) < 0.001);
}

void WalkTest::everyScreen_data()
{
    QTest::addColumn<QString>("project");
    QTest::addColumn<bool>("bothDensities");
    QTest::newRow("the demo") << QStringLiteral(":/demo/demo-project.json") << false;
    QTest::newRow("a piece half made") << QStringLiteral(TEST_DATA_DIR "/project-example.json") << true;
}

void WalkTest::everyScreen()
{
    QFETCH(const QString, project);
    QFETCH(const bool, bothDensities);
    QFile file(project);
    QVERIFY(file.open(QIODevice::ReadOnly));
    QTemporaryDir folder;
    auto store = openStore(folder.path());
    QVERIFY(store);
    const auto id = store.value()->create(QString::fromUtf8(file.readAll()));
    QVERIFY(id);
    Room room(std::move(store).value(), walked[0].pxPerMm);
    room.session().openProject(id.value());
    QVERIFY(room.show());
    QQuickWindow *window = windowOf(room);
    QVERIFY(window);
    std::size_t light = 0;
    for (std::size_t at = 0; at < std::size(walked); at += bothDensities ? 1 : 2) {
        const Sheet &sheet = walked[at];
        room.look().setPxPerMm(sheet.pxPerMm);
        window->resize(sheet.width, sheet.height);
        for (const Scene &scene : scenesOf(room, *window)) {
            room.look().setColourSet(QLatin1String(lights[light++ % std::size(lights)]));
            scene.open();
            settle(30);
            m_survey.look(*window,
                          QStringLiteral("%1 %2×%3 at %4 px/mm")
                              .arg(scene.name)
                              .arg(sheet.width)
                              .arg(sheet.height)
                              .arg(sheet.pxPerMm),
                          sheet.pxPerMm, true);
            scene.leave();
        }
    }
    const QStringList faults = m_survey.faults().mid(m_faults);
    m_faults = static_cast<int>(m_survey.faults().size());
    for (const QString &fault : faults)
        qInfo("%s", qPrintable(fault));
    QCOMPARE(faults.size(), 0);
}

void WalkTest::theWholeTable()
{
    qInfo("%s", qPrintable(m_survey.table()));
    QVERIFY(m_survey.screens() > 300);
    QVERIFY(m_survey.controls() > 3000);
    QVERIFY(m_survey.drawings() > 100);
}

QTEST_MAIN(WalkTest)
#include "tst_walk.moc"
