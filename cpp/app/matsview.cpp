// SPDX-License-Identifier: MIT
#include "app/matsview.h"

#include <QVariantMap>

namespace matside {

QVariantList matsView(const Project &project, const Plan &plan)
{
    const std::optional<MatsLaid> set = setOfMats(project, plan);
    return set ? placesView(*set, plan.size.finished) : QVariantList();
}

QVariantList placesView(const MatsLaid &laid, const Pair &size)
{
    QVariantList mats;
    // A mat deeper than it is long is laid with its other side along the edge.
    const double quarter = size.along < size.across ? 90 : 0;
    for (const MatPlace &place : laid.places)
        mats << QVariantMap{{QStringLiteral("x"), place.along.asMm()},
                            {QStringLiteral("y"), place.across.asMm()},
                            {QStringLiteral("turn"), place.turn + quarter}};
    return mats;
}

} // namespace matside
