// SPDX-License-Identifier: MIT
//
// The screen is kept awake while a step is shown. Services of our own stand in for the desktop's on a private
// bus; run without one, only that nothing happens can be seen and is.
#include "app/awake.h"
#include "desk.h"

#include "testing.h"
#include <QtDBus>

using namespace matside;

namespace {

QDBusConnection another(const QString &name)
{
    return QDBusConnection::connectToBus(QDBusConnection::SessionBus, name);
}

} // namespace

/// The screen saver's service: hands out cookies and takes them back.
class FakeSaver : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.ScreenSaver")

public:
    QList<uint> held;
    QStringList reasons;

public slots:
    uint Inhibit(const QString &who, const QString &why)
    {
        reasons << who + QStringLiteral(": ") + why;
        held << ++m_last;
        return m_last;
    }
    void UnInhibit(uint cookie) { held.removeAll(cookie); }

private:
    uint m_last = 40;
};

/// The desktop portal's inhibit, with the request it hands out.
class FakePortal : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.portal.Inhibit")

public:
    uint flags = 0;

public slots:
    QDBusObjectPath Inhibit(const QString &, uint what, const QVariantMap &)
    {
        flags = what;
        return QDBusObjectPath(QStringLiteral("/org/freedesktop/portal/desktop/request/1"));
    }
};

class FakeRequest : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.portal.Request")

public:
    int closed = 0;

public slots:
    void Close() { ++closed; }
};

class AwakeTest : public QObject {
    Q_OBJECT

private slots:
    void init() { m_bus = QDBusConnection::sessionBus().isConnected(); }
    void withoutABus();
    void whileAStepIsShown();
    void goneAgainBeforeTheAnswer();
    void byThePortal();
    void withNobodyThere();

private:
    bool m_bus = false;
};

void AwakeTest::withoutABus()
{
    desk::Open open(desk::topper(), Station::Cut);
    Awake awake(open.steps, open.session, QDBusConnection(QStringLiteral("no such bus")));
    open.session.setStation(static_cast<int>(Station::Hoop));
    open.session.showShelf();
    QVERIFY(!awake.held());
}

void AwakeTest::whileAStepIsShown()
{
    QVERIFY2(m_bus, "this test is started on a bus of its own");
    FakeSaver saver;
    QDBusConnection service = another(QStringLiteral("saver"));
    QVERIFY(service.registerObject(QStringLiteral("/org/freedesktop/ScreenSaver"), &saver,
                                   QDBusConnection::ExportAllSlots));
    QVERIFY(service.registerService(QStringLiteral("org.freedesktop.ScreenSaver")));
    {
        desk::Open open(desk::topper(), Station::Fit);
        Awake awake(open.steps, open.session, another(QStringLiteral("maker")));
        QTest::qWait(50);
        QVERIFY(saver.held.isEmpty()); // nothing is stepped through at Fit
        open.session.setStation(static_cast<int>(Station::Cut));
        QTRY_COMPARE(saver.held.size(), 1);
        QTRY_VERIFY(awake.held());
        open.steps.next();
        open.session.setStation(static_cast<int>(Station::Hoop));
        QTest::qWait(50);
        QCOMPARE(saver.held.size(), 1); // one wish for all of them
        open.session.showShelf();
        QTRY_VERIFY(saver.held.isEmpty());
        open.session.setView(QStringLiteral("station"));
        QTRY_COMPARE(saver.held.size(), 1);
        QTRY_VERIFY(awake.held());
    }
    // The program has gone.
    QTRY_VERIFY(saver.held.isEmpty());
    QVERIFY(saver.reasons.first().startsWith(QStringLiteral("Matside: ")));
    service.unregisterService(QStringLiteral("org.freedesktop.ScreenSaver"));
    service.unregisterObject(QStringLiteral("/org/freedesktop/ScreenSaver"));
}

void AwakeTest::goneAgainBeforeTheAnswer()
{
    FakeSaver saver;
    QDBusConnection service = another(QStringLiteral("saver"));
    QVERIFY(service.registerObject(QStringLiteral("/org/freedesktop/ScreenSaver"), &saver,
                                   QDBusConnection::ExportAllSlots));
    QVERIFY(service.registerService(QStringLiteral("org.freedesktop.ScreenSaver")));
    Wakeful wakeful(another(QStringLiteral("maker")));
    wakeful.hold(true, QStringLiteral("why"));
    wakeful.hold(false, QString());
    QTRY_COMPARE(saver.reasons.size(), 1);
    QTRY_VERIFY(saver.held.isEmpty());
    QVERIFY(!wakeful.held());
    service.unregisterService(QStringLiteral("org.freedesktop.ScreenSaver"));
    service.unregisterObject(QStringLiteral("/org/freedesktop/ScreenSaver"));
}

void AwakeTest::byThePortal()
{
    FakePortal portal;
    FakeRequest request;
    QDBusConnection service = another(QStringLiteral("portal"));
    QVERIFY(service.registerObject(QStringLiteral("/org/freedesktop/portal/desktop"), &portal,
                                   QDBusConnection::ExportAllSlots));
    QVERIFY(service.registerObject(QStringLiteral("/org/freedesktop/portal/desktop/request/1"), &request,
                                   QDBusConnection::ExportAllSlots));
    QVERIFY(service.registerService(QStringLiteral("org.freedesktop.portal.Desktop")));
    Wakeful wakeful(another(QStringLiteral("maker")));
    wakeful.hold(true, QStringLiteral("why"));
    QTRY_VERIFY(wakeful.held());
    // 8: the session going idle (the portal's own list of flags).
    QCOMPARE(portal.flags, 8U);
    wakeful.hold(false, QString());
    QTRY_COMPARE(request.closed, 1);
    QVERIFY(!wakeful.held());
    service.unregisterService(QStringLiteral("org.freedesktop.portal.Desktop"));
}

void AwakeTest::withNobodyThere()
{
    Wakeful wakeful(another(QStringLiteral("maker")));
    wakeful.hold(true, QStringLiteral("why"));
    QTest::qWait(200);
    QVERIFY(!wakeful.held());
    wakeful.hold(false, QString());
}

QTEST_GUILESS_MAIN(AwakeTest)
#include "tst_awake.moc"
