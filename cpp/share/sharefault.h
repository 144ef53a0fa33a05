// SPDX-License-Identifier: MIT
#pragma once

#include "length/result.h"

#include <QString>

namespace matside {

/// Why a share file could not be written, or was refused. Of a refused file nothing has been kept.
enum class ShareCode {
    CannotOpen,     ///< the file cannot be opened or read
    NotAnArchive,   ///< no zip file, or one whose parts do not fit together
    NotAShare,      ///< a zip file, but with no manifest of ours
    Newer,          ///< written by a newer program
    TooLarge,       ///< more bytes than are taken: see sharelimits
    TooManyFiles,   ///< more files in it than are taken
    TooTight,       ///< unpacks to far more than a photograph can
    OutsidePath,    ///< a name that points out of the file: "..", "/", "\\", a drive
    Link,           ///< something in it is a link, or no plain file
    Locked,         ///< something in it is encrypted
    UnknownPacking, ///< packed by a method other than stored and deflated
    DoubledFile,    ///< a name stands in it twice
    StrayFile,      ///< something in it that the manifest or the notes do not speak of
    MissingFile,    ///< the manifest or a note speaks of something that is not in it
    WrongHash,      ///< something in it is not what the manifest says: damaged or changed
    BadManifest,    ///< the manifest cannot be read
    BadNotes,       ///< the notes cannot be read
    BadProject,     ///< the project cannot be read
    NotAPicture,    ///< what should be a photograph is none, or is cut short
    Exists,         ///< a file of that name is there already
    NoPicture,      ///< a photograph of the project is missing or cannot be read
    Disk,           ///< the disk is full or refuses to write
};

/// `name` is the name inside the share file that it is about, or empty. `detail` is for the log, in English.
struct ShareError {
    ShareCode code = ShareCode::CannotOpen;
    QString name;
    QString detail;
};

template <class T> using ShareResult = Result<T, ShareError>;

/// A stable name, as in "wrong-hash".
[[nodiscard]] const char *nameOf(ShareCode code);

namespace sharelimits {
/// Photographs of one project.
inline constexpr qint64 pictures = 4'000;
/// Files in a share file: photographs, manifest, project, notes and one folder.
inline constexpr qint64 files = pictures + 4;
/// Of the share file, and of all that is in it unpacked. A zip file without 64-bit fields ends at 4 GiB.
inline constexpr qint64 bytes = qint64{3} << 30U;
/// Of the manifest, of the project and of the notes.
inline constexpr qint64 text = qint64{4} << 20U;
/// Photographs are packed already: one that unpacks to more than so many times its size is none. Files that
/// are no larger than a text may be may shrink as they like.
inline constexpr qint64 tightness = 50;
inline constexpr qint64 notes = 20'000;
} // namespace sharelimits

} // namespace matside
