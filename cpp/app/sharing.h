// SPDX-License-Identifier: MIT
#pragma once

#include "app/merging.h"
#include "app/photokeeper.h"
#include "app/session.h"
#include "share/backup.h"
#include "share/unpacking.h"

#include <QStringList>
#include <QVariantList>

#include <functional>

namespace matside {

/// Writes a project's paper sheet to a file, in the form "long", "short" or "class"; gives what is wrong, in
/// a sentence, or nothing.
using SheetPrinter = std::function<QString(const Project &project, const Plan &plan, const QString &path,
                                           const QString &form)>;

/// A project sent out as one file with its notes and photographs, and one that came so: first what is inside,
/// then, when she says so, a new project on the shelf, or put together with the same project here
/// (`merging`). Nothing is ever written over. The photographs' thread does the work; meanwhile `busy`.
class Sharing : public QObject, public Single<Sharing> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged FINAL)
    Q_PROPERTY(QString sharedId READ sharedId NOTIFY saidChanged FINAL)
    Q_PROPERTY(QString said READ said NOTIFY saidChanged FINAL)
    Q_PROPERTY(bool refused READ refused NOTIFY saidChanged FINAL)
    Q_PROPERTY(QString chosen READ chosen NOTIFY chosenChanged FINAL)
    Q_PROPERTY(QString chosenName READ chosenName NOTIFY chosenChanged FINAL)
    Q_PROPERTY(QString refusal READ refusal NOTIFY chosenChanged FINAL)
    Q_PROPERTY(QStringList inside READ inside NOTIFY chosenChanged FINAL)
    Q_PROPERTY(QVariantList problems READ problems NOTIFY chosenChanged FINAL)
    Q_PROPERTY(bool ready READ ready NOTIFY chosenChanged FINAL)
    Q_PROPERTY(matside::Merging *merging READ merging CONSTANT FINAL)
public:
    Sharing(Workspace &workspace, Session &session, PhotoKeeper &keeper);
    using Single<Sharing>::create;

    [[nodiscard]] bool busy() const { return m_busy; }
    /// The project that was shared last, and in words where its file lies, or why there is none.
    [[nodiscard]] QString sharedId() const { return m_sharedId; }
    [[nodiscard]] QString said() const { return m_said; }
    [[nodiscard]] bool refused() const { return m_refused; }
    /// The share file being looked into.
    [[nodiscard]] QString chosen() const { return m_chosen; }
    [[nodiscard]] QString chosenName() const { return m_inside.name; }
    /// Why it cannot be brought in at all, or "".
    [[nodiscard]] QString refusal() const { return m_refusal; }
    /// What is inside, a line each.
    [[nodiscard]] QStringList inside() const;
    /// What must be mended first, as OpenFiles::problems().
    [[nodiscard]] QVariantList problems() const;
    [[nodiscard]] bool ready() const;
    /// What it would bring to the same project on this tablet.
    [[nodiscard]] Merging *merging() { return &m_merging; }
    /// The folder files are written to; the maker's documents unless a test says otherwise.
    void setDocuments(const QString &folder) { m_documents = folder; }

    /// What draws the sheets; until one is given, none can be printed.
    void setPrinter(SheetPrinter printer) { m_printer = std::move(printer); }

    /// Writes a project of the shelf to a new file in the documents, its photographs without place and
    /// device.
    Q_INVOKABLE void share(const QString &id);
    /// Writes the paper sheet of a project of the shelf to a new PDF in the documents; `form` as
    /// SheetPrinter.
    Q_INVOKABLE void print(const QString &id, const QString &form = QStringLiteral("long"));
    Q_INVOKABLE void look(const QString &path);
    Q_INVOKABLE void leave();
    Q_INVOKABLE void takeOffer(int row, int index);
    /// Adds what was looked into to the shelf; broughtIn() follows, or `refusal` says why not.
    Q_INVOKABLE void bringIn();
    /// Puts it together with the same project here, as chosen; broughtIn() follows, or `refusal` says why
    /// not.
    Q_INVOKABLE void takeIn();

signals:
    void busyChanged();
    void saidChanged();
    void chosenChanged();
    void broughtIn(const QString &id);

private:
    void setBusy(bool busy);
    void say(const QString &id, const QString &words, bool refused);
    void looked(const QString &path, const ShareResult<Inside> &found);
    using Arrive = std::function<StoreResult<QString>(const std::vector<Note> &)>;
    /// Keeps the photographs of `part`, then lets it arrive in the store.
    void fetch(const Inside &part, const Arrive &arrive);
    void kept(const ShareResult<std::vector<Note>> &notes, const Arrive &arrive);
    [[nodiscard]] QString pathFor(const QString &name, QLatin1String end) const;

    Workspace &m_workspace;
    Session &m_session;
    PhotoKeeper &m_keeper;
    Merging m_merging{m_workspace, m_keeper};
    SheetPrinter m_printer;
    QString m_documents;
    QString m_sharedId;
    QString m_said;
    QString m_chosen;
    QString m_refusal;
    Inside m_inside;
    bool m_busy = false;
    bool m_refused = false;
    bool m_found = false;
};

/// Plain words for why a share file was not written, or was refused, with what can be done.
[[nodiscard]] QString shareSentence(const ShareError &error);
/// What is in a backup, a line each.
[[nodiscard]] QStringList backupWords(const BackedUp &told);
/// What is inside a share file, a line each.
[[nodiscard]] QStringList insideWords(const Inside &inside);

} // namespace matside
