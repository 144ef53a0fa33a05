// SPDX-License-Identifier: MIT
#include "app/trimmodel.h"

#include "app/figures.h"
#include "app/joinwords.h"

#include <algorithm>

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

QVariantMap TrimModel::apart() const
{
    const Plan &plan = m_workspace.plan();
    const std::int64_t full = plan.strip.perStrip;
    if (m_steps.doing() != QStringLiteral("rough-apart") || full < 1)
        return {};
    const std::int64_t before = m_steps.done() / full * full;
    const auto here = static_cast<std::size_t>(std::clamp<std::int64_t>(m_steps.count() - before, 1, full));
    QVariantList starts, cuts;
    for (std::size_t i = 0; i < std::min(here, plan.strip.drawn.size()); ++i) {
        const Length start = plan.strip.drawn[i];
        if (i > 0)
            cuts.append((start - plan.strip.gapAfter(static_cast<std::int64_t>(i)).scaled(1, 2)).asMm());
        starts.append(start.asMm());
    }
    const Length last = plan.strip.drawn[static_cast<std::size_t>(starts.size()) - 1];
    return {{QStringLiteral("lengthMm"), (last + plan.block.outline.along + plan.strip.end).asMm()},
            {QStringLiteral("widthMm"), plan.strip.width.asMm()},
            {QStringLiteral("blockMm"),
             QVariantList{plan.block.outline.along.asMm(), plan.block.outline.across.asMm()}},
            {QStringLiteral("starts"), starts},
            {QStringLiteral("cuts"), cuts},
            {QStringLiteral("done"), qlonglong(m_steps.done() - before)}};
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
