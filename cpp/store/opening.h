// SPDX-License-Identifier: MIT
#pragma once

#include "store/migrations.h"
#include "store/store.h"

namespace matside {

/// openStore() with other migrations, for trying those.
[[nodiscard]] StoreResult<std::unique_ptr<Store>> openStore(const QString &dir,
                                                            const std::vector<Migration> &migrations);

} // namespace matside
