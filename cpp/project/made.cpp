// SPDX-License-Identifier: MIT
#include "project/made.h"

namespace matside {

bool Made::started() const
{
    return !cloths.empty() || testBlock || testJoin || drawUp || !strips.empty() || !blocks.empty() ||
           !rows.empty() || !cut.empty() || pins || !events.empty();
}

} // namespace matside
