// SPDX-License-Identifier: MIT
#pragma once

#include "length/show.h"
#include "made/quadrilateral.h"
#include "project/project.h"

#include <QVariantMap>

namespace matside {

/// The six readings of a block or of the whole piece, counted as they are asked for: sides top, right,
/// bottom, left (0…3), diagonals from top left and from top right (4, 5).
inline constexpr int readingCount = 6;
[[nodiscard]] Length &readingAt(Readings &readings, int at);

/// What a true rectangle of this size reads.
[[nodiscard]] Readings readingsOfRectangle(const Pair &size);
/// Each brought to the nearest mark of the ruler it is read with.
[[nodiscard]] Readings onMarks(Readings readings, Length mark);

/// {says, figure, mm, told: a diagonal that is as the sides say} for the screen.
[[nodiscard]] QVariantMap readingView(Readings readings, int at, Marks marks);
/// One reading so many marks further; false, and nothing changed, when there is no such reading or nothing
/// would be left of it.
bool nudgeReading(Readings &readings, int at, int marks, Length mark);
/// One reading as typed: what is wrong with it, or nothing.
[[nodiscard]] QString typeReading(Readings &readings, int at, const QString &text, System system);

} // namespace matside
