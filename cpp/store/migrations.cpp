// SPDX-License-Identifier: MIT
#include "store/migrations.h"

#include "store/files.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

namespace matside {

namespace {

StoreResult<Done> runAll(const Database &database, const QStringList &statements)
{
    for (const QString &statement : statements)
        if (const auto ran = database.run(statement); !ran)
            return ran.error();
    return Done{};
}

/// Version 1. Every order is a counter; documents are the project file's own text. A command of a project
/// keeps the one stretch in which the documents differ: at `place`, in UTF-16 units, stood `before` and
/// stands `after`. One of the shelf keeps "mark=0" or "mark=1".
StoreResult<Done> first(const Database &database)
{
    return runAll(
        database,
        {QStringLiteral("CREATE TABLE projects (id TEXT NOT NULL PRIMARY KEY, name TEXT NOT NULL, "
                        "kind TEXT NOT NULL CHECK (kind IN ('own', 'demo')), "
                        "put_away INTEGER NOT NULL CHECK (put_away IN (0, 1)), "
                        "thrown_away INTEGER NOT NULL CHECK (thrown_away IN (0, 1)), position INTEGER NOT "
                        "NULL, created INTEGER NOT NULL, "
                        "changed INTEGER NOT NULL) STRICT"),
         QStringLiteral("CREATE TABLE project_state (project TEXT NOT NULL PRIMARY KEY "
                        "REFERENCES projects (id) ON DELETE CASCADE, document TEXT NOT NULL) STRICT"),
         QStringLiteral(
             "CREATE TABLE commands (seq INTEGER NOT NULL PRIMARY KEY, project TEXT NOT NULL "
             "REFERENCES projects (id) ON DELETE CASCADE, shelf INTEGER NOT NULL CHECK (shelf IN (0, 1)), "
             "kind TEXT NOT NULL, code TEXT NOT NULL, args TEXT NOT NULL CHECK (json_valid(args)), "
             "place INTEGER NOT NULL, before TEXT NOT NULL, after TEXT NOT NULL, "
             "undone INTEGER NOT NULL CHECK (undone IN (0, 1))) STRICT"),
         QStringLiteral("CREATE INDEX commands_of_project ON commands (project, shelf, seq)"),
         QStringLiteral(
             "CREATE INDEX commands_of_shelf ON commands (seq) WHERE shelf = 1 OR kind = 'rename'"),
         QStringLiteral("CREATE TABLE settings (key TEXT NOT NULL PRIMARY KEY, value TEXT NOT NULL) STRICT"),
         QStringLiteral("CREATE TABLE counter (one INTEGER NOT NULL PRIMARY KEY CHECK (one = 1), "
                        "next INTEGER NOT NULL) STRICT"),
         QStringLiteral("INSERT INTO counter (one, next) VALUES (1, 1)")});
}

/// Version 2: photographs and notes. A note stands as long as the command that made it is not undone, and
/// goes for good with it; drafts are photographs taken for a note that is not yet logged. Lengths are texts
/// as in the project file.
StoreResult<Done> second(const Database &database)
{
    return runAll(
        database,
        {QStringLiteral("CREATE TABLE photographs (sha TEXT NOT NULL PRIMARY KEY CHECK (length(sha) = 64), "
                        "format TEXT NOT NULL, bytes INTEGER NOT NULL, width INTEGER NOT NULL, "
                        "height INTEGER NOT NULL, number INTEGER NOT NULL) STRICT"),
         QStringLiteral(
             "CREATE TABLE notes (id TEXT NOT NULL PRIMARY KEY, project TEXT NOT NULL "
             "REFERENCES projects (id) ON DELETE CASCADE, number INTEGER NOT NULL, command INTEGER NOT NULL, "
             "block TEXT NOT NULL, step TEXT NOT NULL, words TEXT NOT NULL, "
             "flags TEXT NOT NULL CHECK (json_valid(flags)), width TEXT NOT NULL, height TEXT NOT NULL, "
             "CHECK ((block = '') <> (step = ''))) STRICT"),
         QStringLiteral("CREATE INDEX notes_of_project ON notes (project, block, number)"),
         QStringLiteral("CREATE INDEX notes_of_command ON notes (command)"),
         QStringLiteral(
             "CREATE TABLE note_photos (note TEXT NOT NULL REFERENCES notes (id) ON DELETE CASCADE, "
             "side TEXT NOT NULL CHECK (side IN ('front', 'back')), "
             "photo TEXT NOT NULL REFERENCES photographs (sha), PRIMARY KEY (note, side)) STRICT"),
         QStringLiteral("CREATE INDEX notes_of_photo ON note_photos (photo)"),
         QStringLiteral(
             "CREATE TABLE drafts (project TEXT NOT NULL REFERENCES projects (id) ON DELETE CASCADE, "
             "block TEXT NOT NULL, side TEXT NOT NULL CHECK (side IN ('front', 'back')), "
             "photo TEXT NOT NULL REFERENCES photographs (sha), PRIMARY KEY (project, block, side)) STRICT"),
         QStringLiteral("CREATE INDEX drafts_of_photo ON drafts (photo)"),
         QStringLiteral("CREATE TRIGGER notes_forgotten AFTER DELETE ON commands WHEN OLD.undone = 1 "
                        "BEGIN DELETE FROM notes WHERE command = OLD.seq; END")});
}

/// Version 3: documents of a project that another tablet is known to have had: sent out, or put together with
/// what stood here by a command (else 0). With a command that is undone and forgotten its document goes too.
StoreResult<Done> third(const Database &database)
{
    return runAll(
        database,
        {QStringLiteral("CREATE TABLE met (project TEXT NOT NULL REFERENCES projects (id) ON DELETE CASCADE, "
                        "sha TEXT NOT NULL CHECK (length(sha) = 64), number INTEGER NOT NULL, "
                        "command INTEGER NOT NULL, document TEXT NOT NULL, PRIMARY KEY (project, sha)) "
                        "STRICT"),
         QStringLiteral("CREATE INDEX met_by_command ON met (command)"),
         QStringLiteral("CREATE TRIGGER met_forgotten AFTER DELETE ON commands WHEN OLD.undone = 1 "
                        "BEGIN DELETE FROM met WHERE command = OLD.seq; END")});
}

StoreResult<Done> step(const Database &database, const Migration &migration)
{
    Transaction transaction(database);
    if (!transaction.began())
        return transaction.began().error();
    if (const auto ran = migration.run(database); !ran)
        return ran.error();
    // A pragma takes no bound value. This one is taken back with the rest.
    const QString version = QStringLiteral("PRAGMA user_version = %1").arg(migration.version);
    if (const auto set = database.run(version); !set)
        return set.error();
    return transaction.commit();
}

StoreResult<Done> checkCopy(const QString &path)
{
    Database copy;
    if (const auto opened = copy.open(path, Database::Mode::Snapshot); !opened)
        return opened.error();
    const auto sound = copy.value(QStringLiteral("PRAGMA integrity_check(1)"));
    if (!sound)
        return sound.error();
    if (sound.value().toString() != QStringLiteral("ok"))
        return StoreError{StoreCode::Damaged, sound.value().toString()};
    return Done{};
}

StoreResult<Done> copyFirst(const Database &database, const QString &backups, int version)
{
    const QString stem = QDir(backups).filePath(QStringLiteral("matside-version-%1").arg(version));
    QString path = stem + QStringLiteral(".sqlite");
    for (int number = 2; QFile::exists(path); ++number)
        path = QStringLiteral("%1-%2.sqlite").arg(stem).arg(number);
    if (const auto copied = copyTo(database, path); !copied)
        return StoreError{StoreCode::NoCopy, copied.error().detail};
    return Done{};
}

/// SQLite leaves the journal of a copy that found no room; beside a later copy of the same name it would
/// count.
void clearAway(const QString &copy)
{
    for (const char *end : {"", "-journal", "-wal", "-shm"})
        QFile::remove(copy + QLatin1String(end));
}

} // namespace

const std::vector<Migration> &allMigrations()
{
    static const std::vector<Migration> all{{1, first}, {2, second}, {3, third}};
    return all;
}

StoreResult<Done> copyTo(const Database &database, const QString &path)
{
    if (QFile::exists(path))
        return StoreError{StoreCode::Exists, path};
    if (!madeFolder(QFileInfo(path).absolutePath()))
        return StoreError{StoreCode::CannotOpen, path};
    const QString part = path + QStringLiteral(".part");
    clearAway(part);
    StoreResult<Done> copied = Done{};
    if (const auto ran = database.run(QStringLiteral("VACUUM INTO ?"), {part}); !ran)
        copied = ran.error();
    else if (const auto sound = checkCopy(part); !sound)
        copied = sound.error();
    // SQLite leaves a copy to the system to write when it likes; an upgrade must not be faster than that.
    else if (!flushedFile(part) || !namedForGood(part, path))
        copied = StoreError{StoreCode::Disk, path};
    if (!copied)
        clearAway(part);
    return copied;
}

StoreResult<Done> migrate(const Database &database, const std::vector<Migration> &migrations,
                          const QString &backups)
{
    const auto held = database.value(QStringLiteral("PRAGMA user_version"));
    if (!held)
        return held.error();
    const int from = held.value().toInt();
    if (from > migrations.back().version)
        return StoreError{StoreCode::Newer, QString::number(from)};
    if (from == migrations.back().version)
        return Done{};
    if (from > 0)
        if (const auto copied = copyFirst(database, backups, from); !copied)
            return copied.error();
    for (const Migration &migration : migrations)
        if (migration.version > from)
            if (const auto done = step(database, migration); !done)
                return done.error();
    return Done{};
}

} // namespace matside
