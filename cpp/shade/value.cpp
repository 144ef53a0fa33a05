// SPDX-License-Identifier: MIT
#include "shade/value.h"

#include <algorithm>
#include <cmath>

namespace matside {

namespace {

constexpr double halfStep = 0.5;

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

/// The strongest colour of a hue with this luminance: the pure hue with less light where that is dark enough,
/// else paled towards white.
Light strongest(double hue, double y)
{
    const Light full{pure(hue, 0), pure(hue, 120), pure(hue, 240)};
    const double most = luminance(full);
    if (y <= most)
        return {full.red * y / most, full.green * y / most, full.blue * y / most};
    return mixed(full, 1.0, (1.0 - y) / (1.0 - most)); // a pure hue lacks one primary: its light is under 1
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

double placeAmongSteps(double value)
{
    return value + halfStep;
}

Colour greyOfStep(int step)
{
    const double y = luminanceOfValue(std::clamp(step, 1, 10) - halfStep);
    return colourOf(Light{y, y, y});
}

Shade shadeOf(Colour colour)
{
    const Light light = lightOf(colour);
    const double y = luminance(light);
    const double most = std::max({light.red, light.green, light.blue});
    const double span = most - std::min({light.red, light.green, light.blue});
    if (span < 1e-9)
        return {0, matside::lightness(y), 0};
    double hue = 240 + 60 * (light.red - light.green) / span;
    if (most == light.red)
        hue = 60 * (light.green - light.blue) / span;
    else if (most == light.green)
        hue = 120 + 60 * (light.blue - light.red) / span;
    if (hue < 0)
        hue += 360;
    const Light full = strongest(hue, y);
    const double reach = std::max({full.red, full.green, full.blue}) - y;
    return {hue, matside::lightness(y), reach > 0 ? std::clamp((most - y) / reach, 0.0, 1.0) : 0.0};
}

Colour colourOf(const Shade &shade)
{
    const double y = luminanceOfLightness(shade.lightness);
    return colourOf(mixed(strongest(shade.hue, y), y, std::clamp(shade.strength, 0.0, 1.0)));
}

double stepsApart(Colour a, Colour b)
{
    return std::fabs(valueOf(a) - valueOf(b));
}

} // namespace matside
