// SPDX-License-Identifier: MIT
//
// Another tablet's notes among those of this one: none lost, none twice.
#include "store/notewriting.h"
#include "store/photonotes.h"
#include "store/writing.h"

#include <QSet>
#include <QUuid>

namespace matside {

namespace {

StoreResult<int> takeInside(const Database &database, const PhotoFolder &folder, const QString &project,
                            const Command &command, const std::vector<Note> &notes,
                            const QString &theirDocument)
{
    // What was undone here is forgotten by it, and may come again.
    const auto edited = editInside(database, project, command);
    if (!edited)
        return edited.error();
    int came = 0;
    for (Note note : notes) {
        const auto taken = database.value(QStringLiteral("SELECT 1 FROM notes WHERE id = ?"), {note.id});
        if (!taken)
            return taken.error();
        if (taken.value().isValid())
            note.id = noteIdIn(project, note.id);
        if (const auto written = writeNote(database, folder, project, edited.value(), note); !written)
            return written.error();
        ++came;
    }
    if (const auto met = meetInside(database, project, theirDocument, edited.value()); !met)
        return met.error();
    return came;
}

} // namespace

QString noteIdIn(const QString &project, const QString &id)
{
    return QUuid::createUuidV5(QUuid(project), id).toString(QUuid::WithoutBraces);
}

StoreResult<std::vector<Note>> NoteBook::missing(const QString &project, const std::vector<Note> &all) const
{
    const auto held = notes(project);
    if (!held)
        return held.error();
    QSet<QString> known;
    for (const Note &note : held.value()) {
        known.insert(note.id);
        known.insert(noteIdIn(project, note.id)); // it may be the other tablet that had to give a new id
    }
    std::vector<Note> fresh;
    for (const Note &note : all)
        if (!known.contains(note.id) && !known.contains(noteIdIn(project, note.id)))
            fresh.push_back(note);
    return fresh;
}

StoreResult<int> NoteBook::takeIn(const QString &project, const Command &command,
                                  const std::vector<Note> &notes, const QString &theirDocument)
{
    if (!canWrite())
        return StoreError{StoreCode::ReadOnly, {}};
    // Looked up once more: since she was asked, something may have been logged.
    const auto fresh = missing(project, notes);
    if (!fresh)
        return fresh.error();
    Transaction transaction(*m_store.m_database);
    if (!transaction.began())
        return transaction.began().error();
    auto came = takeInside(*m_store.m_database, m_folder, project, command, fresh.value(), theirDocument);
    if (!came)
        return came;
    if (const auto done = transaction.commit(); !done)
        return done.error();
    return came;
}

} // namespace matside
