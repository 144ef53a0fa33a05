// SPDX-License-Identifier: MIT
#pragma once

#include "bench/step.h"

namespace matside {

/// What a cloth must yield at one step of the Cut station.
struct Wanted {
    enum class From {
        Cloth, ///< a strip right across the cloth
        Band,  ///< cross-cut from a band of its own width
        Row,   ///< side by side in rows
        Whole  ///< one by one: a backing, a square for bias
    };
    std::string does; ///< progress name of the step
    From from = From::Cloth;
    Length across; ///< from selvage to selvage
    Length along;  ///< along the selvage
    std::int64_t count = 0;
    bool mayTurn = false;
    Length takes;              ///< Whole: along the selvage, panels and all
    bool ownStrip = false;     ///< a strip that holds nothing else is counted by its pieces
    bool straightGrain = true; ///< may come from a strip along the selvage; bias may not
};

/// Width between the selvages: measured, else as listed, else the strips'.
[[nodiscard]] Length usableOf(const Project &project, const Plan &plan, const std::string &cloth);

/// Strips of batting that fill a frame or wide sashings.
[[nodiscard]] bool isFiller(const Step &step);

/// Hoop strips are cut to their own length, not right across, and fillers with them: two or more lie side by
/// side on a wide roll, or they are cut from packages, whose sides have other lengths.
[[nodiscard]] bool stripsLieSideBySide(const Project &project, const Plan &plan, const std::string &cloth);

/// What is still to be cut of a cloth, in the order of the steps. The trial's bands are pieces of their own:
/// nothing else is cut out of them before the trial has told its width.
[[nodiscard]] std::vector<Wanted> wantedOf(const Project &project, const Plan &plan,
                                           const std::vector<Step> &steps, const std::string &cloth);

/// What is laid out on.
struct Ground {
    Length usable;
    Length step; ///< sold by
    System system = System::Inch;
    std::vector<Pair> owned; ///< usable length (along) and width of each owned piece; either 0: used up
    bool straighten = true;  ///< its end must be squared first
    std::int64_t effort = 16'000;
    Length reach = {}; ///< strips along the selvage may be so long; 0: none run along it
};

/// A cloth laid out.
struct ClothLay {
    std::vector<LaidStrip> strips;
    Length cut;        ///< summed heights on the bought cloth
    Length straighten; ///< trade notes, step 8
    Length bought;     ///< cut + straighten, up to how it is sold
    std::optional<Length>
        least; ///< no way of cutting buys less; absent where a piece is wider than the cloth
};

/// The progress name of a band step; bands of another height than the sashings' have it in their name.
[[nodiscard]] std::string bandName(Length height, bool ofSashings);

/// The name of a strip along the selvage, to be cross-cut.
[[nodiscard]] std::string alongName(Length width);

/// Strips along the selvage are taken only where they buy a step less than strips across, for the whole of
/// a cloth; not of a cloth with a direction, not with bias, not from owned pieces.
///
/// Every width in strips of its own as far as that buys as little as the optimiser's layout, which cuts
/// shorter pieces from higher strips; owned pieces are cut up first. Pure: the same input gives the same
/// layout on every machine.
[[nodiscard]] ClothLay layOut(const std::vector<Wanted> &wanted, const Ground &ground);

/// What strips come to on a ground: cut, straightening, bought; nothing is said of the least.
[[nodiscard]] ClothLay laidAs(std::vector<LaidStrip> strips, const Ground &ground);

/// What is still to be cut of a cloth, all kits laid out together in one job; where one kit's layout taken
/// as often as there are kits should cut less, that is taken: together is never more than one by one.
[[nodiscard]] ClothLay layKits(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                               const std::string &cloth, std::int64_t effort = 16'000);

/// The same with every width in strips of its own.
[[nodiscard]] ClothLay layApart(const std::vector<Wanted> &wanted, const Ground &ground);

/// The ground of a cloth nothing was cut of.
[[nodiscard]] Ground groundOf(const Project &project, const Plan &plan, const std::string &cloth);

/// Length the strips take of the bought cloth: summed heights of those across it, and once the length of
/// those side by side along it.
[[nodiscard]] Length cutOf(const std::vector<LaidStrip> &strips);
/// The length strips along the selvage share, and how wide they are together; 0 without any.
[[nodiscard]] Length runOf(const std::vector<LaidStrip> &strips);
[[nodiscard]] Length besideOf(const std::vector<LaidStrip> &strips);

/// The longest strips she can cut along the selvage; 0: the cloth has a direction and runs one way.
[[nodiscard]] Length reachAlong(const Project &project, const std::string &cloth);

/// Lays what is wanted into strips along the selvage on a stretch so long and so wide, as much of it as goes,
/// and takes it off what is wanted.
[[nodiscard]] std::vector<LaidStrip> fillStretch(std::vector<Wanted> &wanted, Length run, Length width);

} // namespace matside
