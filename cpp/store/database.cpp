// SPDX-License-Identifier: MIT
#include "store/database.h"

#include <QSqlError>
#include <QSqlQuery>
#include <QSqlRecord>
#include <QUuid>

namespace matside {

namespace {

/// SQLite's result codes (sqlite.org/rescode.html) in the store's own words.
StoreError faultOf(const QSqlError &error)
{
    constexpr int busy = 5;
    constexpr int locked = 6;
    constexpr int readOnly = 8;
    constexpr int ioError = 10;
    constexpr int corrupt = 11;
    constexpr int full = 13;
    constexpr int cannotOpen = 14;
    constexpr int notADatabase = 26;
    const QString detail = error.text();
    switch (error.nativeErrorCode().toInt() & 0xff) {
    case busy:
    case locked:
        return {StoreCode::Busy, detail};
    case readOnly:
        return {StoreCode::ReadOnly, detail};
    case ioError:
    case full:
        return {StoreCode::Disk, detail};
    case corrupt:
    case notADatabase:
        return {StoreCode::Damaged, detail};
    case cannotOpen:
        return {StoreCode::CannotOpen, detail};
    default:
        return {StoreCode::Refused, detail};
    }
}

} // namespace

Database::Database() : m_name(QUuid::createUuid().toString()) {}

Database::~Database()
{
    if (!QSqlDatabase::contains(m_name))
        return;
    QSqlDatabase::database(m_name, false).close();
    QSqlDatabase::removeDatabase(m_name);
}

StoreResult<Done> Database::open(const QString &path, bool readOnly)
{
    QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), m_name);
    database.setDatabaseName(path);
    database.setConnectOptions(readOnly ? QStringLiteral("QSQLITE_OPEN_READONLY;QSQLITE_BUSY_TIMEOUT=3000")
                                        : QStringLiteral("QSQLITE_BUSY_TIMEOUT=3000"));
    if (!database.open())
        return StoreError{StoreCode::CannotOpen, database.lastError().text()};
    if (auto set = run(QStringLiteral("PRAGMA foreign_keys = ON")); !set)
        return set.error();
    const auto on = value(QStringLiteral("PRAGMA foreign_keys"));
    if (!on)
        return on.error();
    if (on.value().toInt() != 1)
        return StoreError{StoreCode::Refused, QStringLiteral("foreign keys cannot be switched on")};
    return Done{};
}

StoreResult<std::vector<Row>> Database::run(const QString &sql, const std::vector<QVariant> &values) const
{
    QSqlQuery query(QSqlDatabase::database(m_name, false));
    query.setForwardOnly(true);
    if (!query.prepare(sql))
        return faultOf(query.lastError());
    // A missing value would be stored as NULL without a word.
    if (sql.count(QLatin1Char('?')) != static_cast<qsizetype>(values.size()))
        return StoreError{StoreCode::Refused, QStringLiteral("wrong number of values for: ") + sql};
    for (const QVariant &value : values)
        query.addBindValue(value);
    if (!query.exec())
        return faultOf(query.lastError());
    std::vector<Row> rows;
    while (query.next()) {
        Row row;
        for (int column = 0; column < query.record().count(); ++column)
            row.push_back(query.value(column));
        rows.push_back(std::move(row));
    }
    if (query.lastError().isValid())
        return faultOf(query.lastError());
    return rows;
}

StoreResult<QVariant> Database::value(const QString &sql, const std::vector<QVariant> &values) const
{
    auto rows = run(sql, values);
    if (!rows)
        return rows.error();
    return rows.value().empty() ? QVariant() : rows.value().front().front();
}

Transaction::Transaction(const Database &database) : m_database(database), m_began(Done{})
{
    if (const auto begun = m_database.run(QStringLiteral("BEGIN IMMEDIATE")); !begun)
        m_began = begun.error();
    else
        m_open = true;
}

Transaction::~Transaction()
{
    if (m_open)
        (void)m_database.run(QStringLiteral("ROLLBACK"));
}

StoreResult<Done> Transaction::commit()
{
    if (const auto done = m_database.run(QStringLiteral("COMMIT")); !done)
        return done.error();
    m_open = false;
    return Done{};
}

} // namespace matside
