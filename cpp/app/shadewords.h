// SPDX-License-Identifier: MIT
#pragma once

#include "shade/laying.h"
#include "shade/value.h"

#include <QString>
#include <QVariantList>

namespace matside {

/// A colour in words: what it is called in the palette, else its hue and its step, "blue, step 4 of 10".
[[nodiscard]] QString colourSays(Colour colour);
/// Six hues and grey in five lightnesses: {value "#rrggbb", says}; a lightness after the other, or a hue.
[[nodiscard]] QVariantList paletteOf(bool byHue);
/// Steps with one place after the point, never rounded up: what is told as two steps is two.
[[nodiscard]] QString stepsText(double steps);
/// What the pair least apart means for the eye, and what can be done.
[[nodiscard]] QString leastSays(const QString &over, const QString &under, double apart);

} // namespace matside
