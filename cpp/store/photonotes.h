// SPDX-License-Identifier: MIT
#pragma once

#include "store/photofolder.h"
#include "store/store.h"

#include <array>

namespace matside {

enum class Face { Front, Back };

/// What was noted of one block, or at one step. It stands in the order of a counter, never of a clock.
struct Note {
    QString id;
    std::int64_t number = 0; ///< given by the book
    QString block;           ///< "A1", or empty
    QString step;            ///< a step's id, or empty: a note has one of the two
    QString words;
    QStringList flags; ///< codes, such as "pleat"
    QString along;     ///< outline as measured, a length of the project file, or empty
    QString across;
    std::array<std::optional<Photograph>, 2> faces; ///< front, back
};

/// The notes of the projects in a store and the photographs they refer to. A photograph is referred to only
/// once it is kept in its folder, so no row is without its file; a file whose row never came is swept at the
/// next start. To be used on the store's thread.
class NoteBook {
public:
    explicit NoteBook(Store &store);

    [[nodiscard]] const PhotoFolder &folder() const { return m_folder; }
    /// The folder of the store.
    [[nodiscard]] const QString &dir() const { return m_store.folder(); }
    [[nodiscard]] bool canWrite() const { return m_store.canWrite(); }

    /// Saves an edit of the project, the note that belongs to it and its photographs together, and drops the
    /// block's drafts. Undoing the edit takes the note away, redoing brings it back. Gives the note's number.
    [[nodiscard]] StoreResult<std::int64_t> log(const QString &project, const Command &command,
                                                const Note &note);
    /// The notes that stand, oldest first; of one block when it is named.
    [[nodiscard]] StoreResult<std::vector<Note>> notes(const QString &project,
                                                       const QString &block = {}) const;
    /// For each block, front of the newest note with one: what a gallery shows.
    struct Cover {
        QString block;
        QString sha;
        QString format;
        int flags = 0;       ///< of the block's newest note
        bool worded = false; ///< there are words in that one
    };
    [[nodiscard]] StoreResult<std::vector<Cover>> covers(const QString &project) const;

    /// A new project, first on the shelf, together with its notes, whose photographs are kept already. Their
    /// ids and the project's stay as they are unless something here has them. Gives the project's id. Undoing
    /// it on the shelf takes the notes away too.
    [[nodiscard]] StoreResult<QString> bringIn(const QString &wantedId, const QString &document,
                                               const std::vector<Note> &notes);

    /// Another tablet's work taken in, as one edit: the document put together, the notes that are not here
    /// yet, whose photographs are kept already, and what that tablet had, to part from next time. Undoing the
    /// edit takes all of it away. Gives how many notes came.
    [[nodiscard]] StoreResult<int> takeIn(const QString &project, const Command &command,
                                          const std::vector<Note> &notes, const QString &theirDocument);
    /// Those of all notes that the project has not got, neither under their id nor under noteIdIn().
    [[nodiscard]] StoreResult<std::vector<Note>> missing(const QString &project,
                                                         const std::vector<Note> &all) const;

    /// A photograph taken for a note that is not yet logged: it outlives a closed program.
    [[nodiscard]] StoreResult<Done> keepDraft(const QString &project, const QString &block, Face face,
                                              const Photograph &photo);
    [[nodiscard]] StoreResult<Done> dropDraft(const QString &project, const QString &block, Face face);
    [[nodiscard]] StoreResult<std::array<std::optional<Photograph>, 2>> drafts(const QString &project,
                                                                               const QString &block) const;

    /// Removes the rows of photographs nothing refers to any more; their files go with the next sweep.
    [[nodiscard]] StoreResult<Done> forgetUnused();

private:
    Store &m_store;
    PhotoFolder m_folder;
};

/// The id a note gets in a project when another project here has its own: always the same one, so that it is
/// known again.
[[nodiscard]] QString noteIdIn(const QString &project, const QString &id);

/// Sweeps the photographs of a folder whose store is open for writing elsewhere in this program: reads which
/// are known through a connection of its own, so it may run on any thread. Gives how many files went.
[[nodiscard]] StoreResult<int> sweepPhotographs(const QString &dir);

} // namespace matside
