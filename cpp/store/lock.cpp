// SPDX-License-Identifier: MIT
#include "store/lock.h"

#include <QDateTime>
#include <QFileInfo>
#include <QSysInfo>

namespace matside {

namespace {

/// QLockFile itself takes over from a dead program of this machine. It cannot tell when the machine was
/// renamed, or the power went before the file had its text; either would lock her out for good. Removing
/// fails all the same while a living program holds the file; a fresh file may still be getting its text.
bool undecided(const QLockFile &file)
{
    constexpr qint64 settling = 2; // seconds
    if (QFileInfo(file.fileName()).lastModified().secsTo(QDateTime::currentDateTime()) < settling)
        return false;
    qint64 process = 0;
    QString machine;
    QString program;
    return !file.getLockInfo(&process, &machine, &program) || machine != QSysInfo::machineHostName();
}

} // namespace

StoreLock::StoreLock(const QString &path) : m_file(path)
{
    m_file.setStaleLockTime(0);
    if (!m_file.tryLock(0) && taken() && undecided(m_file) && m_file.removeStaleLockFile())
        m_file.tryLock(0);
}

} // namespace matside
