// SPDX-License-Identifier: MIT
#include "app/trimmodel.h"

#include "app/figures.h"
#include "app/joinwords.h"

namespace matside {

TrimModel::TrimModel(Workspace &workspace, StepModel &steps) : m_workspace(workspace), m_steps(steps)
{
    connect(&m_steps, &StepModel::changed, this, &TrimModel::follow);
    follow();
}

void TrimModel::follow()
{
    // Another block begins with its first side.
    if (m_steps.done() != m_done) {
        m_done = m_steps.done();
        m_side = 1;
    }
    emit changed();
}

bool TrimModel::trimming() const
{
    return m_steps.doing() == QStringLiteral("trim-block");
}

QString TrimModel::title() const
{
    if (!trimming())
        return m_steps.title();
    const QString block = m_steps.block();
    //: %1 is a block's name, "B2"; %2 counts its four sides
    return block.isEmpty() ? tr("Side %1 of 4").arg(m_side) : tr("%1, side %2 of 4").arg(block).arg(m_side);
}

FigureView TrimModel::figure() const
{
    if (!trimming())
        return m_steps.figure();
    const Project &project = m_workspace.project();
    const Plan &plan = m_workspace.plan();
    if (m_side == 3)
        return planFigure(project, plan, "block.trimmed.along");
    if (m_side == 4)
        return planFigure(project, plan, "block.trimmed.across");
    return figureOf(plan.basis.allowance, project.marks(), Round::Fine);
}

FigureView TrimModel::second() const
{
    if (!trimming() || m_side < 3)
        return {};
    return figureOf(m_workspace.plan().basis.allowance, m_workspace.project().marks(), Round::Fine);
}

QString TrimModel::firstSays() const
{
    return trimming() ? trimLineLies(m_side) : QString();
}

QString TrimModel::secondSays() const
{
    return trimming() ? trimSecondLies(m_side) : QString();
}

QString TrimModel::checkSays() const
{
    return trimming() ? trimCheck(m_side) : QString();
}

QString TrimModel::actionText() const
{
    if (!trimming())
        return m_steps.actionText();
    //: the blade has cut this side and is closed again
    return tr("Side %1 cut, blade closed").arg(m_side);
}

void TrimModel::cut()
{
    if (!trimming() || m_side == 4) {
        m_steps.next();
        return;
    }
    if (!m_steps.canGoNext())
        return;
    ++m_side;
    emit changed();
}

void TrimModel::back()
{
    if (!trimming() || m_side == 1) {
        m_steps.back();
        return;
    }
    --m_side;
    emit changed();
}

} // namespace matside
