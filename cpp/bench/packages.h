// SPDX-License-Identifier: MIT
#pragma once

#include "bench/shopping.h"

namespace matside {

/// Batting bought ready cut (F17), in packages of one size.
struct PackageBuy {
    Package package;
    bool turned = false;               ///< strips lie along its length, else along its width
    std::int64_t each = 0;             ///< hoop strips one package yields; 0: too small for any
    std::int64_t count = 0;            ///< packages; for hoop strips alone no way of cutting needs fewer
    std::int64_t waste = 0;            ///< share that is in no strip, per mille
    std::optional<std::int64_t> cents; ///< of them all, in hundredths of her currency
};

/// Narrow strips that fill a frame or wide sashings.
struct FillerStrips {
    std::int64_t count = 0;
    Pair strip; ///< each: length, width
};

/// The batting by the package and from the roll, for the strips still to be cut.
struct BattingChoice {
    std::string cloth;
    std::int64_t strips = 0;           ///< hoop strips, with the trial's
    Pair strip;                        ///< each: length, width
    std::vector<FillerStrips> fillers; ///< cut from what the hoop strips leave, then from more
    Length roll;                       ///< from the roll, up to how it is sold
    Length rollUsable;
    bool rollProved = false;
    std::int64_t rollWaste = 0; ///< per mille, counted as for the packages
    std::optional<std::int64_t> rollCents;
    std::vector<ShopStrip> rollStrips; ///< how they lie on the roll
    std::vector<PackageBuy> packages;  ///< in the order of the cloth's
    std::optional<std::size_t> least;  ///< the package that wastes less than the roll, and least of all
};

/// Nothing where no batting is cut into hoop strips, or its layout is fixed. Owned pieces are left out: the
/// two ways are held against each other for all of it.
[[nodiscard]] std::optional<BattingChoice> battingChoice(const Project &project, const Plan &plan,
                                                         const std::vector<Step> &steps);

/// This size of package for the choice's strips, on the list or not.
[[nodiscard]] PackageBuy boughtAs(const BattingChoice &choice, const Package &package, System system);

/// Strips of one size that one package yields, all lying one way: so many side by side, so many rows (F17).
/// No other placing without turning yields more: the rectangle holds only that many points that lie a strip
/// apart both ways, and every strip covers one of them.
[[nodiscard]] std::int64_t stripsIn(Length along, Length across, Pair strip);

/// How the hoop strips lie in one package, along its `turned` way, and how it lies for that: length, width.
[[nodiscard]] ShopStrip stripsOf(const PackageBuy &buy, Pair strip);
[[nodiscard]] Pair layOf(const PackageBuy &buy);

/// The project with so many packages among the pieces of its batting, to be bought; those of before go.
/// Nothing where they are more than can be laid out together (`mostOwned`), or the layout is fixed.
[[nodiscard]] std::optional<Project> withPackages(const Project &project, const BattingChoice &choice,
                                                  std::size_t package);
/// The same without any.
[[nodiscard]] Project withoutPackages(const Project &project, const std::string &cloth);

} // namespace matside
