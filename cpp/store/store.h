// SPDX-License-Identifier: MIT
#pragma once

#include "store/fault.h"

#include <QString>
#include <QStringList>

#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

namespace matside {

class Database;
class StoreLock;
struct Migration;

enum class Access {
    Full,
    SecondInstance, ///< another Matside has this store open: reading only
    ReadOnlyFolder, ///< the folder or disk cannot be written: reading only
    Damaged,        ///< rescue: what can be read is shown and can be exported; nothing is written
};

enum class ProjectKind { Own, Demo };

/// A project as it lies on the shelf. `created` and `changed` are counters, never times.
struct ProjectRow {
    QString id;
    QString name; ///< always the name inside the document
    ProjectKind kind = ProjectKind::Own;
    bool putAway = false;
    std::int64_t created = 0;
    std::int64_t changed = 0;
};

/// What a command was, for the words of "Undo …": a stable code and its arguments (a JSON array as text).
struct CommandLabel {
    QString kind; ///< "edit", "done", "spoiled"… for edits; "create", "rename", "put-away"… on the shelf
    QString code;
    QString args = QStringLiteral("[]");
};

/// An edit of a project: the whole document (text of writeProject()) before and after.
struct Command {
    CommandLabel label;
    QString before; ///< must be what the store holds, else StoreCode::Stale
    QString after;
};

/// The command that undo() or redo() has just taken back or done again.
struct Reversed {
    std::int64_t seq = 0;
    QString project;
    CommandLabel label;
    QString document; ///< the project as it is now
};

/// What can be undone, or redone, next.
struct Reversible {
    std::int64_t seq = 0;
    QString project;
    CommandLabel label;
};

/// What was written by exportReadable().
struct Exported {
    QStringList files;
    QStringList unreadable; ///< ids of projects of which nothing sound could be read
};

/// A key of the settings and its type: QString, bool, std::int64_t or double.
template <class T> struct SettingKey {
    const char *name;
};

namespace settings {
inline constexpr SettingKey<QString> station{"station"};
inline constexpr SettingKey<QString> openProject{"open-project"};
inline constexpr SettingKey<QString> colours{"colours"};
/// Screen pixels to a millimetre, measured against a real ruler.
inline constexpr SettingKey<double> calibration{"calibration"};
} // namespace settings

/// Everything that must survive: projects, the commands that made them, settings. One SQLite file in a
/// folder. What a call has returned as done is on the disk. To be used on the thread that opened it.
class Store {
public:
    ~Store();
    Store(const Store &) = delete;
    Store &operator=(const Store &) = delete;

    [[nodiscard]] Access access() const { return m_access; }
    [[nodiscard]] bool canWrite() const { return m_access == Access::Full; }
    /// The folder the store lies in.
    [[nodiscard]] const QString &folder() const { return m_folder; }

    // The shelf. Each change is a command of the shelf; undoShelf() takes the last one back.
    /// In the order of the shelf; never what was thrown away.
    [[nodiscard]] StoreResult<std::vector<ProjectRow>> projects(bool includePutAway = true) const;
    /// The project's document.
    [[nodiscard]] StoreResult<QString> load(const QString &id) const;
    /// A new project, first on the shelf. Gives its id.
    [[nodiscard]] StoreResult<QString> create(const QString &document);
    /// An edit of the project: undo(id) takes it back, and so does undoShelf() while it is the project's
    /// last. The document's name is what changes.
    [[nodiscard]] StoreResult<Done> rename(const QString &id, const QString &name);
    [[nodiscard]] StoreResult<Done> putAway(const QString &id);
    [[nodiscard]] StoreResult<Done> bringBack(const QString &id);
    /// Kept, out of sight, as long as the command can be undone.
    [[nodiscard]] StoreResult<Done> throwAway(const QString &id);
    /// A copy beside it with nothing made yet. Gives the copy's id.
    [[nodiscard]] StoreResult<QString> makeAgain(const QString &id, const QString &name);
    /// A copy beside it in whole millimetres, with nothing made yet. Gives the copy's id.
    [[nodiscard]] StoreResult<QString> metricCopy(const QString &id, const QString &name);

    /// The demo last worked on, made from `pristine` when there is none. Gives its id.
    [[nodiscard]] StoreResult<QString> ensureDemo(const QString &pristine);
    /// One more demo, beside the one there is. Gives its id.
    [[nodiscard]] StoreResult<QString> freshDemo(const QString &pristine);

    // Edits of one project.
    /// Saves the edit and the state it leads to together. Gives the command's number. What had been undone
    /// can no longer be redone. At least 500 commands of each project are kept.
    [[nodiscard]] StoreResult<std::int64_t> applyEdit(const QString &id, const Command &command);
    /// nullopt: nothing to undo (redo).
    [[nodiscard]] StoreResult<std::optional<Reversible>> undoable(const QString &id) const;
    [[nodiscard]] StoreResult<std::optional<Reversible>> redoable(const QString &id) const;
    [[nodiscard]] StoreResult<Reversed> undo(const QString &id);
    [[nodiscard]] StoreResult<Reversed> redo(const QString &id);
    // What another tablet may have had of a project, to find where the two parted.
    /// SHA-256 of its documents, newest first, each once, at most mostPast: the states its commands lead back
    /// to, those sent out, and those of other tablets it was put together with.
    [[nodiscard]] StoreResult<QStringList> past(const QString &id) const;
    /// The newest of these documents that is among `known`.
    [[nodiscard]] StoreResult<std::optional<QString>> commonPast(const QString &id,
                                                                 const QStringList &known) const;
    /// Remembers that the document is now on another tablet as well.
    [[nodiscard]] StoreResult<Done> sentOut(const QString &id, const QString &document);

    [[nodiscard]] StoreResult<std::optional<Reversible>> undoableShelf() const;
    [[nodiscard]] StoreResult<std::optional<Reversible>> redoableShelf() const;
    [[nodiscard]] StoreResult<Reversed> undoShelf();
    [[nodiscard]] StoreResult<Reversed> redoShelf();

    /// nullopt: never set, or not of that type.
    template <class T> [[nodiscard]] StoreResult<std::optional<T>> setting(SettingKey<T> key) const;
    template <class T> [[nodiscard]] StoreResult<Done> setSetting(SettingKey<T> key, const T &value);

    /// A whole, sound copy of the database as one new file. StoreCode::Exists if the file is there.
    [[nodiscard]] StoreResult<Done> backupTo(const QString &path) const;
    /// Writes each project that can be read as a project file into a folder, which is made.
    [[nodiscard]] StoreResult<Exported> exportReadable(const QString &dir) const;

private:
    friend StoreResult<std::unique_ptr<Store>> openStore(const QString &, const std::vector<Migration> &);
    friend class NoteBook;
    Store(QString folder, std::unique_ptr<StoreLock> lock, std::unique_ptr<Database> database, Access access);

    QString m_folder;

    std::unique_ptr<StoreLock> m_lock; ///< let go last
    std::unique_ptr<Database> m_database;
    Access m_access;
};

/// As many states as past() tells.
inline constexpr int mostPast = 600;
/// The SHA-256 of a document's UTF-8, 64 hexadecimal digits.
[[nodiscard]] QString shaOfDocument(const QString &document);

/// Opens the store of a folder, making both when they are not there. A store that is in use, cannot be
/// written or is damaged opens for reading only: look at access(). StoreCode::Newer: made by a newer
/// program, left as it is.
[[nodiscard]] StoreResult<std::unique_ptr<Store>> openStore(const QString &dir);

/// The store's file in a folder.
[[nodiscard]] QString storeFile(const QString &dir);

} // namespace matside
