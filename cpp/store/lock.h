// SPDX-License-Identifier: MIT
#pragma once

#include <QLockFile>
#include <QString>

namespace matside {

/// Held as long as this instance may write. What a killed program left behind is taken over.
class StoreLock {
public:
    explicit StoreLock(const QString &path);
    [[nodiscard]] bool held() const { return m_file.isLocked(); }
    /// True when another living program holds it.
    [[nodiscard]] bool taken() const { return m_file.error() == QLockFile::LockFailedError; }

private:
    QLockFile m_file;
};

} // namespace matside
