// SPDX-License-Identifier: MIT
#pragma once

#include "app/stepmodel.h"

#include <QDBusConnection>
#include <QDBusPendingCallWatcher>

namespace matside {

/// Keeps the screen from sleeping: asks the desktop session over its bus, first the screen saver's service,
/// and where that does not answer the desktop portal. Where there is neither, or no bus, nothing happens.
/// Interfaces: freedesktop.org, Idle Inhibition Service 0.1 and XDG Desktop Portal,
/// org.freedesktop.portal.Inhibit.
class Wakeful : public QObject {
    Q_OBJECT

public:
    explicit Wakeful(QDBusConnection bus, QObject *parent = nullptr);
    ~Wakeful() override;
    void hold(bool awake, const QString &reason);
    /// Whether a service has taken the wish.
    [[nodiscard]] bool held() const { return m_cookie.has_value() || !m_portal.isEmpty(); }

signals:
    void heldChanged();

private:
    void askSaver();
    void askPortal();
    void release();

    QDBusConnection m_bus;
    bool m_wanted = false;
    bool m_asking = false;
    QString m_reason;
    std::optional<uint> m_cookie; ///< of the screen saver
    QString m_portal;             ///< path of the portal's request
};

/// Keeps the screen awake while a step is shown, and no longer.
class Awake : public QObject {
    Q_OBJECT

public:
    Awake(const StepModel &steps, const Session &session, const QDBusConnection &bus);
    [[nodiscard]] bool held() const { return m_wakeful.held(); }

private:
    void follow();

    const StepModel &m_steps;
    const Session &m_session;
    Wakeful m_wakeful;
};

} // namespace matside
