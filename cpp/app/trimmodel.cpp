// SPDX-License-Identifier: MIT
#include "app/trimmodel.h"

#include "app/figures.h"
#include "app/joinwords.h"
#include "app/readings.h"
#include "app/remembered.h"
#include "bench/sides.h"

#include <algorithm>

namespace matside {

namespace {

/// Its top or bottom lies at the blade: what is measured from there is the block's height.
bool isLain(Side own)
{
    return own == Side::Top || own == Side::Bottom;
}

} // namespace

TrimModel::TrimModel(Workspace &workspace, StepModel &steps) : m_workspace(workspace), m_steps(steps)
{
    connect(&m_steps, &StepModel::changed, this, [this] {
        look();
        emit changed();
    });
    look();
}

void TrimModel::look()
{
    const Project &project = m_workspace.project();
    const Plan &plan = m_workspace.plan();
    const MadeBlock *block = trimming() ? project.made.goodBlock(m_steps.block().toStdString()) : nullptr;
    const auto readings = block ? readingsOf(*block) : std::nullopt;
    m_finding = readings ? std::optional(judge(*readings, Measured::Outline, targetOf(project, plan),
                                               usualTolerances(project.system), project.marks()))
                         : std::nullopt;
    const auto common = commonOf(project, plan);
    if (m_finding)
        m_finding = besideOthers(*m_finding, block->block, *readings, common, project, plan);
    m_remembered = block ? notedOf(m_workspace, block->block) : QString();
    TrimBlock hand;
    hand.finding = m_finding;
    hand.stitched = block ? stitchedAs(*block, plan, project.marks()) : plan.block.outline;
    hand.off = offItsSize(project, plan, {hand.stitched.along, hand.stitched.across}).has_value();
    m_first = firstCutSide(
        m_finding, trimming() && begunByLine(project, *m_steps.current(), m_steps.block().toStdString()),
        m_steps.hand());
    hand.own = own();
    if (trimming())
        hand.opposite = lineOppositeTo(project, *m_steps.current(), m_steps.block().toStdString());
    m_loggedOff = hand.off && block && block->outline ? std::optional(hand.stitched) : std::nullopt;
    m_hold = trimHoldOf(hand, plan, project.marks());
    m_drawn = m_finding;
    if (!m_drawn && m_loggedOff)
        m_drawn = judge(onMarks(readingsOfRectangle(*m_loggedOff), project.finest), Measured::Outline,
                        targetOf(project, plan), usualTolerances(project.system), project.marks());
    if (!trimming() || m_hold.holds != TrimLines::Nothing)
        m_drawn.reset();
    m_other = toQt(nextToMeasure(project, m_steps.block().toStdString()));
    m_way = trimming() ? trimWayOf(m_hold, m_finding, common, plan, m_other) : TrimWay::Cut;
}

int TrimModel::side() const
{
    const Step *step = trimming() ? m_steps.current() : nullptr;
    return step ? 1 + static_cast<int>(sidesCut(m_workspace.project(), *step, m_steps.block().toStdString()))
                : 1;
}

Side TrimModel::own() const
{
    return sideAtBlade(m_first, side(), m_steps.hand());
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
    // Turned to the blade, a side's own name would contradict where it lies: it is told where it matters.
    if (m_hold.holds != TrimLines::CutSide)
        return block.isEmpty() ? tr("Side %1 of 4").arg(side())
                               //: %1 is a block's name, "B2"; %2 counts its four sides
                               : tr("%1, side %2 of 4").arg(block).arg(side());
    const QString which = readingText(static_cast<std::size_t>(own()));
    //: %1 counts a block's four sides in the order they are cut; %2 is which of its own it is, "right"
    return block.isEmpty() ? tr("Side %1: %2").arg(side()).arg(which)
                           //: %1 is a block's name, "B2"; %2 counts its four sides; %3 is one, "right"
                           : tr("%1, side %2: %3").arg(block).arg(side()).arg(which);
}

FigureView TrimModel::figure() const
{
    if (!trimming())
        return m_steps.figure();
    const Project &project = m_workspace.project();
    const Plan &plan = m_workspace.plan();
    if (m_hold.holds == TrimLines::Nothing)
        return {};
    if (side() > 2)
        return planFigure(project, plan, isLain(own()) ? "block.trimmed.across" : "block.trimmed.along");
    // It is laid with the ruler: told on its marks.
    return figureOf(m_hold.line, project.marks());
}

FigureView TrimModel::second() const
{
    if (!trimming() || side() < 3 || m_hold.holds != TrimLines::BothLines)
        return {};
    return figureOf(m_hold.line, m_workspace.project().marks());
}

QString TrimModel::firstSays() const
{
    if (!trimming())
        return {};
    const Project &project = m_workspace.project();
    const Plan &plan = m_workspace.plan();
    return m_hold.holds == TrimLines::Nothing
               ? noFigureSays(m_finding, commonOf(project, plan), plan, project.marks())
               : trimFirstSays(m_hold, plan, project.marks(), side());
}

QString TrimModel::secondSays() const
{
    return second().valid ? trimSecondLies(side()) : QString();
}

QString TrimModel::checkSays() const
{
    if (!trimming() || m_hold.holds == TrimLines::Nothing)
        return {};
    return trimHoldCheck(m_hold, m_finding, m_workspace.project().marks(), side());
}

QVariantList TrimModel::corners() const
{
    return m_drawn ? cornersOf(departingOf(*m_drawn), times()) : QVariantList();
}

QVariantList TrimModel::planned() const
{
    return m_drawn ? plannedCorners(departingOf(*m_drawn)) : QVariantList();
}

QString TrimModel::verdict() const
{
    const Project &project = m_workspace.project();
    const Marks marks = project.marks();
    if (m_finding && m_finding->kind == FindingKind::Plain && side() > 1)
        return {}; // heeded with the first cut
    if (m_finding && trimmedToCommon(*m_finding, project)) {
        const MadeBlock *block = project.made.goodBlock(m_steps.block().toStdString());
        return trimmedToCommonSays(
            *m_finding, block ? stitchedFor(*block, m_workspace.plan(), marks) : std::nullopt, project);
    }
    if (m_finding)
        return verdictText(*m_finding, marks);
    if (!m_loggedOff)
        return {};
    //: the size of a block's stitched outline as it was logged at the hoop, not as planned
    return tr("Logged off size: stitched %1.").arg(sizeText(*m_loggedOff, marks));
}

QString TrimModel::remedy() const
{
    if (verdict().isEmpty())
        return {};
    const Project &project = m_workspace.project();
    const Plan &plan = m_workspace.plan();
    if (m_finding && trimmedToCommon(*m_finding, project))
        return trimmedToCommonDoes(plan, project.marks());
    if (m_finding)
        return remedyBeside(*m_finding, commonOf(project, plan), project, plan);
    return tr("Measure its sides and diagonals before you cut.");
}

QString TrimModel::actionText() const
{
    if (!trimming())
        return m_steps.actionText();
    return trimWaySays(m_way, m_finding, side(), m_other);
}

QString TrimModel::way() const
{
    switch (m_way) {
    case TrimWay::Measure:
        return QStringLiteral("measure");
    case TrimWay::Others:
        return QStringLiteral("others");
    case TrimWay::Common:
        return QStringLiteral("common");
    default:
        return QStringLiteral("cut");
    }
}

QString TrimModel::anywayText() const
{
    if (m_way == TrimWay::Cut || !m_finding || m_finding->kind == FindingKind::MeasureAgain)
        return {};
    //: on a button: a side of the block is cut although its measures say it should not be
    return tr("Cut it anyway");
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
    const Pair &trimmed = plan.block.trimmed;
    QVariantMap lies{{QStringLiteral("alongMm"), (isLain(own()) ? trimmed.across : trimmed.along).asMm()},
                     {QStringLiteral("acrossMm"), (isLain(own()) ? trimmed.along : trimmed.across).asMm()},
                     {QStringLiteral("allowanceMm"), m_hold.line.asMm()},
                     {QStringLiteral("side"), side()},
                     {QStringLiteral("block"), m_steps.block()},
                     {QStringLiteral("turns"), quartersTurned()}};
    lies.insert(crooked());
    return lies;
}

int TrimModel::quartersTurned() const
{
    const Side upright = m_steps.hand() == Hand::Left ? Side::Left : Side::Right;
    return (static_cast<int>(upright) - static_cast<int>(own()) + 4) % 4;
}

QVariantMap TrimModel::crooked() const
{
    if (m_hold.holds != TrimLines::CutSide || !m_finding || !m_finding->shape)
        return {};
    const bool left = m_steps.hand() == Hand::Left;
    const int quarters = quartersTurned();
    QStringList names;
    for (int at = 0; at < 4; ++at) {
        const int lies = static_cast<int>(left ? Side::Left : Side::Right) + (left ? 4 - at : at);
        names.append(readingText(static_cast<std::size_t>((lies + 4 - quarters) % 4)));
    }
    const Shape laid = m_finding->kind == FindingKind::Split
                           ? turnedBy(*m_finding->shape, -splitTurn(*m_finding->shape))
                           : laidOn(*m_finding->shape, m_first);
    const double drawn = timesDrawn({laid, m_finding->own, false});
    const QVariantList off = cornersOff(laid, m_finding->own, drawn, quarters);
    return {{QStringLiteral("names"), names},
            {QStringLiteral("times"), drawn},
            {QStringLiteral("off"), left ? mirrored(off) : off}};
}

void TrimModel::cut()
{
    if (m_way == TrimWay::Cut)
        cutSide();
}

void TrimModel::cutAnyway()
{
    if (!anywayText().isEmpty())
        cutSide();
}

void TrimModel::cutSide()
{
    if (!trimming() || side() == 4) {
        m_steps.next();
        return;
    }
    if (!m_steps.canGoNext())
        return;
    const Step &step = *m_steps.current();
    const auto line = m_hold.holds == TrimLines::BothLines ? std::optional(m_hold.line) : std::nullopt;
    (void)m_workspace.commit(
        "side-cut", withSideCut(m_workspace.project(), step, m_steps.block().toStdString(), line), step.id);
}

} // namespace matside
