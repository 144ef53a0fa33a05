// SPDX-License-Identifier: MIT
#pragma once

#include "store/database.h"
#include "store/store.h"

namespace matside {

/// The next number of the one counter that orders everything, the first of `count` that are taken; inside the
/// caller's transaction.
[[nodiscard]] StoreResult<std::int64_t> nextNumber(const Database &database, int count = 1);

/// What a command of the shelf turns: one mark of one project.
inline constexpr auto thrownAwayMark = "thrown_away";
inline constexpr auto putAwayMark = "put_away";

/// The one stretch in which two texts differ: at `place`, in UTF-16 units, stood `before`, stands `after`.
struct Stretch {
    std::int64_t place = 0;
    QString before;
    QString after;
};
[[nodiscard]] Stretch stretchBetween(const QString &before, const QString &after);
/// `text` with `from` replaced by `to` at that place; nullopt when `from` does not stand there.
[[nodiscard]] std::optional<QString> replaced(const QString &text, std::int64_t place, const QString &from,
                                              const QString &to);

/// One command to be remembered, inside the caller's transaction. What had been undone is forgotten, and
/// what is too old to be undone.
struct Remembered {
    QString project;
    bool shelf = false;
    CommandLabel label;
    Stretch change;
};
[[nodiscard]] StoreResult<std::int64_t> remember(const Database &database, const Remembered &command);
/// The same under a number that was taken for it.
[[nodiscard]] StoreResult<std::int64_t> rememberAs(const Database &database, std::int64_t number,
                                                   const Remembered &command);

/// Saves an edit inside the caller's transaction: the document, and the command that led to it. Gives the
/// command's number; Stale when the project is not as the command supposes.
[[nodiscard]] StoreResult<std::int64_t> editInside(const Database &database, const QString &id,
                                                   const Command &command);

/// Keeps a document another tablet had, inside the caller's transaction; `command` 0: sent out.
[[nodiscard]] StoreResult<Done> meetInside(const Database &database, const QString &id,
                                           const QString &document, std::int64_t command);

/// How a new project comes onto the shelf.
struct Making {
    const char *kind;    ///< "own" or "demo"
    const char *does;    ///< the command's kind
    QString beside = {}; ///< the project to lie beside; none: first on the shelf
};
/// A new project with a document that was read, inside the caller's transaction. Gives the number of the
/// shelf's command that made it.
[[nodiscard]] StoreResult<std::int64_t> insertInside(const Database &database, const QString &id,
                                                     const QString &document, const Making &making);

/// The name inside a document; Unreadable when it is no JSON object.
[[nodiscard]] StoreResult<QString> nameIn(const QString &document);

/// The document of a project that has not been thrown away.
[[nodiscard]] StoreResult<QString> documentOf(const Database &database, const QString &id);

/// Puts a document in the place of the one that is held, with its name; Stale when another is held.
/// `changed`: the number under which it is changed.
struct Putting {
    QString held;
    QString document;
    std::int64_t changed = 0;
};
[[nodiscard]] StoreResult<Done> putDocument(const Database &database, const QString &id, const Putting &what);

} // namespace matside
