// SPDX-License-Identifier: MIT
#include "store/writing.h"

#include "store/documentname.h"

#include <algorithm>

namespace matside {

namespace {

constexpr int commandsKept = 500;

StoreResult<Done> forget(const Database &database, const QString &sql, const std::vector<QVariant> &values)
{
    if (const auto gone = database.run(sql, values); !gone)
        return gone.error();
    return Done{};
}

StoreResult<Done> forgetUndone(const Database &database, const Remembered &command)
{
    if (!command.shelf)
        // What is undone comes after what is done: no further back than the last of that is looked at.
        return forget(database,
                      QStringLiteral("DELETE FROM commands WHERE project = ? AND shelf = 0 AND undone = 1 "
                                     "AND seq > coalesce((SELECT seq FROM commands WHERE project = ? AND "
                                     "shelf = 0 AND undone = 0 ORDER BY seq DESC LIMIT 1), -1)"),
                      {command.project, command.project});
    return forget(database, QStringLiteral("DELETE FROM commands WHERE shelf = 1 AND undone = 1"), {});
}

StoreResult<Done> forgetOldest(const Database &database, const Remembered &command)
{
    if (!command.shelf)
        return forget(database,
                      QStringLiteral("DELETE FROM commands WHERE project = ? AND shelf = 0 AND seq <= "
                                     "(SELECT seq FROM commands WHERE project = ? AND shelf = 0 "
                                     "ORDER BY seq DESC LIMIT 1 OFFSET ?)"),
                      {command.project, command.project, commandsKept});
    auto trimmed = forget(
        database,
        QStringLiteral("DELETE FROM commands WHERE shelf = 1 AND seq <= "
                       "(SELECT seq FROM commands WHERE shelf = 1 ORDER BY seq DESC LIMIT 1 OFFSET ?)"),
        {commandsKept});
    if (!trimmed)
        return trimmed;
    // No command is left that could bring these back.
    return forget(database,
                  QStringLiteral("DELETE FROM projects WHERE thrown_away = 1 AND NOT EXISTS "
                                 "(SELECT 1 FROM commands WHERE project = projects.id AND shelf = 1)"),
                  {});
}

} // namespace

StoreResult<std::int64_t> nextNumber(const Database &database, int count)
{
    const auto next = database.value(
        QStringLiteral("UPDATE counter SET next = next + ? WHERE one = 1 RETURNING next"), {count});
    if (!next)
        return next.error();
    return static_cast<std::int64_t>(next.value().toLongLong() - count);
}

Stretch stretchBetween(const QString &before, const QString &after)
{
    const qsizetype shorter = std::min(before.size(), after.size());
    auto start =
        std::mismatch(before.cbegin(), before.cbegin() + shorter, after.cbegin()).first - before.cbegin();
    // Never between the halves of a character: half of one cannot be stored.
    if (start > 0 && before[start - 1].isHighSurrogate())
        --start;
    auto same = std::mismatch(before.crbegin(), before.crbegin() + (shorter - start), after.crbegin()).first -
                before.crbegin();
    if (same > 0 && before[before.size() - same].isLowSurrogate())
        --same;
    return {start, before.mid(start, before.size() - same - start),
            after.mid(start, after.size() - same - start)};
}

std::optional<QString> replaced(const QString &text, std::int64_t place, const QString &from,
                                const QString &to)
{
    if (place < 0 || place > text.size() || !QStringView(text).sliced(place).startsWith(from))
        return std::nullopt;
    QString result = text;
    return result.replace(place, from.size(), to);
}

StoreResult<QString> nameIn(const QString &document)
{
    const auto name = nameInObject(document);
    if (!name)
        return StoreError{StoreCode::Unreadable, QStringLiteral("not an object of JSON")};
    return *name;
}

StoreResult<QString> documentOf(const Database &database, const QString &id)
{
    const auto document = database.value(
        QStringLiteral("SELECT document FROM project_state JOIN projects ON projects.id = project "
                       "WHERE project = ? AND thrown_away = 0"),
        {id});
    if (!document)
        return document.error();
    if (!document.value().isValid())
        return StoreError{StoreCode::NotFound, id};
    return document.value().toString();
}

StoreResult<Done> putDocument(const Database &database, const QString &id, const Putting &what)
{
    const auto name = nameIn(what.document);
    if (!name)
        return name.error();
    // As bytes: SQLite turns UTF-16 into its own UTF-8 far more slowly. Comparing in the statement that
    // writes saves reading the document out.
    const auto put = database.value(
        QStringLiteral("UPDATE project_state SET document = CAST(? AS TEXT) WHERE project = ? AND document = "
                       "CAST(? AS TEXT) AND (SELECT thrown_away FROM projects WHERE id = project) = 0 "
                       "RETURNING 1"),
        {what.document.toUtf8(), id, what.held.toUtf8()});
    if (!put)
        return put.error();
    if (!put.value().isValid()) {
        const auto other = documentOf(database, id);
        return other ? StoreError{StoreCode::Stale, id} : other.error();
    }
    const auto named = database.run(QStringLiteral("UPDATE projects SET name = ?, changed = ? WHERE id = ?"),
                                    {name.value(), QVariant::fromValue<qlonglong>(what.changed), id});
    if (!named)
        return named.error();
    return Done{};
}

StoreResult<std::int64_t> remember(const Database &database, const Remembered &command)
{
    const auto number = nextNumber(database);
    if (!number)
        return number.error();
    return rememberAs(database, number.value(), command);
}

StoreResult<std::int64_t> rememberAs(const Database &database, std::int64_t number, const Remembered &command)
{
    if (const auto forgotten = forgetUndone(database, command); !forgotten)
        return forgotten.error();
    const Stretch &change = command.change;
    const auto kept = database.run(
        QStringLiteral("INSERT INTO commands (seq, project, shelf, kind, code, args, place, before, after, "
                       "undone) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, 0)"),
        {QVariant::fromValue<qlonglong>(number), command.project, command.shelf ? 1 : 0, command.label.kind,
         command.label.code, command.label.args, QVariant::fromValue<qlonglong>(change.place), change.before,
         change.after});
    if (!kept)
        return kept.error();
    if (const auto trimmed = forgetOldest(database, command); !trimmed)
        return trimmed.error();
    return number;
}

} // namespace matside
