// SPDX-License-Identifier: MIT
#include "bench/step.h"

namespace matside {

std::string nameOf(Station station)
{
    switch (station) {
    case Station::Fit:
        return "fit";
    case Station::Shop:
        return "shop";
    case Station::Cut:
        return "cut";
    case Station::Hoop:
        return "hoop";
    case Station::Trim:
        return "trim";
    case Station::Join:
        return "join";
    case Station::Edge:
        break;
    }
    return "edge";
}

std::string nameOf(Does does)
{
    constexpr const char *names[] = {
        "straighten",     "cut-strip",    "cut-band",      "cut-short",          "cut-long",
        "cut-long-piece", "join-long",    "harvest-short", "cut-patch",          "cut-binding",
        "cut-backing",    "layer",        "mark-strip",    "stitch-test",        "measure-test",
        "test-join",      "stitch-block", "trim-patches",  "press-block",        "rough-apart",
        "trim-block",     "join-short",   "join-row",      "join-long-row",      "lay-backing",
        "bag-out",        "square-piece", "sew-binding",   "last-look",          "cut-bias",
        "cut-frame",      "cut-filler",   "sew-frame",     "cut-sashing-filler", "cut-along"};
    static_assert(std::size(names) == static_cast<std::size_t>(Does::CutAlong) + 1);
    return names[static_cast<std::size_t>(does)];
}

} // namespace matside
