// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

namespace matside {

/// Two lists of the same things, each known by a key and told in order, as one list: nothing is lost, nothing
/// stands twice, and what either list tells in order stays in order. Between what both have, a list's own
/// stretch is placed by its keys, never by which list came first: merged(a, b) == merged(b, a), and of lists
/// that grew from a common beginning merged(merged(a, b), c) == merged(a, merged(b, c)). Keys of one list are
/// distinct. Where the two disagree about an order, the smaller key goes first.
[[nodiscard]] std::vector<std::string> mergedOrder(const std::vector<std::string> &mine,
                                                   const std::vector<std::string> &theirs);

/// The keys of a list without those that were in `base` and are gone from `other`: taken back there.
[[nodiscard]] std::vector<std::string> withoutTakenBack(const std::vector<std::string> &list,
                                                        const std::vector<std::string> &other,
                                                        const std::vector<std::string> &base);

/// Makes keys distinct by the place among equals: the second "a" becomes "a#2".
[[nodiscard]] std::vector<std::string> numbered(const std::vector<std::string> &keys);

} // namespace matside
