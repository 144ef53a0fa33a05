// SPDX-License-Identifier: MIT
#pragma once

#include "bench/step.h"

#include <QString>
#include <QStringList>

#include <string_view>

namespace matside {

/// A ruler's name for the reader: her own as she gave it; those every new project has, in her language;
/// "ruler" for one without a name.
[[nodiscard]] QString rulerText(std::string_view name);

/// rulerLines() with the measures in braces, to be set as figures.
[[nodiscard]] QStringList bracedRulerLines(const RulerPlace &ruler, Marks marks);

} // namespace matside
