// SPDX-License-Identifier: MIT
#pragma once

#include "project/project.h"

#include <QString>

namespace matside {

/// As which cloth's print a cloth is drawn, by what it is for: "front", "back", "batting", "patch",
/// "sashing", "binding". `cloth` is an id, or "back" or "batting" where the project names none.
[[nodiscard]] QString printOf(const Project &project, std::string_view cloth);

/// The cloth's colour, "#rrggbb"; where none is named, the one its print is drawn in by day.
[[nodiscard]] QString colourDrawn(const Project &project, std::string_view cloth);

} // namespace matside
