// SPDX-License-Identifier: MIT
#pragma once

#include "share/backup.h"
#include "share/unpacking.h"
#include "store/photonotes.h"

#include <functional>
#include <random>

/// What a maker's evenings do to a store, by chance: projects, edits, undoing, photographs, notes, what she
/// gets out and brings in.
namespace deeds {

using namespace matside;

/// How a deed ended. NoRoom: the disk refused and was told so.
enum class End { Done, NoRoom, Broken };

struct Outcome {
    End end = End::Done;
    QString told; ///< which deed, and what a broken one said
};

class Deeds {
public:
    /// `root` holds the folder "shelf" of the store, and "out" for what she gets out.
    Deeds(QString root, unsigned seed);

    /// Opens the store as the program does at its start, sweeping what nothing refers to.
    [[nodiscard]] Outcome open();
    void close();
    [[nodiscard]] bool isOpen() const { return m_store != nullptr; }
    /// One deed. Afterwards the store is open.
    [[nodiscard]] Outcome next();

    [[nodiscard]] QString shelf() const { return m_root + u"/shelf"_qs; }
    /// What a deed has put somewhere else than into the store, by its name under the root.
    std::function<void(const QString &)> gotOut = [](const QString &) {};

private:
    using Deed = Outcome (Deeds::*)();

    Outcome create();
    Outcome edit();
    Outcome undo();
    Outcome redo();
    Outcome rename();
    Outcome turnOnShelf();
    Outcome undoShelf();
    Outcome setting();
    Outcome takePhoto();
    Outcome logNote();
    Outcome forget();
    Outcome copyDatabase();
    Outcome backUp();
    Outcome share();
    Outcome bringIn();
    Outcome exportAll();

    [[nodiscard]] QString anyProject();
    [[nodiscard]] QString anyBlock();
    [[nodiscard]] QString nextName(const QString &end);
    [[nodiscard]] StoreResult<Command> anyEdit(const QString &project);

    QString m_root;
    std::mt19937 m_random;
    std::unique_ptr<Store> m_store;
    std::unique_ptr<NoteBook> m_book;
    QString m_lastShare;
    int m_files = 0;
};

} // namespace deeds
