// SPDX-License-Identifier: MIT
#pragma once

#include "app/shopmodel.h"
#include "bench/kits.h"

#include <QVariantList>
#include <QVariantMap>

namespace matside {

/// Kits for a class: how many, what they take together beside one by one, the cuts of each kit and of the
/// cutting day, and the hours at the machines.
class KitsModel : public QObject, public Single<KitsModel> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QString headSays READ headSays NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList bundles READ bundles NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList folded READ folded NOTIFY changed FINAL)
    Q_PROPERTY(QStringList names READ names NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList amounts READ amounts NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList cloths READ cloths NOTIFY changed FINAL)
    Q_PROPERTY(QVariantMap room READ room NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList cuts READ cuts NOTIFY changed FINAL)
    Q_PROPERTY(QString hoursSay READ hoursSay NOTIFY changed FINAL)
    Q_PROPERTY(QString cautionSays READ cautionSays NOTIFY changed FINAL)
    Q_PROPERTY(bool open READ isOpen WRITE setOpen NOTIFY changed FINAL)
public:
    KitsModel(Workspace &workspace, Session &session, const ShopModel &shop);
    using Single<KitsModel>::create;

    /// "15 kits: 12 students, yours and 2 spare"; empty when no class is planned.
    [[nodiscard]] QString headSays() const;
    /// One of each kind, in order: {kind: "student", "yours" or "spare", count}; empty when no class is
    /// planned.
    [[nodiscard]] QVariantList bundles() const;
    /// The colours of the cloths in a kit.
    [[nodiscard]] QVariantList folded() const;
    /// What all of the amounts are called, whether a class is planned or not.
    [[nodiscard]] QStringList names() const;
    /// {key, says, kind, figure}: students, spare kits, machines; and whether some are under eighteen.
    [[nodiscard]] QVariantList amounts() const;
    /// Cloth by cloth, together and one by one: {says, print, together, apart}, the last two shares of the
    /// longest.
    [[nodiscard]] QVariantList cloths() const;
    /// Where they learn: {machines, young}; empty when no class is planned.
    [[nodiscard]] QVariantMap room() const;
    /// {says, each, all}: what is cut, in each kit, on the day.
    [[nodiscard]] QVariantList cuts() const;
    [[nodiscard]] QString hoursSay() const;
    [[nodiscard]] QString cautionSays() const;
    /// Looked at: only then the lists are made.
    [[nodiscard]] bool isOpen() const { return m_open; }
    void setOpen(bool open);

    Q_INVOKABLE void nudge(const QString &key, int steps);
    /// {ok, says}
    Q_INVOKABLE QVariantMap enter(const QString &key, const QString &text);
    Q_INVOKABLE void pick(const QString &key, bool value);

signals:
    void changed();

private:
    void refresh();
    [[nodiscard]] std::int64_t value(const QString &key) const;
    /// False when it could not be put.
    bool put(const QString &key, std::int64_t value);

    Workspace &m_workspace;
    Session &m_session;
    const ShopModel &m_shop;
    KitPlan m_kits;
    bool m_open = false;
};

} // namespace matside
