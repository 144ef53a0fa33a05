// SPDX-License-Identifier: MIT
#include "plainrows.h"

#include "store/writing.h"

#include <sqlite3.h>

namespace measure {

PlainRows::PlainRows(QString file, QString project, QString name)
    : m_file(std::move(file)), m_project(std::move(project)), m_name(std::move(name))
{
}

PlainRows::~PlainRows()
{
    for (sqlite3_stmt *statement : m_prepared)
        sqlite3_finalize(statement);
    sqlite3_close(m_database);
}

bool PlainRows::open()
{
    if (sqlite3_open(m_file.toUtf8().constData(), &m_database) != SQLITE_OK)
        return false;
    if (sqlite3_exec(m_database,
                     "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON",
                     nullptr, nullptr, nullptr) != SQLITE_OK)
        return false;
    const std::array<const char *, statements> texts{
        "BEGIN IMMEDIATE",
        "INSERT INTO commands (seq, project, shelf, kind, code, args, place, before, after, undone) "
        "VALUES (?, ?, 0, 'edit', 'log', '[]', ?, ?, ?, 0)",
        "UPDATE project_state SET document = ? WHERE project = ?",
        "UPDATE projects SET name = ?, changed = ? WHERE id = ?",
        "UPDATE counter SET next = ? WHERE one = 1",
        "INSERT INTO notes (id, project, number, command, block, step, words, flags, width, height) "
        "VALUES (?, ?, ?, ?, ?, '', '', '[]', ?, ?)",
        "COMMIT"};
    for (std::size_t i = 0; i < texts.size(); ++i)
        if (sqlite3_prepare_v2(m_database, texts[i], -1, &m_prepared[i], nullptr) != SQLITE_OK)
            return false;
    m_next = 1000; // past what making the project used
    return true;
}

bool PlainRows::run(Statement which, const std::vector<QString> &values)
{
    sqlite3_stmt *statement = m_prepared[which];
    int at = 0;
    for (const QString &value : values) {
        const QByteArray bytes = value.toUtf8();
        if (sqlite3_bind_text(statement, ++at, bytes.constData(), int(bytes.size()), SQLITE_TRANSIENT) !=
            SQLITE_OK)
            return false;
    }
    const int stepped = sqlite3_step(statement);
    return sqlite3_reset(statement) == SQLITE_OK && stepped == SQLITE_DONE;
}

bool PlainRows::write(const matside::Command &command, const matside::Note &note)
{
    const auto change = matside::stretchBetween(command.before, command.after);
    const QString changed = QString::number(m_next++);
    const QString seq = QString::number(m_next++);
    const QString number = QString::number(m_next++);
    return run(Begin) &&
           run(Command, {seq, m_project, QString::number(change.place), change.before, change.after}) &&
           run(State, {command.after, m_project}) && run(Changed, {m_name, changed, m_project}) &&
           run(Counter, {QString::number(m_next)}) &&
           run(Note, {note.id, m_project, number, seq, note.block, note.along, note.across}) && run(Commit);
}

} // namespace measure
