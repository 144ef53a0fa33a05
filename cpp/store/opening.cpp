// SPDX-License-Identifier: MIT
#include "store/opening.h"

#include "store/files.h"
#include "store/lock.h"

#include <QDir>
#include <QFileInfo>

namespace matside {

namespace {

struct Opened {
    std::unique_ptr<Database> database;
    Access access = Access::Full;
};

/// A damaged file opens without a word; looking at its pages tells.
StoreResult<Done> probe(const Database &database)
{
    const auto sound = database.value(QStringLiteral("PRAGMA quick_check(1)"));
    if (!sound)
        return sound.error();
    if (sound.value().toString() != QStringLiteral("ok"))
        return StoreError{StoreCode::Damaged, sound.value().toString()};
    return Done{};
}

/// Refuses what this program cannot read: another's file, a newer store, and an older one that is not to be
/// upgraded.
StoreResult<Done> fits(const Database &database, int newest, bool upgrade)
{
    const auto version = database.value(QStringLiteral("PRAGMA user_version"));
    if (!version)
        return version.error();
    const int held = version.value().toInt();
    const QString detail = QStringLiteral("version %1, this program has %2").arg(held).arg(newest);
    if (held > newest)
        return StoreError{StoreCode::Newer, detail};
    const auto tables = database.value(QStringLiteral("SELECT count(*) FROM sqlite_schema"));
    if (!tables)
        return tables.error();
    if (held == 0 && tables.value().toInt() > 0)
        return StoreError{StoreCode::CannotOpen, QStringLiteral("the file was made by something else")};
    if (held < newest && !upgrade)
        return StoreError{StoreCode::NeedsUpgrade, detail};
    return Done{};
}

StoreResult<Opened> openBesideAWriter(const QString &file, int newest)
{
    auto database = std::make_unique<Database>();
    if (const auto opened = database->open(file, Database::Mode::Read); !opened)
        return opened.error();
    if (const auto fit = fits(*database, newest, false); !fit)
        return fit.error();
    return Opened{std::move(database), Access::SecondInstance};
}

StoreResult<Opened> openForWriting(const QString &file, const std::vector<Migration> &migrations)
{
    auto database = std::make_unique<Database>();
    if (const auto opened = database->open(file, Database::Mode::Write); !opened)
        return opened.error();
    if (const auto durable = database->makeDurable(); !durable)
        return durable.error();
    const QString backups = QFileInfo(file).dir().filePath(QStringLiteral("backups"));
    if (const auto migrated = migrate(*database, migrations, backups); !migrated)
        return migrated.error();
    return Opened{std::move(database), Access::Full};
}

bool cannotWrite(StoreCode code)
{
    return code == StoreCode::ReadOnly || code == StoreCode::Disk || code == StoreCode::CannotOpen;
}

/// Looks before touching: a newer or damaged file stays as it is, to the byte.
StoreResult<Opened> openExisting(const QString &file, bool mayWrite, const std::vector<Migration> &migrations)
{
    const int newest = migrations.back().version;
    auto looked = std::make_unique<Database>();
    if (const auto opened = looked->open(file, Database::Mode::Snapshot); !opened)
        return opened.error();
    const auto fit = fits(*looked, newest, true);
    if (!fit && fit.error().code != StoreCode::Damaged)
        return fit.error();
    if (!fit || !probe(*looked))
        return Opened{std::move(looked), Access::Damaged};
    // The permissions are asked first: SQLite would open such a file and only stumble at the first edit.
    if (mayWrite && QFileInfo(file).isWritable()) {
        auto opened = openForWriting(file, migrations);
        if (opened || !cannotWrite(opened.error().code))
            return opened;
    }
    if (const auto current = fits(*looked, newest, false); !current)
        return current.error();
    return Opened{std::move(looked), Access::ReadOnlyFolder};
}

StoreResult<Opened> openAny(const QString &file, const StoreLock &lock,
                            const std::vector<Migration> &migrations)
{
    if (!lock.held() && lock.taken())
        return openBesideAWriter(file, migrations.back().version);
    if (QFileInfo(file).size() > 0)
        return openExisting(file, lock.held(), migrations);
    if (!lock.held())
        return StoreError{StoreCode::CannotOpen, QStringLiteral("nothing can be written beside ") + file};
    return openForWriting(file, migrations);
}

} // namespace

QString storeFile(const QString &dir)
{
    return QDir(dir).filePath(QStringLiteral("matside.sqlite"));
}

Store::Store(QString folder, std::unique_ptr<StoreLock> lock, std::unique_ptr<Database> database,
             Access access)
    : m_folder(std::move(folder)), m_lock(std::move(lock)), m_database(std::move(database)), m_access(access)
{
}

Store::~Store() = default;

StoreResult<std::unique_ptr<Store>> openStore(const QString &dir)
{
    return openStore(dir, allMigrations());
}

StoreResult<std::unique_ptr<Store>> openStore(const QString &dir, const std::vector<Migration> &migrations)
{
    // Where its folder may not be looked into, the name cannot be flushed; that alone is no hindrance.
    if (!madeFolder(dir) && !QFileInfo(dir).isDir())
        return StoreError{StoreCode::CannotOpen, QStringLiteral("cannot make the folder ") + dir};
    auto lock = std::make_unique<StoreLock>(QDir(dir).filePath(QStringLiteral("matside.lock")));
    auto opened = openAny(storeFile(dir), *lock, migrations);
    if (!opened)
        return opened.error();
    return std::unique_ptr<Store>(
        new Store(dir, std::move(lock), std::move(opened.value().database), opened.value().access));
}

} // namespace matside
