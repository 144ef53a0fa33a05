// SPDX-License-Identifier: MIT
//
// The real program by keyboard and by page-turn pedal, which is Page Down and Page Up: nothing is out of
// reach, nothing traps, what has the focus shows it, and at the machine the pedal is the machine's.
#include "eyes.h"
#include "main/scenes.h"
#include "program.h"
#include "warnings.h"

#include "testing.h"
#include <QPointer>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>

using namespace matside;
using namespace touching;

class KeysTest : public QObject {
    Q_OBJECT

private slots:
    void init();
    void cleanup();
    void tabGoesRound_data();
    void tabGoesRound();
    void nothingUnderTheKeypad();
    void escapeClosesWhatLiesOver();
    void thePedalTurnsTheStep();
    void aBounceIsTakenOnce();
    void keysDoAsThePedal();
    void thePedalReachesPastTheBand();
    void whereThePedalStandsIsSaidOnce();
    void atTheMachineThePedalDoesNothing();

private:
    void press(Qt::Key key) { QTest::keyClick(&m_program.window(), key); }
    [[nodiscard]] std::int64_t done() const { return m_program.papers().doneInAll(); }
    void at(Station station) { m_program.at(station); }
    [[nodiscard]] QStringList roundTrip(const QString &where);
    [[nodiscard]] bool shows(const char *objectName) const
    {
        return visibleItem(m_program.window(), QLatin1String(objectName)) != nullptr;
    }

    std::unique_ptr<QTemporaryDir> m_folder;
    Program m_program;
    Warnings m_warnings;
};

void KeysTest::init()
{
    m_folder = std::make_unique<QTemporaryDir>();
    QVERIFY(m_program.openExample(m_folder->path()));
}

void KeysTest::cleanup()
{
    m_program.close();
    const QString heard = m_warnings.taken();
    QVERIFY2(heard.isEmpty(), qPrintable(heard));
}

/// Tab from the first to the first again, and what is wrong on the way.
QStringList KeysTest::roundTrip(const QString &where)
{
    QQuickWindow &window = m_program.window();
    QStringList wrong;
    QList<QPointer<QQuickItem>> wanted;
    for (const Sight &sight : inSight(window))
        if (takesTouch(sight.item) && sight.item->isEnabled())
            wanted.append(sight.item);
    QSet<QQuickItem *> visited;
    press(Qt::Key_Tab);
    const QPointer<QQuickItem> first = window.activeFocusItem();
    QPointer<QQuickItem> here = first;
    for (int tabs = 0; tabs < 400; ++tabs) {
        if (!here || !here->isVisible() || seen(here).isEmpty()) {
            wrong << where + QStringLiteral(": the focus is lost after ") + QString::number(tabs) +
                         QStringLiteral(", at ") +
                         QLatin1String(here ? here->metaObject()->className() : "nothing");
            return wrong;
        }
        const QString name = spokenName(here).simplified();
        if (takesTouch(here) && is(here, "Pressable") && !here->property("keyboardFocus").toBool())
            wrong << where + QStringLiteral(": the focus does not show on ") + name;
        const QList<Sight> sights = inSight(window);
        if (std::none_of(sights.begin(), sights.end(),
                         [&](const Sight &sight) { return sight.item == here; }))
            wrong << where + QStringLiteral(": the focus is under something, on ") + name;
        visited.insert(here);
        press(Qt::Key_Tab);
        here = window.activeFocusItem();
        if (here == first) {
            for (const auto &item : wanted)
                if (item && item->isVisible() && !visited.contains(item))
                    wrong << where + QStringLiteral(": never at ") + spokenName(item).simplified();
            return wrong;
        }
    }
    wrong << where + QStringLiteral(": tab does not come round");
    return wrong;
}

void KeysTest::tabGoesRound_data()
{
    QTest::addColumn<QSize>("size");
    QTest::newRow("10.1 in") << QSize(1280, 800);
    QTest::newRow("8 in") << QSize(1024, 600);
}

void KeysTest::tabGoesRound()
{
    QFETCH(const QSize, size);
    QQuickWindow &window = m_program.window();
    window.resize(size);
    QStringList wrong;
    int screens = 0;
    for (const Scene &scene : scenesOf(m_program.room(), window)) {
        scene.open();
        settle(60);
        wrong << roundTrip(scene.name);
        ++screens;
        scene.leave();
    }
    for (const QString &says : wrong)
        qInfo("%s", qPrintable(says));
    QCOMPARE(wrong.size(), 0);
    QVERIFY(screens > 20);
}

void KeysTest::nothingUnderTheKeypad()
{
    QStringList wrong;
    for (const QSize size : {QSize(1280, 800), QSize(800, 1280)}) {
        m_program.window().resize(size);
        for (const auto &[station, name] :
             {std::pair(Station::Fit, "fit-page"), std::pair(Station::Shop, "shop-page")}) {
            at(station);
            QQuickItem *page = visibleItem(m_program.window(), QLatin1String(name));
            QVERIFY(page);
            const QString pointer = QStringLiteral("/prices/batting");
            const QString count = QStringLiteral("count");
            if (station == Station::Fit)
                QMetaObject::invokeMethod(page, "begin", Q_ARG(QString, pointer), Q_ARG(QString, pointer),
                                          Q_ARG(QString, count), Q_ARG(QString, count));
            else
                QMetaObject::invokeMethod(page, "begin", Q_ARG(QString, QStringLiteral("price")),
                                          Q_ARG(QString, pointer), Q_ARG(QString, pointer),
                                          Q_ARG(QString, count), Q_ARG(QString, count));
            settle(60);
            QQuickItem *pad = byObjectName(page, QStringLiteral("keypad"));
            QVERIFY(pad && pad->isVisible());
            // It slides in: a key not yet in the window would be taken for lost.
            QTRY_COMPARE(qRound(pad->mapToScene(QPointF(0, pad->height())).y()), size.height());
            wrong << roundTrip(QLatin1String(name));
            press(Qt::Key_Escape);
            QTRY_VERIFY(!pad->isVisible());
        }
    }
    QVERIFY2(wrong.isEmpty(), qPrintable(wrong.join(QLatin1Char('\n'))));
}

