// SPDX-License-Identifier: MIT
//
// The strips beside each other, and what the gaps between their blocks can yield.
#include "app/figures.h"
#include "app/hoopmodel.h"
#include "app/wording.h"
#include "plan/parts.h"

#include <algorithm>

namespace matside {

namespace {

const QString plainWay = QStringLiteral("plain");
const QString allWay = QStringLiteral("all");
const QString someWay = QStringLiteral("some");

/// A strip on flat cloth with its gaps, and the outlines a strip with plain gaps has beyond it.
QVariantMap drawnStrip(const Plan &plan, const Plan &plain)
{
    const StripPlan &strip = plan.strip;
    const Length along = plan.block.sent.along;
    QVariantList starts;
    QVariantList gaps;
    const bool yields = strip.harvestedPairs > 0;
    for (std::size_t i = 0; i < strip.starts.size(); ++i) {
        starts.append(strip.starts[i].asMm());
        if (i + 1 < strip.starts.size())
            gaps.append(QVariantMap{
                {QStringLiteral("fromMm"), (strip.starts[i] + along).asMm()},
                {QStringLiteral("toMm"), strip.starts[i + 1].asMm()},
                {QStringLiteral("yields"), yields && static_cast<std::int64_t>(i) < strip.yielding()}});
    }
    QVariantList lost;
    Length next = strip.starts.empty() ? strip.end : strip.starts.back() + strip.advance;
    for (std::size_t i = strip.starts.size(); i < plain.strip.starts.size(); ++i, next += strip.advance)
        lost.append(next.asMm());
    const Length sash = max(plan.sashing.cutFront, plan.sashing.cutBack.value_or(Length()));
    return {{QStringLiteral("lengthMm"), strip.usable.asMm()},
            {QStringLiteral("widthMm"), strip.width.asMm()},
            {QStringLiteral("alongMm"), along.asMm()},
            {QStringLiteral("acrossMm"), plan.block.sent.across.asMm()},
            {QStringLiteral("sashMm"), sash.asMm()},
            {QStringLiteral("starts"), starts},
            {QStringLiteral("gaps"), gaps},
            {QStringLiteral("lost"), lost}};
}

} // namespace

QVariantMap HoopModel::stripAt(int number) const
{
    if (number < 1 || number > stripCount())
        return {};
    const StripWork &work = m_all[static_cast<std::size_t>(number) - 1];
    const Plan &plan = m_workspace.plan();
    QVariantList places;
    int stitched = 0;
    QString first;
    QString last;
    for (const StripPlace &place : work.places) {
        if (place.block.empty())
            continue;
        stitched += place.stitched ? 1 : 0;
        if (first.isEmpty())
            first = toQt(place.block);
        last = toQt(place.block);
        const bool next = work.strip == m_work.strip && work.next && work.next->place == place.place;
        places.append(QVariantMap{{QStringLiteral("startMm"), place.drawn.asMm()},
                                  {QStringLiteral("alongMm"), place.along.asMm()},
                                  {QStringLiteral("state"), place.stitched ? QStringLiteral("stitched")
                                                            : next         ? QStringLiteral("next")
                                                                           : QStringLiteral("open")}});
    }
    const QString names = first == last ? first : first + QStringLiteral(" – ") + last;
    //: of the blocks of one strip
    const QString count = tr("%1 of %2 stitched").arg(stitched).arg(places.size());
    return {{QStringLiteral("number"), number},
            {QStringLiteral("says"), tr("Strip %1").arg(number)},
            {QStringLiteral("names"), names},
            {QStringLiteral("countSays"), count},
            {QStringLiteral("chosen"), work.strip == m_work.strip},
            {QStringLiteral("lengthMm"), work.end.asMm()},
            {QStringLiteral("widthMm"), plan.strip.width.asMm()},
            {QStringLiteral("blockAcrossMm"), plan.block.outline.across.asMm()},
            {QStringLiteral("places"), places}};
}

std::optional<HoopModel::Gaps> HoopModel::gapsToYield() const
{
    const Project &project = m_workspace.project();
    if (!project.made.blocks.empty())
        return std::nullopt;
    Gaps gaps{project, {}};
    gaps.plain.strip.harvest = false;
    gaps.plain.strip.harvestGaps = 0;
    const auto offer =
        harvestOffer(gaps.plain, project.strip.harvest ? planFigures(gaps.plain) : m_workspace.plan());
    if (!offer)
        return std::nullopt;
    gaps.offer = *offer;
    return gaps;
}

bool HoopModel::canHarvest() const
{
    return m_gaps && !m_workspace.project().strip.harvest && !m_session.readOnly();
}

QString HoopModel::harvestSays() const
{
    if (!m_gaps || m_workspace.project().strip.harvest)
        return {};
    const HarvestOffer &offer = m_gaps->offer;
    const Marks marks = m_workspace.project().marks();
    const std::int64_t now = m_workspace.plan().strip.perStrip;
    //: gap: cloth between two outlines on the strip; shorts: short sashings between two blocks
    QString says = tr("A gap of %1 would yield short sashings: %2 pairs.")
                       .arg(braced(offer.gap, marks, Round::UpEighth))
                       .arg(offer.pairs);
    if (offer.free)
        return says + u' ' + tr("It costs nothing: the strip has the room.");
    says += u' ' + tr("It costs %1 of %2 blocks on each strip.").arg(now - offer.perStrip).arg(now);
    if (offer.perStripTails >= now)
        says += u' ' + tr("With waste tails at both ends it would cost none.");
    return says;
}

Project HoopModel::withGaps(const QString &way) const
{
    Project next = m_gaps->plain;
    if (way == plainWay)
        return next;
    const HarvestOffer &offer = m_gaps->offer;
    next.strip.harvest = true;
    if (way == someWay) {
        next.strip.harvestGaps = offer.someGaps;
        return next;
    }
    next.strip.gap.reset();
    if (!offer.free && offer.perStripTails >= planFigures(m_gaps->plain).strip.perStrip)
        next.strip.tails = true;
    return next;
}

QVariantList HoopModel::gapWays() const
{
    if (!m_gaps)
        return {};
    const Project &project = m_workspace.project();
    const QString now = !project.strip.harvest ? plainWay : project.strip.harvestGaps > 0 ? someWay : allWay;
    const Plan plain = planFigures(m_gaps->plain);
    const auto some = static_cast<int>(m_gaps->offer.someGaps);
    QVariantList list;
    const auto add = [&](const QString &way, const QString &says) {
        const Project with = withGaps(way);
        const Plan plan = planFigures(with);
        const Length gap = plan.strip.gapAfter(1);
        //: on one strip
        QStringList detail{tr("%1 blocks").arg(plan.strip.perStrip)};
        if (plan.strip.harvestedPairs > 0)
            //: front and back piece of a short sashing, out of the gaps of all strips
            detail += tr("%1 pairs of short sashings").arg(plan.strip.harvestedPairs);
        if (with.strip.tails && !m_gaps->plain.strip.tails)
            //: tail: a waste strip sewn to the end so that the frame has cloth to hold
            detail += tr("with waste tails");
        QVariantMap told = drawnStrip(plan, plain);
        told.insert(
            {{QStringLiteral("value"), way},
             {QStringLiteral("says"), says},
             {QStringLiteral("details"), detail},
             {QStringLiteral("chosen"), way == now},
             {QStringLiteral("tails"), with.strip.tails},
             {QStringLiteral("gap"), QVariant::fromValue(figureOf(gap, project.marks(), Round::UpEighth))}});
        list.append(told);
    };
    //: of the gaps between the blocks of a hoop strip
    add(plainWay, tr("Plain gaps"));
    if (some > 0 && !m_gaps->offer.free)
        add(someWay, some == 1 ? tr("One gap yields sashing") : tr("%1 gaps yield sashing").arg(some));
    add(allWay, tr("All gaps yield sashing"));
    return list;
}

void HoopModel::takeGaps(const QString &way)
{
    const QStringList ways{plainWay, someWay, allWay};
    if (!m_gaps || m_session.readOnly() || !ways.contains(way) ||
        (way == someWay && (m_gaps->offer.free || m_gaps->offer.someGaps == 0)))
        return;
    const Project next = withGaps(way);
    if (next.strip == m_workspace.project().strip)
        return;
    (void)m_workspace.commit("edit", next);
}

void HoopModel::takeHarvest()
{
    if (canHarvest())
        takeGaps(allWay);
}

} // namespace matside
