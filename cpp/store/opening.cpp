// SPDX-License-Identifier: MIT
#include "store/opening.h"

#include <QDir>
#include <QFileInfo>

namespace matside {

namespace {

StoreResult<Done> makeDurable(const Database &database)
{
    for (const char *pragma : {"PRAGMA journal_mode = WAL", "PRAGMA synchronous = FULL"})
        if (const auto set = database.run(QLatin1String(pragma)); !set)
            return set.error();
    return Done{};
}

/// A damaged file opens without a word; the first look at its pages tells.
StoreResult<Done> probe(const Database &database)
{
    const auto sound = database.value(QStringLiteral("PRAGMA quick_check(1)"));
    if (!sound)
        return sound.error();
    if (sound.value().toString() != QStringLiteral("ok"))
        return StoreError{StoreCode::Damaged, sound.value().toString()};
    return Done{};
}

struct Opened {
    std::unique_ptr<Database> database;
    Access access;
};

StoreResult<Opened> openForReading(const QString &file, Access access, int newest)
{
    auto database = std::make_unique<Database>();
    if (const auto opened = database->open(file, true); !opened)
        return opened.error();
    const auto version = database->value(QStringLiteral("PRAGMA user_version"));
    if (version && version.value().toInt() > newest)
        return StoreError{StoreCode::Newer, version.value().toString()};
    if (version && access != Access::Damaged && version.value().toInt() < newest)
        return StoreError{StoreCode::NeedsUpgrade, version.value().toString()};
    if (!version && access != Access::Damaged)
        return version.error();
    return Opened{std::move(database), access};
}

StoreResult<Opened> openForWriting(const QString &file, const std::vector<Migration> &migrations)
{
    auto database = std::make_unique<Database>();
    if (const auto opened = database->open(file, false); !opened)
        return opened.error();
    // Look before touching: a newer or damaged file stays as it is, to the byte.
    const auto version = database->value(QStringLiteral("PRAGMA user_version"));
    if (!version)
        return version.error();
    if (version.value().toInt() > migrations.back().version)
        return StoreError{StoreCode::Newer, version.value().toString()};
    if (const auto sound = probe(*database); !sound)
        return sound.error();
    if (const auto durable = makeDurable(*database); !durable)
        return durable.error();
    const QString copies = QFileInfo(file).dir().filePath(QStringLiteral("copies"));
    if (const auto migrated = migrate(*database, migrations, copies); !migrated)
        return migrated.error();
    return Opened{std::move(database), Access::Full};
}

} // namespace

QString storeFile(const QString &dir)
{
    return QDir(dir).filePath(QStringLiteral("matside.sqlite"));
}

Store::Store(std::unique_ptr<StoreLock> lock, std::unique_ptr<Database> database, Access access)
    : m_lock(std::move(lock)), m_database(std::move(database)), m_access(access)
{
}

Store::~Store() = default;

StoreResult<std::unique_ptr<Store>> openStore(const QString &dir)
{
    return openStore(dir, allMigrations());
}

StoreResult<std::unique_ptr<Store>> openStore(const QString &dir, const std::vector<Migration> &migrations)
{
    const QString file = storeFile(dir);
    if (!QDir().mkpath(dir))
        return StoreError{StoreCode::CannotOpen, dir};
    const int newest = migrations.back().version;
    auto lock = std::make_unique<StoreLock>(QDir(dir).filePath(QStringLiteral("matside.lock")));
    const auto reading = [&](Access access) -> StoreResult<std::unique_ptr<Store>> {
        auto opened = openForReading(file, access, newest);
        if (!opened)
            return opened.error();
        return std::unique_ptr<Store>(new Store(nullptr, std::move(opened.value().database), access));
    };
    if (!lock->take())
        return reading(lock->taken() ? Access::SecondInstance : Access::ReadOnlyFolder);
    auto opened = openForWriting(file, migrations);
    if (opened)
        return std::unique_ptr<Store>(
            new Store(std::move(lock), std::move(opened.value().database), Access::Full));
    const StoreCode why = opened.error().code;
    if (why == StoreCode::Damaged)
        return reading(Access::Damaged);
    if (why == StoreCode::ReadOnly)
        return reading(Access::ReadOnlyFolder);
    return opened.error();
}

} // namespace matside
