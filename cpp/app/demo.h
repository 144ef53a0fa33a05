// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

namespace matside {

/// The demo's project file, what it names in the reader's language; empty when it cannot be read.
[[nodiscard]] QString demoProject();

/// The same in the units that are the custom where it is read: whole millimetres but in English, with rulers
/// of whole centimetres.
[[nodiscard]] QString demoByCustom();

} // namespace matside
