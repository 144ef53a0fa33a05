// SPDX-License-Identifier: MIT
//
// Edits, and how they are taken back and done again. Order is a counter, never the clock.
#include "store/writing.h"

namespace matside {

namespace {

struct Found {
    std::int64_t seq = 0;
    QString project;
    bool shelf = false;
    CommandLabel label;
    Stretch change;
};

/// The last command done, or the first one undone: of one project, or of the shelf. A rename stands in the
/// project's own row of commands, and is the shelf's too while it is that row's next.
QString choosing(bool shelf, bool undone)
{
    const QString other = undone ? QStringLiteral("<") : QStringLiteral(">");
    const QString state = undone ? QStringLiteral("1") : QStringLiteral("0");
    QString sql = QStringLiteral(
        "SELECT seq, project, shelf, kind, code, args, place, before, after FROM commands AS c WHERE ");
    sql += shelf ? QStringLiteral("(shelf = 1 OR kind = 'rename') AND (shelf = 1 OR NOT EXISTS (SELECT 1 "
                                  "FROM commands AS d WHERE d.project = c.project AND d.shelf = 0 AND "
                                  "d.undone = %1 AND d.seq %2 c.seq))")
                       .arg(state, other)
                 : QStringLiteral("project = ? AND shelf = 0");
    return sql + QStringLiteral(" AND undone = %1 ORDER BY seq %2 LIMIT 1")
                     .arg(state, undone ? QStringLiteral("ASC") : QStringLiteral("DESC"));
}

StoreResult<std::optional<Found>> find(const Database &database, const std::optional<QString> &project,
                                       bool undone)
{
    std::vector<QVariant> values;
    if (project)
        values.emplace_back(*project);
    const auto rows = database.run(choosing(!project, undone), values);
    if (!rows)
        return rows.error();
    if (rows.value().empty())
        return std::optional<Found>();
    const Row &row = rows.value().front();
    return std::optional<Found>(Found{row[0].toLongLong(),
                                      row[1].toString(),
                                      row[2].toInt() != 0,
                                      {row[3].toString(), row[4].toString(), row[5].toString()},
                                      {row[6].toLongLong(), row[7].toString(), row[8].toString()}});
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

/// A shelf command's state is "mark=0" or "mark=1".
StoreResult<Done> turnMark(const Database &database, const QString &project, const QString &state)
{
    const QStringList parts = state.split(QLatin1Char('='));
    const bool known = parts.size() == 2 &&
                       (parts[0] == QLatin1String(thrownAwayMark) || parts[0] == QLatin1String(putAwayMark));
    if (!known)
        return StoreError{StoreCode::Damaged, state};
    const auto turned = database.run(QStringLiteral("UPDATE projects SET %1 = ? WHERE id = ?").arg(parts[0]),
                                     {parts[1].toInt(), project});
    if (!turned)
        return turned.error();
    return Done{};
}

/// Gives the project's document as it is then.
StoreResult<QString> carryOut(const Database &database, const Found &command, bool redo)
{
    const Stretch &change = command.change;
    const QString &from = redo ? change.before : change.after;
    const QString &to = redo ? change.after : change.before;
    if (command.shelf) {
        if (const auto turned = turnMark(database, command.project, to); !turned)
            return turned.error();
        const auto document = documentOf(database, command.project);
        const bool gone = !document && document.error().code == StoreCode::NotFound;
        return gone ? StoreResult<QString>(QString()) : document;
    }
    const auto held = documentOf(database, command.project);
    if (!held)
        return held.error();
    const auto document = replaced(held.value(), change.place, from, to);
    if (!document)
        return StoreError{StoreCode::Damaged, QStringLiteral("command %1 does not fit").arg(command.seq)};
    const auto number = nextNumber(database);
    if (!number)
        return number.error();
    const Putting putting{held.value(), *document, number.value()};
    if (const auto put = putDocument(database, command.project, putting); !put)
        return put.error();
    return *document;
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
    const auto document = carryOut(database, command, redo);
    if (!document)
        return document.error();
    if (const auto marked = database.run(QStringLiteral("UPDATE commands SET undone = ? WHERE seq = ?"),
                                         {redo ? 0 : 1, QVariant::fromValue<qlonglong>(command.seq)});
        !marked)
        return marked.error();
    if (const auto done = transaction.commit(); !done)
        return done.error();
    return Reversed{command.seq, command.project, command.label, document.value()};
}

} // namespace

StoreResult<std::int64_t> editInside(const Database &database, const QString &id, const Command &command)
{
    const auto number = nextNumber(database, 2);
    if (!number)
        return number.error();
    if (const auto put = putDocument(database, id, {command.before, command.after, number.value()}); !put)
        return put.error();
    return rememberAs(database, number.value() + 1,
                      {id, false, command.label, stretchBetween(command.before, command.after)});
}

StoreResult<std::int64_t> Store::applyEdit(const QString &id, const Command &command)
{
    if (!canWrite())
        return StoreError{StoreCode::ReadOnly, {}};
    Transaction transaction(*m_database);
    if (!transaction.began())
        return transaction.began().error();
    const auto number = editInside(*m_database, id, command);
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
