// SPDX-License-Identifier: MIT
#include "app/prints.h"

#include "bench/build.h"

#include <QColor>

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

const Cloth *clothServing(const Project &project, ClothRole role)
{
    const bool band =
        role == ClothRole::SashingFront || role == ClothRole::SashingBack || role == ClothRole::Binding;
    return clothNamed(project, band ? bandCloth(project, role) : clothId(project, role));
}

QVariantMap clothsDrawn(const Project &project)
{
    const ClothRole edge =
        project.edge.kind == EdgeKind::Framed ? ClothRole::SashingFront : ClothRole::Binding;
    std::vector<std::pair<const char *, ClothRole>> parts{{"front", ClothRole::Front},
                                                          {"back", ClothRole::Back},
                                                          {"batting", ClothRole::Batting},
                                                          {"sashing", ClothRole::SashingFront},
                                                          {"binding", edge}};
    if (project.build == Build::Reversible)
        parts.emplace_back("sashingBack", ClothRole::SashingBack);
    QVariantMap cloths;
    for (const auto &[part, role] : parts)
        if (const Cloth *cloth = clothServing(project, role)) {
            const QColor colour(QString::fromStdString(cloth->colour));
            cloths.insert(
                QLatin1String(part),
                QVariantMap{{QStringLiteral("print"), printOf(project, cloth->id)},
                            {QStringLiteral("colour"), colour.isValid() ? colour.name() : QString()}});
        }
    return cloths;
}

} // namespace matside
