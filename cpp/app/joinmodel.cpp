// SPDX-License-Identifier: MIT
#include "app/joinmodel.h"

#include "app/figures.h"
#include "app/joinwords.h"
#include "app/reply.h"
#include "app/wording.h"
#include "length/read.h"
#include "made/placing.h"
#include "made/rows.h"
#include "plan/formulas.h"
#include "plan/onstrip.h"
#include "plan/thread.h"

#include <algorithm>

namespace matside {

JoinModel::JoinModel(Workspace &workspace, Session &session, StepModel &steps)
    : m_workspace(workspace), m_session(session), m_steps(steps)
{
    connect(&m_steps, &StepModel::changed, this, [this] {
        m_layout.reset();
        emit changed();
    });
}

bool JoinModel::doing(const char *name) const
{
    return m_steps.doing() == QLatin1String(name);
}

SectionView JoinModel::section() const
{
    const Plan &plan = m_workspace.plan();
    SectionView view;
    view.backed = plan.fold.has_value();
    view.filled = plan.sashing.filler.has_value();
    view.seamMm = plan.basis.nextSeam.asMm();
    view.finishedMm = plan.basis.between.asMm();
    view.allowanceMm = plan.basis.allowance.asMm();
    view.loftMm = plan.basis.loft.asMm();
    if (plan.fold) {
        view.doubled = plan.fold->doubled;
        view.foldMm = plan.fold->under.downTo(m_workspace.project().finest).asMm();
        view.catchMm = plan.fold->catchShown.asMm();
    }
    return view;
}

QString JoinModel::title() const
{
    const int across = columns();
    const Layout &table = layout();
    const auto nameAt = [&](const std::vector<std::string> &names, int row, int column) {
        const auto index = static_cast<std::size_t>(row) * static_cast<std::size_t>(across) +
                           static_cast<std::size_t>(column);
        return index < names.size() ? toQt(names[index]) : QString();
    };
    // A block goes by its label wherever it lies; a row by its place.
    const auto name = [&](int row, int column) { return nameAt(table.labels, row, column); };
    const auto rowOf = [&](int row) { return nameAt(table.places, row, 0).left(1); };
    if (doing("join-short") && across > 1) {
        const int row = (at() / (across - 1)) % std::max(rows(), 1);
        const int column = at() % (across - 1);
        //: two blocks' names, "B2": the first is sewn to the second with a sashing between
        return tr("%1 to %2").arg(name(row, column), name(row, column + 1));
    }
    if (doing("join-row"))
        return tr("Row %1").arg(rowOf(at() % std::max(rows(), 1)));
    if (doing("join-long-row") && rows() > 1) {
        const int row = at() % (rows() - 1);
        return tr("Row %1 to %2").arg(rowOf(row), rowOf(row + 1));
    }
    return m_steps.title();
}

QString JoinModel::tells() const
{
    if (doing("join-row"))
        return tr("its raw length, as planned");
    if (doing("join-short") || doing("join-long-row"))
        //: fold under: how much of the back strip is turned under before it is sewn down
        return !m_workspace.plan().fold           ? tr("visible sashing")
               : m_workspace.plan().fold->doubled ? tr("catch")
                                                  : tr("fold under");
    return {};
}

FigureView JoinModel::figure() const
{
    return m_steps.figure();
}

FigureView JoinModel::seam() const
{
    return figureOf(m_workspace.plan().basis.nextSeam, m_workspace.project().marks(), Round::Fine);
}

FigureView JoinModel::fold() const
{
    return planFigure(m_workspace.project(), m_workspace.plan(), "fold.under");
}

FigureView JoinModel::held() const
{
    return planFigure(m_workspace.project(), m_workspace.plan(), "fold.catchShown");
}

FigureView JoinModel::missed() const
{
    const Plan &plan = m_workspace.plan();
    if (!plan.fold || plan.fold->doubled)
        return {};
    const Project &project = m_workspace.project();
    const Measures m = measures(project.system);
    // Folding this much leaves a catch under the least that holds.
    const Length under = plan.fold->under + plan.fold->fold_catch - m.leastCatch;
    return figureOf(under.downTo(project.finest) + project.finest, project.marks());
}

int JoinModel::columns() const
{
    return static_cast<int>(m_workspace.project().blocks.columns);
}

int JoinModel::rows() const
{
    return static_cast<int>(m_workspace.project().blocks.rows);
}

QVariantList JoinModel::blocks() const
{
    QVariantList list;
    const Project &project = m_workspace.project();
    const int across = columns();
    const int all = std::min(across * rows(), 900);
    const std::vector<std::string> &names = layout().labels;
    const bool shorts = doing("join-short");
    const bool longs = doing("join-long-row");
    const bool tape = measuring();
    const int row = shorts && across > 1 ? at() / (across - 1)
                    : longs              ? at()
                    : tape               ? at() % std::max(rows(), 1)
                                         : -1;
    for (int i = 0; i < all && static_cast<std::size_t>(i) < names.size(); ++i) {
        const int r = i / across;
        const int c = i % across;
        const bool now = shorts  ? r == row && (c == at() % (across - 1) || c == at() % (across - 1) + 1)
                         : longs ? r == row || r == row + 1
                                 : tape && r == row;
        const bool joined = shorts ? r < row || (r == row && c < at() % (across - 1)) : longs && r < row;
        list.append(
            QVariantMap{{QStringLiteral("block"), toQt(names[static_cast<std::size_t>(i)])},
                        {QStringLiteral("up"), designOf(project, names[static_cast<std::size_t>(i)]).turned},
                        {QStringLiteral("joined"), joined},
                        {QStringLiteral("now"), now}});
    }
    return list;
}

QVariantList JoinModel::marks() const
{
    QVariantList list;
    const Marks marks = m_workspace.project().marks();
    // From the measured first row where there is one, else from the plan (F12).
    std::vector<Length> places = m_workspace.plan().sashing.marks;
    const auto &measured = m_workspace.project().made.rows;
    if (!measured.empty() && !measured.front().joins.empty())
        places = measured.front().joins;
    for (const Length place : places)
        list.append(QVariantMap{{QStringLiteral("figure"), QVariant::fromValue(figureOf(place, marks))},
                                {QStringLiteral("mm"), place.asMm()}});
    return list;
}

Length JoinModel::plannedRow() const
{
    return m_workspace.plan().size.raw.along;
}

double JoinModel::rowMm() const
{
    const auto &measured = m_workspace.project().made.rows;
    return (measured.empty() ? plannedRow() : measured.front().length).asMm();
}

QString JoinModel::pressSays() const
{
    const bool joining = doing("join-short") || doing("join-long-row");
    return joining ? stripsPressed(m_workspace.plan()) : QString();
}

QString JoinModel::fillSays() const
{
    const bool joining = doing("join-short") || doing("join-long-row") || doing("test-join");
    return joining ? sashingsFilled(m_workspace.plan(), m_workspace.project().marks()) : QString();
}

QString JoinModel::bulkSays() const
{
    return doing("join-long-row") ? crossingsThinned(m_workspace.project(), m_workspace.plan()) : QString();
}

QString JoinModel::rowSays() const
{
    const Project &project = m_workspace.project();
    const auto &measured = project.made.rows;
    if (measured.empty())
        return {};
    const Marks marks = project.marks();
    if (measured.size() < 2)
        return tr("The first row sets the marks and the long sashings: %1 against %2 planned.")
            .arg(braced(measured.back().length, marks), braced(plannedRow(), marks));
    const Tolerances tolerances = usualTolerances(project.system);
    const RowFinding last = judgeRows(measured, project.blocks.columns, tolerances).rows.back();
    const QString off = braced(last.off.magnitude(), marks);
    const QString limit = braced(tolerances.rowPerColumn * project.blocks.columns, marks);
    switch (last.does) {
    case RowRemedy::Leave:
        return tr("This row lies within %1 of the others: leave it.").arg(braced(tolerances.crossing, marks));
    case RowRemedy::Ease:
        return tr("This row is %1 off the mean. Ease it: up to %2 goes in over %3 blocks.")
            .arg(off, limit)
            .arg(project.blocks.columns);
    default:
        return tr("This row is %1 off the mean, more than the %2 that can be eased: resew one of its seams.")
            .arg(off, limit);
    }
}

bool JoinModel::measuring() const
{
    return doing("join-row");
}

bool JoinModel::marking() const
{
    return doing("join-long-row");
}

QVariantMap JoinModel::measureRow(const QString &text)
{
    const Project &project = m_workspace.project();
    if (!measuring() || m_session.readOnly())
        return answer(false, tr("There is nothing to measure here."));
    const auto read = readLength(text.toStdString(), project.system);
    if (!read)
        return answer(false, sentence(read.error(), project.system));
    const Length planned = plannedRow();
    // Half or twice the plan is a slip of the tape, not a row.
    if (read.value() * 2 < planned || read.value() > planned * 2)
        return answer(false, tr("A row of %1 blocks measures about %2.")
                                 .arg(project.blocks.columns)
                                 .arg(figureText(planned, project.marks())));
    Project next = project;
    MadeRow row;
    row.row = std::string(1, static_cast<char>('A' + at() % 26));
    row.length = read.value();
    // The joins of a row that came out long or short stand in proportion.
    for (const Length mark : m_workspace.plan().sashing.marks)
        row.joins.push_back(mark.scaled(read.value().count(), planned.count()));
    next.made.rows.push_back(std::move(row));
    if (!m_workspace.commit("measured", next))
        return answer(false, tr("That could not be saved."));
    return answer(true, QString());
}

} // namespace matside
