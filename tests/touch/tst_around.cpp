// SPDX-License-Identifier: MIT
//
// What stands around a step in the real program: the voice that reads it out, the battery, the pedal's
// setting, what moves, and the helper's window.
#include "app/battery.h"
#include "app/voice.h"
#include "eyes.h"
#include "main/scenes.h"
#include "program.h"
#include "warnings.h"

#include "testing.h"
#include <QFile>
#include <QGuiApplication>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>

#include <cmath>

using namespace matside;
using namespace touching;

namespace {

/// Keeps what it was to say.
class Listener : public Voice {
public:
    [[nodiscard]] bool speaks(const QString &) override { return there; }
    void say(const QString &text, const QString &) override { said.append(text); }
    [[nodiscard]] bool speaking() const override { return false; }
    void hush() override {}
    bool there = true;
    QStringList said;
};

QQuickWindow *helperWindow()
{
    for (QWindow *window : QGuiApplication::topLevelWindows())
        if (window->objectName() == QStringLiteral("helper-window") && window->isVisible())
            return qobject_cast<QQuickWindow *>(window);
    return nullptr;
}

} // namespace

class AroundTest : public QObject {
    Q_OBJECT

private slots:
    void init();
    void cleanup();
    void theTargetThatReads();
    void noVoiceNoTarget();
    void theVoiceIsChosenInTheSettings();
    void aPedalThatTurnsNothing();
    void nearlyEmptyNothingNewIsBegun();
    void withReducedMotionNothingSlides();
    void theHelperSeesTheSameStep();
    void theHelperSeesEveryStation();

private:
    void press(Qt::Key key) { QTest::keyClick(&m_program.window(), key); }
    void at(Station station) { m_program.at(station); }
    void pressTarget(QQuickItem *target)
    {
        QVERIFY(target && target->isEnabled());
        QMetaObject::invokeMethod(target, "press");
    }
    [[nodiscard]] QQuickItem *named(const char *name) const
    {
        return visibleItem(m_program.window(), QLatin1String(name));
    }
    [[nodiscard]] std::int64_t done() const { return m_program.papers().doneInAll(); }

    std::unique_ptr<QTemporaryDir> m_folder;
    Program m_program;
    Warnings m_warnings;
};

void AroundTest::init()
{
    m_folder = std::make_unique<QTemporaryDir>();
    QVERIFY(m_program.openExample(m_folder->path()));
}

void AroundTest::cleanup()
{
    m_program.close();
    const QString heard = m_warnings.taken();
    QVERIFY2(heard.isEmpty(), qPrintable(heard));
}

void AroundTest::theTargetThatReads()
{
    Listener voice;
    Aloud &aloud = m_program.room().aloud();
    aloud.speakBy(voice);
    at(Station::Cut);
    QVERIFY(!named("read")); // off until chosen
    aloud.setWhen(QStringLiteral("asked"));
    for (const QSize size : {QSize(1280, 800), QSize(1024, 600), QSize(800, 1280)}) {
        m_program.window().resize(size);
        settle(60);
        voice.said.clear();
        pressTarget(named("read"));
        QCOMPARE(voice.said, QStringList{aloud.words()});
    }
    QVERIFY(!aloud.words().isEmpty());
    // Where no step is shown there is nothing to read.
    at(Station::Shop);
    QVERIFY(!named("read"));
}

void AroundTest::noVoiceNoTarget()
{
    Listener voice;
    voice.there = false;
    Aloud &aloud = m_program.room().aloud();
    aloud.speakBy(voice);
    aloud.setWhen(QStringLiteral("each"));
    at(Station::Cut);
    QVERIFY(!named("read"));
    m_program.room().session().setView(QStringLiteral("settings"));
    settle(60);
    pressTarget(called(m_program.window().contentItem(), QStringLiteral("Read aloud: Each new step")));
    settle(60);
    const QStringList words = printed(m_program.window().contentItem());
    QVERIFY(words.join(QLatin1Char('\n')).contains(QStringLiteral("no voice")));
    // Back with its own voice before this one goes.
    aloud.setWhen(QStringLiteral("off"));
    m_program.close();
}

