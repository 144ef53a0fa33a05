// SPDX-License-Identifier: MIT
#include "app/trimmodel.h"

#include "app/figures.h"
#include "app/findings.h"
#include "app/joinwords.h"
#include "app/readings.h"
#include "bench/sides.h"

#include <algorithm>

namespace matside {

TrimModel::TrimModel(Workspace &workspace, StepModel &steps) : m_workspace(workspace), m_steps(steps)
{
    connect(&m_steps, &StepModel::changed, this, &TrimModel::changed);
}

int TrimModel::side() const
{
    const Step *step = trimming() ? m_steps.current() : nullptr;
    return step ? 1 + static_cast<int>(sidesCut(m_workspace.project(), *step, m_steps.block().toStdString()))
                : 1;
}

bool TrimModel::trimming() const
{
    return m_steps.sided();
}

QString TrimModel::title() const
{
    if (!trimming())
        return m_steps.title();
    const QString block = m_steps.block();
    //: %1 is a block's name, "B2"; %2 counts its four sides
    return block.isEmpty() ? tr("Side %1 of 4").arg(side()) : tr("%1, side %2 of 4").arg(block).arg(side());
}

TrimHold TrimModel::hold() const
{
    return trimHoldOf(finding(), loggedOff().has_value(), m_workspace.plan(), m_workspace.project().marks(),
                      side());
}

FigureView TrimModel::figure() const
{
    if (!trimming())
        return m_steps.figure();
    const Project &project = m_workspace.project();
    const Plan &plan = m_workspace.plan();
    const TrimHold now = hold();
    if (now.holds == TrimLines::Nothing)
        return {};
    if (side() == 3)
        return planFigure(project, plan, "block.trimmed.along");
    if (side() == 4)
        return planFigure(project, plan, "block.trimmed.across");
    return figureOf(now.line, project.marks(), Round::Fine);
}

FigureView TrimModel::second() const
{
    if (!trimming() || side() < 3)
        return {};
    const TrimHold now = hold();
    return now.holds == TrimLines::BothLines ? figureOf(now.line, m_workspace.project().marks(), Round::Fine)
                                             : FigureView();
}

QString TrimModel::firstSays() const
{
    if (!trimming())
        return {};
    const Project &project = m_workspace.project();
    const Plan &plan = m_workspace.plan();
    const TrimHold now = hold();
    return now.holds == TrimLines::Nothing
               ? noFigureSays(finding(), commonOf(project, plan), plan, project.marks())
               : trimFirstSays(now, plan, project.marks(), side());
}

QString TrimModel::secondSays() const
{
    return second().valid ? trimSecondLies(side()) : QString();
}

QString TrimModel::checkSays() const
{
    if (!trimming())
        return {};
    const TrimHold now = hold();
    return now.holds == TrimLines::Nothing
               ? QString()
               : trimHoldCheck(now, finding(), m_workspace.project().marks(), side());
}

const MadeBlock *TrimModel::block() const
{
    return trimming() ? m_workspace.project().made.goodBlock(m_steps.block().toStdString()) : nullptr;
}

std::optional<Finding> TrimModel::finding() const
{
    const Project &project = m_workspace.project();
    const MadeBlock *made = block();
    const auto readings = made ? readingsOf(*made) : std::nullopt;
    if (!readings)
        return std::nullopt;
    return judge(*readings, Measured::Outline, targetOf(project, m_workspace.plan()),
                 usualTolerances(project.system), project.marks());
}

std::optional<Pair> TrimModel::loggedOff() const
{
    const MadeBlock *made = block();
    if (!made || !made->outline || !offItsSize(m_workspace.project(), m_workspace.plan(), *made->outline))
        return std::nullopt;
    return Pair{(*made->outline)[0], (*made->outline)[1]};
}

QVariantList TrimModel::corners() const
{
    if (!trimming() || hold().holds != TrimLines::Nothing)
        return {};
    if (const auto found = finding())
        return cornersOf(*found, timesCrooked);
    const Project &project = m_workspace.project();
    const Readings logged = onMarks(readingsOfRectangle(loggedOff().value_or(Pair())), project.finest);
    return cornersOf(judge(logged, Measured::Outline, targetOf(project, m_workspace.plan()),
                           usualTolerances(project.system), project.marks()),
                     1);
}

QString TrimModel::verdict() const
{
    const Project &project = m_workspace.project();
    const auto found = finding();
    if (found && found->kind == FindingKind::Plain && side() > 1)
        return {}; // heeded with the first cut
    if (found)
        return verdictText(*found, project.marks());
    const auto logged = loggedOff();
    if (!logged)
        return {};
    //: the size of a block's stitched outline as it was logged at the hoop, not as planned
    return tr("Logged off size: %1.").arg(sizeText(*logged, project.marks()));
}

QString TrimModel::remedy() const
{
    if (verdict().isEmpty())
        return {};
    if (const auto found = finding())
        return remedyText(*found, m_workspace.project().marks());
    return tr("Measure its sides and diagonals before you cut.");
}

QString TrimModel::actionText() const
{
    if (!trimming())
        return m_steps.actionText();
    //: the blade has cut this side and is closed again
    return tr("Side %1 cut, blade closed").arg(side());
}

QVariantMap TrimModel::apart() const
{
    const Plan &plan = m_workspace.plan();
    const std::int64_t full = plan.strip.perStrip;
    if (m_steps.doing() != QStringLiteral("rough-apart") || full < 1)
        return {};
    const std::int64_t before = m_steps.done() / full * full;
    const auto here = static_cast<std::size_t>(std::clamp<std::int64_t>(m_steps.count() - before, 1, full));
    QVariantList starts, cuts, names;
    const auto &blocks = m_workspace.project().made.blocks;
    std::int64_t good = 0;
    for (const MadeBlock &block : blocks)
        if (block.good() && ++good > before && names.size() < static_cast<qsizetype>(here))
            names.append(toQt(block.block));
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
            {QStringLiteral("names"), names},
            {QStringLiteral("cuts"), cuts},
            {QStringLiteral("done"), qlonglong(m_steps.done() - before)}};
}

QVariantMap TrimModel::lies() const
{
    if (!trimming())
        return {};
    const Plan &plan = m_workspace.plan();
    // The block is turned a quarter for each side: what lies across the blade changes with it.
    const bool turned = side() % 2 == 0;
    const Pair &trimmed = plan.block.trimmed;
    return {{QStringLiteral("alongMm"), (turned ? trimmed.across : trimmed.along).asMm()},
            {QStringLiteral("acrossMm"), (turned ? trimmed.along : trimmed.across).asMm()},
            {QStringLiteral("allowanceMm"), hold().line.asMm()},
            {QStringLiteral("side"), side()}};
}

void TrimModel::cut()
{
    if (!trimming() || side() == 4) {
        m_steps.next();
        return;
    }
    if (!m_steps.canGoNext())
        return;
    const Step &step = *m_steps.current();
    (void)m_workspace.commit(
        "side-cut", withSideCut(m_workspace.project(), step, m_steps.block().toStdString()), step.id);
}

} // namespace matside
