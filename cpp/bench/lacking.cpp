// SPDX-License-Identifier: MIT
#include "bench/lacking.h"

#include <algorithm>

namespace matside {

namespace {

/// The step that makes what is wanting of one thing, and how often; nothing where so many are made.
std::optional<Lacking> makerOf(const std::vector<Step> &steps, const std::string &name, std::int64_t wanted)
{
    std::int64_t missing = wanted;
    std::optional<std::size_t> open; // the first step that makes it and is not done
    std::int64_t each = 1;
    for (std::size_t i = 0; i < steps.size(); ++i)
        for (const Piece &made : steps[i].makes) {
            if (made.name != name)
                continue;
            missing -= steps[i].done * made.count;
            if (open || steps[i].done >= steps[i].count)
                continue;
            open = i;
            each = std::max<std::int64_t>(made.count, 1);
        }
    if (!open || missing <= 0)
        return std::nullopt;
    return Lacking{*open, std::min((missing + each - 1) / each, steps[*open].count - steps[*open].done)};
}

} // namespace

std::optional<Lacking> lackingFor(const std::vector<Step> &steps, const Step &step)
{
    if (step.done >= step.count)
        return std::nullopt;
    for (const Piece &piece : step.takes)
        if (const auto lacking = makerOf(steps, piece.name, (step.done + 1) * piece.count))
            return lacking;
    return std::nullopt;
}

} // namespace matside
