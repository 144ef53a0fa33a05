// SPDX-License-Identifier: MIT
#include "store/database.h"
#include "store/files.h"
#include "store/store.h"

#include "project/codec.h"

#include <QDir>
#include <QSaveFile>

#include <set>

namespace matside {

namespace {

/// Every row number that can still be reached. A damaged page stops a walk; walking from both ends, and
/// then asking for each number by itself, a page takes only its own rows with it.
std::set<qlonglong> reachable(const Database &database)
{
    constexpr qlonglong askedSingly = 20'000; // far more projects than a shelf has had
    std::set<qlonglong> numbers;
    std::optional<StoreError> fault;
    for (const char *order : {"ASC", "DESC"})
        for (const Row &row : database.runUntilFault(
                 QStringLiteral("SELECT rowid FROM project_state NOT INDEXED ORDER BY rowid ") +
                     QLatin1String(order),
                 {}, fault))
            numbers.insert(row[0].toLongLong());
    for (qlonglong number = 1; fault && number <= askedSingly; ++number)
        numbers.insert(number);
    return numbers;
}

QString freeName(const QString &dir, const std::string &name)
{
    QString plain;
    for (const QChar c : QString::fromStdString(name).left(60))
        plain += c.isLetterOrNumber() || c == u'-' ? c : QChar(u' ');
    plain = plain.simplified();
    if (plain.isEmpty())
        plain = QStringLiteral("project");
    return freePath(dir, plain, QLatin1String(".json"));
}

} // namespace

StoreResult<Exported> Store::exportReadable(const QString &dir) const
{
    if (!madeFolder(dir))
        return StoreError{StoreCode::CannotOpen, dir};
    Exported exported;
    std::optional<StoreError> fault;
    std::set<QString> missing;
    std::set<QString> thrownAway;
    for (const Row &row : m_database->runUntilFault(
             QStringLiteral("SELECT id, thrown_away FROM projects NOT INDEXED ORDER BY rowid"), {}, fault))
        (row[1].toInt() != 0 ? thrownAway : missing).insert(row[0].toString());
    for (const qlonglong number : reachable(*m_database)) {
        const auto rows = m_database->run(
            QStringLiteral("SELECT project, document FROM project_state NOT INDEXED WHERE rowid = ?"),
            {number});
        if (!rows || rows.value().empty() || thrownAway.contains(rows.value()[0][0].toString()))
            continue;
        const QByteArray text = rows.value()[0][1].toString().toUtf8();
        const auto read = readProject({text.constData(), static_cast<std::size_t>(text.size())});
        if (!read) {
            missing.insert(rows.value()[0][0].toString());
            continue;
        }
        QSaveFile file(freeName(dir, read.value().project.name));
        if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size() || !file.commit())
            return StoreError{StoreCode::Disk, file.errorString()};
        exported.files.append(file.fileName());
        missing.erase(rows.value()[0][0].toString());
    }
    if (!flushedFolder(dir))
        return StoreError{StoreCode::Disk, dir};
    exported.unreadable = QStringList(missing.begin(), missing.end());
    return exported;
}

} // namespace matside
