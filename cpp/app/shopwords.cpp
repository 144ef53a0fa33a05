// SPDX-License-Identifier: MIT
#include "app/shopwords.h"

#include "app/money.h"
#include "app/shopmodel.h"
#include "app/wording.h"
#include "plan/thread.h"

#include <QLocale>

#include <cmath>

namespace matside {

QString clothCutSays(const Project &project, const Buy &buy)
{
    QStringList parts;
    const Marks marks = project.marks();
    for (const ShopStrip &strip : buy.strips)
        //: so many strips of one width: "3 × 11 3/4 in"
        parts.append(ShopModel::tr("%1 × %2").arg(strip.repeats).arg(braced(strip.height, marks)));
    return ShopModel::tr("%1, and %2 to straighten")
        .arg(parts.join(QStringLiteral(", ")), braced(buy.straighten, marks));
}

QString clothProofSays(const Buy &buy)
{
    QString proof;
    if (buy.fixed)
        proof =
            buy.more > Length()
                ? ShopModel::tr("This much is short: what is cut stays, and the rest no longer yields all.")
                : ShopModel::tr("Bought or begun: this way of cutting stays.");
    else if (!buy.least)
        proof = ShopModel::tr(
            "A piece is wider than this cloth: it has to be pieced, and no least length is known.");
    else if (buy.proved())
        proof = ShopModel::tr("Proven least: no way of cutting buys less.");
    else
        proof = ShopModel::tr("At most %1 % above the least possible.")
                    .arg(QLocale().toString(static_cast<double>(buy.overPerMille()) / 10, 'f', 1));
    return ShopModel::tr("%1 Waste %2 %.").arg(proof).arg((buy.waste + 5) / 10);
}

QString shopTotalSays(const std::vector<Buy> &list)
{
    std::int64_t cents = 0;
    bool all = !list.empty();
    for (const Buy &buy : list) {
        cents += buy.cents.value_or(0);
        all = all && buy.cents;
    }
    if (cents == 0)
        return {};
    return all ? ShopModel::tr("All cloths: %1").arg(moneyText(cents))
               : ShopModel::tr("Cloths with a price: %1").arg(moneyText(cents));
}

QString sundriesSays(const Project &project, const Plan &plan)
{
    const Forecast forecast = forecastOf(project, plan);
    const std::int64_t blocks =
        (project.blocks.columns * project.blocks.rows + project.blocks.spare) * project.kits;
    if (forecast.blocksPerBobbin <= 0)
        return {};
    const ThreadUse lines = threadFor(sashingPath(project, plan));
    const auto metres = static_cast<std::int64_t>(
        std::ceil((forecast.use.all.asMm() * static_cast<double>(blocks) + lines.all.asMm()) / 1000 * 1.12));
    const std::int64_t bobbins = (blocks + forecast.blocksPerBobbin - 1) / forecast.blocksPerBobbin +
                                 lines.bobbin.ceilDiv(bobbinOf(project));
    // A new needle after every 8 hours of stitching (trade notes, step 14; common practice).
    const std::int64_t needles = (blocks * forecast.minuteTenths + 4799) / 4800;
    return ShopModel::tr("For %1 blocks about %2 m of thread, %3 bobbins wound, %4 needles.")
        .arg(blocks)
        .arg(metres)
        .arg(bobbins)
        .arg(needles);
}

} // namespace matside
