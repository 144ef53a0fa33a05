// SPDX-License-Identifier: MIT
#include "app/prints.h"

namespace matside {

QString printOf(const Project &project, std::string_view cloth)
{
    for (const Cloth &each : project.cloths) {
        if (each.id != cloth)
            continue;
        switch (each.role) {
        case ClothRole::Back:
            return QStringLiteral("back");
        case ClothRole::Batting:
            return QStringLiteral("batting");
        case ClothRole::Patch:
        case ClothRole::Web:
            return QStringLiteral("patch");
        case ClothRole::SashingFront:
        case ClothRole::SashingBack:
            return QStringLiteral("sashing");
        case ClothRole::Binding:
            return QStringLiteral("binding");
        case ClothRole::Front:
            break;
        }
        return QStringLiteral("front");
    }
    return cloth == "back"      ? QStringLiteral("back")
           : cloth == "batting" ? QStringLiteral("batting")
                                : QStringLiteral("front");
}

QString colourDrawn(const Project &project, std::string_view cloth)
{
    for (const Cloth &each : project.cloths)
        if (each.id == cloth && !each.colour.empty())
            return QString::fromStdString(each.colour);
    const QString print = printOf(project, cloth);
    return cloth.starts_with("binding") || print == QStringLiteral("binding") ? QStringLiteral("#1d4e57")
           : print == QStringLiteral("back")                                  ? QStringLiteral("#b9cbd8")
           : print == QStringLiteral("batting")                               ? QStringLiteral("#f6f1e4")
                                                                              : QStringLiteral("#ddcda9");
}

} // namespace matside
