// SPDX-License-Identifier: MIT
#include "shade/sample.h"

#include "shade/value.h"

#include <algorithm>
#include <cmath>

namespace matside {

namespace {

/// What was seen so far.
struct Sum {
    Light light;
    double lightness = 0;
    double squares = 0;
    int pixels = 0;

    void add(std::uint32_t pixel)
    {
        if (pixel >> 24U < 128)
            return;
        const Light seen = lightOf(Colour{static_cast<std::uint8_t>(pixel >> 16U & 255U),
                                          static_cast<std::uint8_t>(pixel >> 8U & 255U),
                                          static_cast<std::uint8_t>(pixel & 255U)});
        light.red += seen.red;
        light.green += seen.green;
        light.blue += seen.blue;
        const double l = matside::lightness(luminance(seen));
        lightness += l;
        squares += l * l;
        ++pixels;
    }
};

} // namespace

std::optional<Sample> sampleAt(const Picture &picture, int x, int y, int radius)
{
    const auto width = static_cast<std::int64_t>(picture.width);
    const auto height = static_cast<std::int64_t>(picture.height);
    if (x < 0 || y < 0 || x >= width || y >= height ||
        picture.pixels.size() != static_cast<std::size_t>(width * height))
        return std::nullopt;
    const std::int64_t reach = std::max(radius, 0);
    Sum sum;
    for (std::int64_t row = std::max<std::int64_t>(y - reach, 0); row <= std::min(y + reach, height - 1);
         ++row)
        for (std::int64_t column = std::max<std::int64_t>(x - reach, 0);
             column <= std::min(x + reach, width - 1); ++column)
            if ((column - x) * (column - x) + (row - y) * (row - y) <= reach * reach)
                sum.add(picture.pixels[static_cast<std::size_t>(row * width + column)]);
    if (sum.pixels == 0)
        return std::nullopt;
    const double n = sum.pixels, mean = sum.lightness / n;
    return Sample{colourOf(Light{sum.light.red / n, sum.light.green / n, sum.light.blue / n}),
                  std::sqrt(std::max(sum.squares / n - mean * mean, 0.0)), sum.pixels};
}

} // namespace matside
