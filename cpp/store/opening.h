// SPDX-License-Identifier: MIT
#pragma once

#include "store/migrations.h"
#include "store/store.h"

#include <QLockFile>

namespace matside {

/// Held as long as this instance may write.
class StoreLock {
public:
    explicit StoreLock(const QString &path) : m_file(path) { m_file.setStaleLockTime(0); }
    [[nodiscard]] bool take() { return m_file.tryLock(0); }
    /// True when another living program holds it.
    [[nodiscard]] bool taken() const { return m_file.error() == QLockFile::LockFailedError; }

private:
    QLockFile m_file;
};

/// openStore() with other migrations, for trying those.
[[nodiscard]] StoreResult<std::unique_ptr<Store>> openStore(const QString &dir,
                                                            const std::vector<Migration> &migrations);

} // namespace matside
