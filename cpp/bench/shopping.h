// SPDX-License-Identifier: MIT
#pragma once

#include "bench/step.h"

namespace matside {

/// Pieces of one size side by side in a strip.
struct ShopPiece {
    Length across;          ///< along the strip: from selvage to selvage, unless it runs along them
    Length along;           ///< less than the strip's height where it is trimmed
    std::int64_t count = 0; ///< in each strip
    bool gap = false;       ///< room left over, not a piece
};

/// Strips of one width as they are cut across or along a cloth, and what is cut out of each.
struct ShopStrip {
    Length height; ///< along the selvage; of a strip that runs along it, across the cloth
    std::int64_t repeats = 0;
    std::int64_t owned = 0; ///< from the n-th owned piece; 0 = from what is bought
    std::vector<ShopPiece> pieces;
    Length run = {}; ///< it runs along the selvage, so long; 0: across the cloth
};

/// Packages of one size on the list (F17).
struct BuyPackages {
    Length length;
    Length width;
    std::int64_t count = 0;
    std::optional<std::int64_t> cents; ///< of them all
};

/// What to buy of one cloth, with how good it is. used = what the Cut station cuts, so what is bought is what
/// is cut.
struct Buy {
    std::string cloth;
    Length usable;      ///< width between the selvages
    Length cut;         ///< summed strip widths
    Length straighten;  ///< trade notes, step 8
    Length bought;      ///< cut + straighten, up to how it is sold
    Length more;        ///< on top of what was bought: the layout is fixed, and no longer yields all
    bool fixed = false; ///< bought or begun: the layout stays, and says nothing of the least
    Length step;        ///< sold by
    std::optional<Length>
        least; ///< no way of cutting buys less; absent where a piece is wider than the cloth
    std::vector<ShopStrip> strips;
    std::int64_t waste = 0;            ///< share of the bought cloth that is in no piece, per mille
    std::vector<BuyPackages> packages; ///< ready cut, beside what comes from the roll
    std::optional<std::int64_t>
        cents; ///< with the packages; price × length in hundredths of her currency, half up

    [[nodiscard]] bool proved() const { return least && *least >= bought; }
    /// How far the bought length may lie above the least possible, per mille rounded up.
    [[nodiscard]] std::int64_t overPerMille() const;
};

/// A layout told strip by strip, without the steps its pieces belong to.
[[nodiscard]] std::vector<ShopStrip> shopStrips(const std::vector<LaidStrip> &laid);

/// The shopping list cloth by cloth, in the order the cloths are first cut. `effort` bounds the search for
/// the proof in the optimiser's work units: the same input gives the same list on every machine.
[[nodiscard]] std::vector<Buy> shoppingList(const Project &project, const Plan &plan,
                                            const std::vector<Step> &steps, std::int64_t effort = 16'000);

/// Price of a length of cloth: `price` a yard | metre as written, in hundredths, half up; nothing when it is
/// no decimal.
[[nodiscard]] std::optional<std::int64_t> costOf(const std::string &price, Length length, System system);

} // namespace matside
