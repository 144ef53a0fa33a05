// SPDX-License-Identifier: MIT
#pragma once

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

} // namespace matside
