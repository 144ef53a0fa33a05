// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace matside {

/// A colour as screens and photographs write it: sRGB (IEC 61966-2-1), eight bits a channel.
struct Colour {
    std::uint8_t red = 0;
    std::uint8_t green = 0;
    std::uint8_t blue = 0;
    friend bool operator==(const Colour &, const Colour &) = default;
};

/// A colour as light: each channel in proportion to the light it gives, 0…1 of the screen's white.
struct Light {
    double red = 0;
    double green = 0;
    double blue = 0;
};

/// The colour in "#rrggbb", in small letters or capitals; nothing for any other text.
[[nodiscard]] std::optional<Colour> readColour(std::string_view text);
/// "#rrggbb" in small letters.
[[nodiscard]] std::string writeColour(Colour colour);

/// One channel from the written value, 0…1, to light, 0…1: encoded / 12.92 up to 0.04045, above it
/// ((encoded + 0.055) / 1.055)^2.4 (IEC 61966-2-1). What lies outside 0…1 is taken as its nearer end.
[[nodiscard]] double lightOf(double encoded);
/// The way back: 12.92 · light up to 0.0031308, above it 1.055 · light^(1/2.4) − 0.055.
[[nodiscard]] double encodedOf(double light);

[[nodiscard]] Light lightOf(Colour colour);
/// Rounded to the nearest of 256 values in each channel; light outside 0…1 is taken as the nearer end.
[[nodiscard]] Colour colourOf(Light light);

/// How much light for the eye, 0…1 of white: 0.2126 red + 0.7152 green + 0.0722 blue (IEC 61966-2-1).
[[nodiscard]] double luminance(Light light);
/// The grey of the same luminance.
[[nodiscard]] Colour greyOf(Colour colour);

} // namespace matside