void KeysTest::escapeClosesWhatLiesOver()
{
    const auto sheet = [&] { return visibleItem(m_program.window(), QStringLiteral("sheets")); };
    at(Station::Cut);
    for (const char *lies : {"wrong", "notes", "working"}) {
        QVERIFY(sheet());
        sheet()->setProperty("shows", QString::fromLatin1(lies));
        const QByteArray name = QByteArray("sheet-") + lies;
        QTRY_VERIFY(shows(name));
        press(Qt::Key_Escape);
        QTRY_VERIFY2(!shows(name), lies);
    }
    for (const auto &[station, side] : {std::pair(Station::Join, "gauge"), std::pair(Station::Edge, "care"),
                                        std::pair(Station::Hoop, "gallery")}) {
        at(station);
        const QString page = m_program.room().session().stationName(static_cast<int>(station)).toLower() +
                             QStringLiteral("-page");
        QQuickItem *item = visibleItem(m_program.window(), page);
        QVERIFY(item);
        QMetaObject::invokeMethod(item, "openSide", Q_ARG(QString, QString::fromLatin1(side)));
        QCOMPARE(item->property("side").toString(), QLatin1String(side));
        settle(60);
        press(Qt::Key_Escape);
        QTRY_COMPARE(item->property("side").toString(), QString());
    }
}

void KeysTest::thePedalTurnsTheStep()
{
    at(Station::Cut);
    const std::int64_t before = done();
    press(Qt::Key_PageDown);
    QTRY_COMPARE(done(), before + 1);
    QTest::qWait(450);
    press(Qt::Key_PageUp);
    // Back asks, as it does when it is touched; escape leaves everything as it was.
    QTRY_VERIFY(shows("sheet-undone"));
    press(Qt::Key_PageDown);
    QTest::qWait(50);
    QVERIFY(shows("sheet-undone"));
    press(Qt::Key_Escape);
    QTRY_VERIFY(!shows("sheet-undone"));
    QCOMPARE(done(), before + 1);
}

void KeysTest::aBounceIsTakenOnce()
{
    at(Station::Cut);
    const std::int64_t before = done();
    press(Qt::Key_PageDown);
    press(Qt::Key_PageDown);
    QTest::qWait(450);
    QCOMPARE(done(), before + 1);
}

void KeysTest::keysDoAsThePedal()
{
    at(Station::Cut);
    for (const Qt::Key key : {Qt::Key_Right, Qt::Key_Down, Qt::Key_Space}) {
        const std::int64_t before = done();
        press(key);
        QTRY_COMPARE(done(), before + 1);
        QTest::qWait(450);
    }
}

void KeysTest::thePedalReachesPastTheBand()
{
    at(Station::Cut);
    QQuickItem *cell = called(m_program.window().contentItem(), QStringLiteral("Hoop"));
    QVERIFY(cell);
    cell->forceActiveFocus();
    const std::int64_t before = done();
    press(Qt::Key_PageDown);
    QTRY_COMPARE(done(), before + 1);
}

void KeysTest::whereThePedalStandsIsSaidOnce()
{
    Session &session = m_program.room().session();
    at(Station::Cut);
    press(Qt::Key_Right);
    QTest::qWait(450);
    QVERIFY(session.notice().isEmpty()); // an arrow is a keyboard's
    press(Qt::Key_PageDown);
    QVERIFY(session.notice().contains(QStringLiteral("foot")));
    session.dismissNotice();
    QTest::qWait(450);
    press(Qt::Key_PageDown);
    QVERIFY(session.notice().isEmpty());
}

void KeysTest::atTheMachineThePedalDoesNothing()
{
    at(Station::Hoop);
    StepModel &steps = m_program.room().steps();
    bool stitching = false;
    for (int row = 0; row < steps.steps()->count() && !stitching; ++row) {
        steps.goTo(row);
        stitching = steps.stepAtHand() && steps.stepAtHand()->does == Does::StitchBlock;
    }
    QVERIFY(stitching);
    settle(60);
    const std::int64_t before = done();
    const QString title = steps.title();
    for (const Qt::Key key : {Qt::Key_PageDown, Qt::Key_PageUp, Qt::Key_Down, Qt::Key_Up, Qt::Key_Space}) {
        press(key);
        QTest::qWait(450);
    }
    QCOMPARE(done(), before);
    QCOMPARE(steps.title(), title);
    QVERIFY(!shows("sheet-undone") && !shows("sheet-log"));
    QVERIFY(m_program.room().session().notice().isEmpty());
    // The finger still does it.
    QQuickItem *action = byObjectName(m_program.window().contentItem(), QStringLiteral("action"));
    QVERIFY(action && action->isEnabled());
    QMetaObject::invokeMethod(action, "press");
    QTRY_COMPARE(done(), before + 1);
}

QTEST_MAIN(KeysTest)
#include "tst_keys.moc"
