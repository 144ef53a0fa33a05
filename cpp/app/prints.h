// SPDX-License-Identifier: MIT
#pragma once

#include "project/project.h"

#include <QString>
#include <QVariantMap>

namespace matside {

/// As which cloth's print a cloth is drawn, by what it is for: "front", "back", "batting", "patch",
/// "sashing", "binding". `cloth` is an id, or "back" or "batting" where the project names none.
[[nodiscard]] QString printOf(const Project &project, std::string_view cloth);

/// The cloth's colour, "#rrggbb"; where none is named, the one its print is drawn in by day.
[[nodiscard]] QString colourDrawn(const Project &project, std::string_view cloth);

/// The cloth a part is cut of: its own, or for sashing and binding that of the face it is sewn on. Null where
/// the project names neither.
[[nodiscard]] const Cloth *clothServing(const Project &project, ClothRole role);

/// The cloths of the piece as its drawings show them: of "front", "back", "batting", "sashing", "binding"
/// and, where it is reversible, "sashingBack" each {print, colour}: the print of the cloth it is cut of, and
/// that cloth's colour, "#rrggbb", or "". What no cloth serves is missing. Of a framed piece the frame stands
/// for the binding.
[[nodiscard]] QVariantMap clothsDrawn(const Project &project);

} // namespace matside
