// SPDX-License-Identifier: MIT
#pragma once

#include "app/photokeeper.h"
#include "app/single.h"
#include "app/workspace.h"
#include "share/backup.h"

#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace matside {

/// Everything in one file, and back again while no project is on the shelf. What was looked into and is to be
/// put back waits for the next start, when no store is open. The photographs' thread does the work; meanwhile
/// `busy`.
class Backups : public QObject, public Single<Backups> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool busy READ busy NOTIFY changed FINAL)
    Q_PROPERTY(QString said READ said NOTIFY changed FINAL)
    Q_PROPERTY(bool refused READ refused NOTIFY changed FINAL)
    Q_PROPERTY(QString chosen READ chosen NOTIFY changed FINAL)
    Q_PROPERTY(QString refusal READ refusal NOTIFY changed FINAL)
    Q_PROPERTY(QStringList inside READ inside NOTIFY changed FINAL)
    Q_PROPERTY(bool ready READ ready NOTIFY changed FINAL)
public:
    Backups(Workspace &workspace, PhotoKeeper &keeper);
    using Single<Backups>::create;

    [[nodiscard]] bool busy() const { return m_busy; }
    /// Where the backup lies, or what happens next, or why not.
    [[nodiscard]] QString said() const { return m_said; }
    [[nodiscard]] bool refused() const { return m_refused; }
    /// The backup being looked into.
    [[nodiscard]] QString chosen() const { return m_chosen; }
    [[nodiscard]] QString refusal() const { return m_refusal; }
    [[nodiscard]] QStringList inside() const { return m_inside; }
    [[nodiscard]] bool ready() const { return !m_inside.isEmpty() && m_refusal.isEmpty(); }
    /// The folder backups are written to; the maker's documents unless a test says otherwise.
    void setDocuments(const QString &folder) { m_documents = folder; }

    /// Writes everything to a new file in the documents and reads it back.
    Q_INVOKABLE void backUp();
    Q_INVOKABLE void look(const QString &path);
    Q_INVOKABLE void leave();
    /// Lays what was looked into ready for the next start.
    Q_INVOKABLE void restore();

signals:
    void changed();

private:
    void say(const QString &words, bool refused);
    void away(const std::function<ShareResult<BackedUp>()> &work,
              const std::function<void(const ShareResult<BackedUp> &)> &then);
    [[nodiscard]] bool shelfIsEmpty() const;

    Workspace &m_workspace;
    PhotoKeeper &m_keeper;
    QString m_documents;
    QString m_said;
    QString m_chosen;
    QString m_refusal;
    QStringList m_inside;
    bool m_busy = false;
    bool m_refused = false;
};

} // namespace matside
