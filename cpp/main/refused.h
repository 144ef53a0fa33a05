// SPDX-License-Identifier: MIT
#pragma once

#include "store/store.h"

namespace matside {

/// Puts a waiting backup in place and opens the store of a folder. What stands in the way is said, on the
/// terminal and in a window where it can be tried again as often as she likes; without a window it is said
/// once. Gives no store when she closed the window.
[[nodiscard]] std::unique_ptr<Store> openedOrSaid(const QString &dir, bool inWindow, double pxPerMm);

} // namespace matside
