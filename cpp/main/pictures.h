// SPDX-License-Identifier: MIT
#pragma once

#include "main/room.h"

namespace matside {

/// Draws every station in each size and colour set into a folder. Exit status: 0 when all were written.
[[nodiscard]] int takePictures(Room &room, const QString &dir);

/// Opens every page and station once. Exit status: 0 when no warning was heard.
[[nodiscard]] int selfTest(Room &room);

} // namespace matside
