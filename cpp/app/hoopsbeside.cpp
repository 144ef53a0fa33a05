// SPDX-License-Identifier: MIT
//
// What the hoops come to beside the project at hand.
#include "app/figures.h"
#include "app/hoopshelf.h"
#include "app/wording.h"

namespace matside {

namespace {

QVariantMap sides(const Pair &pair)
{
    return {{QStringLiteral("alongMm"), pair.along.asMm()}, {QStringLiteral("acrossMm"), pair.across.asMm()}};
}

} // namespace

QVariant HoopShelf::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Hoop &hoop = m_hoops[static_cast<std::size_t>(index.row())];
    if (role == Name)
        return hoop.name.empty() ? tr("hoop %1").arg(index.row() + 1) : toQt(hoop.name);
    if (role == IsCurrent)
        return current() == index.row();
    if (role == Magnetic)
        return hoop.kind == HoopKind::Magnetic;
    Project with = m_workspace.project();
    with.hoop = hoop;
    const Plan plan = matside::plan(with);
    const Marks marks = with.marks();
    const bool sized = hoop.outside && (hoop.field || hoop.opening);
    const Length room =
        min(plan.basis.field.along - plan.block.sent.along, plan.basis.field.across - plan.block.sent.across);
    switch (role) {
    case Fits:
        return sized && room >= Length();
    case FitSays:
        if (!sized)
            return tr("Measure its field and its outside first.");
        return room < Length() ? tr("The block is %1 too large for its field.").arg(braced(-room, marks))
                               : tr("The block fits, with %1 to spare.").arg(braced(room, marks));
    case View: {
        if (!sized)
            return {};
        const Pair opening = hoop.opening.value_or(plan.basis.field);
        const Length tight = plan.basis.field.across - plan.block.sent.across;
        return QVariantMap{{QStringLiteral("outside"), sides(*hoop.outside)},
                           {QStringLiteral("opening"), sides(opening)},
                           {QStringLiteral("field"), sides(plan.basis.field)},
                           {QStringLiteral("sent"), sides(plan.block.sent)},
                           {QStringLiteral("across"), room == tight}};
    }
    case Room:
        return QVariant::fromValue(sized ? figureOf(room < Length() ? -room : room, marks) : FigureView());
    case TakesShort:
        if (!sized || plan.strip.perStrip == 0)
            return QString();
        //: strips of cloth, and how many blocks go on each
        return tr("%1 strips of %2 blocks").arg(plan.strip.strips).arg(plan.strip.perStrip);
    case TakesSays: {
        if (!sized || plan.strip.perStrip == 0)
            return sized ? tr("No block goes on a strip with it.") : QString();
        const Length cloth = plan.strip.width * plan.strip.strips;
        //: hoop strips: width, how many blocks on each, how much cloth of each layer
        return tr("Strips %1 wide, %2 blocks on each; %3 strips take %4 of each layer.")
            .arg(braced(plan.strip.width, marks))
            .arg(plan.strip.perStrip)
            .arg(plan.strip.strips)
            .arg(braced(cloth, marks));
    }
    default:
        return {};
    }
}

QHash<int, QByteArray> HoopShelf::roleNames() const
{
    return {{Name, "name"},
            {Fits, "fits"},
            {FitSays, "fitSays"},
            {TakesSays, "takesSays"},
            {TakesShort, "takesShort"},
            {IsCurrent, "isCurrent"},
            {Magnetic, "magnetic"},
            {View, "view"},
            {Room, "room"}};
}

QString HoopShelf::takesSays() const
{
    return current() < 0 ? QString() : data(index(current()), TakesSays).toString();
}

double HoopShelf::largestMm() const
{
    const Pair &sent = m_workspace.plan().block.sent;
    Length most = max(sent.along, sent.across);
    for (const Hoop &hoop : m_hoops)
        if (hoop.outside)
            most = max(most, max(hoop.outside->along, hoop.outside->across));
    return most.asMm();
}

} // namespace matside