void AroundTest::theVoiceIsChosenInTheSettings()
{
    Listener voice;
    Aloud &aloud = m_program.room().aloud();
    aloud.speakBy(voice);
    m_program.room().session().setView(QStringLiteral("settings"));
    settle(60);
    pressTarget(called(m_program.window().contentItem(), QStringLiteral("Read aloud: Never")));
    settle(60);
    pressTarget(called(m_program.window().contentItem(), QStringLiteral("Each new step")));
    QCOMPARE(aloud.when(), QStringLiteral("each"));
    pressTarget(called(m_program.window().contentItem(), QStringLiteral("Never")));
    QCOMPARE(aloud.when(), QStringLiteral("off"));
    m_program.close();
}

void AroundTest::aPedalThatTurnsNothing()
{
    m_program.room().session().setView(QStringLiteral("settings"));
    settle(60);
    pressTarget(called(m_program.window().contentItem(), QStringLiteral("Page-turn pedal: Turns the steps")));
    settle(60);
    pressTarget(called(m_program.window().contentItem(), QStringLiteral("Turns nothing")));
    for (const Station station : {Station::Cut, Station::Join}) {
        at(station);
        const std::int64_t before = done();
        press(Qt::Key_PageDown);
        press(Qt::Key_PageUp);
        QTest::qWait(450);
        QCOMPARE(done(), before);
        QVERIFY(!named("sheet-undone"));
    }
    // The keyboard's keys still turn.
    at(Station::Cut);
    const std::int64_t before = done();
    press(Qt::Key_Down);
    QTRY_COMPARE(done(), before + 1);
}

void AroundTest::nearlyEmptyNothingNewIsBegun()
{
    QTemporaryDir supplies;
    const auto battery = [&](const char *percent) {
        QVERIFY(QDir(supplies.path()).mkpath(QStringLiteral("BAT0")));
        for (const auto &[name, text] : {std::pair("type", "Battery"), std::pair("capacity", percent),
                                         std::pair("status", "Discharging")}) {
            QFile file(supplies.filePath(QStringLiteral("BAT0/") + QLatin1String(name)));
            QVERIFY(file.open(QIODevice::WriteOnly));
            file.write(text);
        }
    };
    Session &session = m_program.room().session();
    at(Station::Cut);
    battery("12");
    m_program.room().power().lookInto(supplies.path());
    settle(60);
    QStringList words = printed(m_program.window().contentItem());
    QVERIFY(words.contains(session.notice()) && session.notice().contains(QStringLiteral("low")));
    battery("4");
    m_program.room().power().look();
    // What is in hand can still be taken and is kept.
    const std::int64_t before = done();
    press(Qt::Key_Down);
    QTRY_COMPARE(done(), before + 1);
    session.showShelf();
    settle(60);
    QVERIFY(!called(m_program.window().contentItem(), QStringLiteral("New, in inches")));
    battery("60");
    m_program.room().power().look();
    settle(60);
    QVERIFY(called(m_program.window().contentItem(), QStringLiteral("New, in inches")));
}

void AroundTest::withReducedMotionNothingSlides()
{
    at(Station::Cut);
    QQuickItem *sheets = named("sheets");
    QVERIFY(sheets);
    QQuickItem *pad = nullptr;
    const auto slidBy = [&](bool reduced) {
        m_program.room().look().setReducedMotion(reduced);
        QMetaObject::invokeMethod(sheets, "enter", Q_ARG(QString, QString()),
                                  Q_ARG(QString, QStringLiteral("x")), Q_ARG(QString, QString()));
        pad = named("keypad");
        const double away = pad ? pad->mapToItem(pad->parentItem(), QPointF()).y() - pad->y() : -1;
        settle(300);
        press(Qt::Key_Escape);
        settle(60);
        return away;
    };
    QVERIFY(std::abs(slidBy(true)) < 0.01);
    QVERIFY(slidBy(false) > 10);
}

