// SPDX-License-Identifier: MIT
#pragma once

#include "shade/colour.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace matside {

/// So many steps apart, a patch is seen on what it lies on from across the room (common practice, no
/// published source); one makes a washed-out look, and below one a patch is lost.
constexpr double stepsClear = 2.0;
constexpr double stepsFaint = 1.0;

/// One layer of a block: the ground first, then the patches in the order they are laid.
struct Layer {
    std::string cloth;            ///< layers of one cloth are not judged against each other
    std::optional<Colour> colour; ///< of the cloth, when it is known
};

/// A layer and one it lies on.
struct Meeting {
    std::size_t over = 0; ///< index of the upper layer, 1…
    std::size_t under = 0;
    double apart = 0; ///< steps of the ten-step scale, 0…10
};

/// Every patch against the ground and against the patch laid just before it, from the lowest up. What is not
/// known (where patches overlap) is not guessed: a patch may lie on either. Pairs of one cloth, and those of
/// which a colour is not known, are left out.
[[nodiscard]] std::vector<Meeting> meetings(const std::vector<Layer> &layers);

/// The pair least apart, the lower one of equals; nothing when no pair can be judged.
[[nodiscard]] std::optional<Meeting> leastOf(const std::vector<Meeting> &meetings);

/// Most patches an order is sought for.
constexpr std::size_t patchesOrdered = 12;

/// An order for the patches of a block. `order` has the layers' indices, the ground (0) first.
struct Order {
    std::vector<std::size_t> order;
    double least = 0;  ///< steps between the two successive patches least apart, in the order proposed
    double before = 0; ///< the same in the present one
};

/// Another order in which successive patches differ more: of all orders, one whose two successive patches
/// least apart are farthest apart, where more than `stepsClear` counts as no better; of those, the one that
/// swaps the fewest pairs of the present order. Exact. Nothing when no order is better, when there are fewer
/// than three patches, or more than `patchesOrdered`.
[[nodiscard]] std::optional<Order> betterOrder(const std::vector<Layer> &layers);

} // namespace matside
