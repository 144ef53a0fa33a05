// SPDX-License-Identifier: MIT
#include "share/backup.h"

#include "share/archivereader.h"
#include "share/archivewriter.h"
#include "share/manifest.h"
#include "store/database.h"
#include "store/files.h"
#include "store/lock.h"
#include "store/migrations.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QScopeGuard>
#include <QTemporaryDir>

namespace matside {

namespace {

constexpr QLatin1String databaseName("matside.sqlite");
constexpr QLatin1String waiting("restored");

/// What the database in a backup holds and which photographs it refers to.
struct Contents {
    BackedUp told;
    std::vector<Photograph> photos;
};

ShareError badDatabase(const QString &why)
{
    return {ShareCode::BadProject, databaseName, why};
}

/// Looks whether the database is sound, not newer than this program, and what it refers to.
ShareResult<Contents> contentsOf(const QString &database)
{
    Database held;
    if (const auto opened = held.open(database, Database::Mode::Snapshot); !opened)
        return badDatabase(opened.error().detail);
    const auto sound = held.value(QStringLiteral("PRAGMA integrity_check(1)"));
    if (!sound || sound.value().toString() != QStringLiteral("ok"))
        return badDatabase(QStringLiteral("not sound"));
    const auto version = held.value(QStringLiteral("PRAGMA user_version"));
    if (!version || version.value().toInt() < 1)
        return badDatabase(QStringLiteral("no version"));
    if (version.value().toInt() > allMigrations().back().version)
        return ShareError{ShareCode::Newer, databaseName, version.value().toString()};
    Contents contents;
    const auto projects = held.value(QStringLiteral("SELECT count(*) FROM projects WHERE thrown_away = 0"));
    if (!projects)
        return badDatabase(projects.error().detail);
    contents.told.projects = projects.value().toLongLong();
    if (version.value().toInt() < 2) // photographs came with version 2
        return contents;
    const auto notes = held.value(QStringLiteral("SELECT count(*) FROM notes"));
    const auto photos = held.run(QStringLiteral("SELECT sha, format, bytes FROM photographs ORDER BY sha"));
    if (!notes || !photos)
        return badDatabase(QStringLiteral("no notes"));
    contents.told.notes = notes.value().toLongLong();
    for (const Row &row : photos.value()) {
        contents.photos.push_back({row[0].toString(), row[1].toString(), row[2].toLongLong(), {}});
        contents.told.bytes += row[2].toLongLong();
    }
    contents.told.pictures = static_cast<qint64>(contents.photos.size());
    return contents;
}

ShareResult<QByteArray> shaOfFile(const QString &path, const QString &name)
{
    QFile file(path);
    QCryptographicHash hash(QCryptographicHash::Sha256);
    if (!file.open(QIODevice::ReadOnly) || !hash.addData(&file))
        return ShareError{ShareCode::NoPicture, name, file.errorString()};
    return hash.result().toHex();
}

/// A backup opened, its lists compared, nothing unpacked yet.
struct Opened {
    std::unique_ptr<ArchiveReader> archive;
    Manifest manifest;
};

ShareResult<Opened> opened(const QString &path)
{
    auto archive = ArchiveReader::open(path, backupBounds);
    if (!archive)
        return archive.error();
    Opened held{std::move(archive).value(), {}};
    if (!held.archive->entry(sharenames::manifest))
        return ShareError{ShareCode::NotAShare, sharenames::manifest, {}};
    const auto text = held.archive->read(sharenames::manifest, backupBounds.text);
    if (!text)
        return text.error();
    auto manifest = readManifest(text.value(), ManifestKind::Backup);
    if (!manifest)
        return manifest.error();
    held.manifest = std::move(manifest).value();
    for (const ArchiveReader::Entry &entry : held.archive->entries()) {
        const auto listed = held.manifest.files.find(entry.name);
        if (entry.name == sharenames::manifest)
            continue;
        if (listed == held.manifest.files.end() || (entry.name != databaseName && !pictureOf(entry.name)))
            return ShareError{ShareCode::StrayFile, entry.name, {}};
        if (listed->second.bytes != entry.bytes)
            return ShareError{ShareCode::WrongHash, entry.name, {}};
    }
    for (const auto &listed : held.manifest.files)
        if (!held.archive->entry(listed.first))
            return ShareError{ShareCode::MissingFile, listed.first, {}};
    if (!held.archive->entry(databaseName))
        return ShareError{ShareCode::MissingFile, databaseName, {}};
    return held;
}

ShareResult<Done> put(const QString &path, const QByteArray &bytes)
{
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !flushed(file))
        return ShareError{ShareCode::Disk, {}, file.errorString()};
    return Done{};
}

/// Unpacks the database into `dir`, and the photographs too where they are wanted; each is compared with its
/// hash, and a photograph with its name.
ShareResult<BackedUp> unpacked(const QString &path, const QString &dir, bool photographs)
{
    const auto held = opened(path);
    if (!held)
        return held.error();
    const ArchiveReader &archive = *held.value().archive;
    const Manifest &manifest = held.value().manifest;
    const auto database = readListed(archive, manifest, databaseName, backupBounds.bytes);
    if (!database)
        return database.error();
    const QString copy = QDir(dir).filePath(databaseName);
    if (const auto written = put(copy, database.value()); !written)
        return written.error();
    auto contents = contentsOf(copy);
    if (!contents)
        return contents.error();
    BackedUp &told = contents.value().told;
    const PhotoFolder folder(dir);
    if (photographs && !QDir(dir).mkpath(QStringLiteral("photographs")))
        return ShareError{ShareCode::Disk, {}, dir};
    for (const Photograph &photo : contents.value().photos) {
        const QString name = pictureName(photo);
        if (!manifest.files.contains(name)) {
            ++told.missing;
            continue;
        }
        const auto bytes = readListed(archive, manifest, name, photolimits::bytes);
        if (!bytes)
            return bytes.error();
        if (QString::fromLatin1(manifest.files.at(name).sha) != photo.sha)
            return ShareError{ShareCode::WrongHash, name, QStringLiteral("its name")};
        if (!photographs)
            continue;
        if (const auto written = put(folder.original(photo.sha, photo.format), bytes.value()); !written)
            return written.error();
    }
    return told;
}

/// True when a store may be put aside: there is none, or it can be read and no project ever lay in it.
bool isFresh(const QString &dir)
{
    const QString path = storeFile(dir);
    if (!QFile::exists(path))
        return true;
    Database held;
    if (!held.open(path, Database::Mode::Snapshot))
        return false;
    const auto tables = held.value(QStringLiteral("SELECT count(*) FROM sqlite_schema"));
    if (tables && tables.value().toLongLong() == 0)
        return true; // begun, and no more
    const auto projects = held.value(QStringLiteral("SELECT count(*) FROM projects WHERE kind = 'own'"));
    return projects && projects.value().toLongLong() == 0;
}

} // namespace

