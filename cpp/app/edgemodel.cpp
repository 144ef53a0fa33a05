// SPDX-License-Identifier: MIT
//
// What the Edge station takes: readings, pins, corners. Its sentences are in edgewords.cpp.
#include "app/edgemodel.h"

#include "app/figures.h"
#include "app/findings.h"
#include "length/read.h"
#include "plan/formulas.h"
#include "plan/parts.h"

#include <algorithm>

namespace matside {

namespace {

constexpr std::int64_t mostPins = 9999;

Length &readingAt(Readings &readings, int at)
{
    return at < 4 ? readings.sides[static_cast<std::size_t>(at)]
                  : readings.diagonals[static_cast<std::size_t>(at - 4)];
}

} // namespace

EdgeModel::EdgeModel(Workspace &workspace, Session &session, StepModel &steps)
    : m_workspace(workspace), m_session(session), m_steps(steps)
{
    connect(&m_steps, &StepModel::changed, this, &EdgeModel::changed);
}

QString EdgeModel::phase() const
{
    const QString doing = m_steps.doing();
    if (doing == QStringLiteral("square-piece"))
        return QStringLiteral("square");
    if (doing == QStringLiteral("sew-binding"))
        return QStringLiteral("bind");
    if (doing == QStringLiteral("last-look"))
        return QStringLiteral("last");
    return doing.isEmpty() ? QString() : QStringLiteral("back");
}

EdgeView EdgeModel::view() const
{
    const Project &project = m_workspace.project();
    const Plan &plan = m_workspace.plan();
    EdgeView view;
    view.alongMm = plan.size.finished.along.asMm();
    view.acrossMm = plan.size.finished.across.asMm();
    view.columns = static_cast<int>(project.blocks.columns);
    view.rows = static_cast<int>(project.blocks.rows);
    view.blockAlongMm = plan.block.outline.along.asMm();
    view.blockAcrossMm = plan.block.outline.across.asMm();
    view.sashingMm = plan.basis.finished.asMm();
    view.outsideMm = (plan.size.finished.along - plan.size.outline.along).scaled(1, 2).asMm();
    if (plan.binding) {
        view.seamMm = plan.basis.edgeSeam.asMm();
        view.radiusMm = plan.basis.cornerRadius.asMm();
        if (plan.binding->bias)
            view.bitesMm = plan.binding->bias->bites.asMm();
    }
    return view;
}

BindingView EdgeModel::binding() const
{
    const Project &project = m_workspace.project();
    const Measures m = measures(project.system);
    BindingView view;
    view.folded = project.edge.binding == Binding::Double;
    view.byHand = project.edge.sewn == Sewn::Hand;
    view.seamMm = m_workspace.plan().basis.edgeSeam.asMm();
    view.reachMm = (view.byHand ? m.bindingHand : m.bindingMachine).asMm();
    view.loftMm = project.loft.asMm();
    return view;
}

FigureView EdgeModel::bindingCut() const
{
    return planFigure(m_workspace.project(), m_workspace.plan(), "binding.cut");
}

FigureView EdgeModel::bindingFolded() const
{
    const Plan &plan = m_workspace.plan();
    if (!plan.binding || m_workspace.project().edge.binding == Binding::Single)
        return {};
    return figureOf(plan.binding->cut.scaled(1, 2), m_workspace.project().marks());
}

FigureView EdgeModel::bindingSeam() const
{
    return figureOf(m_workspace.plan().basis.edgeSeam, m_workspace.project().marks(), Round::Fine);
}

bool EdgeModel::measured() const
{
    return m_workspace.project().made.piece.has_value();
}

Readings EdgeModel::read() const
{
    const Project &project = m_workspace.project();
    if (const auto &piece = project.made.piece)
        return {piece->sides, piece->diagonals};
    // She starts from the plan, on the marks of her own tape.
    const Pair &raw = m_workspace.plan().size.raw;
    const auto onMark = [&](Length length) { return length.nearestTo(project.finest); };
    const Length along = onMark(raw.along);
    const Length across = onMark(raw.across);
    const Length diagonal = onMark(diagonalOf(raw.along, raw.across));
    return {{along, across, along, across}, {diagonal, diagonal}};
}

QVariantList EdgeModel::readings() const
{
    QVariantList list;
    Readings readings = read();
    for (int at = 0; at < 6; ++at)
        list.append(QVariantMap{
            {QStringLiteral("says"), readingText(static_cast<std::size_t>(at))},
            {QStringLiteral("figure"),
             QVariant::fromValue(figureOf(readingAt(readings, at), m_workspace.project().marks()))}});
    return list;
}

std::optional<PieceFinding> EdgeModel::finding() const
{
    const Project &project = m_workspace.project();
    if (!measured())
        return std::nullopt;
    return judgePiece(read(), usualTolerances(project.system), project.marks());
}

bool EdgeModel::squareEnough() const
{
    const auto found = finding();
    return found && !found->measureAgain && found->good;
}

bool EdgeModel::joinsClear() const
{
    const auto lay = layBinding(m_workspace.project(), m_workspace.plan());
    return lay && lay->clears == JoinsClear::Both && !lay->oneMore;
}

void EdgeModel::keep(const Readings &readings)
{
    if (m_session.readOnly())
        return;
    Project next = m_workspace.project();
    const std::string rest = next.made.piece ? next.made.piece->rest : std::string();
    next.made.piece = MadePiece{readings.sides, readings.diagonals, rest};
    (void)m_workspace.commit("measured", next);
}

void EdgeModel::nudge(int reading, int marks)
{
    if (reading < 0 || reading > 5)
        return;
    Readings readings = read();
    Length &value = readingAt(readings, reading);
    const Length mark = m_workspace.project().finest;
    const Length next = value.nearestTo(mark) + mark * marks;
    if (next <= Length())
        return;
    value = next;
    keep(readings);
}

QString EdgeModel::enter(int reading, const QString &text)
{
    const System system = m_workspace.project().system;
    const auto typed = readLength(text.toStdString(), system);
    if (!typed)
        return sentence(typed.error(), system);
    if (reading < 0 || reading > 5 || typed.value() <= Length())
        return tr("A reading is more than nothing.");
    Readings readings = read();
    readingAt(readings, reading) = typed.value();
    keep(readings);
    return {};
}

int EdgeModel::pinsIn() const
{
    const auto &pins = m_workspace.project().made.pins;
    return pins ? static_cast<int>(std::min(pins->in, mostPins)) : 0;
}

int EdgeModel::pinsOut() const
{
    const auto &pins = m_workspace.project().made.pins;
    return pins ? static_cast<int>(std::min(pins->out, mostPins)) : 0;
}

bool EdgeModel::pinsMatch() const
{
    const auto &pins = m_workspace.project().made.pins;
    return pins && pins->settled();
}

void EdgeModel::keepPins(bool in, std::int64_t count)
{
    if (m_session.readOnly())
        return;
    Project next = m_workspace.project();
    Pins pins = next.made.pins.value_or(Pins());
    (in ? pins.in : pins.out) = std::clamp<std::int64_t>(count, 0, mostPins);
    pins.explained = false;
    next.made.pins = pins;
    (void)m_workspace.commit("pins", next);
}

void EdgeModel::nudgePins(bool in, int by)
{
    keepPins(in, (in ? pinsIn() : pinsOut()) + by);
}

QString EdgeModel::enterPins(bool in, const QString &text)
{
    bool whole = false;
    const int count = text.trimmed().toInt(&whole);
    if (!whole || count < 0 || count > mostPins)
        return tr("A count of pins lies between 0 and %1.").arg(mostPins);
    keepPins(in, count);
    return {};
}

void EdgeModel::explainPins()
{
    if (m_session.readOnly())
        return;
    Project next = m_workspace.project();
    Pins pins = next.made.pins.value_or(Pins());
    pins.explained = true;
    next.made.pins = pins;
    (void)m_workspace.commit("pins", next);
}

bool EdgeModel::rounded() const
{
    const auto &binding = m_workspace.plan().binding;
    return binding && binding->bias;
}

FigureView EdgeModel::radius() const
{
    return rounded() ? figureOf(m_workspace.plan().basis.cornerRadius, m_workspace.project().marks())
                     : FigureView();
}

void EdgeModel::setRounded(bool rounded)
{
    if (!cornersFixed().isEmpty() || m_session.readOnly())
        return;
    Project next = m_workspace.project();
    next.edge.corner.kind = rounded ? CornerKind::Rounded : CornerKind::Square;
    (void)m_workspace.commit("edit", next);
}

void EdgeModel::keepRadius(Length radius)
{
    if (!cornersFixed().isEmpty() || m_session.readOnly() || radius <= Length())
        return;
    Project next = m_workspace.project();
    next.edge.corner.kind = CornerKind::Rounded;
    next.edge.corner.radius = radius;
    (void)m_workspace.commit("edit", next);
}

void EdgeModel::nudgeRadius(int marks)
{
    // A plate or a saucer is drawn round: quarters of an inch tell them apart.
    const Project &project = m_workspace.project();
    const Length step = project.system == System::Inch ? Length::inches(0, 1, 4) : Length::mm(5);
    const Pair &size = m_workspace.plan().size.finished;
    const Length most = min(size.along, size.across).scaled(1, 2).downTo(step);
    keepRadius(min(most, max(step, m_workspace.plan().basis.cornerRadius.nearestTo(step) + step * marks)));
}

QString EdgeModel::enterRadius(const QString &text)
{
    const Project &project = m_workspace.project();
    const auto typed = readLength(text.toStdString(), project.system);
    if (!typed)
        return sentence(typed.error(), project.system);
    const Pair &size = m_workspace.plan().size.finished;
    const Length most = min(size.along, size.across).scaled(1, 2);
    if (typed.value() <= Length() || typed.value() > most)
        return tr("A corner’s radius is more than nothing and no more than %1.")
            .arg(figureText(most, project.marks(), Round::Down));
    keepRadius(typed.value());
    return {};
}

} // namespace matside
