// SPDX-License-Identifier: MIT
#include "store/database.h"

#include <QFile>
#include <QFileInfo>
#include <QSqlError>
#include <QSqlQuery>
#include <QSqlRecord>
#include <QUrl>
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

StoreResult<Done> Database::connect(const QString &file, const QString &options)
{
    QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), m_name);
    database.setDatabaseName(file);
    database.setConnectOptions(options);
    if (!database.open())
        return faultOf(database.lastError());
    return Done{};
}

StoreResult<Done> Database::open(const QString &path, Mode mode)
{
    const QString patient = QStringLiteral("QSQLITE_BUSY_TIMEOUT=5000");
    if (mode == Mode::Write)
        return connect(path, patient);
    const QString reading = patient + QStringLiteral(";QSQLITE_OPEN_READONLY");
    if (mode == Mode::Read)
        return connect(path, reading);
    QStringList logs{QStringLiteral("-wal"), QStringLiteral("-journal")};
    logs.removeIf([&](const QString &log) { return QFileInfo(path + log).size() == 0; });
    if (logs.isEmpty()) {
        const QByteArray url = QUrl::fromLocalFile(QFileInfo(path).absoluteFilePath()).toEncoded();
        return connect(QString::fromLatin1(url) + QStringLiteral("?immutable=1"),
                       reading + QStringLiteral(";QSQLITE_OPEN_URI"));
    }
    // What was done last lies in the log, and SQLite cannot read that without writing beside it.
    m_copied = std::make_unique<QTemporaryDir>();
    const QString copy = m_copied->filePath(QStringLiteral("copy.sqlite"));
    logs.append(QString());
    for (const QString &end : std::as_const(logs))
        if (!QFile::copy(path + end, copy + end) ||
            !QFile::setPermissions(copy + end, QFileDevice::ReadOwner | QFileDevice::WriteOwner))
            return StoreError{StoreCode::Disk, QStringLiteral("cannot copy the log to read it")};
    return connect(copy, patient);
}

StoreResult<Done> Database::makeDurable() const
{
    struct Pragma {
        QString name, value, answer;
    };
    for (const auto &[name, wanted, answer] :
         {Pragma{QStringLiteral("journal_mode"), QStringLiteral("WAL"), QStringLiteral("wal")},
          Pragma{QStringLiteral("synchronous"), QStringLiteral("FULL"), QStringLiteral("2")},
          Pragma{QStringLiteral("foreign_keys"), QStringLiteral("ON"), QStringLiteral("1")}}) {
        const QString pragma = QStringLiteral("PRAGMA ") + name;
        if (const auto set = run(pragma + QStringLiteral(" = ") + wanted); !set)
            return set.error();
        const auto now = value(pragma);
        if (!now)
            return now.error();
        if (now.value().toString() != answer)
            return StoreError{StoreCode::Refused, pragma + QStringLiteral(" had no effect")};
    }
    return Done{};
}

std::vector<Row> Database::runUntilFault(const QString &sql, const std::vector<QVariant> &values,
                                         std::optional<StoreError> &fault) const
{
    fault.reset();
    std::vector<Row> rows;
    QSqlQuery query(QSqlDatabase::database(m_name, false));
    query.setForwardOnly(true);
    if (!query.prepare(sql)) {
        fault = faultOf(query.lastError());
        return rows;
    }
    // A missing value would be stored as NULL without a word.
    if (sql.count(QLatin1Char('?')) != static_cast<qsizetype>(values.size())) {
        fault = StoreError{StoreCode::Refused, QStringLiteral("wrong number of values for: ") + sql};
        return rows;
    }
    for (const QVariant &value : values)
        query.addBindValue(value);
    if (!query.exec()) {
        fault = faultOf(query.lastError());
        return rows;
    }
    const int columns = query.record().count();
    while (query.next()) {
        Row row;
        for (int column = 0; column < columns; ++column)
            row.push_back(query.value(column));
        rows.push_back(std::move(row));
    }
    if (query.lastError().isValid())
        fault = faultOf(query.lastError());
    return rows;
}

StoreResult<std::vector<Row>> Database::run(const QString &sql, const std::vector<QVariant> &values) const
{
    std::optional<StoreError> fault;
    auto rows = runUntilFault(sql, values, fault);
    if (fault)
        return *fault;
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
