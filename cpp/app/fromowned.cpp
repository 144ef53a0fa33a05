// SPDX-License-Identifier: MIT
#include "app/fromowned.h"

#include "bench/shopping.h"

#include <algorithm>

namespace matside {

namespace {

bool isThere(const OwnedPiece &piece)
{
    return !piece.package;
}

/// That strip lies in a piece that is there, right across it.
bool liesThere(const ShopStrip &strip, const Cloth &cloth)
{
    const auto piece = static_cast<std::size_t>(strip.owned);
    return strip.run == Length() && piece > 0 && piece <= cloth.owned.size() &&
           isThere(cloth.owned[piece - 1]);
}

} // namespace

bool comesFromOwned(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                    const Step &step)
{
    const Cloth *cloth = clothNamed(project, step.cloth);
    if (step.station != Station::Cut || !step.size || !cloth ||
        std::none_of(cloth->owned.begin(), cloth->owned.end(), isThere))
        return false;
    std::int64_t there = 0;
    for (const Buy &buy : shoppingList(project, plan, steps))
        for (const ShopStrip &strip : buy.strips)
            if (buy.cloth == step.cloth && strip.height == step.size->across && liesThere(strip, *cloth))
                there += strip.repeats;
    return step.done < there;
}

} // namespace matside
