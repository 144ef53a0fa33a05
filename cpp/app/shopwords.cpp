// SPDX-License-Identifier: MIT
#include "app/shopwords.h"

#include "app/money.h"
#include "app/shopmodel.h"
#include "app/wording.h"
#include "plan/thread.h"
#include "project/spelling.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace matside {

namespace {

/// From the roll and in packages; `shown` writes a length.
template <class Shown, class Sold> QString toBuy(const Buy &buy, Shown shown, Sold sold)
{
    QStringList says;
    const Length roll = buy.more > Length() ? buy.more : buy.bought;
    if (roll > Length() || buy.packages.empty())
        says << sold(roll);
    for (const BuyPackages &packages : buy.packages)
        //: so many packages of batting, and their two sides: "2 of 45 in × 60 in"
        says << ShopModel::tr("%1 of %2 × %3")
                    .arg(packages.count)
                    .arg(shown(min(packages.length, packages.width)),
                         shown(max(packages.length, packages.width)));
    return says.join(QStringLiteral(", "));
}

} // namespace

QString clothAmongAll(const Project &project, const std::string &id)
{
    QString name = clothText(project, id);
    const Cloth *cloth = clothNamed(project, id);
    if (!cloth)
        return name;
    bool alone = true;
    int alike = 0, place = 0; // among those with this name for the same use
    for (const Cloth &other : project.cloths) {
        if (clothText(project, other.id) != name)
            continue;
        alone = alone && other.id == id;
        alike += other.role == cloth->role ? 1 : 0;
        place = other.id == id ? alike : place;
    }
    if (alone)
        return name;
    const QString use = wordsOrCode(choiceWords(), spelling::wordFor(spelling::role, cloth->role));
    //: a cloth's name and what it is for, where two cloths have the same name: "oat linen (sashing, front)"
    return ShopModel::tr("%1 (%2)").arg(name, alike > 1 ? QStringLiteral("%1 %2").arg(use).arg(place) : use);
}

QString clothToBuy(const Project &project, const Buy &buy)
{
    return toBuy(
        buy, [&](Length length) { return figureText(length, project.marks()); },
        [&](Length roll) { return inSign(toQt(textSold(roll, buy.step, project.system))); });
}

QString clothToBuyLine(const Project &project, const Buy &buy)
{
    return toBuy(
        buy, [&](Length length) { return braced(length, project.marks()); },
        [&](Length roll) {
            return QStringLiteral("{%1}").arg(inSign(toQt(textSold(roll, buy.step, project.system))));
        });
}

QString threadText(const Project &project, std::int64_t thread)
{
    //: so much thread, in yards or metres
    return project.system == System::Inch ? ShopModel::tr("%1 yd").arg(thread)
                                          : ShopModel::tr("%1 m").arg(thread);
}

QString clothCutSays(const Project &project, const Buy &buy)
{
    const Marks marks = project.marks();
    // Strips of one height are one thing to cut, whatever lies in them.
    std::vector<std::pair<Length, std::int64_t>> heights;
    std::vector<std::pair<Length, std::int64_t>> owned;
    std::vector<std::pair<Length, std::int64_t>> along;
    Length run;
    for (const ShopStrip &strip : buy.strips) {
        run = max(run, strip.run);
        auto &to = strip.owned > 0 ? owned : strip.run > Length() ? along : heights;
        const auto same =
            std::find_if(to.begin(), to.end(), [&](const auto &had) { return had.first == strip.height; });
        if (same != to.end())
            same->second += strip.repeats;
        else
            to.emplace_back(strip.height, strip.repeats);
    }
    const auto list = [&](const auto &strips) {
        QStringList parts;
        for (const auto &[height, repeats] : strips)
            //: so many strips of one width: "3 × 11 3/4 in"
            parts.append(ShopModel::tr("%1 × %2").arg(repeats).arg(braced(height, marks)));
        return parts.join(QStringLiteral(", "));
    };
    QStringList says;
    if (!owned.empty())
        //: %1 strips, "3 × 11 3/4 in"
        says << (buy.packages.empty() ? ShopModel::tr("from what you have: %1").arg(list(owned))
                                      //: batting is bought in packages; %1 strips, "3 × 11 3/4 in"
                                      : ShopModel::tr("from the packages: %1").arg(list(owned)));
    if (!along.empty())
        //: strips that run along the selvage instead of across the cloth: %1 their length, %2 "3 × 11 3/4 in"
        says << ShopModel::tr("along the selvage, %1 long: %2").arg(braced(run, marks), list(along));
    if (!along.empty() && heights.empty())
        //: so much of the cloth's length is cut off to square its end
        says << ShopModel::tr("%1 to straighten").arg(braced(buy.straighten, marks));
    if (!heights.empty())
        says << ShopModel::tr("%1, and %2 to straighten").arg(list(heights), braced(buy.straighten, marks));
    const Length rest = buy.bought - buy.cut - buy.straighten;
    if (!heights.empty() && !buy.fixed && rest >= project.finest)
        //: so much of the cloth's length is not used
        says << ShopModel::tr("%1 left over").arg(braced(rest, marks));
    return says.join(QStringLiteral("; "));
}

