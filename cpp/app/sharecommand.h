// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>

namespace matside {

/// The commands that share and back up without a window:
///   --share OUT.matside [--as-they-came] [--data DIR] PROJECT   PROJECT is a name on the shelf, or an id
///   --look-inside FILE                                          says what is inside
///   --open-shared FILE [--data DIR]                             says so, and adds it to the shelf
///   --back-up OUT.matside-backup [--data DIR]                   everything, in one file
///   --restore FILE [--data DIR]                                 into a folder without a project
/// What was done goes to standard output, a refusal with its stable name to standard error. Gives 0: done;
/// 1: not asked rightly, or the store refuses; 2: the file was refused; 3: what is inside has to be mended on
/// the screen first.
[[nodiscard]] int runShareCommand(const QStringList &arguments);

} // namespace matside
