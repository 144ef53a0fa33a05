// SPDX-License-Identifier: MIT
#include "shade/colour.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace matside {

namespace {

constexpr std::string_view digits = "0123456789abcdef";

/// The value of one hexadecimal digit, or −1.
int digitOf(char c)
{
    if (c >= 'A' && c <= 'F')
        c = static_cast<char>(c - 'A' + 'a');
    const std::size_t at = digits.find(c);
    return at == std::string_view::npos ? -1 : static_cast<int>(at);
}

std::uint8_t byteOf(double light)
{
    return static_cast<std::uint8_t>(std::lround(255.0 * encodedOf(light)));
}

} // namespace

std::optional<Colour> readColour(std::string_view text)
{
    if (text.size() != 7 || text[0] != '#')
        return std::nullopt;
    std::array<std::uint8_t, 3> channels{};
    for (std::size_t i = 0; i < channels.size(); ++i) {
        const int high = digitOf(text[1 + 2 * i]), low = digitOf(text[2 + 2 * i]);
        if (high < 0 || low < 0)
            return std::nullopt;
        channels.at(i) = static_cast<std::uint8_t>(16 * high + low);
    }
    return Colour{channels[0], channels[1], channels[2]};
}

std::string writeColour(Colour colour)
{
    std::string text = "#";
    for (const std::uint8_t channel : {colour.red, colour.green, colour.blue}) {
        text += digits[channel / 16U];
        text += digits[channel % 16U];
    }
    return text;
}

double lightOf(double encoded)
{
    const double c = std::clamp(encoded, 0.0, 1.0);
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

double encodedOf(double light)
{
    const double l = std::clamp(light, 0.0, 1.0);
    return l <= 0.0031308 ? 12.92 * l : 1.055 * std::pow(l, 1 / 2.4) - 0.055;
}

Light lightOf(Colour colour)
{
    return {lightOf(colour.red / 255.0), lightOf(colour.green / 255.0), lightOf(colour.blue / 255.0)};
}

Colour colourOf(Light light)
{
    return {byteOf(light.red), byteOf(light.green), byteOf(light.blue)};
}

double luminance(Light light)
{
    return 0.2126 * light.red + 0.7152 * light.green + 0.0722 * light.blue;
}

Colour greyOf(Colour colour)
{
    const double y = luminance(lightOf(colour));
    return colourOf(Light{y, y, y});
}

} // namespace matside
