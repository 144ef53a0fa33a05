// SPDX-License-Identifier: MIT
#include "project/made.h"

#include <algorithm>
#include <utility>

namespace matside {

bool Made::started() const
{
    return !cloths.empty() || testBlock || testJoin || drawUp || !strips.empty() || !blocks.empty() ||
           !rows.empty() || !cut.empty() || piece || pins || !events.empty() || !layouts.empty();
}

MadeStrip &Made::recordOf(std::int64_t strip)
{
    const auto held = std::find_if(strips.begin(), strips.end(),
                                   [&](const MadeStrip &made) { return made.strip == strip; });
    if (held != strips.end())
        return *held;
    strips.push_back({strip, {}, {}, false, {}, {}});
    return strips.back();
}

MadeCloth &Made::recordOf(const std::string &cloth)
{
    const auto held = std::find_if(cloths.begin(), cloths.end(),
                                   [&](const MadeCloth &made) { return made.cloth == cloth; });
    if (held != cloths.end())
        return *held;
    cloths.push_back({cloth, {}, {}, false, {}});
    return cloths.back();
}

const MadeLayout *Made::layoutOf(std::string_view cloth) const
{
    const auto held = std::find_if(layouts.begin(), layouts.end(),
                                   [&](const MadeLayout &layout) { return layout.cloth == cloth; });
    return held == layouts.end() ? nullptr : &*held;
}

const MadeBlock *Made::goodBlock(std::string_view name) const
{
    const auto held = std::find_if(blocks.begin(), blocks.end(), [&](const MadeBlock &block) {
        return block.block == name && block.good();
    });
    return held == blocks.end() ? nullptr : &*held;
}

MadeBlock *Made::goodBlock(std::string_view name)
{
    return const_cast<MadeBlock *>(std::as_const(*this).goodBlock(name));
}

} // namespace matside
