// SPDX-License-Identifier: MIT
#include "app/shopmodel.h"

#include "app/money.h"
#include "app/prints.h"
#include "app/shopwords.h"
#include "app/wording.h"
#include "bench/relay.h"

#include <algorithm>

namespace matside {

QVariantList stripsDrawn(const std::vector<ShopStrip> &strips)
{
    QVariantList drawn;
    for (const ShopStrip &strip : strips) {
        if (strip.owned > 0)
            continue;
        QVariantList pieces;
        for (const ShopPiece &piece : strip.pieces)
            pieces.append(QVariantMap{{QStringLiteral("mm"), piece.across.asMm()},
                                      {QStringLiteral("along"), piece.along.asMm()},
                                      {QStringLiteral("gap"), piece.gap},
                                      {QStringLiteral("count"), static_cast<int>(piece.count)}});
        drawn.append(QVariantMap{{QStringLiteral("mm"), strip.height.asMm()},
                                 {QStringLiteral("run"), strip.run.asMm()},
                                 {QStringLiteral("repeats"), static_cast<int>(strip.repeats)},
                                 {QStringLiteral("pieces"), pieces}});
    }
    return drawn;
}

ShopModel::ShopModel(Workspace &workspace, Session &session) : m_workspace(workspace), m_session(session)
{
    connect(&m_workspace, &Workspace::changed, this, &ShopModel::refresh);
    connect(&m_session, &Session::stationChanged, this, &ShopModel::refresh);
    refresh();
}

void ShopModel::refresh()
{
    if (m_session.station() != static_cast<int>(Station::Shop) || m_workspace.previewing() ||
        !m_workspace.isOpen())
        return;
    if (m_of == m_workspace.project() && !m_list.empty())
        return;
    m_of = m_workspace.project();
    std::vector<Buy> list = m_workspace.plan().problems.empty()
                                ? shoppingList(m_of, m_workspace.plan(), m_workspace.steps())
                                : std::vector<Buy>();
    const bool sameCloths = std::equal(list.begin(), list.end(), m_list.begin(), m_list.end(),
                                       [](const Buy &a, const Buy &b) { return a.cloth == b.cloth; });
    if (sameCloths && !list.empty()) { // a tick leaves the page where it was scrolled to
        m_list = std::move(list);
        emit dataChanged(index(0), index(count() - 1));
    } else {
        beginResetModel();
        m_list = std::move(list);
        endResetModel();
    }
    emit changed();
}

int ShopModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : count();
}

bool ShopModel::isBought(const Buy &buy) const
{
    return buy.fixed && buy.more <= Length();
}

QVariant ShopModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Buy &buy = m_list[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Name:
        return clothAmongAll(m_of, buy.cloth);
    case DrawnAs:
        return printOf(m_of, buy.cloth);
    case Colour:
        return colourDrawn(m_of, buy.cloth);
    case BuyText:
        return clothToBuy(m_of, buy);
    case BuyLine:
        return clothToBuyLine(m_of, buy);
    case CutSays:
        return clothCutSays(m_of, buy);
    case ProofSays:
        return clothProofSays(m_of, buy);
    case CostSays:
        return clothCostSays(m_of, buy);
    case UsableMm:
        return buy.usable.asMm();
    case LengthMm:
        return (buy.bought + buy.more).asMm();
    case Bought:
        return isBought(buy);
    case WidthSays:
        return braced(buy.usable, m_of.marks());
    case LengthSays:
        return bracedSold(buy.bought + buy.more, buy.step, m_of.system);
    case Strips:
        return stripsDrawn(buy.strips);
    default:
        return {};
    }
}

QHash<int, QByteArray> ShopModel::roleNames() const
{
    return {{Name, "name"},           {Colour, "colour"},        {DrawnAs, "drawnAs"},
            {BuyText, "buyText"},     {BuyLine, "buyLine"},      {CutSays, "cutSays"},
            {ProofSays, "proofSays"}, {CostSays, "costSays"},    {Strips, "strips"},
            {UsableMm, "usableMm"},   {LengthMm, "lengthMm"},    {Bought, "bought"},
            {WidthSays, "widthSays"}, {LengthSays, "lengthSays"}};
}

QString ShopModel::totalSays() const
{
    return shopTotalSays(m_list);
}

QString ShopModel::sundriesSays() const
{
    return matside::sundriesSays(m_workspace.project(), m_workspace.plan());
}

void ShopModel::tick(int row)
{
    if (row < 0 || row >= count() || m_session.readOnly())
        return;
    const Buy &buy = m_list[static_cast<std::size_t>(row)];
    const Project &project = m_workspace.project();
    (void)m_workspace.commit("bought",
                             isBought(buy) && tickedAsBought(project, buy.cloth)
                                 ? withoutBought(project, m_workspace.steps(), buy.cloth)
                                 : withBought(project, m_workspace.plan(), m_workspace.steps(), buy.cloth));
}

} // namespace matside
