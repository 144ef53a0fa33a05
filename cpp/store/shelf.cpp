// SPDX-License-Identifier: MIT
//
// The shelf: making, copying, putting away and throwing away. Each is a command that can be taken back.
#include "store/writing.h"

#include "project/codec.h"

#include <QJsonArray>
#include <QJsonDocument>
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

/// A project to be written anew: one that was read whole, so that nothing is lost by it.
StoreResult<Project> soundProjectIn(const QString &document)
{
    const QByteArray text = document.toUtf8();
    auto read = readProject({text.constData(), static_cast<std::size_t>(text.size())});
    if (!read)
        return StoreError{StoreCode::Unreadable, QString::fromStdString(read.error().problem.code)};
    if (!read.value().problems.empty())
        return StoreError{StoreCode::Unsound, QString::fromStdString(read.value().problems.front().at)};
    return std::move(read.value().project);
}

QString mark(const char *name, bool on)
{
    return QLatin1String(name) + (on ? QStringLiteral("=1") : QStringLiteral("=0"));
}

/// The words of a shelf command need the project's name.
CommandLabel labelOf(const char *kind, const QString &name)
{
    const QByteArray args = QJsonDocument(QJsonArray{name}).toJson(QJsonDocument::Compact);
    return {QString::fromLatin1(kind), QString::fromLatin1(kind), QString::fromUtf8(args)};
}

/// The place on the shelf: higher lies further ahead. Room is made by moving the rest of the shelf back.
StoreResult<qlonglong> placeFor(const Database &database, const QString &beside, std::int64_t number)
{
    const auto place = database.value(QStringLiteral("SELECT position FROM projects WHERE id = ?"), {beside});
    if (!place)
        return place.error();
    if (!place.value().isValid())
        return static_cast<qlonglong>(number);
    const auto moved = database.run(
        QStringLiteral("UPDATE projects SET position = position - 1 WHERE position < ?"), {place.value()});
    if (!moved)
        return moved.error();
    return place.value().toLongLong() - 1;
}

StoreResult<QString> insert(const Database &database, const QString &document, const Making &making)
{
    if (const auto project = projectIn(document); !project)
        return project.error();
    Transaction transaction(database);
    if (!transaction.began())
        return transaction.began().error();
    const QString id = QUuid::createUuid().toString(QUuid::WithoutBraces);
    if (const auto inserted = insertInside(database, id, document, making); !inserted)
        return inserted.error();
    if (const auto done = transaction.commit(); !done)
        return done.error();
    return id;
}

StoreResult<Done> turn(const Database &database, const QString &id, const char *name, bool on,
                       const char *does)
{
    Transaction transaction(database);
    if (!transaction.began())
        return transaction.began().error();
    const auto held =
        database.run(QStringLiteral("SELECT %1, name FROM projects WHERE id = ? AND thrown_away = 0")
                         .arg(QLatin1String(name)),
                     {id});
    if (!held)
        return held.error();
    if (held.value().empty())
        return StoreError{StoreCode::NotFound, id};
    const Row &row = held.value().front();
    if ((row[0].toInt() != 0) == on)
        return Done{};
    const auto turned = database.run(
        QStringLiteral("UPDATE projects SET %1 = ? WHERE id = ?").arg(QLatin1String(name)), {on ? 1 : 0, id});
    if (!turned)
        return turned.error();
    const Remembered command{
        id, true, labelOf(does, row[1].toString()), {0, mark(name, !on), mark(name, on)}};
    if (const auto kept = remember(database, command); !kept)
        return kept.error();
    return transaction.commit();
}

/// The demo changed last, or an empty text.
StoreResult<QString> lastDemo(const Database &database)
{
    const auto held = database.value(QStringLiteral(
        "SELECT id FROM projects WHERE kind = 'demo' AND thrown_away = 0 ORDER BY changed DESC LIMIT 1"));
    if (!held)
        return held.error();
    return held.value().toString();
}

} // namespace

