// SPDX-License-Identifier: MIT
#pragma once

#include "plan/working.h"

#include <optional>
#include <string_view>
#include <vector>

namespace matside {

/// An exact quotient of two counts; den > 0.
struct Ratio {
    std::int64_t num = 1;
    std::int64_t den = 1;
};

/// So many times one length of a sum.
struct LinearPart {
    std::optional<std::size_t> term; ///< none for a root, whose length stands for itself
    Length length;
    Ratio times;
};

/// A formula multiplied out into lengths, each as often as it is laid, in the order they are named. Nothing
/// when it comes to no sum of lengths: a count, an area.
[[nodiscard]] std::optional<std::vector<LinearPart>> linearOf(std::string_view formula,
                                                              const std::vector<Term> &terms);

} // namespace matside
