// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <string>

namespace matside {

/// A formula of the plan as it is said: the terms' own words in it, "the larger of hoop, outside + 2 × margin
/// and sent + 2 × (seam + fray)".
[[nodiscard]] QString sumInWords(const std::string &formula);

} // namespace matside
