// SPDX-License-Identifier: MIT
#pragma once

#include "shade/colour.h"

namespace matside {

/// CIE 1976 lightness L*, 0 (black) … 100 (white), of a luminance 0…1 of white: 116 · Y^(1/3) − 16 above
/// (6/29)³, below it (29/3)³ · Y.
[[nodiscard]] double lightness(double luminance);
/// The way back: the luminance 0…1 of a lightness 0…100.
[[nodiscard]] double luminanceOfLightness(double lightness);

/// Luminance 0…1 of a Munsell value 0…10, white being value 10: the polynomial of ASTM D1535-08, eq. 2,
/// Y % = 1.1914 V − 0.22533 V² + 0.23352 V³ − 0.020484 V⁴ + 0.00081939 V⁵.
[[nodiscard]] double luminanceOfValue(double value);
/// The Munsell value 0…10 of a luminance 0…1: that polynomial solved to within 1e-9.
[[nodiscard]] double valueOf(double luminance);
/// The same of a colour.
[[nodiscard]] double valueOf(Colour colour);

/// The step of the ten-step scale a value lies in: 1 (darkest) … 10 (lightest), each one value wide.
[[nodiscard]] int stepOf(double value);
/// Where a value stands among the steps' numbers, each in the middle of its step: value 7.5 is 8.0.
[[nodiscard]] double placeAmongSteps(double value);
/// The grey in the middle of a step 1…10, to draw the scale with.
[[nodiscard]] Colour greyOfStep(int step);

/// A colour as it is stepped: its hue on the hexagon of red, green and blue light (0…360°, 0 red, 120 green,
/// 240 blue; 0 for a grey), its lightness L* (0…100), and how strong it is (0 grey … 1 the strongest colour
/// of that hue and lightness the screen can show).
struct Shade {
    double hue = 0;
    double lightness = 0;
    double strength = 0;
};
[[nodiscard]] Shade shadeOf(Colour colour);
/// The way back, to within one of the 256 levels. Any hue is taken round the circle; lightness and strength
/// beyond their ends are taken as the nearer end.
[[nodiscard]] Colour colourOf(const Shade &shade);

/// How much the value of two cloths differs, in steps of the scale.
[[nodiscard]] double stepsApart(Colour a, Colour b);

} // namespace matside
