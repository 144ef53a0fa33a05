// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

/// Everything a store holds, read by a plain connection of its own.
namespace ledger {

/// Each row of each table as text, in the order of the tables' keys.
[[nodiscard]] QStringList rowsOf(const QString &file);
/// SHA-256 of that.
[[nodiscard]] QByteArray sumOf(const QString &file);

/// What is wrong with the folder of a store, in words: pages, keys, photographs that are missing or are not
/// what their name says, small pictures that cannot be shown. Empty when nothing is.
[[nodiscard]] QStringList faultsIn(const QString &dir);

} // namespace ledger
