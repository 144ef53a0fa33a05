// SPDX-License-Identifier: MIT
#pragma once

#include "app/workspace.h"

#include <QAbstractListModel>
#include <QVariantList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

namespace matside {

/// Problems that keep a project from the shelf, for QML: {says, offers: [{says, index}]}.
[[nodiscard]] QVariantList mendable(const std::vector<Problem> &problems, Marks marks);
/// A problem's offer by their places in lists shown so; nullptr where there is none.
[[nodiscard]] const Offer *offerAt(const std::vector<Problem> &problems, int row, int index);
/// A name without what a folder cannot hold, of at most 80 characters and without the ending `end`.
[[nodiscard]] QString plainFileName(const QString &name, QLatin1String end);

/// Project files in a folder, to be looked at and laid on the shelf; and the present project written to one.
/// A file is only ever read, and none is ever written over: remedies mend what is laid on the shelf.
class OpenFiles : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to FitModel")
    Q_PROPERTY(int count READ count NOTIFY folderChanged FINAL)
    Q_PROPERTY(QString folder READ folder NOTIFY folderChanged FINAL)
    Q_PROPERTY(bool canGoUp READ canGoUp NOTIFY folderChanged FINAL)
    Q_PROPERTY(QString chosen READ chosen NOTIFY chosenChanged FINAL)
    Q_PROPERTY(QString chosenName READ chosenName NOTIFY chosenChanged FINAL)
    Q_PROPERTY(QString refusal READ refusal NOTIFY chosenChanged FINAL)
    Q_PROPERTY(QVariantList problems READ problems NOTIFY chosenChanged FINAL)
    Q_PROPERTY(bool ready READ ready NOTIFY chosenChanged FINAL)
    Q_PROPERTY(QString nameForFile READ nameForFile NOTIFY nameForFileChanged FINAL)
public:
    enum Role { Name = Qt::UserRole + 1, Path, IsFolder, IsShare, IsBackup };
    explicit OpenFiles(Workspace &workspace);
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(m_entries.size()); }
    [[nodiscard]] QString folder() const { return m_folder; }
    [[nodiscard]] bool canGoUp() const;
    [[nodiscard]] QString chosen() const { return m_chosen; }
    /// The project's own name in the chosen file.
    [[nodiscard]] QString chosenName() const { return m_name; }
    /// Why the chosen file cannot be opened at all, or "".
    [[nodiscard]] QString refusal() const { return m_refusal; }
    /// What must be mended before it can be opened: {says, offers: [{says, index}]}.
    [[nodiscard]] QVariantList problems() const;
    [[nodiscard]] bool ready() const;
    /// A name for a file of the present project that is not taken.
    [[nodiscard]] QString nameForFile() const;
    /// The folder files are written to; the maker's documents unless a test says otherwise.
    void setDocuments(const QString &folder) { m_documents = folder; }

    /// Reads a folder: its folders, then its project files and share files, by name; at most 500 of each.
    Q_INVOKABLE void show(const QString &folder);
    /// The maker's documents, or home where there are none.
    Q_INVOKABLE void showDocuments();
    Q_INVOKABLE void goUp();
    /// Reads a file and says what is wrong in it.
    Q_INVOKABLE void look(const QString &path);
    /// Puts the chosen file back.
    Q_INVOKABLE void leave();
    Q_INVOKABLE void takeOffer(int row, int index);
    /// Lays the chosen project on the shelf; its id, or "" with the refusal said.
    Q_INVOKABLE QString open();
    /// Writes the present project to a new file of that name in the documents: {ok, says}.
    Q_INVOKABLE QVariantMap write(const QString &name);

signals:
    void folderChanged();
    void chosenChanged();
    void nameForFileChanged();

private:
    struct Entry {
        QString name;
        QString path;
        bool folder = false;
        bool backup = false;
        bool share = false; ///< a share file: its project comes with notes and photographs
    };
    void read(std::string text);
    [[nodiscard]] QString pathFor(const QString &name) const;

    Workspace &m_workspace;
    std::vector<Entry> m_entries;
    QString m_documents;
    QString m_folder;
    QString m_chosen;
    QString m_name;
    QString m_refusal;
    std::string m_text; ///< the chosen file's, with the remedies taken
    std::vector<Problem> m_problems;
    Marks m_marks;
};

} // namespace matside
