// SPDX-License-Identifier: MIT
#include "store/photofolder.h"

#include "store/files.h"

#include <QBuffer>
#include <QCryptographicHash>
#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QFileInfo>
#include <QImageWriter>

namespace matside {

namespace {

constexpr int shaDigits = 64;
constexpr int thumbQuality = 85;
constexpr QLatin1String partEnd(".part");

/// Writes a file that has no name yet, and flushes it; nothing of it stays when it could not.
PhotoResult<Done> writePart(const QString &part, const QByteArray &bytes)
{
    QFile file(part);
    const bool opened = file.open(QIODevice::WriteOnly | QIODevice::Truncate | QIODevice::Unbuffered);
    if (opened && file.write(bytes) == bytes.size() && flushed(file))
        return Done{};
    const PhotoError error{PhotoCode::Disk, file.errorString()};
    file.close();
    QFile::remove(part);
    return error;
}

PhotoResult<Done> writeDurably(const QString &path, const QByteArray &bytes)
{
    const QString part = path + partEnd;
    if (auto written = writePart(part, bytes); !written)
        return written;
    // What stands there under this name is not what the name says.
    QFile::remove(path);
    if (!namedForGood(part, path)) {
        QFile::remove(part);
        return PhotoError{PhotoCode::Disk, path};
    }
    return Done{};
}

/// A thumbnail can always be made again, so its name is not flushed. What is in it is: a name that came onto
/// the disk without it would stand for a picture that cannot be shown, and nothing would make it again.
bool writeThumb(const QString &path, const QImage &thumb)
{
    // Encoded in memory: a writer on a file says nothing of a disk that is full.
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QImageWriter writer(&buffer, "jpeg");
    writer.setQuality(thumbQuality);
    if (!writer.write(thumb.convertToFormat(QImage::Format_RGB32)))
        return false;
    const QString part = path + partEnd;
    return writePart(part, bytes) && (QFile::rename(part, path) || QFile::exists(path));
}

/// A kept file that was altered since is written anew when the same photograph comes again.
bool holds(const QString &path, const QByteArray &bytes)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) && file.size() == bytes.size() && file.readAll() == bytes;
}

QString shaIn(const QString &fileName)
{
    const QString sha = fileName.left(fileName.indexOf(QLatin1Char('.')));
    return sha.size() == shaDigits && !fileName.endsWith(partEnd) ? sha : QString();
}

int sweepOne(const QString &dir, const QSet<QString> &known)
{
    int gone = 0;
    QDirIterator entries(dir, QDir::Files | QDir::Hidden);
    while (entries.hasNext()) {
        const QString path = entries.next();
        const QString name = entries.fileName();
        const QString sha = shaIn(name);
        const bool half = name.endsWith(partEnd);
        // What is named otherwise is not ours to remove.
        if (half || (!sha.isEmpty() && !known.contains(sha)))
            gone += QFile::remove(path) ? 1 : 0;
    }
    return gone;
}

} // namespace

PhotoFolder::PhotoFolder(const QString &dir)
    : m_originals(QDir(dir).filePath(QStringLiteral("photographs"))),
      m_thumbs(QDir(dir).filePath(QStringLiteral("thumbs")))
{
}

QString PhotoFolder::original(const QString &sha, const QString &format) const
{
    return QStringLiteral("%1/%2.%3").arg(m_originals, sha, format);
}

QString PhotoFolder::thumb(const QString &sha) const
{
    return QStringLiteral("%1/%2.jpeg").arg(m_thumbs, sha);
}

PhotoResult<Photograph> PhotoFolder::keep(const QByteArray &bytes) const
{
    const auto looked = lookAt(bytes);
    if (!looked)
        return looked.error();
    const auto digest = QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex();
    Photograph photo{QString::fromLatin1(digest), looked.value().format, bytes.size(), looked.value().size};
    if (!madeFolder(m_originals))
        return PhotoError{PhotoCode::Disk, m_originals};
    const QString path = original(photo.sha, photo.format);
    // Under its name a file is whole: it got the name only after it was flushed.
    if (holds(path, bytes)) {
        if (!flushedFolder(m_originals))
            return PhotoError{PhotoCode::Disk, m_originals};
    } else {
        if (const auto written = writeDurably(path, bytes); !written)
            return written.error();
        QFile::remove(thumb(photo.sha));
    }
    if (QDir().mkpath(m_thumbs) && !QFile::exists(thumb(photo.sha)))
        (void)writeThumb(thumb(photo.sha), looked.value().thumb);
    return photo;
}

PhotoResult<QString> PhotoFolder::makeThumb(const QString &sha, const QString &format) const
{
    const QString path = thumb(sha);
    if (QFile::exists(path))
        return path;
    const auto bytes = readPicture(original(sha, format));
    if (!bytes)
        return bytes.error();
    const auto looked = lookAt(bytes.value());
    if (!looked)
        return looked.error();
    if (!QDir().mkpath(m_thumbs) || !writeThumb(path, looked.value().thumb))
        return PhotoError{PhotoCode::Disk, path};
    return path;
}

QSet<QString> PhotoFolder::kept() const
{
    QSet<QString> all;
    QDirIterator entries(m_originals, QDir::Files);
    while (entries.hasNext()) {
        entries.next();
        if (const QString sha = shaIn(entries.fileName()); !sha.isEmpty())
            all.insert(sha);
    }
    return all;
}

int PhotoFolder::sweep(const QSet<QString> &known) const
{
    return sweepOne(m_originals, known) + sweepOne(m_thumbs, known);
}

} // namespace matside
