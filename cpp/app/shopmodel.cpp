// SPDX-License-Identifier: MIT
#include "app/shopmodel.h"

#include "app/money.h"
#include "app/shopwords.h"
#include "app/wording.h"

namespace matside {

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
    beginResetModel();
    m_of = m_workspace.project();
    m_list = m_workspace.plan().problems.empty() ? shoppingList(m_of, m_workspace.plan(), m_workspace.steps())
                                                 : std::vector<Buy>();
    endResetModel();
    emit changed();
}

int ShopModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : count();
}

bool ShopModel::isBought(const std::string &cloth) const
{
    bool bought = false;
    for (const MadeEvent &event : m_workspace.project().made.events)
        if (event.cloth == cloth && (event.event == "bought" || event.event == "not-bought"))
            bought = event.event == "bought";
    return bought;
}

QVariant ShopModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Buy &buy = m_list[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Name:
        return clothText(m_of, buy.cloth);
    case Colour: {
        const Cloth *cloth = clothNamed(m_of, buy.cloth);
        return cloth && !cloth->colour.empty() ? toQt(cloth->colour) : QStringLiteral("#c9bda2");
    }
    case BuyText:
        return inSign(toQt(textSold(buy.bought, buy.step, m_of.system)));
    case CutSays:
        return clothCutSays(m_of, buy);
    case ProofSays:
        return clothProofSays(buy);
    case CostSays:
        return buy.cents ? moneyText(*buy.cents) : QString();
    case UsableMm:
        return buy.usable.asMm();
    case LengthMm:
        return buy.bought.asMm();
    case Bought:
        return isBought(buy.cloth);
    case Strips: {
        QVariantList strips;
        for (const ShopStrip &strip : buy.strips) {
            QVariantList pieces;
            for (const auto &[length, times] : strip.pieces)
                pieces.append(QVariantMap{{QStringLiteral("mm"), length.asMm()},
                                          {QStringLiteral("count"), static_cast<int>(times)}});
            strips.append(QVariantMap{{QStringLiteral("mm"), strip.height.asMm()},
                                      {QStringLiteral("repeats"), static_cast<int>(strip.repeats)},
                                      {QStringLiteral("pieces"), pieces}});
        }
        return strips;
    }
    default:
        return {};
    }
}

QHash<int, QByteArray> ShopModel::roleNames() const
{
    return {{Name, "name"},           {Colour, "colour"},     {BuyText, "buyText"}, {CutSays, "cutSays"},
            {ProofSays, "proofSays"}, {CostSays, "costSays"}, {Strips, "strips"},   {UsableMm, "usableMm"},
            {LengthMm, "lengthMm"},   {Bought, "bought"}};
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
    const std::string cloth = m_list[static_cast<std::size_t>(row)].cloth;
    Project next = m_workspace.project();
    MadeEvent event;
    event.event = isBought(cloth) ? "not-bought" : "bought";
    event.cloth = cloth;
    next.made.events.push_back(std::move(event));
    m_of = next; // the list itself is unchanged by a tick
    if (m_workspace.commit("bought", next))
        emit dataChanged(index(row), index(row));
}

} // namespace matside