StoreResult<std::int64_t> insertInside(const Database &database, const QString &id, const QString &document,
                                       const Making &making)
{
    const auto name = nameIn(document);
    if (!name)
        return name.error();
    const auto number = nextNumber(database);
    if (!number)
        return number.error();
    const auto place = placeFor(database, making.beside, number.value());
    if (!place)
        return place.error();
    const QVariant order = QVariant::fromValue<qlonglong>(number.value());
    const auto made = database.run(
        QStringLiteral("INSERT INTO projects (id, name, kind, put_away, thrown_away, position, created, "
                       "changed) VALUES (?, ?, ?, 0, 0, ?, ?, ?)"),
        {id, name.value(), QString::fromLatin1(making.kind), place.value(), order, order});
    if (!made)
        return made.error();
    const auto put = database.run(
        QStringLiteral("INSERT INTO project_state (project, document) VALUES (?, ?)"), {id, document});
    if (!put)
        return put.error();
    return remember(database, {id,
                               true,
                               labelOf(making.does, name.value()),
                               {0, mark(thrownAwayMark, true), mark(thrownAwayMark, false)}});
}

StoreResult<QString> Store::create(const QString &document)
{
    if (!canWrite())
        return readOnlyStore;
    return insert(*m_database, document, {"own", "create"});
}

StoreResult<Done> Store::rename(const QString &id, const QString &name)
{
    const auto document = load(id);
    if (!document)
        return document.error();
    const QByteArray text = document.value().toUtf8();
    const QString renamed =
        QString::fromStdString(applyEdits({text.constData(), static_cast<std::size_t>(text.size())},
                                          {{"/name", name.toStdString()}}, System::Inch));
    // A name may be longer than a project file allows.
    const auto project = projectIn(renamed);
    if (!project)
        return project.error();
    if (QString::fromStdString(project.value().name) != name)
        return StoreError{StoreCode::Refused, QStringLiteral("the document took no such name")};
    const auto done = applyEdit(id, {labelOf("rename", name), document.value(), renamed});
    if (!done)
        return done.error();
    return Done{};
}

StoreResult<Done> Store::putAway(const QString &id)
{
    return canWrite() ? turn(*m_database, id, putAwayMark, true, "put-away")
                      : StoreResult<Done>(readOnlyStore);
}
StoreResult<Done> Store::bringBack(const QString &id)
{
    return canWrite() ? turn(*m_database, id, putAwayMark, false, "bring-back")
                      : StoreResult<Done>(readOnlyStore);
}
StoreResult<Done> Store::throwAway(const QString &id)
{
    return canWrite() ? turn(*m_database, id, thrownAwayMark, true, "throw-away")
                      : StoreResult<Done>(readOnlyStore);
}

StoreResult<QString> Store::makeAgain(const QString &id, const QString &name)
{
    if (!canWrite())
        return readOnlyStore;
    const auto document = load(id);
    if (!document)
        return document.error();
    auto project = soundProjectIn(document.value());
    if (!project)
        return project.error();
    project.value().made = {};
    project.value().name = name.toStdString();
    return insert(*m_database, QString::fromStdString(writeProject(project.value())),
                  {"own", "make-again", id});
}

StoreResult<QString> Store::metricCopy(const QString &id, const QString &name)
{
    if (!canWrite())
        return readOnlyStore;
    const auto document = load(id);
    if (!document)
        return document.error();
    const auto project = soundProjectIn(document.value());
    if (!project)
        return project.error();
    Project copy = inWholeMillimetres(project.value());
    copy.name = name.toStdString();
    return insert(*m_database, QString::fromStdString(writeProject(copy)), {"own", "metric-copy", id});
}

StoreResult<QString> Store::ensureDemo(const QString &pristine)
{
    const auto held = lastDemo(*m_database);
    if (!held)
        return held.error();
    return held.value().isEmpty() ? freshDemo(pristine) : held;
}

StoreResult<QString> Store::freshDemo(const QString &pristine)
{
    if (!canWrite())
        return readOnlyStore;
    const auto held = lastDemo(*m_database);
    if (!held)
        return held.error();
    return insert(*m_database, pristine, {"demo", "demo", held.value()});
}

} // namespace matside
