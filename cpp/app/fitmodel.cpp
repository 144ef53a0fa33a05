// SPDX-License-Identifier: MIT
#include "app/fitmodel.h"

#include "app/fielditems.h"
#include "app/figures.h"
#include "app/matsview.h"
#include "app/prints.h"
#include "app/reply.h"
#include "app/wording.h"
#include "project/codec.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace matside {

namespace {

/// What exists of the piece, kind by kind, as counts after their names: one and many read alike.
QString madeWords(const Made &made)
{
    std::int64_t blocks = 0, strips = 0, sashings = 0, binding = 0, seams = 0;
    for (const MadeBlock &block : made.blocks)
        blocks += block.good() ? 1 : 0;
    const auto is = [](const MadeCut &cut, std::initializer_list<Does> kinds) {
        return std::any_of(kinds.begin(), kinds.end(), [&](Does does) {
            const std::string name = nameOf(does);
            return cut.does == name || cut.does.starts_with(name + '/');
        });
    };
    for (const MadeCut &cut : made.cut) {
        const std::int64_t good = cut.count - cut.spoiled;
        strips += is(cut, {Does::CutStrip}) ? good : 0;
        sashings += is(cut, {Does::CutShort, Does::CutLong}) ? good : 0;
        binding += is(cut, {Does::CutBinding}) ? good : 0;
        seams += is(cut, {Does::JoinShort, Does::JoinLongRow}) ? good : 0;
    }
    QStringList told;
    const auto tell = [&told](const QString &name, std::int64_t count) {
        if (count > 0)
            told.append(name.arg(count));
    };
    //: each layer of a hoop strip is cut for itself
    tell(FitModel::tr("layers of hoop strips cut %1"), strips);
    tell(FitModel::tr("blocks stitched %1"), blocks);
    //: sashing: the strip between two blocks
    tell(FitModel::tr("sashings cut %1"), sashings);
    tell(FitModel::tr("joins sewn %1"), seams);
    tell(FitModel::tr("binding strips cut %1"), binding);
    //: %1: a list of what is made, each with its count
    return told.isEmpty() ? QString()
                          : FitModel::tr("Made already: %1.").arg(told.join(QStringLiteral(", ")));
}

} // namespace

FitModel::FitModel(Workspace &workspace)
    : m_workspace(workspace), m_fields(workspace), m_figures(workspace), m_problems(workspace),
      m_files(workspace)
{
    connect(&m_workspace, &Workspace::changed, this, &FitModel::refresh);
    refresh();
}

void FitModel::refresh()
{
    const Project &project = m_workspace.project();
    const Plan &plan = m_workspace.plan();
    m_fields.refresh();
    m_figures.refresh();
    m_problems.refresh();
    FigureView along = planFigure(project, plan, "size.finished.along");
    FigureView across = planFigure(project, plan, "size.finished.across");
    if (along != m_along || across != m_across) {
        m_along = std::move(along);
        m_across = std::move(across);
        emit sizeChanged();
    }
    if (FigureView block = figureOf(project.blocks.width, project.marks()); block != m_block) {
        m_block = std::move(block);
        emit blockChanged();
    }
    TableView drawing = tableView(project, plan);
    QVariantList mats = matsView(project, plan);
    if (drawing != m_drawing || mats != m_mats) {
        m_drawing = std::move(drawing);
        m_mats = std::move(mats);
        emit drawingChanged();
    }
    // Under a dragging finger nothing is made.
    if (!m_workspace.previewing())
        tellMade(madeWords(project.made));
    if (QVariantMap cloths = clothsDrawn(project); cloths != m_cloths) {
        m_cloths = std::move(cloths);
        emit clothsChanged();
    }
}

void FitModel::tellMade(const QString &made)
{
    if (made == m_madeSays)
        return;
    m_madeSays = made;
    emit madeChanged();
}

std::optional<Project> FitModel::with(const QString &pointer, const OfferValue &value) const
{
    const Field *field = m_fields.find(pointer);
    if (!field)
        return std::nullopt;
    Project next = m_workspace.project();
    // A square block stays square while its width is changed.
    const bool square = pointer == QStringLiteral("/blocks/width") && next.blocks.width == next.blocks.height;
    field->put(next, value);
    if (square)
        next.blocks.height = next.blocks.width;
    return next;
}

void FitModel::takeOffer(int row, int index)
{
    if (const Offer *offer = m_problems.offer(row, index))
        (void)m_workspace.commitText("offer", applyOffer(m_workspace.shownText(), *offer));
}

