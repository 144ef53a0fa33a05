// SPDX-License-Identifier: MIT
#pragma once

#include "bench/step.h"

#include <map>

namespace matside {

/// Pieces and strips cut of a cloth by the progress name of their step: the spoiled ones with them, and those
/// alone.
struct CutCounts {
    std::map<std::string, std::int64_t> all;
    std::map<std::string, std::int64_t> spoiled;
};
[[nodiscard]] CutCounts cutsOf(const Project &project, const std::vector<Step> &steps,
                               const std::string &cloth);

/// How far a fixed layout has come. `cut` are the strips begun, in the order they were cut, `open` the
/// others; `unfilled` are the places for pieces of a step still empty in strips begun.
struct LayoutState {
    std::vector<LaidStrip> cut;
    std::vector<LaidStrip> open;
    std::map<std::string, std::int64_t> unfilled;
    bool newlySpoiled = false; ///< a band was spoiled since the layout was made
};
[[nodiscard]] LayoutState stateOf(const Project &project, const std::vector<Step> &steps,
                                  const MadeLayout &layout);

/// Fixes the layout of a cloth where none is fixed yet: what Shop shows while nothing was cut of it, else (or
/// with `apart`) every width in strips of its own, which is what the steps have been.
[[nodiscard]] Project withLayout(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                                 const std::string &cloth, bool apart = false);

/// A fixed layout gives way only where it no longer yields what is needed, or yields too much: a piece was
/// spoiled, the cloth is narrower, a measure has changed. What is cut stays; only what is not yet cut is laid
/// out again, first in the room left on strips begun, then on owned pieces, then on the cloth.
[[nodiscard]] Project withLayoutsSettled(const Project &project);

/// Ticked as bought at Shop, and the tick not taken away again.
[[nodiscard]] bool tickedAsBought(const Project &project, const std::string &cloth);

/// Of a cloth with a fixed layout, the shortest length to buy on top of what there is; zero when it yields
/// all. A strip comes out of one length: what is left of the old one counts as far as whole strips fit it.
[[nodiscard]] Length stillToBuy(const Project &project, const std::vector<Step> &steps,
                                const MadeLayout &layout);

/// Ticks a cloth as bought: its layout is fixed, or what was short is there now.
[[nodiscard]] Project withBought(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                                 const std::string &cloth);
/// Takes the tick away; a layout nothing was cut of is free again.
[[nodiscard]] Project withoutBought(const Project &project, const std::vector<Step> &steps,
                                    const std::string &cloth);

/// After a change of the project: the first cut of a cloth fixes its layout, and layouts are settled.
[[nodiscard]] Project afterChange(const Project &before, const Project &next);

} // namespace matside
