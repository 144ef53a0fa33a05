// SPDX-License-Identifier: MIT
#pragma once

#include "store/photonotes.h"

#include <QBuffer>
#include <QCryptographicHash>
#include <QDir>
#include <QImage>
#include <QImageWriter>
#include <QUuid>

#include <random>

/// Pictures and notes for the tests of photographs.
namespace photohelp {

using namespace matside;

/// A picture like no other of another seed: soft patches of colour, and grain where `grain` asks for it.
inline QImage picture(quint32 seed, QSize size, bool grain = false)
{
    std::mt19937 random(seed);
    QImage small(8, 6, QImage::Format_RGB32);
    for (int y = 0; y < small.height(); ++y)
        for (int x = 0; x < small.width(); ++x)
            small.setPixel(x, y, quint32(random()) | 0xFF000000U);
    QImage image = small.scaled(size, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    for (int y = 0; grain && y < image.height(); ++y) {
        auto *line = reinterpret_cast<QRgb *>(image.scanLine(y)); // rows of 32-bit pixels
        for (int x = 0; x < image.width(); ++x)
            line[x] ^= quint32(random()) & 0x000F0F0FU;
    }
    return image;
}

inline QByteArray encoded(const QImage &image, const char *format = "jpeg")
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QImageWriter writer(&buffer, format);
    writer.setQuality(90);
    if (!writer.write(image))
        qFatal("no %s could be written", format);
    return bytes;
}

/// The same JPEG with an orientation tag, as a camera writes it: CIPA DC-008 (Exif 2.3), 4.5.4 and 4.6.4; 6
/// asks for a quarter turn to the right.
inline QByteArray turned(const QByteArray &jpeg, char orientation)
{
    QByteArray tag("Exif\0\0MM\0\x2A\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0?\0\0\0\0\0\0", 32);
    tag[25] = orientation;
    const auto length = static_cast<char>(tag.size() + 2);
    return jpeg.left(2) + QByteArray("\xFF\xE1\0", 3) + length + tag + jpeg.mid(2);
}

inline QString shaOf(const QByteArray &bytes)
{
    return QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex());
}

inline Note noteOf(const QString &block, const std::optional<Photograph> &front,
                   const std::optional<Photograph> &back = {})
{
    Note note;
    note.id = QUuid::createUuid().toString(QUuid::WithoutBraces);
    note.block = block;
    note.along = QStringLiteral("6 15/16 in");
    note.across = QStringLiteral("7 in");
    note.faces = {front, back};
    return note;
}

/// Names of the files that lie in a folder, half-written ones too.
inline QStringList filesIn(const QString &dir, const char *folder)
{
    return QDir(dir + u'/' + QString::fromLatin1(folder)).entryList(QDir::Files | QDir::Hidden, QDir::Name);
}

} // namespace photohelp
