// SPDX-License-Identifier: MIT
//
// How the roll and the packages of batting are drawn, all to one scale.
#include "app/battingmodel.h"
#include "app/shopwords.h"
#include "app/wording.h"

#include <algorithm>

namespace matside {

namespace {

const QString lengthSide = QStringLiteral("lengthMm");
const QString widthSide = QStringLiteral("usableMm");

} // namespace

QVariantMap BattingModel::rollDrawn() const
{
    const Project &project = m_workspace.project();
    return {{QStringLiteral("roll"), true},
            {QStringLiteral("count"), 1},
            {QStringLiteral("strips"), stripsDrawn(m_choice->rollStrips)},
            {lengthSide, m_choice->roll.asMm()},
            {widthSide, m_choice->rollUsable.asMm()},
            {QStringLiteral("lengthSays"), bracedSold(m_choice->roll, batting()->soldStep, project.system)},
            {QStringLiteral("widthSays"), braced(m_choice->rollUsable, project.marks())}};
}

QVariantMap BattingModel::packageDrawn(const PackageBuy &buy) const
{
    const Marks marks = m_workspace.project().marks();
    const Pair lies = layOf(buy);
    std::vector<ShopStrip> strips;
    if (buy.each > 0)
        strips.push_back(stripsOf(buy, m_choice->strip));
    return {{QStringLiteral("roll"), false},
            {QStringLiteral("count"), static_cast<int>(buy.count)},
            {QStringLiteral("strips"), stripsDrawn(strips)},
            {lengthSide, lies.along.asMm()},
            {widthSide, lies.across.asMm()},
            {QStringLiteral("lengthSays"), braced(lies.along, marks)},
            {QStringLiteral("widthSays"), braced(lies.across, marks)}};
}

QVariantMap BattingModel::offered() const
{
    if (!m_choice || !whyNot().isEmpty())
        return {};
    const PackageBuy buy =
        boughtAs(*m_choice, Package{m_length, m_width, {}, {}}, m_workspace.project().system);
    QVariantMap told = packageWay(buy);
    told.insert(packageDrawn(buy));
    return told;
}

double BattingModel::mostDrawn(const QString &side) const
{
    double most = offered().value(side).toDouble();
    for (const QVariant &way : ways())
        most = std::max(most, way.toMap().value(side).toDouble());
    return most;
}

double BattingModel::mostLengthMm() const
{
    return mostDrawn(lengthSide);
}

double BattingModel::mostWidthMm() const
{
    return mostDrawn(widthSide);
}

} // namespace matside
