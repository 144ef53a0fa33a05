// SPDX-License-Identifier: MIT
#include "app/shopmodel.h"

#include "app/money.h"
#include "app/wording.h"
#include "plan/thread.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

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

QString ShopModel::cutSays(const Buy &buy) const
{
    QStringList parts;
    const Marks marks = m_of.marks();
    for (const ShopStrip &strip : buy.strips)
        //: so many strips of one width: "3 × 11 3/4 in"
        parts.append(tr("%1 × %2").arg(strip.repeats).arg(braced(strip.height, marks)));
    return tr("%1, and %2 to straighten")
        .arg(parts.join(QStringLiteral(", ")), braced(buy.straighten, marks));
}

QString ShopModel::proofSays(const Buy &buy) const
{
    if (!buy.least)
        return tr("A piece is wider than this cloth: it has to be pieced, and no least length is known.");
    if (buy.proved())
        return tr("Proven least: no way of cutting buys less.");
    return tr("At most %1 % above the least possible.")
        .arg(QLocale().toString(static_cast<double>(buy.overPerMille()) / 10, 'f', 1));
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
        return toQt(textSold(buy.bought, buy.step, m_of.system));
    case CutSays:
        return cutSays(buy);
    case ProofSays:
        return tr("%1 Waste %2 %.").arg(proofSays(buy)).arg((buy.waste + 5) / 10);
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
    std::int64_t cents = 0;
    bool all = !m_list.empty();
    for (const Buy &buy : m_list) {
        cents += buy.cents.value_or(0);
        all = all && buy.cents;
    }
    if (cents == 0)
        return {};
    return all ? tr("All cloths: %1").arg(moneyText(cents))
               : tr("Cloths with a price: %1").arg(moneyText(cents));
}

QString ShopModel::sundriesSays() const
{
    const Forecast forecast = forecastOf(m_workspace.project(), m_workspace.plan());
    const Project &project = m_workspace.project();
    const std::int64_t blocks =
        (project.blocks.columns * project.blocks.rows + project.blocks.spare) * project.kits;
    if (forecast.blocksPerBobbin <= 0)
        return {};
    const ThreadUse lines = threadFor(sashingPath(project, m_workspace.plan()));
    const auto metres = static_cast<std::int64_t>(
        std::ceil((forecast.use.all.asMm() * static_cast<double>(blocks) + lines.all.asMm()) / 1000 * 1.12));
    const std::int64_t bobbins = (blocks + forecast.blocksPerBobbin - 1) / forecast.blocksPerBobbin +
                                 lines.bobbin.ceilDiv(bobbinOf(project));
    // A new needle after every 8 hours of stitching (trade notes, step 14; common practice).
    const std::int64_t needles = (blocks * forecast.minuteTenths + 4799) / 4800;
    return tr("For %1 blocks about %2 m of thread, %3 bobbins wound, %4 needles.")
        .arg(blocks)
        .arg(metres)
        .arg(bobbins)
        .arg(needles);
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
