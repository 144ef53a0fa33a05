// SPDX-License-Identifier: MIT
//
// Every page and sheet of the real program, on every size of screen it stands for and at two densities of
// each, measured in the millimetres of the calibrated screen. The least sizes are the house's table, with its
// sources, in survey.cpp.
#include "app/voice.h"
#include "eyes.h"
#include "main/scenes.h"
#include "survey.h"
#include "warnings.h"

#include "testing.h"
#include <QElapsedTimer>
#include <QFile>
#include <QImage>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>

using namespace matside;
using namespace touching;

namespace {

/// The four sizes a screen may have, each as large as it is sold and as the other of 10 in and 8 in.
constexpr Sheet walked[] = {{1280, 800, 5.87}, {1280, 800, 7.41}, {800, 1280, 5.87},  {800, 1280, 7.41},
                            {1024, 600, 5.84}, {1024, 600, 4.63}, {2000, 1200, 8.83}, {2000, 1200, 11.48}};
constexpr const char *lights[] = {"day", "lamp", "contrast"};

/// Has every language and says nothing: with it, what reads a step out stands on every page of steps.
class Silent : public Voice {
public:
    [[nodiscard]] bool speaks(const QString &) override { return true; }
    void say(const QString &, const QString &) override {}
    [[nodiscard]] bool speaking() const override { return false; }
    void hush() override {}
};

/// Waits until two pictures running are alike: on a busy machine a page is laid out some frames later.
void comeToRest(QQuickWindow &window)
{
    settle(40);
    QImage last = window.grabWindow();
    for (int looks = 0; looks < 25; ++looks) {
        settle(40);
        const QImage next = window.grabWindow();
        if (next == last)
            return;
        last = next;
    }
}

} // namespace

class WalkTest : public QObject {
    Q_OBJECT

public:
    /// A walk is long: QtTest would end it after five minutes, which a busy machine needs.
    static void initMain() { qputenv("QTEST_FUNCTION_TIMEOUT", "3600000"); }

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
    QTest::addColumn<int>("sheet");
    // The demo is walked at one density, the piece half made at both.
    for (int at = 0; at < static_cast<int>(std::size(walked)); ++at) {
        const QString screen = QStringLiteral("%1 × %2 at %3 px/mm")
                                   .arg(walked[at].width)
                                   .arg(walked[at].height)
                                   .arg(walked[at].pxPerMm);
        if (at % 2 == 0)
            QTest::newRow(qPrintable(QStringLiteral("the demo, ") + screen))
                << QStringLiteral(":/demo/demo-project.json") << at;
        QTest::newRow(qPrintable(QStringLiteral("a piece half made, ") + screen))
            << QStringLiteral(TEST_DATA_DIR "/project-example.json") << at;
    }
}

void WalkTest::everyScreen()
{
    QFETCH(const QString, project);
    QFETCH(const int, sheet);
    QFile file(project);
    QVERIFY(file.open(QIODevice::ReadOnly));
    QTemporaryDir folder;
    auto store = openStore(folder.path());
    QVERIFY(store);
    const auto id = store.value()->create(QString::fromUtf8(file.readAll()));
    QVERIFY(id);
    Silent voice;
    Room room(std::move(store).value(), walked[sheet].pxPerMm);
    room.session().openProject(id.value());
    room.aloud().speakBy(voice);
    room.aloud().setWhen(QStringLiteral("asked"));
    QVERIFY(room.show());
    QQuickWindow *window = windowOf(room);
    QVERIFY(window);
    const auto &[width, height, pxPerMm] = walked[sheet];
    room.look().setPxPerMm(pxPerMm);
    window->resize(width, height);
    // Colours are the same at every density: they are read at the first.
    const bool readColours = sheet % 2 == 0;
    std::size_t light = 0;
    for (const Scene &scene : scenesOf(room, *window)) {
        room.look().setColourSet(QLatin1String(lights[light++ % std::size(lights)]));
        scene.open();
        comeToRest(*window);
        const QString where =
            QStringLiteral("%1 %2×%3 at %4 px/mm").arg(scene.name).arg(width).arg(height).arg(pxPerMm);
        // Lists make their rows one by one while nothing else is to be done: what is wrong must still be
        // wrong a while later.
        const Survey before = m_survey;
        for (int looks = 0; looks < 4; ++looks) {
            m_survey = before;
            m_survey.look(*window, where, pxPerMm, readColours);
            if (m_survey.faults().size() == before.faults().size())
                break;
            settle(400);
        }
        scene.leave();
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
