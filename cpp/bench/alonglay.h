// SPDX-License-Identifier: MIT
#pragma once

#include "bench/clothlay.h"
#include "cutting/answer.h"

namespace matside {

/// The strips of a plan as the bench cuts them; `run` is their length where they run along the selvage.
[[nodiscard]] std::vector<LaidStrip> stripsOf(const cutting::Plan &plan, const std::vector<Wanted> &wanted,
                                              Length run = {});

/// What is wanted of a strip's cloth: `across` along the strip, `along` the other way.
[[nodiscard]] cutting::Size sizeOf(const Wanted &want);

/// Takes strips along the selvage for the whole cloth where they buy less than `lay`; `least` follows.
void offerAlong(ClothLay &lay, const std::vector<Wanted> &wanted, const Ground &ground);

} // namespace matside
