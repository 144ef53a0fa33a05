// SPDX-License-Identifier: MIT
#pragma once

#include "length/result.h"

#include <QString>

namespace matside {

/// Why the store could not do what was asked. The app words the code and its remedy.
enum class StoreCode {
    CannotOpen,   ///< folder or file cannot be made or read
    Newer,        ///< written by a newer program: left untouched
    NeedsUpgrade, ///< older, and cannot be upgraded because the store is read-only
    NoCopy,       ///< the copy that must come before an upgrade could not be made: nothing was upgraded
    Damaged,      ///< the file is no sound database
    ReadOnly,     ///< opened for reading only: see Store::access()
    Disk,         ///< the disk is full or refuses to write: free some room and try again
    Busy,         ///< another program holds the file
    NotFound,     ///< no such project
    Stale,        ///< the project is no longer as the command supposes: load it again
    NothingLeft,  ///< nothing to undo, or to redo
    Unreadable,   ///< the text is no project file
    Unsound,      ///< something in the document cannot be read: a copy would lose it
    Exists,       ///< a file of that name is there already
    Refused,      ///< any other refusal of the database; `detail` says which
};

/// `detail` is for the log, in English, and not translated.
struct StoreError {
    StoreCode code = StoreCode::Refused;
    QString detail;
};

template <class T> using StoreResult = Result<T, StoreError>;

inline const StoreError readOnlyStore{StoreCode::ReadOnly, {}};

/// The value of something that only succeeds.
struct Done {};

} // namespace matside
