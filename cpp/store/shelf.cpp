// SPDX-License-Identifier: MIT
//
// The shelf: making, copying, putting away and throwing away. Each is a command that can be taken back.
#include "store/opening.h"
#include "store/writing.h"

#include "project/codec.h"

#include <QUuid>

namespace matside {

namespace {

StoreResult<Project> projectIn(const QString &document)
{
    const QByteArray text = document.toUtf8();
    auto read = readProject({text.constData(), static_cast<std::size_t>(text.size())});
    if (!read)
        return StoreError{StoreCode::Unreadable, QString::fromStdString(read.error().problem.code)};
    return std::move(read.value().project);
}

QString flag(const char *name, bool on)
{
    return QLatin1String(name) + (on ? QStringLiteral("=1") : QStringLiteral("=0"));
}

StoreResult<QString> insert(const Database &database, const QString &document, const char *kind,
                            const char *code)
{
    const auto name = nameIn(document);
    if (!name)
        return name.error();
    Transaction transaction(database);
    if (!transaction.began())
        return transaction.began().error();
    const auto number = nextNumber(database);
    if (!number)
        return number.error();
    const QString id = QUuid::createUuid().toString(QUuid::WithoutBraces);
    const QVariant order = QVariant::fromValue<qlonglong>(number.value());
    const auto made =
        database.run(QStringLiteral("INSERT INTO projects (id, name, kind, put_away, thrown_away, position, "
                                    "created, changed, document) "
                                    "VALUES (?, ?, ?, 0, 0, ?, ?, ?, ?)"),
                     {id, name.value(), QString::fromLatin1(kind), order, order, order, document});
    if (!made)
        return made.error();
    const CommandLabel label{QString::fromLatin1(code), QString::fromLatin1(code)};
    const auto kept = remember(database, {id, true, label, flag(thrownAway, true), flag(thrownAway, false)});
    if (!kept)
        return kept.error();
    if (const auto done = transaction.commit(); !done)
        return done.error();
    return id;
}

StoreResult<Done> turn(const Database &database, const QString &id, const char *name, bool on,
                       const char *code)
{
    Transaction transaction(database);
    if (!transaction.began())
        return transaction.began().error();
    const auto held = database.value(
        QStringLiteral("SELECT %1 FROM projects WHERE id = ? AND thrown_away = 0").arg(QLatin1String(name)),
        {id});
    if (!held)
        return held.error();
    if (!held.value().isValid())
        return StoreError{StoreCode::NotFound, id};
    if ((held.value().toInt() != 0) == on)
        return Done{};
    const auto turned = database.run(
        QStringLiteral("UPDATE projects SET %1 = ? WHERE id = ?").arg(QLatin1String(name)), {on ? 1 : 0, id});
    if (!turned)
        return turned.error();
    const CommandLabel label{QString::fromLatin1(code), QString::fromLatin1(code)};
    if (const auto kept = remember(database, {id, true, label, flag(name, !on), flag(name, on)}); !kept)
        return kept.error();
    return transaction.commit();
}

const StoreError readOnlyStore{StoreCode::ReadOnly, {}};

} // namespace

StoreResult<QString> Store::create(const QString &document)
{
    if (!canWrite())
        return readOnlyStore;
    return insert(*m_database, document, "own", "create");
}

StoreResult<Done> Store::rename(const QString &id, const QString &name)
{
    const auto document = load(id);
    if (!document)
        return document.error();
    const QByteArray text = document.value().toUtf8();
    const std::string renamed = applyEdits({text.constData(), static_cast<std::size_t>(text.size())},
                                           {{"/name", name.toStdString()}}, System::Inch);
    const auto done = applyEdit(id, {{QStringLiteral("rename"), QStringLiteral("rename")},
                                     document.value(),
                                     QString::fromStdString(renamed)});
    if (!done)
        return done.error();
    return Done{};
}

StoreResult<Done> Store::putAway(const QString &id)
{
    return canWrite() ? turn(*m_database, id, putAwayFlag, true, "put-away")
                      : StoreResult<Done>(readOnlyStore);
}
StoreResult<Done> Store::bringBack(const QString &id)
{
    return canWrite() ? turn(*m_database, id, putAwayFlag, false, "bring-back")
                      : StoreResult<Done>(readOnlyStore);
}
StoreResult<Done> Store::throwAway(const QString &id)
{
    return canWrite() ? turn(*m_database, id, thrownAway, true, "throw-away")
                      : StoreResult<Done>(readOnlyStore);
}

StoreResult<QString> Store::makeAgain(const QString &id, const QString &name)
{
    if (!canWrite())
        return readOnlyStore;
    const auto document = load(id);
    if (!document)
        return document.error();
    auto project = projectIn(document.value());
    if (!project)
        return project.error();
    project.value().made = {};
    project.value().name = name.toStdString();
    return insert(*m_database, QString::fromStdString(writeProject(project.value())), "own", "make-again");
}

StoreResult<QString> Store::metricCopy(const QString &id, const QString &name)
{
    if (!canWrite())
        return readOnlyStore;
    const auto document = load(id);
    if (!document)
        return document.error();
    const auto project = projectIn(document.value());
    if (!project)
        return project.error();
    Project copy = inWholeMillimetres(project.value());
    copy.name = name.toStdString();
    return insert(*m_database, QString::fromStdString(writeProject(copy)), "own", "metric-copy");
}

StoreResult<QString> Store::ensureDemo(const QString &pristine)
{
    const auto held = m_database->value(QStringLiteral(
        "SELECT id FROM projects WHERE kind = 'demo' AND thrown_away = 0 ORDER BY changed DESC LIMIT 1"));
    if (!held)
        return held.error();
    return held.value().isValid() ? StoreResult<QString>(held.value().toString()) : freshDemo(pristine);
}

StoreResult<QString> Store::freshDemo(const QString &pristine)
{
    if (!canWrite())
        return readOnlyStore;
    return insert(*m_database, pristine, "demo", "demo");
}

} // namespace matside
