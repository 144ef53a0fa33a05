// SPDX-License-Identifier: MIT
//
// How the edge runs: its corners, a circle, scallops (F16).
#include "app/edgemodel.h"
#include "app/edgewords.h"
#include "app/figures.h"
#include "app/wording.h"
#include "length/read.h"
#include "plan/curves.h"
#include "plan/parts.h"
#include "project/spelling.h"

#include <algorithm>

namespace matside {

namespace {

constexpr std::int64_t mostScallops = 99;

const ScallopPlan *scallopsOf(const Plan &plan)
{
    return plan.binding && plan.binding->bias && plan.binding->bias->scallops ? &*plan.binding->bias->scallops
                                                                              : nullptr;
}

QVariantMap oneScallop(std::int64_t count, Length chord, Length radius, Marks marks)
{
    return {{QStringLiteral("count"), static_cast<int>(count)},
            {QStringLiteral("chord"), QVariant::fromValue(figureOf(chord, marks))},
            {QStringLiteral("radius"), QVariant::fromValue(figureOf(radius, marks))},
            {QStringLiteral("chordMm"), chord.asMm()},
            {QStringLiteral("radiusMm"), radius.asMm()}};
}

/// A plate or a saucer is drawn round: quarters of an inch tell them apart.
Length stepOf(System system)
{
    return system == System::Inch ? Length::inches(0, 1, 4) : Length::mm(5);
}

Length mostRadius(const Plan &plan)
{
    return min(plan.size.finished.along, plan.size.finished.across).scaled(1, 2);
}

/// A scallop is no deeper than half its chord, which grows shorter as it grows deeper.
Length mostDepth(const Plan &plan)
{
    const ScallopPlan *scallops = scallopsOf(plan);
    if (!scallops)
        return {};
    return min(plan.size.finished.along.scaled(1, 2 * (scallops->along + 1)),
               plan.size.finished.across.scaled(1, 2 * (scallops->across + 1)));
}

} // namespace

QString EdgeModel::corner() const
{
    if (!m_workspace.plan().binding)
        return {};
    return toQt(spelling::wordFor(spelling::cornerKind, m_workspace.project().edge.corner.kind));
}

QString EdgeModel::cornerName() const
{
    if (!m_workspace.plan().binding)
        return {};
    switch (m_workspace.project().edge.corner.kind) {
    case CornerKind::Rounded:
        return tr("Rounded corners, {%1}").arg(radius().text);
    case CornerKind::Round:
        return squarePiece() ? tr("A circle") : tr("Round ends");
    case CornerKind::Scalloped:
        return tr("Scallops, {%1} deep").arg(depth().text);
    case CornerKind::Square:
        break;
    }
    return tr("Square corners");
}

bool EdgeModel::squarePiece() const
{
    const Pair &size = m_workspace.plan().size.finished;
    return size.along == size.across;
}

FigureView EdgeModel::radius() const
{
    return corner() == QStringLiteral("rounded")
               ? figureOf(m_workspace.plan().basis.cornerRadius, m_workspace.project().marks())
               : FigureView();
}

FigureView EdgeModel::curve() const
{
    const QString kind = corner();
    return kind == QStringLiteral("rounded") || kind == QStringLiteral("circle")
               ? figureOf(m_workspace.plan().basis.cornerRadius, m_workspace.project().marks())
               : depth();
}

FigureView EdgeModel::depth() const
{
    const ScallopPlan *scallops = scallopsOf(m_workspace.plan());
    return scallops ? figureOf(scallops->depth, m_workspace.project().marks()) : FigureView();
}

int EdgeModel::scallopsAlong() const
{
    const ScallopPlan *scallops = scallopsOf(m_workspace.plan());
    return scallops ? static_cast<int>(scallops->along) : 0;
}

int EdgeModel::scallopsAcross() const
{
    const ScallopPlan *scallops = scallopsOf(m_workspace.plan());
    return scallops ? static_cast<int>(scallops->across) : 0;
}

QVariantMap EdgeModel::topScallop() const
{
    const ScallopPlan *edge = scallopsOf(m_workspace.plan());
    return edge
               ? oneScallop(edge->along, edge->chord.along, edge->radius.along, m_workspace.project().marks())
               : QVariantMap();
}

QVariantMap EdgeModel::sideScallop() const
{
    const ScallopPlan *edge = scallopsOf(m_workspace.plan());
    return edge ? oneScallop(edge->across, edge->chord.across, edge->radius.across,
                             m_workspace.project().marks())
                : QVariantMap();
}

QString EdgeModel::biteShort() const
{
    const Plan &plan = m_workspace.plan();
    if (!onBias(plan))
        return {};
    const BiasPlan &bias = *plan.binding->bias;
    QStringList says;
    if (bias.bites > Length())
        //: the edge runs inside the stitched outline, where blocks are stippled
        says += tr("It cuts %1 into the stippling: stay-stitch first.")
                    .arg(braced(bias.bites, m_workspace.project().marks()));
    if (bias.scallops)
        //: the places between two scallops; pivot: turn the work about the needle
        says += tr("Inside points: stay-stitch, clip, pivot.");
    return figuresWhole(says.join(u' '));
}

QStringList EdgeModel::bendLines() const
{
    const Project &project = m_workspace.project();
    const Plan &plan = m_workspace.plan();
    if (!onBias(plan))
        return plan.binding ? QStringList{cornerSays()} : QStringList();
    const Marks marks = project.marks();
    const BindingPlan &binding = *plan.binding;
    const Length perimeter = binding.length - binding.cut - project.slack;
    QStringList says{
        tr("The edge is %1 round.").arg(braced(perimeter, marks)),
        tr("Cut %1 of bias from a square of %2.")
            .arg(braced(binding.length, marks, Round::UpQuarter), braced(binding.bias->square, marks))};
    if (const QString strips = biasStripsSay(project, plan); !strips.isEmpty())
        says += strips;
    return says;
}

void EdgeModel::keepCorner(const Corner &corner)
{
    if (!cornersFixed().isEmpty() || m_session.readOnly() || corner == m_workspace.project().edge.corner)
        return;
    Project next = m_workspace.project();
    next.edge.corner = corner;
    (void)m_workspace.commit("edit", next);
}

void EdgeModel::setCorner(const QString &kind)
{
    const auto *const named =
        std::find_if(spelling::cornerKind.begin(), spelling::cornerKind.end(),
                     [&](const Spelling<CornerKind> &one) { return kind == toQt(std::string(one.word)); });
    if (named == spelling::cornerKind.end())
        return;
    Corner next = m_workspace.project().edge.corner;
    next.kind = named->value;
    keepCorner(next);
}

void EdgeModel::nudgeRadius(int marks)
{
    const Plan &plan = m_workspace.plan();
    const Length step = stepOf(m_workspace.project().system);
    Corner next = m_workspace.project().edge.corner;
    next.kind = CornerKind::Rounded;
    next.radius =
        min(mostRadius(plan).downTo(step), max(step, plan.basis.cornerRadius.nearestTo(step) + step * marks));
    keepCorner(next);
}

void EdgeModel::nudgeDepth(int marks)
{
    const Plan &plan = m_workspace.plan();
    if (!scallopsOf(plan))
        return;
    // Halves of that step: a scallop is shallow.
    const Length step =
        m_workspace.project().system == System::Inch ? Length::inches(0, 1, 8) : Length::mm(2);
    Corner next = m_workspace.project().edge.corner;
    next.depth =
        max(step, min(mostDepth(plan).downTo(step), plan.basis.scallopDepth.nearestTo(step) + step * marks));
    keepCorner(next);
}

QString EdgeModel::typeCorner(const QString &text, Length most, CornerKind kind)
{
    const Project &project = m_workspace.project();
    const auto typed = readLength(text.toStdString(), project.system);
    if (!typed)
        return sentence(typed.error(), project.system);
    const bool scallop = kind == CornerKind::Scalloped;
    if (typed.value() <= Length() || typed.value() > most) {
        const QString up = figureText(most, project.marks(), Round::Down);
        return scallop ? tr("A scallop’s depth is more than nothing and no more than %1.").arg(up)
                       : tr("A corner’s radius is more than nothing and no more than %1.").arg(up);
    }
    Corner next = project.edge.corner;
    next.kind = kind;
    (scallop ? next.depth : next.radius) = typed.value();
    keepCorner(next);
    return {};
}

QString EdgeModel::enterRadius(const QString &text)
{
    return typeCorner(text, mostRadius(m_workspace.plan()), CornerKind::Rounded);
}

QString EdgeModel::enterDepth(const QString &text)
{
    return typeCorner(text, mostDepth(m_workspace.plan()), CornerKind::Scalloped);
}

void EdgeModel::nudgeScallops(bool along, int by)
{
    const ScallopPlan *scallops = scallopsOf(m_workspace.plan());
    if (!scallops)
        return;
    Corner next = m_workspace.project().edge.corner;
    const std::int64_t now = along ? scallops->along : scallops->across;
    (along ? next.along : next.across) = std::clamp<std::int64_t>(now + by, 1, mostScallops);
    keepCorner(next);
}

} // namespace matside
