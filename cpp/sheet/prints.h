// SPDX-License-Identifier: MIT
#pragma once

#include "project/project.h"

#include <QPainter>
#include <QRectF>

namespace matside {

/// A rectangle of cloth as it is drawn on paper: a grey tone of its role and the role's own mark, as on the
/// screen, outlined in black. Millimetres.
void printCloth(QPainter &painter, ClothRole role, const QRectF &place, bool outlined = true);

/// What a cloth of the plan is drawn as: its own role, or the one its stand-in id names.
[[nodiscard]] ClothRole roleOf(const Project &project, const std::string &cloth);

} // namespace matside