StoreResult<QString> copyForBackup(const Store &store, const QString &path)
{
    const QString copy = path + QStringLiteral(".database");
    if (const auto copied = store.backupTo(copy); !copied)
        return copied.error();
    return copy;
}

ShareResult<BackedUp> writeBackup(const QString &database, const PhotoFolder &folder, const QString &path)
{
    const auto gone = qScopeGuard([&] { QFile::remove(database); });
    if (QFile::exists(path))
        return ShareError{ShareCode::Exists, {}, path};
    const auto contents = contentsOf(database);
    if (!contents)
        return contents.error();
    ArchiveWriter archive;
    Manifest manifest;
    const auto list = [&](const QString &name, const QString &file) -> ShareResult<Done> {
        const auto sha = shaOfFile(file, name);
        if (!sha)
            return sha.error();
        manifest.files[name] = {QFileInfo(file).size(), sha.value()};
        return Done{};
    };
    if (const auto listed = list(databaseName, database); !listed)
        return listed.error();
    std::vector<Photograph> photos = contents.value().photos;
    // One that is gone or was altered is no longer the photograph: it is counted as missing, and the rest
    // goes.
    std::erase_if(photos, [&](const Photograph &photo) {
        const auto sha = shaOfFile(folder.original(photo.sha, photo.format), photo.sha);
        return !sha || QString::fromLatin1(sha.value()) != photo.sha;
    });
    for (const Photograph &photo : photos)
        if (const auto listed = list(pictureName(photo), folder.original(photo.sha, photo.format)); !listed)
            return listed.error();
    archive.addText(sharenames::manifest, writeManifest(manifest, ManifestKind::Backup));
    archive.addFile(databaseName, database);
    for (const Photograph &photo : photos)
        archive.addFile(pictureName(photo), folder.original(photo.sha, photo.format));
    const QString part = path + QStringLiteral(".part");
    QFile::remove(part);
    if (const auto written = archive.write(part); !written)
        return written.error();
    auto read = lookIntoBackup(part);
    if (read && !namedForGood(part, path))
        read = ShareError{QFile::exists(path) ? ShareCode::Exists : ShareCode::Disk, {}, path};
    if (!read)
        QFile::remove(part);
    return read;
}

