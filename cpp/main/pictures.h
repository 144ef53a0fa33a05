// SPDX-License-Identifier: MIT
#pragma once

#include "main/room.h"

namespace matside {

/// Draws every page, and what can lie over it, in each size and colour set into a folder; `only` names the
/// pages wanted and `at` the sizes of screen ("1280x800,800x1280"), with commas between them, empty for all.
/// Exit status: 0 when all were written.
[[nodiscard]] int takePictures(Room &room, const QString &dir, const QString &only = {},
                               const QString &at = {});

/// Opens every page, and what can lie over it, in each size. Exit status: 0 when no warning was heard.
[[nodiscard]] int selfTest(Room &room);

/// Looks, in each size and on every page, for words that cannot be read whole and names them on the standard
/// error; `only` and `at` as above, `whole` when words broken in two count as well, as they do in a real
/// language. Exit status: 0 when there are none.
[[nodiscard]] int checkWords(Room &room, const QString &only, const QString &at, bool whole);

} // namespace matside
