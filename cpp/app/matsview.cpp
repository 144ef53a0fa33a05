// SPDX-License-Identifier: MIT
#include "app/matsview.h"

#include <QVariantMap>

namespace matside {

QVariantList matsView(const Project &project, const Plan &plan)
{
    QVariantList mats;
    const std::optional<MatsLaid> set = setOfMats(project, plan);
    if (!set)
        return mats;
    // A mat deeper than it is long is laid with its other side along the edge.
    const double quarter = plan.size.finished.along < plan.size.finished.across ? 90 : 0;
    for (const MatPlace &place : set->places)
        mats << QVariantMap{{QStringLiteral("x"), place.along.asMm()},
                            {QStringLiteral("y"), place.across.asMm()},
                            {QStringLiteral("turn"), place.turn + quarter}};
    return mats;
}

} // namespace matside
