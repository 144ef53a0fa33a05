// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <string_view>

namespace matside {

/// A ruler's name for the reader: her own as she gave it; those every new project has, in her language;
/// "ruler" for one without a name.
[[nodiscard]] QString rulerText(std::string_view name);

} // namespace matside
