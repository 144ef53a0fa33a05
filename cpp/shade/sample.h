// SPDX-License-Identifier: MIT
#pragma once

#include "shade/colour.h"

#include <cstdint>
#include <optional>
#include <span>

namespace matside {

/// A picture's pixels row by row from the top left, each 0xAARRGGBB with A not yet multiplied in, in sRGB.
struct Picture {
    std::span<const std::uint32_t> pixels;
    int width = 0;
    int height = 0;
};

/// The cloth about one place of a photograph.
struct Sample {
    Colour mean;
    double unevenness = 0; ///< standard deviation of L* over the place, 0…50: a print, a fold, an edge
    int pixels = 0;        ///< how many were seen
};

/// The mean over all pixels whose centre lies within `radius` pixels of a pixel's centre. Light is added up,
/// not written values: half black and half white is the grey that gives half the light, #bcbcbc. Pixels more
/// than half see-through count for nothing. Nothing when the place lies off the picture, when no pixel
/// counts, or when `pixels` does not hold width times height of them.
[[nodiscard]] std::optional<Sample> sampleAt(const Picture &picture, int x, int y, int radius);

} // namespace matside
