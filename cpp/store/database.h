// SPDX-License-Identifier: MIT
#pragma once

#include "store/fault.h"

#include <QHash>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QTemporaryDir>
#include <QVariant>

#include <memory>
#include <optional>
#include <vector>

namespace matside {

using Row = std::vector<QVariant>;

/// The one place that prepares, binds and runs. One statement at a time, bound by position; a wrong number
/// of values is an error. The connection belongs to this object and to the thread that opened it.
class Database {
public:
    enum class Mode {
        Write,    ///< made when missing; what is committed is on the disk; foreign keys on
        Read,     ///< beside a running writer
        Snapshot, ///< of a file nobody writes: neither it nor anything beside it is made or changed
    };

    Database();
    ~Database();
    Database(const Database &) = delete;
    Database &operator=(const Database &) = delete;

    [[nodiscard]] StoreResult<Done> open(const QString &path, Mode mode);
    /// To be called once what is there has been looked at: write-ahead log, full flushing, foreign keys,
    /// each checked.
    [[nodiscard]] StoreResult<Done> makeDurable() const;
    /// Runs a statement and gives every row of its answer.
    [[nodiscard]] StoreResult<std::vector<Row>> run(const QString &sql,
                                                    const std::vector<QVariant> &values = {}) const;
    /// The rows up to the first fault, which is told: of a damaged table, what can be read.
    [[nodiscard]] std::vector<Row> runUntilFault(const QString &sql, const std::vector<QVariant> &values,
                                                 std::optional<StoreError> &fault) const;
    /// The first column of the first row, invalid when there is none.
    [[nodiscard]] StoreResult<QVariant> value(const QString &sql,
                                              const std::vector<QVariant> &values = {}) const;

private:
    /// A statement that was prepared, and how many values it wants.
    struct Prepared {
        QSqlQuery query;
        qsizetype values = 0;
    };
    [[nodiscard]] StoreResult<Done> connect(const QString &file, const QString &options);
    [[nodiscard]] StoreResult<std::shared_ptr<Prepared>> prepared(const QString &sql) const;

    QString m_name;
    mutable QHash<QString, std::shared_ptr<Prepared>> m_prepared; ///< by their text
    std::unique_ptr<QTemporaryDir> m_copied; ///< the copy that is read, when there had to be one
};

/// Begins a transaction that writes; unless committed it is taken back when the guard goes.
class Transaction {
public:
    explicit Transaction(const Database &database);
    ~Transaction();
    Transaction(const Transaction &) = delete;
    Transaction &operator=(const Transaction &) = delete;

    [[nodiscard]] const StoreResult<Done> &began() const { return m_began; }
    [[nodiscard]] StoreResult<Done> commit();

private:
    const Database &m_database;
    StoreResult<Done> m_began;
    bool m_open = false;
};

} // namespace matside
