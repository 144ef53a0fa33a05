// SPDX-License-Identifier: MIT
#include "shade/value.h"

#include <algorithm>
#include <cmath>

namespace matside {

namespace {

constexpr double knee = 6.0 * 6.0 * 6.0 / (29.0 * 29.0 * 29.0);
constexpr double slope = 29.0 * 29.0 * 29.0 / (3.0 * 3.0 * 3.0);

/// One channel of a pure hue: 1 within 60° of its own, 0 beyond 120°, straight between.
double pure(double hue, double own)
{
    const double away = std::fabs(std::remainder(hue - own, 360.0));
    return std::clamp(2.0 - away / 60.0, 0.0, 1.0);
}

Light mixed(Light light, double grey, double part)
{
    const auto channel = [&](double own) { return grey + part * (own - grey); };
    return {channel(light.red), channel(light.green), channel(light.blue)};
}

} // namespace

double lightness(double luminance)
{
    const double y = std::clamp(luminance, 0.0, 1.0);
    return y > knee ? 116.0 * std::cbrt(y) - 16.0 : slope * y;
}

double luminanceOfLightness(double lightness)
{
    const double l = std::clamp(lightness, 0.0, 100.0);
    const double root = (l + 16.0) / 116.0;
    return l > 8.0 ? root * root * root : l / slope;
}

double luminanceOfValue(double value)
{
    const double v = std::clamp(value, 0.0, 10.0);
    return v * (1.1914 + v * (-0.22533 + v * (0.23352 + v * (-0.020484 + v * 0.00081939)))) / 100.0;
}

double valueOf(double luminance)
{
    const double y = std::clamp(luminance, 0.0, 1.0);
    double low = 0, high = 10; // it rises all the way, so halving finds it
    while (high - low > 1e-9) {
        const double middle = (low + high) / 2;
        (luminanceOfValue(middle) < y ? low : high) = middle;
    }
    return (low + high) / 2;
}

double valueOf(Colour colour)
{
    return valueOf(luminance(lightOf(colour)));
}

int stepOf(double value)
{
    return std::clamp(static_cast<int>(std::floor(value)) + 1, 1, 10);
}

Colour greyOfStep(int step)
{
    const double y = luminanceOfValue(std::clamp(step, 1, 10) - 0.5);
    return colourOf(Light{y, y, y});
}

Colour colourOf(double hue, double lightness, double strength)
{
    const double y = luminanceOfLightness(lightness);
    const Light full{lightOf(pure(hue, 0)), lightOf(pure(hue, 120)), lightOf(pure(hue, 240))};
    // Dark enough: the pure hue with less light. Lighter than it can be: paled towards white.
    const double most = luminance(full);
    Light met{full.red * y / most, full.green * y / most, full.blue * y / most};
    if (y > most)
        met = mixed(full, 1.0, (1.0 - y) / (1.0 - most));
    return colourOf(mixed(met, y, std::clamp(strength, 0.0, 1.0)));
}

double stepsApart(Colour a, Colour b)
{
    return std::fabs(valueOf(a) - valueOf(b));
}

} // namespace matside
