// SPDX-License-Identifier: MIT
#pragma once

#include "store/fault.h"

#include <QSqlDatabase>
#include <QVariant>

#include <vector>

namespace matside {

using Row = std::vector<QVariant>;

/// The one place that prepares, binds and runs. One statement at a time, bound by position; a wrong number
/// of values is an error. The connection belongs to this object and to the thread that opened it.
class Database {
public:
    Database();
    ~Database();
    Database(const Database &) = delete;
    Database &operator=(const Database &) = delete;

    /// Opens the file, switches foreign keys on and checks that they are.
    [[nodiscard]] StoreResult<Done> open(const QString &path, bool readOnly);
    /// Runs a statement and gives every row of its answer.
    [[nodiscard]] StoreResult<std::vector<Row>> run(const QString &sql,
                                                    const std::vector<QVariant> &values = {}) const;
    /// The first column of the first row, invalid when there is none.
    [[nodiscard]] StoreResult<QVariant> value(const QString &sql,
                                              const std::vector<QVariant> &values = {}) const;

private:
    QString m_name;
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
