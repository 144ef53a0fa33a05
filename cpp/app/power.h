// SPDX-License-Identifier: MIT
#pragma once

#include "app/battery.h"
#include "app/session.h"

#include <QTimer>

namespace matside {

/// What the battery lets her do. Below 15 % and unplugged one quiet line is said, once until it was charged;
/// below 5 % nothing new is begun. What was done is saved in either case: that is the store's business.
class Power : public QObject, public Single<Power> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    /// So low that nothing new is begun.
    Q_PROPERTY(bool spent READ spent NOTIFY changed FINAL)
    /// Why nothing new is begun now; empty when it may.
    Q_PROPERTY(QString says READ says NOTIFY changed FINAL)
public:
    static constexpr double lowPercent = 15;
    static constexpr double spentPercent = 5;
    static constexpr int everyMs = 30'000;

    /// Knows nothing before it watches.
    explicit Power(Session &session, QString folder = powerSupplies);
    using Single<Power>::create;

    [[nodiscard]] bool spent() const { return m_spent; }
    [[nodiscard]] QString says() const;
    /// Reads the battery now and twice a minute.
    void watch();
    /// Reads the supplies of that folder from now on.
    void lookInto(const QString &folder);
    /// Reads it now.
    void look();

signals:
    void changed();

private:
    Session &m_session;
    QString m_folder;
    QTimer m_clock;
    bool m_told = false;
    bool m_spent = false;
};

} // namespace matside
