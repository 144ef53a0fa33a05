// SPDX-License-Identifier: MIT
#pragma once

#include "store/photonotes.h"

#include <QString>

struct sqlite3;
struct sqlite3_stmt;

namespace measure {

/// The rows of one logged block, written through sqlite3 itself: what a store can at best be compared with.
/// The same tables, the same pragmas, every statement prepared once.
class PlainRows {
public:
    PlainRows(QString file, QString project, QString name);
    ~PlainRows();
    PlainRows(const PlainRows &) = delete;
    PlainRows &operator=(const PlainRows &) = delete;

    [[nodiscard]] bool open();
    /// One transaction, committed.
    [[nodiscard]] bool write(const matside::Command &command, const matside::Note &note);

private:
    enum Statement { Begin, Command, State, Changed, Counter, Note, Commit, statements };
    [[nodiscard]] bool run(Statement which, const std::vector<QString> &values = {});

    QString m_file;
    QString m_project;
    QString m_name;
    qint64 m_next = 0;
    sqlite3 *m_database = nullptr;
    std::array<sqlite3_stmt *, statements> m_prepared{};
};

} // namespace measure