void FitModel::nudge(const QString &pointer, int steps)
{
    const Field *field = m_fields.find(pointer);
    if (!field)
        return;
    const OfferValue value =
        nudged(*field, field->get(m_workspace.project(), m_workspace.plan()), steps, m_workspace.project());
    if (const auto next = with(pointer, value))
        (void)m_workspace.commit("edit", *next);
}

QVariantMap FitModel::enter(const QString &pointer, const QString &text)
{
    const Field *field = m_fields.find(pointer);
    if (!field)
        return answer(false, tr("This cannot be changed here."));
    const auto read = readEntry(*field, text, m_workspace.project());
    if (!read)
        return answer(false, read.error().says);
    const auto next = with(pointer, read.value());
    const bool saved = next && m_workspace.commit("edit", *next);
    return answer(saved, saved ? QString() : tr("That could not be saved."));
}

QVariantMap FitModel::addItem(const QString &list)
{
    const auto next = withAnother(m_workspace.project(), list.toStdString());
    if (!next)
        return answer(false, next.error());
    const bool cloths = list == QStringLiteral("/cloths");
    const bool saved = m_workspace.commit(cloths ? "add-cloth" : "add-ruler", next.value());
    QVariantMap said = answer(saved, saved ? QString() : tr("That could not be saved."));
    const std::size_t count = cloths ? next.value().cloths.size() : next.value().rulers.size();
    said.insert(QStringLiteral("item"), QStringLiteral("%1/%2").arg(list).arg(count - 1));
    return said;
}

QVariantMap FitModel::takeItemAway(const QString &item)
{
    const auto next = withoutItem(m_workspace.project(), item.toStdString());
    if (!next)
        return answer(false, next.error());
    const bool cloth = item.startsWith(QStringLiteral("/cloths"));
    const bool saved = m_workspace.commit(cloth ? "take-cloth-away" : "take-ruler-away", next.value());
    if (saved)
        emit itemTakenAway();
    return answer(saved, saved ? QString() : tr("That could not be saved."));
}

void FitModel::choose(const QString &pointer, const QVariant &value)
{
    OfferValue chosen = value.toString().toStdString();
    if (value.typeId() == QMetaType::Bool)
        chosen = value.toBool();
    if (const auto next = with(pointer, chosen))
        (void)m_workspace.commit("edit", *next);
}

QVariantList FitModel::marks(const QString &) const
{
    QVariantList list;
    const Project &project = m_workspace.project();
    if (project.system == System::Metric)
        return list;
    const std::int64_t parts = std::min<std::int64_t>(Length::inches(1).floorDiv(project.finest), 16);
    for (std::int64_t num = 1; num < parts; ++num) {
        const std::int64_t common = std::gcd(num, parts);
        list.append(QVariantMap{
            {QStringLiteral("num"), QString::number(num / common)},
            {QStringLiteral("den"), QString::number(parts / common)},
            {QStringLiteral("text"), QStringLiteral("%1/%2").arg(num / common).arg(parts / common)}});
    }
    return list;
}

void FitModel::beginDrag(const QString &pointer)
{
    if (m_fields.find(pointer))
        (void)m_workspace.settle("drag");
}

void FitModel::dragTo(const QString &pointer, double mm)
{
    const Field *field = m_fields.find(pointer);
    if (!field || field->kind != FieldKind::Length || !std::isfinite(mm) || std::abs(mm) > 1e7)
        return;
    const Length step = stepOfField(*field, m_workspace.project());
    const Length snapped = Length::ticks(std::llround(mm * Length::ticksPerMm)).nearestTo(step);
    const auto value = checkEntry(*field, snapped, m_workspace.project());
    const auto next = with(pointer, value ? value.value() : value.error().nearest);
    if (next && *next != m_workspace.project())
        m_workspace.preview(*next);
}

void FitModel::dragCorner(double alongMm, double acrossMm)
{
    const Plan &plan = m_workspace.plan();
    const auto blocks = [](double wanted, Length edge, Length block, Length sashing, std::int64_t now) {
        const double pitch = (block + sashing).asMm();
        if (pitch <= 0 || !std::isfinite(wanted))
            return now;
        return std::clamp<std::int64_t>(std::llround((wanted - edge.asMm() + sashing.asMm()) / pitch), 1,
                                        100);
    };
    Project next = m_workspace.project();
    const Length edge = plan.size.finished.along - plan.size.outline.along;
    next.blocks.columns =
        blocks(alongMm, edge, next.blocks.width, plan.sashing.finished, next.blocks.columns);
    next.blocks.rows = blocks(acrossMm, edge, next.blocks.height, plan.sashing.finished, next.blocks.rows);
    if (next != m_workspace.project())
        m_workspace.preview(next);
}

void FitModel::endDrag()
{
    (void)m_workspace.settle("drag");
}

} // namespace matside
