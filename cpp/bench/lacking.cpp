// SPDX-License-Identifier: MIT
#include "bench/lacking.h"

#include <algorithm>
#include <map>

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

/// Steps at one station until so much of each of these is made, done in their order.
std::int64_t stepsUntil(const std::vector<Step> &steps, const std::map<std::size_t, std::int64_t> &wanted)
{
    const auto last = wanted.rbegin()->first;
    std::int64_t count = 0;
    for (std::size_t i = 0; i <= last; ++i) {
        if (steps[i].station != steps[last].station)
            continue;
        const auto found = wanted.find(i);
        // The last is made as often as is wanted; what comes before it is made whole.
        count += i == last && found != wanted.end() ? found->second : steps[i].count - steps[i].done;
    }
    return count;
}

} // namespace

std::optional<Lacking> lackingFor(const std::vector<Step> &steps, const Step &step)
{
    if (step.done >= step.count)
        return std::nullopt;
    std::optional<Lacking> first;
    std::map<std::size_t, std::int64_t> wanted; // by maker, those at the station of the first
    const auto want = [&](const std::string &name, std::int64_t count) {
        const auto lacking = makerOf(steps, name, count);
        if (!lacking)
            return;
        first = first ? first : lacking;
        if (steps[lacking->maker].station == steps[first->maker].station)
            wanted[lacking->maker] = std::max(wanted[lacking->maker], lacking->more);
    };
    for (const Piece &piece : step.takes)
        want(piece.name, (step.done + 1) * piece.count);
    for (const Piece &piece : step.needs)
        want(piece.name, piece.count);
    if (first)
        first->inAll = stepsUntil(steps, wanted);
    return first;
}

} // namespace matside