void AroundTest::theHelperSeesTheSameStep()
{
    Session &session = m_program.room().session();
    at(Station::Cut);
    QVERIFY(!helperWindow());
    session.setHelper(true);
    QTRY_VERIFY(helperWindow());
    QQuickWindow *window = helperWindow();
    QVERIFY(QTest::qWaitForWindowExposed(window));
    StepModel &steps = m_program.room().steps();
    for (int turn = 0; turn < 3; ++turn) {
        settle(60);
        const QStringList words = printed(window->contentItem());
        QVERIFY2(words.contains(steps.title()), qPrintable(words.join(QLatin1Char('|'))));
        if (steps.figure().valid)
            QVERIFY(words.join(QLatin1Char(' ')).contains(steps.figure().whole));
        QVERIFY2(words.contains(steps.caution()) || steps.caution().isEmpty(), qPrintable(steps.caution()));
        steps.next();
    }
    // Nothing on it can be pressed.
    for (const QQuickItem *item : shown(window->contentItem()))
        QVERIFY2(!takesTouch(item) && !pressable(item), qPrintable(spokenName(item)));
    QTest::keyClick(window, Qt::Key_Escape);
    QTRY_VERIFY(!helperWindow());
    QVERIFY(!session.helper());
    // Without a keyboard a touch on it brings up its close button.
    session.setHelper(true);
    QTRY_VERIFY(helperWindow());
    window = helperWindow();
    QVERIFY(QTest::qWaitForWindowExposed(window));
    const auto close = [&] { return byObjectName(window->contentItem(), QStringLiteral("helper-close")); };
    QVERIFY(!close());
    QTest::mouseClick(window, Qt::LeftButton, {}, QPoint(window->width() / 2, window->height() / 2));
    QTRY_VERIFY(close());
    QTest::qWait(450);
    QTest::mouseClick(window, Qt::LeftButton, {},
                      close()->mapToScene(QPointF(close()->width() / 2, close()->height() / 2)).toPoint());
    QTRY_VERIFY(!helperWindow());
    QVERIFY(!session.helper());
    session.setHelper(true);
    QTRY_VERIFY(helperWindow());
    m_program.window().close();
    QTRY_VERIFY(!helperWindow());
}

void AroundTest::theHelperSeesEveryStation()
{
    Session &session = m_program.room().session();
    session.setHelper(true);
    QTRY_VERIFY(helperWindow());
    for (const Station station :
         {Station::Fit, Station::Cut, Station::Hoop, Station::Trim, Station::Join, Station::Edge})
        for (const QSize size : {QSize(1280, 720), QSize(720, 1280), QSize(640, 480)}) {
            helperWindow()->resize(size);
            at(station);
            for (const QQuickItem *item : shown(helperWindow()->contentItem())) {
                if (!isText(item))
                    continue;
                const QRectF place = item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
                QVERIFY2(QRectF(0, 0, size.width(), size.height()).contains(place.center()),
                         qPrintable(session.stationName(static_cast<int>(station)) + QLatin1Char(' ') +
                                    item->property("text").toString()));
            }
            if (const QString folder = qEnvironmentVariable("MATSIDE_TEST_PICTURES"); !folder.isEmpty())
                helperWindow()->grabWindow().save(QStringLiteral("%1/helper-%2-%3x%4.png")
                                                      .arg(folder)
                                                      .arg(static_cast<int>(station))
                                                      .arg(size.width())
                                                      .arg(size.height()));
        }
    session.setHelper(false);
    QTRY_VERIFY(!helperWindow());
}

QTEST_MAIN(AroundTest)
#include "tst_around.moc"
