// SPDX-License-Identifier: MIT
#pragma once

#include "store/photo.h"

#include <QSet>

namespace matside {

/// The photographs beside the database: `photographs` holds the bytes as they came, `thumbs` small upright
/// pictures that can be made again. Knows paths only, so a copy may be used on another thread; two threads
/// may not keep photographs in one folder at the same time.
class PhotoFolder {
public:
    /// `dir` is the folder of the store.
    explicit PhotoFolder(const QString &dir);

    /// Looks at the bytes and keeps them: temporary name, flushed, renamed, the folder flushed. What this
    /// returns is on the disk and may be referred to. The same bytes twice are one file.
    [[nodiscard]] PhotoResult<Photograph> keep(const QByteArray &bytes) const;
    /// The small picture's path, made when it is not there.
    [[nodiscard]] PhotoResult<QString> makeThumb(const QString &sha, const QString &format) const;

    [[nodiscard]] QString original(const QString &sha, const QString &format) const;
    /// Where the small picture lies, whether it is there or not.
    [[nodiscard]] QString thumb(const QString &sha) const;
    /// SHA-256 of everything in the folder that is named as a photograph.
    [[nodiscard]] QSet<QString> kept() const;
    /// Removes what was half written and every photograph and thumbnail that is not in `known`. Gives how
    /// many files went.
    int sweep(const QSet<QString> &known) const;

private:
    QString m_originals;
    QString m_thumbs;
};

} // namespace matside
