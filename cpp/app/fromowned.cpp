// SPDX-License-Identifier: MIT
#include "app/fromowned.h"

#include "bench/shopping.h"

#include <algorithm>

namespace matside {

namespace {

/// The cloth that lies there in pieces of its own, or nothing.
const Cloth *inPieces(const Project &project, const std::string &id)
{
    const auto found = std::find_if(project.cloths.begin(), project.cloths.end(),
                                    [&](const Cloth &cloth) { return cloth.id == id; });
    const bool any =
        found != project.cloths.end() && std::any_of(found->owned.begin(), found->owned.end(),
                                                     [](const OwnedPiece &piece) { return !piece.package; });
    return any ? &*found : nullptr;
}

/// That strip lies in a piece that is there, right across it.
bool liesThere(const ShopStrip &strip, const Cloth &cloth)
{
    const auto piece = static_cast<std::size_t>(strip.owned);
    return strip.run == Length() && piece > 0 && piece <= cloth.owned.size() &&
           !cloth.owned[piece - 1].package;
}

} // namespace

bool comesFromOwned(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                    const Step &step)
{
    const Cloth *cloth = step.station == Station::Cut && step.size ? inPieces(project, step.cloth) : nullptr;
    if (!cloth)
        return false;
    std::int64_t there = 0;
    for (const Buy &buy : shoppingList(project, plan, steps))
        for (const ShopStrip &strip : buy.strips)
            if (buy.cloth == step.cloth && strip.height == step.size->across && liesThere(strip, *cloth))
                there += strip.repeats;
    return step.done < there;
}

} // namespace matside
