// SPDX-License-Identifier: MIT
#include "app/takemodel.h"

#include "app/money.h"
#include "app/shopwords.h"
#include "app/wording.h"

#include <algorithm>

namespace matside {

namespace {

/// A sundry's tick stands among what happened, under its name and without a cloth.
bool sundryTicked(const Project &project, const std::string &sundry)
{
    bool ticked = false;
    for (const MadeEvent &event : project.made.events)
        if (event.cloth.empty() && event.does == sundry &&
            (event.event == "bought" || event.event == "not-bought"))
            ticked = event.event == "bought";
    return ticked;
}

} // namespace

TakeModel::TakeModel(Workspace &workspace, Session &session, ShopModel &shop)
    : m_workspace(workspace), m_session(session), m_shop(shop)
{
    connect(&m_shop, &ShopModel::changed, this, &TakeModel::refresh);
    refresh();
}

std::vector<TakeModel::Line> TakeModel::linesNow() const
{
    std::vector<Line> lines;
    const Project &project = m_workspace.project();
    for (int row = 0; row < m_shop.count(); ++row) {
        const QModelIndex at = m_shop.index(row);
        const Buy &buy = m_shop.list()[static_cast<std::size_t>(row)];
        if (buy.bought <= Length() && buy.more <= Length() && buy.packages.empty())
            continue; // all of it is there already
        Line line;
        line.cloth = row;
        // How wide it must be is said beneath.
        line.says = clothToBuyLine(project, buy) + u' ' + clothAmongAll(project, buy.cloth);
        if (buy.bought > Length() || buy.more > Length())
            //: on the list to take: the cloth must be at least this wide between its selvages
            line.detail =
                tr("at least %1 wide between the selvages").arg(braced(buy.usable, project.marks()));
        line.colour = m_shop.data(at, ShopModel::Colour).toString();
        line.drawnAs = m_shop.data(at, ShopModel::DrawnAs).toString();
        line.ticked = m_shop.data(at, ShopModel::Bought).toBool();
        lines.push_back(std::move(line));
    }
    const Sundries sundries = sundriesOf(project, m_workspace.plan());
    if (lines.empty() || sundries.thread <= 0)
        return lines;
    const auto add = [&](const char *sundry, const QString &says, const QString &detail) {
        Line line;
        line.sundry = sundry;
        line.says = says;
        line.detail = detail;
        line.drawnAs = toQt(line.sundry);
        line.ticked = sundryTicked(project, sundry);
        lines.push_back(std::move(line));
    };
    add("thread", tr("%1 of thread").arg(threadText(project, sundries.thread)),
        counted(sundries.bobbins, tr("for 1 bobbin and the top"), tr("for %1 bobbins and the top")));
    add("needles", needlesText(sundries.needles), tr("quilting needles, a new one every 8 hours"));
    return lines;
}

void TakeModel::refresh()
{
    std::vector<Line> lines = linesNow();
    const bool same = lines.size() == m_lines.size() &&
                      std::equal(lines.begin(), lines.end(), m_lines.begin(),
                                 [](const Line &a, const Line &b) { return a.says == b.says; });
    if (same && !lines.empty()) { // a tick leaves the list where it was scrolled to
        m_lines = std::move(lines);
        emit dataChanged(index(0), index(count() - 1));
    } else {
        beginResetModel();
        m_lines = std::move(lines);
        endResetModel();
    }
    emit changed();
}

int TakeModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant TakeModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Line &line = m_lines[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Says:
        return line.says;
    case Detail:
        return line.detail;
    case Colour:
        return line.colour;
    case DrawnAs:
        return line.drawnAs;
    case Ticked:
        return line.ticked;
    default:
        return {};
    }
}

QHash<int, QByteArray> TakeModel::roleNames() const
{
    return {{Says, "says"}, {Detail, "detail"}, {Colour, "colour"}, {DrawnAs, "drawnAs"}, {Ticked, "ticked"}};
}

QString TakeModel::leftSays() const
{
    const auto left = std::count_if(m_lines.begin(), m_lines.end(), [](const Line &l) { return !l.ticked; });
    if (m_lines.empty())
        return {};
    return left == 0 ? tr("All of it is in the basket.")
                     : counted(left, tr("1 thing to find"), tr("%1 things to find"));
}

void TakeModel::tick(int row)
{
    if (row < 0 || row >= count() || m_session.readOnly())
        return;
    const Line line = m_lines[static_cast<std::size_t>(row)];
    if (line.cloth >= 0)
        return m_shop.tick(line.cloth);
    Project next = m_workspace.project();
    MadeEvent event;
    event.event = line.ticked ? "not-bought" : "bought";
    event.does = line.sundry;
    next.made.events.push_back(std::move(event));
    (void)m_workspace.commit("bought", next);
}

} // namespace matside
