// SPDX-License-Identifier: MIT
//
// What the Edge station takes: readings and pins; its corners are in edgecorners.cpp, its sentences in
// edgewords.cpp.
#include "app/edgemodel.h"

#include "app/figures.h"
#include "app/readings.h"
#include "app/wording.h"
#include "length/read.h"
#include "made/rows.h"
#include "plan/formulas.h"
#include "plan/parts.h"

#include <algorithm>

namespace matside {

namespace {

constexpr std::int64_t mostPins = 9999;

} // namespace

EdgeModel::EdgeModel(Workspace &workspace, Session &session, StepModel &steps)
    : m_workspace(workspace), m_session(session), m_steps(steps)
{
    connect(&m_steps, &StepModel::changed, this, [this] {
        m_reckoned.reset();
        if (!measured())
            m_taken.reset();
        emit changed();
    });
    connect(&m_workspace, &Workspace::opened, this, [this] { m_taken.reset(); });
}

QString EdgeModel::phase() const
{
    const QString doing = m_steps.doing();
    if (doing == QStringLiteral("square-piece"))
        return QStringLiteral("square");
    if (doing == QStringLiteral("sew-frame"))
        return QStringLiteral("frame");
    if (doing == QStringLiteral("sew-binding"))
        return QStringLiteral("bind");
    if (doing == QStringLiteral("last-look"))
        return QStringLiteral("last");
    return doing.isEmpty() ? QString() : QStringLiteral("back");
}

bool EdgeModel::beforeFrame() const
{
    const Step *step = m_steps.current();
    return m_workspace.plan().frame && step && step->figure == "size.raw.along";
}

Pair EdgeModel::squaredTo() const
{
    const SizePlan &size = m_workspace.plan().size;
    if (m_workspace.plan().frame && !beforeFrame())
        return size.finished;
    return {joinedAlong(m_workspace.project().made.rows, size.raw.along), size.raw.across};
}

EdgeView EdgeModel::view() const
{
    const Project &project = m_workspace.project();
    const Plan &plan = m_workspace.plan();
    EdgeView view;
    view.framed = plan.frame && !beforeFrame();
    view.alongMm = plan.size.finished.along.asMm();
    view.acrossMm = plan.size.finished.across.asMm();
    view.columns = static_cast<int>(project.blocks.columns);
    view.rows = static_cast<int>(project.blocks.rows);
    view.blockAlongMm = plan.block.outline.along.asMm();
    view.blockAcrossMm = plan.block.outline.across.asMm();
    view.sashingMm = plan.basis.finished.asMm();
    view.outsideMm = (plan.size.finished.along - plan.size.outline.along).scaled(1, 2).asMm();
    if (beforeFrame()) { // the rows as they are joined, in their own allowance
        view.alongMm = plan.size.raw.along.asMm();
        view.acrossMm = plan.size.raw.across.asMm();
        view.outsideMm = plan.basis.allowance.asMm();
    }
    if (plan.binding) {
        view.seamMm = plan.basis.edgeSeam.asMm();
        view.radiusMm = plan.basis.cornerRadius.asMm();
        if (plan.binding->bias)
            view.bitesMm = plan.binding->bias->bites.asMm();
        if (plan.binding->bias && plan.binding->bias->scallops) {
            const ScallopPlan &scallops = *plan.binding->bias->scallops;
            view.depthMm = scallops.depth.asMm();
            view.scallopsAlong = static_cast<int>(scallops.along);
            view.scallopsAcross = static_cast<int>(scallops.across);
        }
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

FigureView EdgeModel::bindingReach() const
{
    const Project &project = m_workspace.project();
    const Measures &m = measures(project.system);
    return figureOf(project.edge.sewn == Sewn::Hand ? m.bindingHand : m.bindingMachine, project.marks());
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
    return onMarks(readingsOfRectangle(squaredTo()), project.finest);
}

QVariantList EdgeModel::readings() const
{
    QVariantList list;
    const Readings readings = read();
    const Taken read = taken();
    for (int at = 0; at < readingCount; ++at) {
        QVariantMap view = readingView(readings, at, m_workspace.project().marks());
        view[QStringLiteral("taken")] = read[static_cast<std::size_t>(at)];
        list.append(view);
    }
    return list;
}

Taken EdgeModel::taken() const
{
    Taken read{};
    if (!measured() || m_taken)
        return m_taken.value_or(read);
    // Of what was kept before, a reading that stands as planned may never have been taken; where all six
    // stand so, she said that they do.
    Readings now = this->read();
    Readings planned = onMarks(readingsOfRectangle(squaredTo()), m_workspace.project().finest);
    for (int at = 0; at < readingCount; ++at)
        read[static_cast<std::size_t>(at)] = now == planned || readingAt(now, at) != readingAt(planned, at);
    return read;
}

bool EdgeModel::allRead() const
{
    const Taken read = taken();
    return std::all_of(read.begin(), read.end(), [](bool each) { return each; });
}

QString EdgeModel::unreadSays() const
{
    const Taken read = taken();
    const auto left = std::count(read.begin(), read.end(), false);
    //: of the six readings of the whole piece
    return left > 0 ? tr("%1 of 6 not yet read").arg(left) : QString();
}

const EdgeModel::Reckoned &EdgeModel::reckoned() const
{
    if (m_reckoned)
        return *m_reckoned;
    const Project &project = m_workspace.project();
    m_reckoned.emplace();
    if (measured())
        m_reckoned->finding = judgePiece(read(), usualTolerances(project.system), project.marks());
    m_reckoned->lay = layBinding(project, m_workspace.plan());
    return *m_reckoned;
}

bool EdgeModel::again() const
{
    const auto &found = reckoned().finding;
    return found && found->measureAgain;
}

Departing EdgeModel::departing() const
{
    const auto &found = reckoned().finding;
    Departing departing{{}, squaredTo(), !found || found->good};
    if (found && found->shape)
        departing.shape = laidOn(*found->shape, found->order.front());
    return departing;
}

QVariantList EdgeModel::corners() const
{
    return cornersOf(departing(), times());
}

QVariantList EdgeModel::planned() const
{
    return plannedCorners(departing());
}

double EdgeModel::times() const
{
    return timesDrawn(departing());
}

bool EdgeModel::squareEnough() const
{
    const auto &found = reckoned().finding;
    return found && !found->measureAgain && found->good && allRead();
}

bool EdgeModel::joinsClear() const
{
    const auto &lay = reckoned().lay;
    return lay && lay->clears == JoinsClear::Both && !lay->oneMore;
}

void EdgeModel::keep(const Readings &readings, int taken)
{
    if (m_session.readOnly())
        return;
    Taken read = this->taken();
    read[static_cast<std::size_t>(taken)] = true;
    m_taken = read;
    Project next = m_workspace.project();
    const std::string rest = next.made.piece ? next.made.piece->rest : std::string();
    next.made.piece = MadePiece{readings.sides, readings.diagonals, rest};
    // Read just as it stood the piece is the same, and yet another reading is taken.
    if (m_workspace.commit("measured", next))
        emit changed();
}

void EdgeModel::nudge(int reading, int marks)
{
    Readings readings = read();
    if (nudgeReading(readings, reading, marks, m_workspace.project().finest))
        keep(readings, reading);
}

QString EdgeModel::enter(int reading, const QString &text)
{
    Readings readings = read();
    QString wrong = typeReading(readings, reading, text, m_workspace.project().system);
    if (wrong.isEmpty())
        keep(readings, reading);
    return wrong;
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

} // namespace matside
