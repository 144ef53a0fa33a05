// SPDX-License-Identifier: MIT
#include "store/migrations.h"

#include <QDir>
#include <QFile>

namespace matside {

namespace {

StoreResult<Done> runAll(const Database &database, const QStringList &statements)
{
    for (const QString &statement : statements)
        if (const auto ran = database.run(statement); !ran)
            return ran.error();
    return Done{};
}

/// Version 1. Every order is a counter; documents are the project file's own text.
StoreResult<Done> first(const Database &database)
{
    return runAll(
        database,
        {QStringLiteral("CREATE TABLE projects (id TEXT NOT NULL PRIMARY KEY, name TEXT NOT NULL, "
                        "kind TEXT NOT NULL CHECK (kind IN ('own', 'demo')), put_away INTEGER NOT NULL, "
                        "thrown_away INTEGER NOT NULL, position INTEGER NOT NULL, created INTEGER NOT NULL, "
                        "changed INTEGER NOT NULL, document TEXT NOT NULL) STRICT"),
         QStringLiteral("CREATE TABLE commands (seq INTEGER NOT NULL PRIMARY KEY, project TEXT NOT NULL "
                        "REFERENCES projects (id) ON DELETE CASCADE, shelf INTEGER NOT NULL, "
                        "kind TEXT NOT NULL, code TEXT NOT NULL, args TEXT NOT NULL, before TEXT NOT NULL, "
                        "after TEXT NOT NULL, undone INTEGER NOT NULL) STRICT"),
         QStringLiteral("CREATE INDEX commands_of_project ON commands (project, shelf, undone, seq)"),
         QStringLiteral("CREATE TABLE settings (key TEXT NOT NULL PRIMARY KEY, value TEXT NOT NULL) STRICT"),
         QStringLiteral("CREATE TABLE counter (one INTEGER NOT NULL PRIMARY KEY CHECK (one = 1), "
                        "next INTEGER NOT NULL) STRICT"),
         QStringLiteral("INSERT INTO counter (one, next) VALUES (1, 1)")});
}

} // namespace

const std::vector<Migration> &allMigrations()
{
    static const std::vector<Migration> all{{1, first}};
    return all;
}

StoreResult<Done> copyTo(const Database &database, const QString &path)
{
    if (QFile::exists(path))
        return StoreError{StoreCode::Exists, path};
    if (const auto copied = database.run(QStringLiteral("VACUUM INTO ?"), {path}); !copied)
        return copied.error();
    Database copy;
    if (const auto opened = copy.open(path, true); !opened)
        return opened.error();
    const auto sound = copy.value(QStringLiteral("PRAGMA integrity_check"));
    if (!sound)
        return sound.error();
    if (sound.value().toString() != QStringLiteral("ok"))
        return StoreError{StoreCode::Damaged, sound.value().toString()};
    return Done{};
}

StoreResult<Done> migrate(const Database &database, const std::vector<Migration> &migrations,
                          const QString &copies)
{
    const auto held = database.value(QStringLiteral("PRAGMA user_version"));
    if (!held)
        return held.error();
    const int from = held.value().toInt();
    if (from > migrations.back().version)
        return StoreError{StoreCode::Newer, QString::number(from)};
    if (from == migrations.back().version)
        return Done{};
    if (from > 0) {
        QString path = copies + QStringLiteral("/before-%1.sqlite").arg(migrations.back().version);
        for (int number = 2; QFile::exists(path); ++number)
            path = copies + QStringLiteral("/before-%1-%2.sqlite").arg(migrations.back().version).arg(number);
        if (!QDir().mkpath(copies))
            return StoreError{StoreCode::NoCopy, copies};
        if (const auto copied = copyTo(database, path); !copied)
            return StoreError{StoreCode::NoCopy, copied.error().detail};
    }
    for (const Migration &migration : migrations) {
        if (migration.version <= from)
            continue;
        Transaction transaction(database);
        if (!transaction.began())
            return transaction.began().error();
        if (const auto ran = migration.run(database); !ran)
            return ran.error();
        if (const auto set = database.run(QStringLiteral("PRAGMA user_version = %1").arg(migration.version));
            !set)
            return set.error();
        if (const auto done = transaction.commit(); !done)
            return done.error();
    }
    return Done{};
}

} // namespace matside
