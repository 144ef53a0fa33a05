// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

namespace matside {

/// The demo's project file, what it names in the reader's language; empty when it cannot be read.
[[nodiscard]] QString demoProject();

} // namespace matside
