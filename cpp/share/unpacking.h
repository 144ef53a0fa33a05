// SPDX-License-Identifier: MIT
#pragma once

#include "project/problem.h"
#include "share/parcel.h"

namespace matside {

/// What is inside a share file, all of it read and compared with its manifest, nothing of it kept yet.
struct Inside {
    Parcel parcel;
    QString name; ///< the project's
    std::int64_t columns = 0;
    std::int64_t rows = 0;
    std::int64_t blocksMade = 0;   ///< good ones
    std::vector<Problem> problems; ///< what in the project has to be mended first
    Marks marks;                   ///< to word the problems with
    qint64 pictures = 0;           ///< photographs
    qint64 pictureBytes = 0;
};

/// Looks into a share file. Writes nothing at all. Safe on any thread. Codes: every refusal of ShareCode.
[[nodiscard]] ShareResult<Inside> lookInside(const QString &path);

/// Keeps the photographs of a share file that was looked into, each compared with its hash once more. After a
/// refusal those that this call had kept are gone again. Fills in what the notes' faces lack. On the thread
/// that keeps photographs.
[[nodiscard]] ShareResult<std::vector<Note>> keepPictures(const QString &path, const Inside &inside,
                                                          const PhotoFolder &folder);

} // namespace matside
