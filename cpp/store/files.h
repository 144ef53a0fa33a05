// SPDX-License-Identifier: MIT
#pragma once

#include <QDir>
#include <QFile>
#include <QFileInfo>

#ifdef Q_OS_UNIX
#include <fcntl.h>
#include <unistd.h>
#endif

namespace matside {

/// What was written to an open file is on the disk.
[[nodiscard]] inline bool flushed(QFile &file)
{
    if (!file.flush())
        return false;
#ifdef Q_OS_UNIX
    return ::fsync(file.handle()) == 0;
#else
    return true;
#endif
}

/// The same of a file that others wrote: the system may keep that back as long as it likes.
[[nodiscard]] inline bool flushedFile(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadWrite) && flushed(file);
}

/// What was renamed in a folder is on the disk.
[[nodiscard]] inline bool flushedFolder(const QString &dir)
{
#ifdef Q_OS_UNIX
    const int folder = ::open(QFile::encodeName(dir).constData(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (folder < 0)
        return false;
    const bool done = ::fsync(folder) == 0;
    ::close(folder);
    return done;
#else
    return QFile::exists(dir);
#endif
}

/// The folder is there, and each that had to be made for it is on the disk under its name.
[[nodiscard]] inline bool madeFolder(const QString &dir)
{
    const QString path = QDir::cleanPath(QFileInfo(dir).absoluteFilePath());
    if (QFileInfo(path).isDir())
        return true;
    const QString parent = QFileInfo(path).path();
    if (parent == path || !madeFolder(parent))
        return false;
    return (QDir().mkdir(path) || QFileInfo(path).isDir()) && flushedFolder(parent);
}

/// A flushed file gets its name, which no file has, for good; otherwise it is as if it never had.
[[nodiscard]] inline bool namedForGood(const QString &part, const QString &path)
{
    if (!QFile::rename(part, path))
        return false;
    if (flushedFolder(QFileInfo(path).absolutePath()))
        return true;
    QFile::remove(path);
    return false;
}

/// A name in `dir` that no file has: "stem.end", or "stem 2.end" and so on.
[[nodiscard]] inline QString freePath(const QString &dir, const QString &stem, QLatin1String end)
{
    QString path = QDir(dir).filePath(stem + end);
    for (int number = 2; QFile::exists(path); ++number)
        path = QDir(dir).filePath(QStringLiteral("%1 %2").arg(stem).arg(number) + end);
    return path;
}

} // namespace matside