ShareResult<BackedUp> lookIntoBackup(const QString &path)
{
    const QTemporaryDir passing;
    if (!passing.isValid())
        return ShareError{ShareCode::Disk, {}, passing.errorString()};
    return unpacked(path, passing.path(), false);
}

bool restoringWaits(const QString &dir)
{
    return QFileInfo(QDir(dir).filePath(waiting)).isDir();
}

ShareResult<BackedUp> stageRestoring(const QString &path, const QString &dir)
{
    if (restoringWaits(dir))
        return ShareError{ShareCode::Exists, {}, dir};
    QTemporaryDir passing(QDir(dir).filePath(QStringLiteral("restoring-XXXXXX")));
    if (!passing.isValid())
        return ShareError{ShareCode::Disk, {}, passing.errorString()};
    auto told = unpacked(path, passing.path(), true);
    if (!told)
        return told;
    if (!flushedFolder(QDir(passing.path()).filePath(QStringLiteral("photographs"))) ||
        !flushedFolder(passing.path()))
        return ShareError{ShareCode::Disk, {}, dir};
    // Under this name it is whole.
    if (!QDir(dir).rename(QFileInfo(passing.path()).fileName(), waiting))
        return ShareError{ShareCode::Disk, {}, dir};
    passing.setAutoRemove(false);
    if (!flushedFolder(dir))
        return ShareError{ShareCode::Disk, {}, dir};
    return told;
}

ShareResult<Done> finishRestoring(const QString &dir)
{
    const QDir home(dir);
    const QStringList begun = home.entryList({QStringLiteral("restoring-*")}, QDir::Dirs);
    if (!restoringWaits(dir) && begun.isEmpty())
        return Done{};
    // Never under another Matside that has the store open.
    const StoreLock lock(home.filePath(QStringLiteral("matside.lock")));
    if (!lock.held())
        return Done{};
    // Unpacked by a program that ended before it was whole: it only takes room.
    for (const QString &name : begun)
        QDir(home.filePath(name)).removeRecursively();
    if (!restoringWaits(dir))
        return Done{};
    QDir from(home.filePath(waiting));
    // Put in place already, by a program that ended before it had cleared away: what was restored may hold no
    // project, and would be put aside itself.
    if (!from.exists(databaseName)) {
        from.removeRecursively();
        return Done{};
    }
    if (!isFresh(dir))
        return Done{};
    const QString database = storeFile(dir);
    // The photographs first: what refers to them comes last, and until then this can be begun again.
    if (!madeFolder(home.filePath(QStringLiteral("photographs"))))
        return ShareError{ShareCode::Disk, {}, dir};
    const QDir photos(from.filePath(QStringLiteral("photographs")));
    for (const QString &name : photos.entryList(QDir::Files)) {
        const QString to = home.filePath(QStringLiteral("photographs/") + name);
        if (!QFile::exists(to) && !QFile::rename(photos.filePath(name), to))
            return ShareError{ShareCode::Disk, {}, to};
    }
    if (!flushedFolder(home.filePath(QStringLiteral("photographs"))))
        return ShareError{ShareCode::Disk, {}, dir};
    // Each before the next, for good: a store that lost its log to a power cut could no longer be told from
    // one with something in it, and a log that came back would be read into the store that is put here now.
    for (const QString &end : {QString(), QStringLiteral("-wal"), QStringLiteral("-shm")}) {
        QFile::remove(database + end);
        if (!flushedFolder(dir))
            return ShareError{ShareCode::Disk, {}, dir};
    }
    if (!QFile::rename(from.filePath(databaseName), database))
        return ShareError{ShareCode::Disk, {}, database};
    if (!flushedFolder(dir))
        return ShareError{ShareCode::Disk, {}, dir};
    from.removeRecursively();
    return Done{};
}

} // namespace matside
