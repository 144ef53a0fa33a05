// SPDX-License-Identifier: MIT
#pragma once

#include "main/scenes.h"

namespace matside {

/// The states a piece goes through at Hoop, Trim, Join and Edge, and every finding: each on the open project
/// as it would be made so far, which is taken back on leaving.
[[nodiscard]] std::vector<Scene> statesOf(Room &room, QQuickWindow &window);

} // namespace matside
