// SPDX-License-Identifier: MIT
#pragma once

#include <QDir>
#include <QFile>

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

/// A name in `dir` that no file has: "stem.end", or "stem 2.end" and so on.
[[nodiscard]] inline QString freePath(const QString &dir, const QString &stem, QLatin1String end)
{
    QString path = QDir(dir).filePath(stem + end);
    for (int number = 2; QFile::exists(path); ++number)
        path = QDir(dir).filePath(QStringLiteral("%1 %2").arg(stem).arg(number) + end);
    return path;
}

} // namespace matside
