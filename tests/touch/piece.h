// SPDX-License-Identifier: MIT
#pragma once

#include "maker.h"

namespace touching {

/// Begins, from the shelf, a small piece for a small hoop: two columns of blocks of 7 in, a hoop of 9 3/4 in
/// with a field of 7 7/8 in. The keypad gives the hoop, a stepper the columns.
[[nodiscard]] bool beginSmallPiece(Maker &maker);

} // namespace touching
