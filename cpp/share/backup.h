// SPDX-License-Identifier: MIT
#pragma once

#include "share/sharefault.h"
#include "store/photonotes.h"

namespace matside {

/// How a backup's name ends.
inline constexpr QLatin1String backupEnd(".matside-backup");

/// What is in a backup.
struct BackedUp {
    qint64 projects = 0; ///< on the shelf or put away
    qint64 notes = 0;
    qint64 pictures = 0;
    qint64 bytes = 0;   ///< of the photographs
    qint64 missing = 0; ///< photographs that were gone from the store already when it was backed up
};

/// A whole copy of the database, made beside the file to come; on the store's thread. Gives its path.
[[nodiscard]] StoreResult<QString> copyForBackup(const Store &store, const QString &path);

/// Writes everything of a store, the photographs as they came, as one zip file with a manifest of SHA-256;
/// reads it back and compares before it gets its name. `database` is what copyForBackup() made, and is
/// removed. Never writes over a file. Safe on any thread. Codes as of writeShare().
[[nodiscard]] ShareResult<BackedUp> writeBackup(const QString &database, const PhotoFolder &folder,
                                                const QString &path);

/// Reads all of a backup and compares it with its manifest. Keeps nothing. Codes: every refusal of ShareCode.
[[nodiscard]] ShareResult<BackedUp> lookIntoBackup(const QString &path);

/// Unpacks a backup beside the store of a folder, where it waits for finishRestoring(). Code besides: Exists,
/// when something waits there already.
[[nodiscard]] ShareResult<BackedUp> stageRestoring(const QString &path, const QString &dir);

/// Puts what waits in the place of a store that holds no project of its own; to be called before the store is
/// opened, which then brings an older backup up to date. Nothing waits, or the store holds something: nothing
/// is done. Code: Disk.
[[nodiscard]] ShareResult<Done> finishRestoring(const QString &dir);

/// True when a backup waits in this folder to be put in place.
[[nodiscard]] bool restoringWaits(const QString &dir);

} // namespace matside
