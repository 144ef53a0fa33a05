// SPDX-License-Identifier: MIT
#include "store/photonotes.h"

#include "project/codec.h"
#include "store/notewriting.h"
#include "store/writing.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QUuid>

#include <map>

namespace matside {

namespace {

QString sideOf(std::size_t face)
{
    return face == 0 ? QStringLiteral("front") : QStringLiteral("back");
}

std::size_t faceOf(const QVariant &side)
{
    return side.toString() == QStringLiteral("front") ? 0 : 1;
}

/// An unset text would be stored as NULL.
QString set(const QString &text)
{
    return text.isNull() ? QStringLiteral("") : text;
}

QString flagsText(const QStringList &flags)
{
    if (flags.isEmpty())
        return QStringLiteral("[]");
    return QString::fromUtf8(QJsonDocument(QJsonArray::fromStringList(flags)).toJson(QJsonDocument::Compact));
}

QStringList flagsIn(const QString &text)
{
    QStringList flags;
    const QJsonArray list = QJsonDocument::fromJson(text.toUtf8()).array();
    for (const auto &flag : list)
        flags.append(flag.toString());
    return flags;
}

Photograph photoIn(const Row &row, std::size_t from)
{
    return {row[from].toString(), row[from + 1].toString(), row[from + 2].toLongLong(),
            QSize(row[from + 3].toInt(), row[from + 4].toInt())};
}

StoreResult<Done> ran(const Database &database, const QString &sql, const std::vector<QVariant> &values)
{
    if (const auto rows = database.run(sql, values); !rows)
        return rows.error();
    return Done{};
}

/// A photograph's row, which its file must have come before.
StoreResult<Done> putPhoto(const Database &database, const PhotoFolder &folder, const Photograph &photo)
{
    if (!QFile::exists(folder.original(photo.sha, photo.format)))
        return StoreError{StoreCode::NotFound, photo.sha};
    const auto held = database.value(QStringLiteral("SELECT 1 FROM photographs WHERE sha = ?"), {photo.sha});
    if (!held)
        return held.error();
    if (held.value().isValid())
        return Done{};
    const auto number = nextNumber(database);
    if (!number)
        return number.error();
    return ran(database,
               QStringLiteral("INSERT INTO photographs (sha, format, bytes, width, height, number) "
                              "VALUES (?, ?, ?, ?, ?, ?)"),
               {photo.sha, photo.format, photo.bytes, photo.size.width(), photo.size.height(),
                QVariant::fromValue<qlonglong>(number.value())});
}

StoreResult<Done> putNote(const Database &database, const QString &project, std::int64_t command,
                          std::int64_t number, const Note &note)
{
    return ran(database,
               QStringLiteral("INSERT INTO notes (id, project, number, command, block, step, words, flags, "
                              "width, height) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"),
               {note.id, project, QVariant::fromValue<qlonglong>(number),
                QVariant::fromValue<qlonglong>(command), set(note.block), set(note.step), set(note.words),
                flagsText(note.flags), set(note.along), set(note.across)});
}

} // namespace

StoreResult<std::int64_t> writeNote(const Database &database, const PhotoFolder &folder,
                                    const QString &project, std::int64_t command, const Note &note)
{
    const auto number = nextNumber(database);
    if (!number)
        return number.error();
    if (const auto put = putNote(database, project, command, number.value(), note); !put)
        return put.error();
    for (std::size_t face = 0; face < note.faces.size(); ++face) {
        if (!note.faces[face])
            continue;
        if (const auto put = putPhoto(database, folder, *note.faces[face]); !put)
            return put.error();
        const auto tied =
            ran(database, QStringLiteral("INSERT INTO note_photos (note, side, photo) VALUES (?, ?, ?)"),
                {note.id, sideOf(face), note.faces[face]->sha});
        if (!tied)
            return tied.error();
    }
    return number.value();
}

namespace {

/// Command, note, photographs and the drafts they were, in the caller's transaction.
StoreResult<std::int64_t> logInside(const Database &database, const PhotoFolder &folder,
                                    const QString &project, const Command &command, const Note &note)
{
    const auto edited = editInside(database, project, command);
    if (!edited)
        return edited.error();
    auto number = writeNote(database, folder, project, edited.value(), note);
    if (!number)
        return number;
    const auto dropped = ran(database, QStringLiteral("DELETE FROM drafts WHERE project = ? AND block = ?"),
                             {project, set(note.block)});
    if (!dropped)
        return dropped.error();
    return number;
}

/// The id itself, or a new one where a row of that table has it.
StoreResult<QString> freeId(const Database &database, const char *table, const QString &wanted)
{
    const auto held =
        database.value(QStringLiteral("SELECT 1 FROM %1 WHERE id = ?").arg(QLatin1String(table)), {wanted});
    if (!held)
        return held.error();
    const bool free = !wanted.isEmpty() && !held.value().isValid();
    return free ? wanted : QUuid::createUuid().toString(QUuid::WithoutBraces);
}

/// Project and notes, in the caller's transaction.
StoreResult<QString> bringInside(const Database &database, const PhotoFolder &folder, const QString &wantedId,
                                 const QString &document, const std::vector<Note> &notes)
{
    auto id = freeId(database, "projects", wantedId);
    if (!id)
        return id;
    const auto made = insertInside(database, id.value(), document, {"own", "bring-in"});
    if (!made)
        return made.error();
    // It came from another tablet, which has it too.
    if (const auto met = meetInside(database, id.value(), document, 0); !met)
        return met.error();
    for (Note note : notes) {
        auto own = freeId(database, "notes", note.id);
        if (!own)
            return own;
        note.id = own.value();
        if (const auto written = writeNote(database, folder, id.value(), made.value(), note); !written)
            return written.error();
    }
    return id;
}

/// A note stands unless the command that made it is undone; of those long past undoing no command is left.
QString standing(const char *notes)
{
    return QStringLiteral(
               "NOT EXISTS (SELECT 1 FROM commands AS c WHERE c.seq = %1.command AND c.undone = 1)")
        .arg(QLatin1String(notes));
}

} // namespace

NoteBook::NoteBook(Store &store) : m_store(store), m_folder(store.folder()) {}

StoreResult<std::int64_t> NoteBook::log(const QString &project, const Command &command, const Note &note)
{
    if (!canWrite())
        return readOnlyStore;
    Transaction transaction(*m_store.m_database);
    if (!transaction.began())
        return transaction.began().error();
    auto number = logInside(*m_store.m_database, m_folder, project, command, note);
    if (!number)
        return number;
    if (const auto done = transaction.commit(); !done)
        return done.error();
    return number;
}

StoreResult<QString> NoteBook::bringIn(const QString &wantedId, const QString &document,
                                       const std::vector<Note> &notes)
{
    if (!canWrite())
        return readOnlyStore;
    const QByteArray text = document.toUtf8();
    if (const auto read = readProject({text.constData(), static_cast<std::size_t>(text.size())}); !read)
        return StoreError{StoreCode::Unreadable, QString::fromStdString(read.error().problem.code)};
    Transaction transaction(*m_store.m_database);
    if (!transaction.began())
        return transaction.began().error();
    auto id = bringInside(*m_store.m_database, m_folder, wantedId, document, notes);
    if (!id)
        return id;
    if (const auto done = transaction.commit(); !done)
        return done.error();
    return id;
}

StoreResult<std::vector<Note>> NoteBook::notes(const QString &project, const QString &block) const
{
    const QString sql =
        QStringLiteral("FROM notes AS n %1 WHERE n.project = ? AND (? = '' OR n.block = ?) AND ") +
        standing("n") + QStringLiteral(" ORDER BY n.number");
    const std::vector<QVariant> values{project, set(block), set(block)};
    const auto rows =
        m_store.m_database->run(QStringLiteral("SELECT n.id, n.number, n.block, n.step, n.words, n.flags, "
                                               "n.width, n.height ") +
                                    sql.arg(QString()),
                                values);
    if (!rows)
        return rows.error();
    std::vector<Note> notes;
    std::map<QString, std::size_t> places;
    for (const Row &row : rows.value()) {
        places[row[0].toString()] = notes.size();
        notes.push_back({row[0].toString(),
                         row[1].toLongLong(),
                         row[2].toString(),
                         row[3].toString(),
                         row[4].toString(),
                         flagsIn(row[5].toString()),
                         row[6].toString(),
                         row[7].toString(),
                         {}});
    }
    const auto photos = m_store.m_database->run(
        QStringLiteral("SELECT n.id, t.side, p.sha, p.format, p.bytes, p.width, p.height ") +
            sql.arg(QStringLiteral(
                "JOIN note_photos AS t ON t.note = n.id JOIN photographs AS p ON p.sha = t.photo")),
        values);
    if (!photos)
        return photos.error();
    for (const Row &row : photos.value())
        notes[places[row[0].toString()]].faces[faceOf(row[1])] = photoIn(row, 2);
    return notes;
}

StoreResult<std::vector<NoteBook::Cover>> NoteBook::covers(const QString &project) const
{
    const auto rows = m_store.m_database->run(
        QStringLiteral("SELECT n.block, n.flags, t.photo, p.format, n.words FROM notes AS n "
                       "LEFT JOIN note_photos AS t ON t.note = n.id AND t.side = 'front' "
                       "LEFT JOIN photographs AS p ON p.sha = t.photo "
                       "WHERE n.project = ? AND n.block <> '' AND ") +
            standing("n") + QStringLiteral(" ORDER BY n.block, n.number"),
        {project});
    if (!rows)
        return rows.error();
    std::vector<Cover> covers;
    for (const Row &row : rows.value()) {
        if (covers.empty() || covers.back().block != row[0].toString())
            covers.push_back({row[0].toString(), {}, {}, 0, false});
        covers.back().flags = static_cast<int>(flagsIn(row[1].toString()).size());
        covers.back().worded = !row[4].toString().isEmpty();
        if (!row[2].toString().isEmpty()) {
            covers.back().sha = row[2].toString();
            covers.back().format = row[3].toString();
        }
    }
    return covers;
}

StoreResult<Done> NoteBook::keepDraft(const QString &project, const QString &block, Face face,
                                      const Photograph &photo)
{
    if (!canWrite())
        return readOnlyStore;
    const Database &database = *m_store.m_database;
    Transaction transaction(database);
    if (!transaction.began())
        return transaction.began().error();
    if (const auto put = putPhoto(database, m_folder, photo); !put)
        return put.error();
    const auto kept =
        ran(database,
            QStringLiteral("INSERT INTO drafts (project, block, side, photo) VALUES (?, ?, ?, ?) "
                           "ON CONFLICT (project, block, side) DO UPDATE SET photo = excluded.photo"),
            {project, block, sideOf(face == Face::Front ? 0 : 1), photo.sha});
    if (!kept)
        return kept.error();
    return transaction.commit();
}

StoreResult<Done> NoteBook::dropDraft(const QString &project, const QString &block, Face face)
{
    if (!canWrite())
        return readOnlyStore;
    return ran(*m_store.m_database,
               QStringLiteral("DELETE FROM drafts WHERE project = ? AND block = ? AND side = ?"),
               {project, block, sideOf(face == Face::Front ? 0 : 1)});
}

StoreResult<std::array<std::optional<Photograph>, 2>> NoteBook::drafts(const QString &project,
                                                                       const QString &block) const
{
    const auto rows = m_store.m_database->run(
        QStringLiteral("SELECT d.side, p.sha, p.format, p.bytes, p.width, p.height FROM drafts AS d "
                       "JOIN photographs AS p ON p.sha = d.photo WHERE d.project = ? AND d.block = ?"),
        {project, block});
    if (!rows)
        return rows.error();
    std::array<std::optional<Photograph>, 2> faces;
    for (const Row &row : rows.value())
        faces[faceOf(row[0])] = photoIn(row, 1);
    return faces;
}

StoreResult<Done> NoteBook::forgetUnused()
{
    if (!canWrite())
        return readOnlyStore;
    return ran(
        *m_store.m_database,
        QStringLiteral("DELETE FROM photographs WHERE NOT EXISTS (SELECT 1 FROM note_photos AS t WHERE "
                       "t.photo = sha) AND NOT EXISTS (SELECT 1 FROM drafts AS d WHERE d.photo = sha)"),
        {});
}

StoreResult<int> sweepPhotographs(const QString &dir)
{
    Database database;
    if (const auto opened = database.open(storeFile(dir), Database::Mode::Read); !opened)
        return opened.error();
    const auto rows = database.run(QStringLiteral("SELECT sha FROM photographs"));
    if (!rows)
        return rows.error();
    QSet<QString> known;
    for (const Row &row : rows.value())
        known.insert(row[0].toString());
    return PhotoFolder(dir).sweep(known);
}

} // namespace matside
