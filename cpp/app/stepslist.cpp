// SPDX-License-Identifier: MIT
#include "app/figures.h"
#include "app/stepmodel.h"
#include "app/wording.h"

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
    default:
        return {};
    }
}

QHash<int, QByteArray> StepsModel::roleNames() const
{
    return {{Title, "title"}, {FigureText, "figureText"}, {StationNumber, "station"},
            {Count, "count"}, {DoneCount, "done"},        {IsCurrent, "isCurrent"},
            {Trial, "trial"}};
}

} // namespace matside
