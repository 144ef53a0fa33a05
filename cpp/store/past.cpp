// SPDX-License-Identifier: MIT
//
// Which documents of a project were ever here, so that two tablets can find where they parted.
#include "store/writing.h"

#include <QCryptographicHash>
#include <QSet>

#include <functional>

namespace matside {

namespace {

/// Looks at a document; false: seen enough.
using Look = std::function<bool(const QString &document)>;

/// A document of another tablet, by the counter.
struct Met {
    std::int64_t number = 0;
    QString document;
};

StoreResult<std::vector<Met>> metOf(const Database &database, const QString &id)
{
    const auto rows = database.run(
        QStringLiteral("SELECT number, document FROM met WHERE project = ? AND NOT EXISTS (SELECT 1 FROM "
                       "commands AS c WHERE c.seq = met.command AND c.undone = 1) ORDER BY number DESC"),
        {id});
    if (!rows)
        return rows.error();
    std::vector<Met> all;
    for (const Row &row : rows.value())
        all.push_back({row[0].toLongLong(), row[1].toString()});
    return all;
}

/// Walks from what stands now to the oldest state its commands lead back to; what was met on the way comes
/// where it was met.
StoreResult<Done> walkBack(const Database &database, const QString &id, const Look &look)
{
    const auto now = documentOf(database, id);
    if (!now)
        return now.error();
    const auto met = metOf(database, id);
    if (!met)
        return met.error();
    const auto commands =
        database.run(QStringLiteral("SELECT seq, place, before, after FROM commands WHERE project = ? AND "
                                    "shelf = 0 AND undone = 0 ORDER BY seq DESC"),
                     {id});
    if (!commands)
        return commands.error();
    QString document = now.value();
    auto next = met.value().begin();
    const auto lookAtMet = [&](std::int64_t after) {
        for (; next != met.value().end() && next->number > after; ++next)
            if (!look(next->document))
                return false;
        return true;
    };
    if (!look(document))
        return Done{};
    for (const Row &row : commands.value()) {
        if (!lookAtMet(row[0].toLongLong()))
            return Done{};
        const auto before = replaced(document, row[1].toLongLong(), row[3].toString(), row[2].toString());
        if (!before)
            return StoreError{StoreCode::Damaged,
                              QStringLiteral("command %1 does not fit").arg(row[0].toString())};
        document = *before;
        if (!look(document))
            return Done{};
    }
    (void)lookAtMet(0);
    return Done{};
}

} // namespace

QString shaOfDocument(const QString &document)
{
    return QString::fromLatin1(
        QCryptographicHash::hash(document.toUtf8(), QCryptographicHash::Sha256).toHex());
}

StoreResult<Done> meetInside(const Database &database, const QString &id, const QString &document,
                             std::int64_t command)
{
    const auto number = nextNumber(database);
    if (!number)
        return number.error();
    // What was met before is met again: later, and by a command that stands.
    const auto kept = database.run(
        QStringLiteral("INSERT INTO met (project, sha, number, command, document) VALUES (?, ?, ?, ?, ?) "
                       "ON CONFLICT (project, sha) DO UPDATE SET number = excluded.number, "
                       "command = min(command, excluded.command)"),
        {id, shaOfDocument(document), QVariant::fromValue<qlonglong>(number.value()),
         QVariant::fromValue<qlonglong>(command), document});
    if (!kept)
        return kept.error();
    return Done{};
}

StoreResult<QStringList> Store::past(const QString &id) const
{
    QStringList all;
    QSet<QString> seen;
    const auto walked = walkBack(*m_database, id, [&](const QString &document) {
        const QString sha = shaOfDocument(document);
        if (!seen.contains(sha)) {
            seen.insert(sha);
            all.append(sha);
        }
        return all.size() < mostPast;
    });
    if (!walked)
        return walked.error();
    return all;
}

StoreResult<std::optional<QString>> Store::commonPast(const QString &id, const QStringList &known) const
{
    const QSet<QString> there(known.begin(), known.end());
    std::optional<QString> common;
    const auto walked = walkBack(*m_database, id, [&](const QString &document) {
        if (there.contains(shaOfDocument(document)))
            common = document;
        return !common;
    });
    if (!walked)
        return walked.error();
    return common;
}

StoreResult<Done> Store::sentOut(const QString &id, const QString &document)
{
    if (!canWrite())
        return StoreError{StoreCode::ReadOnly, {}};
    Transaction transaction(*m_database);
    if (!transaction.began())
        return transaction.began().error();
    if (auto met = meetInside(*m_database, id, document, 0); !met)
        return met;
    return transaction.commit();
}

} // namespace matside
