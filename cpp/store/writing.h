// SPDX-License-Identifier: MIT
#pragma once

#include "store/database.h"
#include "store/store.h"

namespace matside {

/// The next number of the one counter that orders everything; inside the caller's transaction.
[[nodiscard]] StoreResult<std::int64_t> nextNumber(const Database &database);

/// What a command of the shelf turns: one flag of one project.
inline constexpr auto thrownAway = "thrown_away";
inline constexpr auto putAwayFlag = "put_away";

/// One command to be remembered, inside the caller's transaction. What had been undone is forgotten.
struct Remembered {
    QString project;
    bool shelf = false;
    CommandLabel label;
    QString before;
    QString after;
};
[[nodiscard]] StoreResult<std::int64_t> remember(const Database &database, const Remembered &command);

/// The name inside a document; Unreadable when it is no project file.
[[nodiscard]] StoreResult<QString> nameIn(const QString &document);

/// Puts a document in its project's place, with its name.
[[nodiscard]] StoreResult<Done> putDocument(const Database &database, const QString &id,
                                            const QString &document);

} // namespace matside
