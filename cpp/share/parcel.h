// SPDX-License-Identifier: MIT
#pragma once

#include "share/sharefault.h"
#include "store/photonotes.h"

namespace matside {

/// How a share file's name ends.
inline constexpr QLatin1String shareEnd(".matside");

/// One project with all that belongs to it: what goes into a share file, and what comes out of one.
struct Parcel {
    QString project;  ///< its id
    QString document; ///< with what was made, to the byte
    std::vector<Note> notes;
    QStringList past = {}; ///< SHA-256 of what its document was, newest first: see Store::past()
};

/// What the store holds of a project, at one instant. On the store's thread.
[[nodiscard]] StoreResult<Parcel> gather(const Store &store, const NoteBook &book, const QString &project);

enum class Photographs {
    Bare,       ///< without place, time and device
    AsTheyCame, ///< she said so
};

/// Writes a parcel as one zip file, with the photographs at full size and a manifest of SHA-256; reads it
/// back and compares before it gets its name. Never writes over a file. Safe on any thread: `folder` holds
/// paths only. Codes: Exists, NoPicture, TooManyFiles, TooLarge, Disk, and of the reading back any other.
[[nodiscard]] ShareResult<Done> writeShare(const Parcel &parcel, const PhotoFolder &folder,
                                           const QString &path, Photographs photographs = Photographs::Bare);

} // namespace matside
