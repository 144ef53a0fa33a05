// SPDX-License-Identifier: MIT
#include "app/awake.h"

#include <QDBusMessage>
#include <QDBusObjectPath>
#include <QDBusPendingReply>
#include <QVariantMap>

#include <utility>

namespace matside {

namespace {

constexpr QLatin1String saverService{"org.freedesktop.ScreenSaver"};
constexpr QLatin1String saverPath{"/org/freedesktop/ScreenSaver"};
constexpr QLatin1String portalService{"org.freedesktop.portal.Desktop"};
constexpr QLatin1String portalPath{"/org/freedesktop/portal/desktop"};
constexpr QLatin1String portalInterface{"org.freedesktop.portal.Inhibit"};
constexpr QLatin1String requestInterface{"org.freedesktop.portal.Request"};
/// The portal's flag for the session going idle.
constexpr uint idle = 8;

QDBusMessage saver(const char *method)
{
    return QDBusMessage::createMethodCall(saverService, saverPath, saverService, QLatin1String(method));
}

} // namespace

Wakeful::Wakeful(QDBusConnection bus, QObject *parent) : QObject(parent), m_bus(std::move(bus)) {}

Wakeful::~Wakeful()
{
    release();
}

void Wakeful::hold(bool awake, const QString &reason)
{
    m_wanted = awake;
    m_reason = reason;
    if (!awake)
        release();
    else if (!held() && !m_asking)
        askSaver();
}

void Wakeful::askSaver()
{
    if (!m_bus.isConnected())
        return;
    m_asking = true;
    QDBusMessage ask = saver("Inhibit");
    ask << QStringLiteral("Matside") << m_reason;
    auto *answer = new QDBusPendingCallWatcher(m_bus.asyncCall(ask), this);
    connect(answer, &QDBusPendingCallWatcher::finished, this, [this, answer] {
        const QDBusPendingReply<uint> cookie = *answer;
        answer->deleteLater();
        if (cookie.isError()) {
            askPortal();
            return;
        }
        m_asking = false;
        m_cookie = cookie.value();
        // Meanwhile she may have gone on.
        if (!m_wanted)
            release();
        emit heldChanged();
    });
}

void Wakeful::askPortal()
{
    QDBusMessage ask =
        QDBusMessage::createMethodCall(portalService, portalPath, portalInterface, QStringLiteral("Inhibit"));
    ask << QString() << idle << QVariantMap{{QStringLiteral("reason"), m_reason}};
    auto *answer = new QDBusPendingCallWatcher(m_bus.asyncCall(ask), this);
    connect(answer, &QDBusPendingCallWatcher::finished, this, [this, answer] {
        const QDBusPendingReply<QDBusObjectPath> request = *answer;
        answer->deleteLater();
        m_asking = false;
        if (request.isError())
            return;
        m_portal = request.value().path();
        if (!m_wanted)
            release();
        emit heldChanged();
    });
}

void Wakeful::release()
{
    if (!held())
        return;
    if (m_cookie) {
        QDBusMessage end = saver("UnInhibit");
        end << *m_cookie;
        m_bus.send(end);
    }
    if (!m_portal.isEmpty())
        m_bus.send(QDBusMessage::createMethodCall(portalService, m_portal, requestInterface,
                                                  QStringLiteral("Close")));
    m_cookie.reset();
    m_portal.clear();
    emit heldChanged();
}

Awake::Awake(const StepModel &steps, const Session &session, const QDBusConnection &bus)
    : m_steps(steps), m_session(session), m_wakeful(bus)
{
    connect(&m_steps, &StepModel::changed, this, &Awake::follow);
    connect(&m_session, &Session::viewChanged, this, &Awake::follow);
    connect(&m_session, &Session::stationChanged, this, &Awake::follow);
    follow();
}

void Awake::follow()
{
    const bool shown = m_session.view() == QStringLiteral("station") && !m_steps.finished();
    m_wakeful.hold(shown, tr("A step is shown"));
}

} // namespace matside
