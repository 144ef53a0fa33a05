// SPDX-License-Identifier: MIT
#include "share/bare.h"

#include <QBuffer>
#include <QColorSpace>
#include <QImageReader>
#include <QImageWriter>
#include <QSet>
#include <QtEndian>

#include <optional>

namespace matside {

namespace {

constexpr int quality = 95; ///< of a JPEG that has to be packed anew

/// Markers of ITU-T T.81, table B.1.
namespace jpeg {
constexpr unsigned app0 = 0xE0;
constexpr unsigned app2 = 0xE2;
constexpr unsigned app14 = 0xEE;
constexpr unsigned app15 = 0xEF;
constexpr unsigned comment = 0xFE;
constexpr unsigned endOfImage = 0xD9;
constexpr unsigned startOfScan = 0xDA;
constexpr unsigned firstRestart = 0xD0;
constexpr unsigned lastRestart = 0xD7;
} // namespace jpeg

unsigned at(const QByteArray &bytes, qsizetype place)
{
    return static_cast<unsigned char>(bytes[place]);
}

/// The place after scanned data: the next marker that is no restart.
qsizetype afterScan(const QByteArray &bytes, qsizetype from)
{
    for (qsizetype place = bytes.indexOf('\xFF', from); place >= 0 && place + 1 < bytes.size();
         place = bytes.indexOf('\xFF', place + 1)) {
        const unsigned code = at(bytes, place + 1);
        const bool data =
            code == 0 || code == 0xFF || (code >= jpeg::firstRestart && code <= jpeg::lastRestart);
        if (!data)
            return place;
    }
    return -1;
}

/// A JFIF header that says nothing: version 1.1, square pixels of no size, no small copy of the picture.
QByteArray plainJfif()
{
    return {"\xFF\xE0\0\x10JFIF\0\1\1\0\0\1\0\1\0\0", 18};
}

/// Which way up a picture is, as a camera writes it (CIPA DC-008, 4.6.4 A): nothing else stands in it.
QByteArray orientationSegment(QImageIOHandler::Transformations turned)
{
    constexpr std::array<char, 8> numbers{1, 2, 4, 3, 6, 7, 5, 8}; // by Qt's bits: mirror, flip, quarter turn
    const char number = numbers.at(static_cast<std::size_t>(turned.toInt()) & 7U);
    if (number == 1)
        return {};
    QByteArray segment("\xFF\xE1\0\x22"
                       "Exif\0\0MM\0\x2A\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0?\0\0\0\0\0\0",
                       36);
    segment[29] = number;
    return segment;
}

bool isProfile(const QByteArray &bytes, qsizetype place)
{
    return bytes.mid(place + 4, 11) == QByteArray("ICC_PROFILE");
}

/// The parts that make the picture, in their order; nullopt when it ends too soon.
std::optional<QByteArray> jpegParts(const QByteArray &bytes, const QByteArray &orientation)
{
    QByteArray header;
    QByteArray rest;
    qsizetype place = 2;
    while (place + 2 <= bytes.size()) {
        if (at(bytes, place) != 0xFF)
            return std::nullopt;
        const unsigned code = at(bytes, place + 1);
        if (code == 0xFF) { // a fill byte
            ++place;
            continue;
        }
        if (code == jpeg::endOfImage)
            return bytes.left(2) + header + orientation + rest + QByteArray("\xFF\xD9");
        if (place + 4 > bytes.size())
            return std::nullopt;
        qsizetype end = place + 2 + qFromBigEndian<quint16>(bytes.constData() + place + 2);
        if (code == jpeg::startOfScan)
            end = afterScan(bytes, end);
        if (end < 0 || end > bytes.size())
            return std::nullopt;
        const QByteArray segment = bytes.mid(place, end - place);
        const bool told = (code >= jpeg::app0 && code <= jpeg::app15) || code == jpeg::comment;
        if (code == jpeg::app0 && header.isEmpty() && segment.mid(4, 5) == QByteArray("JFIF\0", 5))
            header = plainJfif();
        else if (code == jpeg::app14 && segment.mid(4, 5) == "Adobe")
            rest += segment.left(16); // says how colours are told
        else if (!told)
            rest += segment;
        place = end;
    }
    return std::nullopt;
}

bool jpegHasProfile(const QByteArray &bytes)
{
    for (qsizetype place = 2; place + 4 <= bytes.size() && at(bytes, place) == 0xFF;) {
        const unsigned code = at(bytes, place + 1);
        if (code == jpeg::startOfScan || code == jpeg::endOfImage)
            return false;
        if (code == 0xFF) {
            ++place;
            continue;
        }
        if (code == jpeg::app2 && isProfile(bytes, place))
            return true;
        place += 2 + qFromBigEndian<quint16>(bytes.constData() + place + 2);
    }
    return false;
}

/// Chunks that make the picture (ISO/IEC 15948, clause 11); the rest are words, times, profiles and the like.
bool makesPicture(const QByteArray &name)
{
    static const QSet<QByteArray> names{"IHDR", "PLTE", "IDAT", "IEND", "tRNS",
                                        "gAMA", "cHRM", "sRGB", "sBIT"};
    return names.contains(name);
}

std::optional<QByteArray> pngParts(const QByteArray &bytes)
{
    constexpr qsizetype signature = 8;
    constexpr qsizetype frame = 12; // length, name and checksum
    QByteArray parts = bytes.left(signature);
    qsizetype place = signature;
    while (place + frame <= bytes.size()) {
        const qsizetype next =
            place + frame + static_cast<qsizetype>(qFromBigEndian<quint32>(bytes.constData() + place));
        if (next > bytes.size())
            return std::nullopt;
        const QByteArray name = bytes.mid(place + 4, 4);
        if (makesPicture(name))
            parts += bytes.mid(place, next - place);
        if (name == "IEND")
            return parts;
        place = next;
    }
    return std::nullopt;
}

bool pngHasProfile(const QByteArray &bytes)
{
    // The profile stands before the picture's data.
    return bytes.left(bytes.indexOf("IDAT")).contains("iCCP");
}

/// Unpacked, in sRGB, and packed anew.
PhotoResult<QByteArray> repacked(const QByteArray &bytes, const char *format, bool upright)
{
    QBuffer from;
    from.setData(bytes);
    from.open(QIODevice::ReadOnly);
    QImageReader reader(&from);
    reader.setDecideFormatFromContent(true);
    reader.setAutoTransform(upright);
    const QSize size = reader.size();
    if (qint64(size.width()) * size.height() > photolimits::pixelsWhole)
        return PhotoError{PhotoCode::TooLarge,
                          QStringLiteral("%1 × %2").arg(size.width()).arg(size.height())};
    QImage image = reader.read();
    if (image.isNull())
        return PhotoError{PhotoCode::Truncated, reader.errorString()};
    if (image.colorSpace().isValid() && image.colorSpace() != QColorSpace(QColorSpace::SRgb))
        image.convertToColorSpace(QColorSpace(QColorSpace::SRgb));
    image.setColorSpace({});
    QBuffer to;
    to.open(QIODevice::WriteOnly);
    QImageWriter writer(&to, format);
    writer.setQuality(QByteArray(format) == "jpeg" ? quality : -1);
    if (!writer.write(image))
        return PhotoError{PhotoCode::Unreadable, writer.errorString()};
    return to.data();
}

QImageIOHandler::Transformations turnOf(const QByteArray &bytes)
{
    QBuffer buffer;
    buffer.setData(bytes);
    buffer.open(QIODevice::ReadOnly);
    return QImageReader(&buffer, "jpeg").transformation();
}

PhotoResult<Bare> finished(const std::optional<QByteArray> &parts, const char *format)
{
    if (!parts)
        return PhotoError{PhotoCode::Truncated, QStringLiteral("no end of the picture")};
    return Bare{*parts, QString::fromLatin1(format)};
}

} // namespace

PhotoResult<Bare> bareOf(const QByteArray &bytes)
{
    if (bytes.startsWith("\xFF\xD8\xFF")) {
        const QByteArray orientation = orientationSegment(turnOf(bytes));
        if (!jpegHasProfile(bytes))
            return finished(jpegParts(bytes, orientation), "jpeg");
        const auto plain = repacked(bytes, "jpeg", false);
        // Too many pixels to unpack: the profile alone is left out.
        if (!plain && plain.error().code != PhotoCode::TooLarge)
            return plain.error();
        return finished(jpegParts(plain ? plain.value() : bytes, orientation), "jpeg");
    }
    const bool png = bytes.startsWith("\x89PNG\r\n\x1A\n");
    if (png && !pngHasProfile(bytes))
        return finished(pngParts(bytes), "png");
    const auto plain = repacked(bytes, "png", true);
    if (!plain)
        return plain.error();
    return finished(pngParts(plain.value()), "png");
}

} // namespace matside
