// SPDX-License-Identifier: MIT
#include "piece.h"

namespace touching {

bool beginSmallPiece(Maker &maker)
{
    if (!maker.touch(QStringLiteral("New, in inches")) || !maker.touch(QStringLiteral("The hoop,"), true))
        return false;
    for (const auto &[value, text] :
         {std::pair("outside, along", "9 3/4"), std::pair("outside, across", "9 3/4"),
          std::pair("field, along", "7 7/8"), std::pair("field, across", "7 7/8")})
        if (!maker.enter(QLatin1String(value), QLatin1String(text)))
            return false;
    return maker.touch(QStringLiteral("columns less")) && maker.touch(QStringLiteral("rows less"));
}

} // namespace touching
