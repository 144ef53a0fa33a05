// SPDX-License-Identifier: MIT
#include "app/figures.h"
#include "app/stepmodel.h"
#include "app/wording.h"

#include <algorithm>

namespace matside {

StepsModel::StepsModel(Workspace &workspace) : m_workspace(workspace) {}

void StepsModel::show(std::vector<std::size_t> rows, std::optional<std::size_t> current)
{
    m_current = current;
    if (rows == m_rows && !rows.empty()) {
        emit dataChanged(index(0, 0), index(count() - 1, 0));
        return;
    }
    // Rows go and come one after the other: a list that is just making its rows can follow that.
    if (!m_rows.empty()) {
        beginRemoveRows({}, 0, count() - 1);
        m_rows.clear();
        endRemoveRows();
    }
    if (!rows.empty()) {
        beginInsertRows({}, 0, static_cast<int>(rows.size()) - 1);
        m_rows = std::move(rows);
        endInsertRows();
    }
    emit countChanged();
}

void StepsModel::showByCloth(std::vector<std::size_t> rows)
{
    const std::vector<Step> &all = m_workspace.steps();
    const std::vector<Cloth> &cloths = m_workspace.project().cloths;
    // Squaring an end takes no cloth that anybody buys.
    std::erase_if(rows, [&](std::size_t row) { return all[row].does == Does::Straighten; });
    const auto place = [&](std::size_t row) {
        const auto found = std::find_if(cloths.begin(), cloths.end(),
                                        [&](const Cloth &cloth) { return cloth.id == all[row].cloth; });
        return std::pair(found - cloths.begin(), std::string_view(all[row].cloth));
    };
    std::stable_sort(rows.begin(), rows.end(),
                     [&](std::size_t a, std::size_t b) { return place(a) < place(b); });
    show(std::move(rows), std::nullopt);
}

QString StepsModel::colourOf(const Project &project, std::string_view cloth)
{
    for (const Cloth &each : project.cloths)
        if (each.id == cloth)
            return toQt(each.colour);
    return QStringLiteral("#c9bda2");
}

std::optional<std::size_t> StepsModel::stepAt(int row) const
{
    return row >= 0 && row < count() ? std::optional(m_rows[static_cast<std::size_t>(row)]) : std::nullopt;
}

int StepsModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant StepsModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const std::size_t at = m_rows[static_cast<std::size_t>(index.row())];
    const std::vector<Step> &all = m_workspace.steps();
    if (at >= all.size())
        return {};
    const Step &step = all[at];
    switch (role) {
    case Title:
        return matside::doesText(step, m_workspace.project());
    case FigureText: {
        const Marks marks = m_workspace.project().marks();
        if (step.size)
            return QStringLiteral("%1 × %2").arg(figureText(step.size->across, marks),
                                                 figureText(step.size->along, marks));
        return planFigure(m_workspace.project(), m_workspace.plan(), step.figure).text;
    }
    case StationNumber:
        return static_cast<int>(step.station);
    case Count:
        return static_cast<int>(step.count);
    case DoneCount:
        return static_cast<int>(step.done);
    case IsCurrent:
        return m_current == at;
    case Trial:
        return step.trial;
    case ClothHead:
        return clothHead(index.row());
    case ClothColour:
        return colourOf(m_workspace.project(), step.cloth);
    default:
        return {};
    }
}

QHash<int, QByteArray> StepsModel::roleNames() const
{
    return {{Title, "title"}, {FigureText, "figureText"}, {StationNumber, "station"},
            {Count, "count"}, {DoneCount, "done"},        {IsCurrent, "isCurrent"},
            {Trial, "trial"}, {ClothHead, "clothHead"},   {ClothColour, "clothColour"}};
}

QString StepsModel::clothHead(int row) const
{
    const std::vector<Step> &all = m_workspace.steps();
    const auto at = stepAt(row);
    const auto before = stepAt(row - 1);
    if (!at || *at >= all.size() || (before && *before < all.size() && all[*before].cloth == all[*at].cloth))
        return {};
    return clothText(m_workspace.project(), all[*at].cloth);
}

} // namespace matside