/// More pieces than the optimiser takes on (`cutting::limits::pieces`), a strip being one at the least.
static bool tooManyToProve(const Buy &buy)
{
    std::int64_t pieces = 0;
    for (const ShopStrip &strip : buy.strips)
        for (const ShopPiece &piece : strip.pieces)
            pieces += piece.gap ? 0 : piece.count * strip.repeats;
    return pieces >= 100'000;
}

QString clothCostSays(const Project &project, const Buy &buy)
{
    if (!buy.cents)
        return {};
    const Cloth *cloth = clothNamed(project, buy.cloth);
    if (buy.more <= Length() || buy.bought <= Length() || !cloth || !cloth->price)
        return moneyText(*buy.cents);
    const auto more = costOf(*cloth->price, buy.more, project.system);
    //: %1 the price of the cloth still to buy, %2 of that and of what was bought before
    return more ? ShopModel::tr("%1; with what is there %2").arg(moneyText(*more), moneyText(*buy.cents))
                : moneyText(*buy.cents);
}

QString clothProofSays(const Project &project, const Buy &buy)
{
    QString proof;
    if (buy.fixed)
        proof = buy.more > Length()
                    //: %1 a length of cloth; what to buy on top of it stands above
                    ? ShopModel::tr("%1 bought or begun; it does not yield all: buy this much more.")
                          .arg(inSign(toQt(textSold(buy.bought, buy.step, project.system)))
                                   .replace(u' ', QChar::Nbsp))
                    : ShopModel::tr("Bought or begun: this way of cutting stays.");
    else if (buy.bought <= Length() && !buy.packages.empty())
        proof = ShopModel::tr("The packages yield all of it: nothing from the roll.");
    else if (buy.bought <= Length())
        proof = ShopModel::tr("What you have yields all of it: nothing to buy.");
    else if (!buy.least && tooManyToProve(buy))
        proof = ShopModel::tr("So many pieces are laid out row by row: no least length is proved.");
    else if (!buy.least)
        proof = ShopModel::tr(
            "A piece is wider than this cloth: it has to be pieced, and no least length is known.");
    else if (buy.proved())
        proof = ShopModel::tr("Proven least: no way of cutting buys less.");
    else
        proof = ShopModel::tr("At most %1 % above the least possible.")
                    .arg(QLocale().toString(static_cast<double>(buy.overPerMille()) / 10, 'f', 1));
    if (buy.bought <= Length())
        return proof;
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

Sundries sundriesOf(const Project &project, const Plan &plan)
{
    Sundries sundries;
    const Forecast forecast = forecastOf(project, plan);
    sundries.blocks = blocksInAll(project);
    if (forecast.blocksPerBobbin <= 0)
        return sundries;
    const ThreadUse lines = threadFor(sashingPath(project, plan));
    const double unit = project.system == System::Inch ? 914.4 : 1000; // mm in a yard, in a metre
    sundries.thread = static_cast<std::int64_t>(std::ceil(
        (forecast.use.all.asMm() * static_cast<double>(sundries.blocks) + lines.all.asMm()) / unit * 1.12));
    sundries.bobbins = (sundries.blocks + forecast.blocksPerBobbin - 1) / forecast.blocksPerBobbin +
                       lines.bobbin.ceilDiv(bobbinOf(project));
    // A new needle after every 8 hours of stitching (trade notes, step 14; common practice).
    sundries.needles = (sundries.blocks * forecast.minuteTenths + 4799) / 4800;
    return sundries;
}

QString needlesText(std::int64_t needles)
{
    return counted(needles, ShopModel::tr("1 needle"), ShopModel::tr("%1 needles"));
}

QString sundriesSays(const Project &project, const Plan &plan)
{
    const Sundries all = sundriesOf(project, plan);
    if (all.thread <= 0)
        return {};
    //: %1 "9 blocks", %2 "380 yd" or "347 m", %3 "5 bobbins", %4 "1 needle"
    return ShopModel::tr("For %1 about %2 of thread, %3 wound, %4.")
        .arg(counted(all.blocks, ShopModel::tr("1 block"), ShopModel::tr("%1 blocks")),
             threadText(project, all.thread))
        .arg(counted(all.bobbins, ShopModel::tr("1 bobbin"), ShopModel::tr("%1 bobbins")),
             needlesText(all.needles));
}

QString bracedSold(Length length, Length step, System system)
{
    return QStringLiteral("{%1}").arg(inSign(toQt(textSold(length, step, system))));
}

} // namespace matside
