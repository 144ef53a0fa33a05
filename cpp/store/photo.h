// SPDX-License-Identifier: MIT
#pragma once

#include "length/result.h"
#include "store/fault.h"

#include <QByteArray>
#include <QImage>
#include <QSize>
#include <QString>

namespace matside {

/// Why a picture could not be kept. Nothing is left behind when it could not.
enum class PhotoCode {
    Unreadable, ///< the file cannot be opened or read to its end
    NotAnImage, ///< no format this program reads
    Truncated,  ///< it begins as a picture and ends too soon
    TooLarge,   ///< more pixels or bytes than are taken: see photolimits
    Disk,       ///< the disk is full or refuses to write
};

/// `detail` is for the log, in English, and not translated.
struct PhotoError {
    PhotoCode code = PhotoCode::Unreadable;
    QString detail;
};

template <class T> using PhotoResult = Result<T, PhotoError>;

namespace photolimits {
/// Pixels of a picture that can be read at a reduced size (a baseline JPEG).
inline constexpr qint64 pixels = 100'000'000;
/// Pixels of any other, which has to be in memory whole: four bytes each, within what QImageReader takes.
inline constexpr qint64 pixelsWhole = 32'000'000;
inline constexpr qint64 bytes = 100'000'000;
/// The longer side of a thumbnail, in pixels.
inline constexpr int thumb = 480;
} // namespace photolimits

/// A photograph as it is kept: the bytes as they came, under their SHA-256.
struct Photograph {
    QString sha;    ///< 64 hexadecimal digits
    QString format; ///< "jpeg", "png"…, as the bytes say, whatever the file was called
    qint64 bytes = 0;
    QSize size; ///< pixels as stored, before its orientation is applied
    friend bool operator==(const Photograph &, const Photograph &) = default;
};

/// What looking at the bytes told, with a small upright picture.
struct LookedAt {
    QString format;
    QSize size;
    QImage thumb;
};

/// Looks whether the bytes are a whole picture: its structure to the end first, then its size, and only then
/// a picture of at most photolimits::thumb pixels is decoded, turned as its orientation tag says. Safe on any
/// thread.
[[nodiscard]] PhotoResult<LookedAt> lookAt(const QByteArray &bytes);

/// All bytes of a file, at most photolimits::bytes.
[[nodiscard]] PhotoResult<QByteArray> readPicture(const QString &path);

} // namespace matside
