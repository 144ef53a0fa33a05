// SPDX-License-Identifier: MIT
#pragma once

#include "project/project.h"

#include <utility>
#include <vector>

namespace matside {

/// The project file the contracts are written by.
[[nodiscard]] Project example();
/// The same without a table, of 24 by 17 blocks: lists over many pages.
[[nodiscard]] Project longOne();
/// Every piece the sheet is tried with, by name; all of them can be made.
[[nodiscard]] std::vector<std::pair<const char *, Project>> sheetPieces();

} // namespace matside
