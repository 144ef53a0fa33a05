// SPDX-License-Identifier: MIT
#include "app/blockmeasure.h"

#include "app/figures.h"
#include "app/findings.h"
#include "app/readings.h"
#include "made/commonsize.h"

#include <algorithm>

namespace matside {

BlockMeasure::BlockMeasure(Workspace &workspace, Session &session, StepModel &steps)
    : m_workspace(workspace), m_session(session), m_steps(steps)
{
    connect(&m_steps, &StepModel::changed, this, [this] {
        if (m_block != m_steps.block())
            begin();
    });
}

void BlockMeasure::begin()
{
    m_block = m_steps.block();
    const Project &project = m_workspace.project();
    const MadeBlock *block = project.made.goodBlock(m_block.toStdString());
    m_readings = readingsOfRectangle(m_workspace.plan().block.outline);
    if (block && block->outline)
        m_readings = readingsOfRectangle({(*block->outline)[0], (*block->outline)[1]});
    if (block)
        m_readings = readingsOf(*block).value_or(m_readings);
    // Readings stand on her ruler's marks: that is how they are read.
    m_readings = onMarks(m_readings, project.finest);
    judgeIt();
}

void BlockMeasure::judgeIt()
{
    const Project &project = m_workspace.project();
    m_finding = judge(m_readings, Measured::Outline, targetOf(m_workspace.plan()),
                      usualTolerances(project.system), project.marks());
    emit changed();
}

QVariantList BlockMeasure::readings() const
{
    QVariantList list;
    for (int at = 0; at < readingCount; ++at) {
        QVariantMap view = readingView(m_readings, at, m_workspace.project().marks());
        view[QStringLiteral("suspect")] =
            m_finding && m_finding->suspect && static_cast<int>(*m_finding->suspect) == at;
        list.append(view);
    }
    return list;
}

QString BlockMeasure::kind() const
{
    return m_finding ? toQt(nameOf(m_finding->kind)) : QString();
}

QString BlockMeasure::verdict() const
{
    return m_finding ? verdictText(*m_finding, m_workspace.project().marks()) : QString();
}

QString BlockMeasure::remedy() const
{
    return m_finding ? remedyText(*m_finding, m_workspace.project().marks()) : QString();
}

QVariantList BlockMeasure::corners() const
{
    QVariantList list;
    if (!m_finding || !m_finding->shape)
        return list;
    // Each corner's departure from the mean rectangle is drawn several times over.
    const Shape &shape = *m_finding->shape;
    Point middle;
    for (const Point &corner : shape.corner) {
        middle.x += corner.x / 4;
        middle.y += corner.y / 4;
    }
    const auto w = static_cast<double>(m_finding->own.along.count());
    const auto h = static_cast<double>(m_finding->own.across.count());
    const double longest = std::max({w, h, 1.0});
    for (std::size_t i = 0; i < 4; ++i) {
        const double x = (i == 0 || i == 3 ? -w : w) / 2;
        const double y = (i < 2 ? -h : h) / 2;
        const double dx = (shape.corner[i].x - middle.x - x) * m_times;
        const double dy = (shape.corner[i].y - middle.y - y) * m_times;
        list.append(QVariantMap{{QStringLiteral("x"), (x + dx) / longest},
                                {QStringLiteral("y"), (y + dy) / longest}});
    }
    return list;
}

void BlockMeasure::nudge(int reading, int marks)
{
    if (nudgeReading(m_readings, reading, marks, m_workspace.project().finest))
        judgeIt();
}

QString BlockMeasure::enter(int reading, const QString &text)
{
    QString wrong = typeReading(m_readings, reading, text, m_workspace.project().system);
    if (wrong.isEmpty())
        judgeIt();
    return wrong;
}

bool BlockMeasure::save()
{
    Project next = m_workspace.project();
    MadeBlock *block = next.made.goodBlock(m_block.toStdString());
    if (!block || m_session.readOnly())
        return false;
    block->sides = m_readings.sides;
    block->diagonals = m_readings.diagonals;
    return m_workspace.commit("measured", next);
}

QString BlockMeasure::commonSays() const
{
    const Project &project = m_workspace.project();
    const Tolerances tolerances = usualTolerances(project.system);
    const auto sizes = ownSizes(project, tolerances);
    if (sizes.size() < 2)
        return {};
    const Plan &plan = m_workspace.plan();
    const CommonSize common =
        commonSize(sizes, plan.block.outline, plan.block.outline, tolerances, project.marks());
    if (common.asPlanned && common.outliers.empty())
        return {};
    const Marks marks = project.marks();
    QStringList lines;
    for (const std::string &name : common.outliers)
        lines.append(tr("%1 is too small for the others: make it again.").arg(toQt(name)));
    if (!common.asPlanned) {
        Project with = project;
        with.blocks.width = common.outline.along;
        with.blocks.height = common.outline.across;
        const Plan after = matside::plan(with);
        lines.append(tr("Common size %1: trim to %2; the piece finishes %3 × %4.")
                         .arg(braced(common.outline.along, marks), braced(after.block.trimmed.along, marks),
                              braced(after.size.finished.along, marks),
                              braced(after.size.finished.across, marks)));
    }
    for (const std::string &name : common.becomeWrong)
        lines.append(tr("%1 is cut already for another size.").arg(toQt(name)));
    return lines.join(u' ');
}

void BlockMeasure::takeCommonSize()
{
    Project next = m_workspace.project();
    const Plan &plan = m_workspace.plan();
    const Tolerances tolerances = usualTolerances(next.system);
    const CommonSize common = commonSize(ownSizes(next, tolerances), plan.block.outline, plan.block.outline,
                                         tolerances, next.marks());
    if (common.asPlanned || m_session.readOnly())
        return;
    next.blocks.width = common.outline.along;
    next.blocks.height = common.outline.across;
    (void)m_workspace.commit("common-size", next);
    judgeIt();
}

} // namespace matside
