// SPDX-License-Identifier: MIT
#pragma once

#include "store/database.h"

namespace matside {

/// One step of the schema: to `version`, by a plain function that uses no class of today's program.
struct Migration {
    int version;
    StoreResult<Done> (*run)(const Database &database);
};

/// Every migration in order. A new one is one more entry.
[[nodiscard]] const std::vector<Migration> &allMigrations();

/// Brings a database up to date, each migration in a transaction with its version. A database that holds
/// something is copied first, into `backups`, named with the version it has. Newer ones are refused.
[[nodiscard]] StoreResult<Done> migrate(const Database &database, const std::vector<Migration> &migrations,
                                        const QString &backups);

/// A whole copy of an open database as a new file: written beside it, checked, flushed, then named.
[[nodiscard]] StoreResult<Done> copyTo(const Database &database, const QString &path);

} // namespace matside
