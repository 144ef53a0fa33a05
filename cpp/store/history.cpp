// SPDX-License-Identifier: MIT
//
// Edits, and how they are taken back and done again. Order is a counter, never the clock.
#include "store/opening.h"
#include "store/writing.h"

#include "project/codec.h"

namespace matside {

namespace {

constexpr int commandsKept = 500;

struct Found {
    std::int64_t seq = 0;
    QString project;
    CommandLabel label;
    QString before;
    QString after;
};

/// The last command done, or the first one undone.
StoreResult<std::optional<Found>> find(const Database &database, const std::optional<QString> &project,
                                       bool undone)
{
    QString sql = QStringLiteral(
        "SELECT seq, project, kind, code, args, before, after FROM commands WHERE shelf = ? AND undone = ?");
    std::vector<QVariant> values{project ? 0 : 1, undone ? 1 : 0};
    if (project) {
        sql += QStringLiteral(" AND project = ?");
        values.emplace_back(*project);
    }
    sql +=
        undone ? QStringLiteral(" ORDER BY seq ASC LIMIT 1") : QStringLiteral(" ORDER BY seq DESC LIMIT 1");
    const auto rows = database.run(sql, values);
    if (!rows)
        return rows.error();
    if (rows.value().empty())
        return std::optional<Found>();
    const Row &row = rows.value().front();
    return std::optional<Found>(Found{row[0].toLongLong(),
                                      row[1].toString(),
                                      {row[2].toString(), row[3].toString(), row[4].toString()},
                                      row[5].toString(),
                                      row[6].toString()});
}

StoreResult<std::optional<Reversible>> reversible(const Database &database,
                                                  const std::optional<QString> &project, bool undone)
{
    const auto found = find(database, project, undone);
    if (!found)
        return found.error();
    if (!found.value())
        return std::optional<Reversible>();
    return std::optional<Reversible>(
        Reversible{found.value()->seq, found.value()->project, found.value()->label});
}

/// A shelf command's state is "flag=0" or "flag=1".
StoreResult<Done> turnFlag(const Database &database, const QString &project, const QString &state)
{
    const QStringList parts = state.split(QLatin1Char('='));
    const bool known = parts.size() == 2 &&
                       (parts[0] == QLatin1String(thrownAway) || parts[0] == QLatin1String(putAwayFlag));
    if (!known)
        return StoreError{StoreCode::Damaged, state};
    const auto turned = database.run(QStringLiteral("UPDATE projects SET %1 = ? WHERE id = ?").arg(parts[0]),
                                     {parts[1].toInt(), project});
    if (!turned)
        return turned.error();
    return Done{};
}

StoreResult<Reversed> reverse(const Database &database, const std::optional<QString> &project, bool redo)
{
    Transaction transaction(database);
    if (!transaction.began())
        return transaction.began().error();
    const auto found = find(database, project, redo);
    if (!found)
        return found.error();
    if (!found.value())
        return StoreError{StoreCode::NothingLeft, {}};
    const Found &command = *found.value();
    const QString state = redo ? command.after : command.before;
    const auto put =
        project ? putDocument(database, command.project, state) : turnFlag(database, command.project, state);
    if (!put)
        return put.error();
    if (const auto marked = database.run(QStringLiteral("UPDATE commands SET undone = ? WHERE seq = ?"),
                                         {redo ? 0 : 1, QVariant::fromValue<qlonglong>(command.seq)});
        !marked)
        return marked.error();
    if (const auto done = transaction.commit(); !done)
        return done.error();
    return Reversed{command.seq, command.project, command.label, project ? state : QString()};
}

} // namespace

StoreResult<std::int64_t> nextNumber(const Database &database)
{
    const auto number =
        database.value(QStringLiteral("UPDATE counter SET next = next + 1 WHERE one = 1 RETURNING next - 1"));
    if (!number)
        return number.error();
    return static_cast<std::int64_t>(number.value().toLongLong());
}

StoreResult<QString> nameIn(const QString &document)
{
    const QByteArray text = document.toUtf8();
    const auto read = readProject({text.constData(), static_cast<std::size_t>(text.size())});
    if (!read)
        return StoreError{StoreCode::Unreadable, QString::fromStdString(read.error().problem.code)};
    return QString::fromStdString(read.value().project.name);
}

StoreResult<Done> putDocument(const Database &database, const QString &id, const QString &document)
{
    const auto name = nameIn(document);
    if (!name)
        return name.error();
    const auto number = nextNumber(database);
    if (!number)
        return number.error();
    const auto put =
        database.run(QStringLiteral("UPDATE projects SET document = ?, name = ?, changed = ? WHERE id = ?"),
                     {document, name.value(), QVariant::fromValue<qlonglong>(number.value()), id});
    if (!put)
        return put.error();
    return Done{};
}

StoreResult<std::int64_t> remember(const Database &database, const Remembered &command)
{
    const auto number = nextNumber(database);
    if (!number)
        return number.error();
    const QVariant shelf = command.shelf ? 1 : 0;
    const auto forgotten =
        command.shelf
            ? database.run(QStringLiteral("DELETE FROM commands WHERE shelf = 1 AND undone = 1"))
            : database.run(
                  QStringLiteral("DELETE FROM commands WHERE shelf = 0 AND undone = 1 AND project = ?"),
                  {command.project});
    if (!forgotten)
        return forgotten.error();
    const auto kept = database.run(
        QStringLiteral("INSERT INTO commands (seq, project, shelf, kind, code, args, before, after, undone) "
                       "VALUES (?, ?, ?, ?, ?, ?, ?, ?, 0)"),
        {QVariant::fromValue<qlonglong>(number.value()), command.project, shelf, command.label.kind,
         command.label.code, command.label.args, command.before, command.after});
    if (!kept)
        return kept.error();
    const auto trimmed = database.run(
        QStringLiteral(
            "DELETE FROM commands WHERE shelf = ? AND project = ? AND seq <= (SELECT seq FROM commands "
            "WHERE shelf = ? AND project = ? ORDER BY seq DESC LIMIT 1 OFFSET ?)"),
        {shelf, command.project, shelf, command.project, commandsKept});
    if (!trimmed)
        return trimmed.error();
    return number.value();
}

StoreResult<std::int64_t> Store::applyEdit(const QString &id, const Command &command)
{
    if (!canWrite())
        return StoreError{StoreCode::ReadOnly, {}};
    Transaction transaction(*m_database);
    if (!transaction.began())
        return transaction.began().error();
    const auto held = load(id);
    if (!held)
        return held.error();
    if (held.value() != command.before)
        return StoreError{StoreCode::Stale, id};
    if (const auto put = putDocument(*m_database, id, command.after); !put)
        return put.error();
    const auto number = remember(*m_database, {id, false, command.label, command.before, command.after});
    if (!number)
        return number.error();
    if (const auto done = transaction.commit(); !done)
        return done.error();
    return number.value();
}

StoreResult<std::optional<Reversible>> Store::undoable(const QString &id) const
{
    return reversible(*m_database, id, false);
}
StoreResult<std::optional<Reversible>> Store::redoable(const QString &id) const
{
    return reversible(*m_database, id, true);
}
StoreResult<std::optional<Reversible>> Store::undoableShelf() const
{
    return reversible(*m_database, std::nullopt, false);
}
StoreResult<std::optional<Reversible>> Store::redoableShelf() const
{
    return reversible(*m_database, std::nullopt, true);
}
StoreResult<Reversed> Store::undo(const QString &id)
{
    return canWrite() ? reverse(*m_database, id, false)
                      : StoreResult<Reversed>(StoreError{StoreCode::ReadOnly, {}});
}
StoreResult<Reversed> Store::redo(const QString &id)
{
    return canWrite() ? reverse(*m_database, id, true)
                      : StoreResult<Reversed>(StoreError{StoreCode::ReadOnly, {}});
}
StoreResult<Reversed> Store::undoShelf()
{
    return canWrite() ? reverse(*m_database, std::nullopt, false)
                      : StoreResult<Reversed>(StoreError{StoreCode::ReadOnly, {}});
}
StoreResult<Reversed> Store::redoShelf()
{
    return canWrite() ? reverse(*m_database, std::nullopt, true)
                      : StoreResult<Reversed>(StoreError{StoreCode::ReadOnly, {}});
}

} // namespace matside
