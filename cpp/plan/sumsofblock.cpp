// SPDX-License-Identifier: MIT
#include "plan/parts.h"
#include "plan/sums.h"

#include <array>

namespace matside {

namespace {

using Answer = std::optional<Working>;

Answer sentAlong(const Sums &a)
{
    return Tell("F21", "outline / (1 - drawUp)", a.plan.block.sent.along)
        .given("outline", a.plan.block.outline.along, "/blocks/width")
        .given("drawUp", a.plan.basis.drawAlong,
               a.plan.basis.blockTried ? "/made/testBlock" : "/drawUp/along");
}
Answer sentAcross(const Sums &a)
{
    return Tell("F21", "outline / (1 - drawUp)", a.plan.block.sent.across)
        .given("outline", a.plan.block.outline.across, "/blocks/height")
        .given("drawUp", a.plan.basis.drawAcross,
               a.plan.basis.blockTried ? "/made/testBlock" : "/drawUp/across");
}
Answer trimmed(const Sums &a, Length value, Length outline, const char *pointer)
{
    return Tell("F6", "outline + 2 * allowance", value)
        .given("outline", outline, pointer)
        .given("allowance", a.plan.basis.allowance,
               a.project.sashing.allowance ? "/sashing/allowance" : "/seam");
}
Answer trimmedAlong(const Sums &a)
{
    return trimmed(a, a.plan.block.trimmed.along, a.plan.block.outline.along, "/blocks/width");
}
Answer trimmedAcross(const Sums &a)
{
    return trimmed(a, a.plan.block.trimmed.across, a.plan.block.outline.across, "/blocks/height");
}

constexpr std::array sums{
    Sum{"block.sent.along", sentAlong},
    Sum{"block.sent.across", sentAcross},
    Sum{"block.trimmed.along", trimmedAlong},
    Sum{"block.trimmed.across", trimmedAcross},
};

} // namespace

std::span<const Sum> blockSums()
{
    return sums;
}

std::span<const Sum> allSums()
{
    static const std::vector<Sum> all = [] {
        std::vector<Sum> gathered;
        for (const std::span<const Sum> part : {blockSums(), stripSums(), sashingSums(), edgeSums()})
            gathered.insert(gathered.end(), part.begin(), part.end());
        return gathered;
    }();
    return all;
}

} // namespace matside
