// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"

#include <cstdint>
#include <vector>

namespace matside {

enum class EdgeSide { Top, Right, Bottom, Left };

/// A place on the raw edge: which side, and how far from its left end, or its top.
struct EdgePlace {
    EdgeSide side = EdgeSide::Bottom;
    Length from;
    friend bool operator==(const EdgePlace &, const EdgePlace &) = default;
};

/// The raw edge the binding is laid round, walked clockwise from the end of the top left corner.
struct EdgeWalk {
    Pair size;     ///< finished, along and across
    Length radius; ///< of its corners
    /// Sashing ends that meet the top and bottom, from the left; and the left and right, from the top.
    struct Span {
        Length from;
        Length to;
    };
    std::vector<Span> along;
    std::vector<Span> across;

    [[nodiscard]] Length around() const; ///< the whole perimeter, arcs and all
    /// `at` taken round the perimeter. On an arc: the nearer end of a side.
    [[nodiscard]] EdgePlace placeAt(Length at) const;
    [[nodiscard]] Length walkedTo(const EdgePlace &place) const;
};
[[nodiscard]] EdgeWalk edgeWalkOf(const Project &project, const Plan &plan);

/// What the diagonal joins keep clear of.
enum class JoinsClear {
    Both,    ///< corners and sashing ends
    Corners, ///< corners alone: between the sashing ends there is no room for a join
    Nothing  ///< not even those: the sides are too short for a join
};

/// The strips laid round: where to begin, how much of each strip to cut away first, where the joins fall.
/// Every join is a 45° seam that reaches half the strip's width to both sides of its place.
struct BindingLay {
    JoinsClear clears = JoinsClear::Nothing;
    Length clear; ///< cloth between a join's end and what it keeps clear of, at least
    std::int64_t strips = 1;
    bool oneMore = false;        ///< a strip more than the length alone asks for
    EdgePlace begin;             ///< where the closing join falls: half the slack hangs before it
    std::vector<Length> shorten; ///< to cut off each strip before it is joined to the next
    std::vector<EdgePlace> joins;
};

/// Lays the binding of a plan round; nothing when it has none. Starts that keep joins far from corners and
/// sashing ends are preferred, then those near the middle of the bottom side. Of every start that can matter
/// (the ends of clear stretches, and those from which an uncut strip ends on one) up to 2000 are tried.
[[nodiscard]] std::optional<BindingLay> layBinding(const Project &project, const Plan &plan);

/// The same on plain figures: `cut` the strip's width, `usable` its length, `slack` for both tails together.
struct BindingStrips {
    Length cut;
    Length usable;
    Length slack;
    std::int64_t strips = 1;
};
[[nodiscard]] BindingLay layBinding(const EdgeWalk &walk, const BindingStrips &strips, System system);

} // namespace matside
