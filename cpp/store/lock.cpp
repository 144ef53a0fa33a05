// SPDX-License-Identifier: MIT
#include "store/lock.h"

#include <QDateTime>
#include <QFileInfo>
#include <QSysInfo>
#include <QThread>

namespace matside {

namespace {

/// A living program holds its file within moments of making it.
constexpr qint64 settling = 200; // milliseconds

/// QLockFile itself takes over from a dead program of this machine. It cannot tell when the machine was
/// renamed, or the program was killed before the file had its text; either would lock her out for good.
bool undecided(const QLockFile &file)
{
    qint64 process = 0;
    QString machine;
    QString program;
    return !file.getLockInfo(&process, &machine, &program) || machine != QSysInfo::machineHostName();
}

void letSettle(const QLockFile &file)
{
    const qint64 age = QFileInfo(file.fileName()).lastModified().msecsTo(QDateTime::currentDateTimeUtc());
    if (age >= 0 && age < settling)
        QThread::msleep(static_cast<unsigned long>(settling - age));
}

} // namespace

StoreLock::StoreLock(const QString &path) : m_file(path)
{
    m_file.setStaleLockTime(0);
    if (m_file.tryLock(0) || !taken() || !undecided(m_file))
        return;
    // Made this moment, it may still get its text. Removing fails while a living program holds the file.
    letSettle(m_file);
    if (undecided(m_file) && !m_file.removeStaleLockFile())
        return;
    m_file.tryLock(0);
}

} // namespace matside
