// SPDX-License-Identifier: MIT
//
// What the Hoop station shows beside its figure: the strip to scale, the stops, thread and time, and offers.
#include "app/figures.h"
#include "app/hoopmodel.h"
#include "app/wording.h"
#include "plan/thread.h"

#include <algorithm>
#include <cmath>

namespace matside {

namespace {

QString roleOf(std::size_t patch)
{
    return patch % 2 == 0 ? QStringLiteral("patchA") : QStringLiteral("patchB");
}

/// Millimetres and tenths, as the machine is told a size.
QString tenths(Length length)
{
    return inSign(QString::number(length.asMm(), 'f', 1));
}

/// A sent size in hundredths of the outline it is drawn in to.
QString percentOf(Length sent, Length outline)
{
    return inSign(QString::number(outline > Length() ? 100.0 * sent.asMm() / outline.asMm() : 100.0, 'f', 2));
}

/// Draw-up of the outlines logged so far, once there are two of them. Each is held against the size it was
/// sent at; where that was not logged, against the plan's, as long as nothing was taken from them yet.
std::optional<std::array<Share, 2>> drawUpOfFirst(const Project &project, const Plan &plan)
{
    std::array<Length, 2> sent;
    std::array<Length, 2> outline;
    std::int64_t count = 0;
    for (const MadeBlock &block : project.made.blocks) {
        if (!block.outline || (!block.sent && project.made.drawUp))
            continue;
        const auto was = block.sent.value_or(std::array{plan.block.sent.along, plan.block.sent.across});
        for (std::size_t side = 0; side < 2; ++side) {
            sent[side] += was[side];
            outline[side] += (*block.outline)[side];
        }
        ++count;
    }
    if (count < 2)
        return std::nullopt;
    return std::array{drawUp(sent[0], outline[0]), drawUp(sent[1], outline[1])};
}

QString percentOf(Share share)
{
    return inSign(QString::number(static_cast<double>(share.millionths) / 10'000, 'f', 1));
}

bool sensible(Share share)
{
    return share.millionths >= 0 && share.millionths <= 150'000;
}

} // namespace

StripView HoopModel::view() const
{
    const Project &project = m_workspace.project();
    const Plan &plan = m_workspace.plan();
    StripView view;
    view.drawnIn = !marking();
    view.lengthMm = (view.drawnIn ? m_work.end : m_work.usable).asMm();
    view.widthMm = plan.strip.width.asMm();
    view.blockAlongMm = (view.drawnIn ? plan.block.outline.along : plan.block.sent.along).asMm();
    view.blockAcrossMm = (view.drawnIn ? plan.block.outline.across : plan.block.sent.across).asMm();
    view.frameAlongMm = plan.basis.hoopOutside.along.asMm();
    view.frameAcrossMm = plan.basis.hoopOutside.across.asMm();
    const Pair inside = project.hoop.opening.value_or(plan.basis.field);
    view.barMm = std::max((plan.basis.hoopOutside.along - inside.along).scaled(1, 2).asMm(), 3.0);
    view.tails = project.strip.tails;
    view.stepMm = project.system == System::Inch ? 25.4 : 20;
    for (const StripPlace &place : m_work.places) {
        const Length start = view.drawnIn ? place.drawn : place.start;
        const Length along = view.drawnIn ? place.along : plan.block.sent.along;
        const Length centre = view.drawnIn ? place.drawn + along.scaled(1, 2) : place.centre;
        view.places.append(
            QVariantMap{{QStringLiteral("block"), m_steps.trial() ? QString() : toQt(place.block)},
                        {QStringLiteral("startMm"), start.asMm()},
                        {QStringLiteral("centreMm"), centre.asMm()},
                        {QStringLiteral("alongMm"), along.asMm()},
                        {QStringLiteral("stitched"), place.stitched},
                        {QStringLiteral("next"), m_work.next && m_work.next->place == place.place}});
    }
    for (std::size_t i = 0; i < project.patches.size(); ++i)
        view.patches.append(QVariantMap{{QStringLiteral("role"), roleOf(i)},
                                        {QStringLiteral("widthMm"), project.patches[i].width.asMm()},
                                        {QStringLiteral("heightMm"), project.patches[i].height.asMm()}});
    return view;
}

QVariantList HoopModel::stops() const
{
    QVariantList list;
    const Project &project = m_workspace.project();
    const Marks marks = project.marks();
    const std::string block = at() ? at()->block : std::string();
    std::size_t patch = 0;
    for (const Stop &stop : stopsOf(project, m_workspace.plan(), block)) {
        QString says;
        QString size;
        QString role;
        switch (stop.kind) {
        case Stop::Kind::Stipple:
            //: stippling: quilting in a wandering line that fills the ground
            says = tr("stippling");
            break;
        case Stop::Kind::Echo:
            //: echo: a line stitched at a distance round the patches
            says = tr("echo");
            break;
        case Stop::Kind::Patch:
            says = tr("%1, of %2").arg(toQt(stop.name), clothText(project, stop.cloth));
            size = braced(stop.rectangle.along, marks) + QStringLiteral(" × ") +
                   braced(stop.rectangle.across, marks);
            role = roleOf(patch++);
            break;
        case Stop::Kind::Outline:
            says = tr("the outer line, last");
            break;
        }
        list.append(QVariantMap{{QStringLiteral("number"), list.size() + 1},
                                {QStringLiteral("says"), says},
                                {QStringLiteral("size"), size},
                                {QStringLiteral("role"), role}});
    }
    return list;
}

QString HoopModel::bobbinSays() const
{
    if (m_forecast.blocksPerBobbin == 0)
        return tr("Bobbin: not enough on one for a block");
    if (m_forecast.bobbinLeft == 0)
        return tr("Bobbin: change it before this block");
    return m_forecast.bobbinLeft == 1 ? tr("Bobbin: for 1 more block")
                                      : tr("Bobbin: for %1 more blocks").arg(m_forecast.bobbinLeft);
}

QString HoopModel::bobbinDue() const
{
    const bool stitching = m_steps.doing() == QStringLiteral("stitch-block");
    return stitching && m_forecast.bobbinLeft == 0 ? bobbinSays() : QString();
}

QString HoopModel::timeSays() const
{
    const auto minutes =
        static_cast<std::int64_t>(std::llround(static_cast<double>(m_forecast.minuteTenths) / 10));
    const QString time = m_forecast.ownMinutes
                             ? tr("About %1 minutes a block, by your own last blocks").arg(minutes)
                             : tr("About %1 minutes a block").arg(minutes);
    const double metres = m_forecast.use.all.asMm() / 1000;
    //: stitches and metres of thread one block takes
    return tr("%1. About %2 stitches and %3 m of thread; on the bobbin %4 m for it.")
        .arg(time)
        .arg(m_forecast.use.stitches)
        .arg(inSign(QString::number(metres, 'f', 1)))
        .arg(inSign(QString::number(m_forecast.use.bobbin.asMm() / 1000, 'f', 1)));
}

QString HoopModel::sentShort() const
{
    const Pair &sent = m_workspace.plan().block.sent;
    //: the size given to the embroidery machine for one block, beside the drawing of the strip
    return tr("Send %1 × %2 mm").arg(tenths(sent.along), tenths(sent.across));
}

QString HoopModel::sentSays() const
{
    const Pair &sent = m_workspace.plan().block.sent;
    const Pair &outline = m_workspace.plan().block.outline;
    //: the size given to the machine, larger than the block because stitching draws it in
    return tr("Send %1 × %2 mm to the machine (%3 % × %4 %).")
        .arg(tenths(sent.along), tenths(sent.across), percentOf(sent.along, outline.along),
             percentOf(sent.across, outline.across));
}

QString HoopModel::sentSize() const
{
    const Pair &sent = m_workspace.plan().block.sent;
    return tenths(sent.along) + QStringLiteral(" × ") + tenths(sent.across);
}

QString HoopModel::sentPercent() const
{
    const Pair &sent = m_workspace.plan().block.sent;
    const Pair &outline = m_workspace.plan().block.outline;
    return QStringLiteral("%1 % × %2 %")
        .arg(percentOf(sent.along, outline.along), percentOf(sent.across, outline.across));
}

QString HoopModel::drawUpSays() const
{
    const Plan &plan = m_workspace.plan();
    const auto measured = drawUpOfFirst(m_workspace.project(), plan);
    if (!measured || !sensible((*measured)[0]) || !sensible((*measured)[1]))
        return {};
    // Under a tenth of a percent it is not worth a word.
    const auto apart = [](Share a, Share b) { return std::abs(a.millionths - b.millionths) > 1000; };
    if (!apart((*measured)[0], plan.basis.drawAlong) && !apart((*measured)[1], plan.basis.drawAcross))
        return {};
    //: draw-up: how much the stitching shrinks the block
    return tr("Your blocks draw up by %1 % along and %2 % across. Take that for the blocks to come?")
        .arg(percentOf((*measured)[0]), percentOf((*measured)[1]));
}

QString HoopModel::drawUpShort() const
{
    const auto measured = drawUpOfFirst(m_workspace.project(), m_workspace.plan());
    if (!measured || drawUpSays().isEmpty())
        return {};
    //: draw-up: how much the stitching shrinks the block, along and across
    return tr("Draw-up: %1 % × %2 %").arg(percentOf((*measured)[0]), percentOf((*measured)[1]));
}

QVariantMap HoopModel::drawnUp() const
{
    const Plan &plan = m_workspace.plan();
    const auto measured = drawUpOfFirst(m_workspace.project(), plan);
    if (!measured || drawUpSays().isEmpty())
        return {};
    const auto part = [](Share share) { return static_cast<double>(share.millionths) / 1'000'000; };
    const auto says = [](Share share) { return percentOf(share) + QStringLiteral(" %"); };
    return {{QStringLiteral("along"), part((*measured)[0])},
            {QStringLiteral("across"), part((*measured)[1])},
            {QStringLiteral("alongSays"), says((*measured)[0])},
            {QStringLiteral("acrossSays"), says((*measured)[1])},
            {QStringLiteral("alongMm"), plan.block.sent.along.asMm()},
            {QStringLiteral("acrossMm"), plan.block.sent.across.asMm()}};
}

void HoopModel::takeDrawUp()
{
    const auto measured = drawUpOfFirst(m_workspace.project(), m_workspace.plan());
    if (!measured || drawUpSays().isEmpty())
        return;
    Project next = m_workspace.project();
    next.made.drawUp = DrawUp{(*measured)[0], (*measured)[1], {}};
    (void)m_workspace.commit("draw-up", next);
}

} // namespace matside
