// SPDX-License-Identifier: MIT
#pragma once

#include "app/workspace.h"

#include <QString>

namespace matside {

/// What was noted of a block since it was stitched, flags first, on one line: "Pleat on the back; loose
/// thread at the top". Empty where nothing was.
[[nodiscard]] QString notedOf(Workspace &workspace, const std::string &block);

/// The same with the block's name before it, to be told at a step that has it in hand.
[[nodiscard]] QString rememberedOf(Workspace &workspace, const std::string &block);

} // namespace matside
