// SPDX-License-Identifier: MIT
#include "store/database.h"

#include <QFile>
#include <QFileInfo>
#include <QSqlError>
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

/// Statements that come again and again. Pragmas and the steps of an upgrade run once.
bool comesAgain(const QString &sql)
{
    return sql.startsWith(QLatin1String("SELECT ")) || sql.startsWith(QLatin1String("UPDATE ")) ||
           sql.startsWith(QLatin1String("INSERT ")) || sql.startsWith(QLatin1String("DELETE ")) ||
           sql == QLatin1String("BEGIN IMMEDIATE") || sql == QLatin1String("COMMIT");
}

/// More than this program has; a bound, so that texts put together at run time cannot grow it for ever.
constexpr qsizetype mostPrepared = 128;

} // namespace

Database::Database() : m_name(QUuid::createUuid().toString()) {}

Database::~Database()
{
    if (!QSqlDatabase::contains(m_name))
        return;
    m_prepared.clear(); // before the connection they belong to
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

StoreResult<std::shared_ptr<Database::Prepared>> Database::prepared(const QString &sql) const
{
    if (const auto held = m_prepared.constFind(sql); held != m_prepared.constEnd())
        return *held;
    auto made = std::make_shared<Prepared>(
        Prepared{QSqlQuery(QSqlDatabase::database(m_name, false)), sql.count(QLatin1Char('?'))});
    made->query.setForwardOnly(true);
    if (!made->query.prepare(sql))
        return faultOf(made->query.lastError());
    if (comesAgain(sql) && m_prepared.size() < mostPrepared)
        m_prepared.insert(sql, made);
    return made;
}

std::vector<Row> Database::runUntilFault(const QString &sql, const std::vector<QVariant> &values,
                                         std::optional<StoreError> &fault) const
{
    fault.reset();
    std::vector<Row> rows;
    const auto statement = prepared(sql);
    if (!statement) {
        fault = statement.error();
        return rows;
    }
    // A missing value would be stored as NULL without a word.
    if (statement.value()->values != static_cast<qsizetype>(values.size())) {
        fault = StoreError{StoreCode::Refused, QStringLiteral("wrong number of values for: ") + sql};
        return rows;
    }
    QSqlQuery &query = statement.value()->query;
    int place = 0;
    for (const QVariant &value : values)
        query.bindValue(place++, value);
    if (!query.exec()) {
        fault = faultOf(query.lastError());
        query.finish();
        return rows;
    }
    const int columns = query.isSelect() ? query.record().count() : 0;
    while (columns > 0 && query.next()) {
        Row row;
        row.reserve(static_cast<std::size_t>(columns));
        for (int column = 0; column < columns; ++column)
            row.push_back(query.value(column));
        rows.push_back(std::move(row));
    }
    if (query.lastError().isValid())
        fault = faultOf(query.lastError());
    // One that stayed open would hold the state it read, and no transaction could end.
    query.finish();
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
