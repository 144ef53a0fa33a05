// SPDX-License-Identifier: MIT
#include "store/photo.h"

#include <QBuffer>
#include <QFile>
#include <QImageReader>
#include <QtEndian>

namespace matside {

namespace {

/// How a picture's bytes end, read off its own structure: decoders draw the rest grey and say nothing.
struct Ending {
    bool whole = false;
    bool progressive = false;
};

unsigned at(const QByteArray &bytes, qsizetype place)
{
    return static_cast<unsigned char>(bytes[place]);
}

/// Where the next marker after scanned data stands; restart marks and stuffed bytes belong to the data.
qsizetype nextMarker(const QByteArray &bytes, qsizetype from)
{
    constexpr unsigned firstRestart = 0xD0;
    constexpr unsigned lastRestart = 0xD7;
    for (qsizetype place = bytes.indexOf('\xFF', from); place >= 0 && place + 1 < bytes.size();
         place = bytes.indexOf('\xFF', place + 1)) {
        const unsigned code = at(bytes, place + 1);
        const bool data = code == 0 || code == 0xFF || (code >= firstRestart && code <= lastRestart);
        if (!data)
            return place;
    }
    return -1;
}

/// JPEG: segments from the first marker to "end of image" (ITU-T T.81, annex B).
Ending endOfJpeg(const QByteArray &bytes)
{
    constexpr unsigned endOfImage = 0xD9;
    constexpr unsigned startOfScan = 0xDA;
    constexpr unsigned progressiveFrame = 0xC2;
    Ending ending;
    qsizetype place = 2;
    while (place + 2 <= bytes.size()) {
        if (at(bytes, place) != 0xFF)
            return ending;
        const unsigned code = at(bytes, place + 1);
        if (code == 0xFF) { // a fill byte
            ++place;
            continue;
        }
        if (code == endOfImage) {
            ending.whole = true;
            return ending;
        }
        if (place + 4 > bytes.size())
            return ending;
        ending.progressive = ending.progressive || code == progressiveFrame;
        place += 2 + qFromBigEndian<quint16>(bytes.constData() + place + 2);
        if (code != startOfScan)
            continue;
        place = nextMarker(bytes, place);
        if (place < 0)
            return ending;
    }
    return ending;
}

/// PNG: chunks to IEND (ISO/IEC 15948, clause 5).
Ending endOfPng(const QByteArray &bytes)
{
    constexpr qsizetype signature = 8;
    constexpr qsizetype frame = 12; // length, name and checksum
    qsizetype place = signature;
    while (place + frame <= bytes.size()) {
        const qsizetype next =
            place + frame + static_cast<qsizetype>(qFromBigEndian<quint32>(bytes.constData() + place));
        if (next > bytes.size())
            return {};
        if (bytes.mid(place + 4, 4) == "IEND")
            return {true, false};
        place = next;
    }
    return {};
}

Ending endOf(const QByteArray &bytes)
{
    if (bytes.startsWith("\xFF\xD8\xFF"))
        return endOfJpeg(bytes);
    if (bytes.startsWith("\x89PNG\r\n\x1A\n"))
        return endOfPng(bytes);
    // Of other formats the decoder tells.
    return {true, false};
}

} // namespace

PhotoResult<LookedAt> lookAt(const QByteArray &bytes)
{
    if (bytes.size() > photolimits::bytes)
        return PhotoError{PhotoCode::TooLarge, QStringLiteral("%1 bytes").arg(bytes.size())};
    const Ending ending = endOf(bytes);
    if (!ending.whole)
        return PhotoError{PhotoCode::Truncated, QStringLiteral("no end of the picture")};
    QBuffer buffer;
    buffer.setData(bytes);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    reader.setDecideFormatFromContent(true);
    const QByteArray found = reader.format();
    const QByteArray format = found == "jpg" ? QByteArray("jpeg") : found;
    const QSize size = reader.size();
    if (format.isEmpty() || size.isEmpty())
        return PhotoError{PhotoCode::NotAnImage, reader.errorString()};
    const bool reduced = format == "jpeg" && !ending.progressive;
    const qint64 pixels = qint64(size.width()) * size.height();
    if (pixels > (reduced ? photolimits::pixels : photolimits::pixelsWhole))
        return PhotoError{PhotoCode::TooLarge, QStringLiteral("%1 pixels").arg(pixels)};
    const QSize most(photolimits::thumb, photolimits::thumb);
    reader.setAutoTransform(true);
    if (size.width() > most.width() || size.height() > most.height())
        reader.setScaledSize(size.scaled(most, Qt::KeepAspectRatio).expandedTo({1, 1}));
    const QImage thumb = reader.read();
    if (thumb.isNull())
        return PhotoError{PhotoCode::Truncated, reader.errorString()};
    return LookedAt{QString::fromLatin1(format), size, thumb};
}

PhotoResult<QByteArray> readPicture(const QString &path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return PhotoError{PhotoCode::Unreadable, file.errorString()};
    if (file.size() > photolimits::bytes)
        return PhotoError{PhotoCode::TooLarge, QStringLiteral("%1 bytes").arg(file.size())};
    const QByteArray bytes = file.read(photolimits::bytes);
    if (file.error() != QFileDevice::NoError || bytes.size() < file.size())
        return PhotoError{PhotoCode::Unreadable, file.errorString()};
    return bytes;
}

} // namespace matside
