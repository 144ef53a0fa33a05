// SPDX-License-Identifier: MIT
#include "app/wouldfit.h"

#include "app/figures.h"
#include "app/matsview.h"
#include "app/reply.h"
#include "app/wording.h"

#include <algorithm>

namespace matside {

namespace {

constexpr std::int64_t mostBlocksEver = 2000;
const QString matsName = QStringLiteral("mats");

Length revealStep(System system)
{
    return system == System::Inch ? Length::inches(0, 1, 2) : Length::mm(10);
}

bool isReveal(const QString &key)
{
    return key.startsWith(QStringLiteral("reveal"));
}

bool isAlong(const QString &key)
{
    return key.endsWith(QStringLiteral("along"));
}

} // namespace

WouldFit::WouldFit(Workspace &workspace, Session &session, const HoopShelf &hoops)
    : m_workspace(workspace), m_session(session), m_hoops(hoops)
{
    connect(&m_workspace, &Workspace::opened, this, &WouldFit::forget);
    connect(&m_workspace, &Workspace::changed, this, &WouldFit::heed);
    connect(&m_session, &Session::stationChanged, this, &WouldFit::leave);
    connect(&m_session, &Session::viewChanged, this, &WouldFit::leave);
}

void WouldFit::forget()
{
    m_open = m_told = false;
    m_leafIn.reset();
    m_chosen = -1;
    m_found = {};
}

void WouldFit::begin()
{
    leave();
    takeBase();
    const Plan &plan = m_workspace.plan();
    if (!m_told) {
        m_limits = usualLimits(m_base, m_hoops.hoops());
        m_wanted = {plan.table ? plan.table->reveal : Pair(), plan.size.finished, {}};
        m_hangs[0] = m_wanted.reveal.along < Length();
        m_hangs[1] = m_wanted.reveal.across < Length();
        beginMats();
    }
    m_open = true;
    search();
}

void WouldFit::search()
{
    beginResetModel();
    m_chosen = -1;
    if (mats()) {
        searchMats();
    } else {
        Project alone = m_base;
        FitLimits limits = m_limits;
        // A set that is to be one piece again is made once, with spares of its own.
        if (m_told && setOfMats(m_base, plan(m_base))) {
            alone.kits = 1;
            limits.proposeSpares = true;
        }
        m_found = candidatesFor(alone, {wantedSize(), m_wanted.washing}, limits, m_hoops.hoops());
    }
    endResetModel();
    emit changed();
}

/// The piece was changed meanwhile, or a change taken back.
void WouldFit::heed()
{
    if (!m_open || m_workspace.previewing())
        return;
    takeBase();
    search();
}

/// The project as it lies in the store, its table as she wants it looked at.
void WouldFit::takeBase()
{
    m_base = m_workspace.project();
    if (m_base.table && m_base.table->leaf && m_leafIn)
        m_base.table->leafIn = *m_leafIn;
}

void WouldFit::choose(int row)
{
    if (!m_open || row < 0 || row >= count() || row == m_chosen)
        return;
    m_chosen = row;
    m_workspace.glance(m_found.list[static_cast<std::size_t>(row)].project);
    emit dataChanged(index(0), index(count() - 1), {MoreSays});
    emit changed();
}

bool WouldFit::take()
{
    if (!m_open || !canTake())
        return false;
    const Project next = m_found.list[static_cast<std::size_t>(m_chosen)].project;
    m_open = false;
    const bool saved = m_workspace.commit("take-layout", next);
    m_open = !saved;
    m_chosen = -1;
    emit changed();
    return saved;
}

void WouldFit::leave()
{
    if (!m_open)
        return;
    m_open = false;
    m_chosen = -1;
    (void)m_workspace.settle("take-layout");
    emit changed();
}

Pair WouldFit::wantedSize() const
{
    const auto size = m_base.table ? sizeLeaving(*m_base.table, m_wanted.reveal) : std::nullopt;
    return size.value_or(m_wanted.size);
}

Length *WouldFit::lengthOf(const QString &key)
{
    if (isReveal(key))
        return isAlong(key) ? &m_wanted.reveal.along : &m_wanted.reveal.across;
    if (key.startsWith(QStringLiteral("size")))
        return isAlong(key) ? &m_wanted.size.along : &m_wanted.size.across;
    if (key == QStringLiteral("least"))
        return &m_limits.leastBlock;
    return key == QStringLiteral("most") ? &m_limits.mostBlock : nullptr;
}

void WouldFit::nudge(const QString &key, int steps)
{
    Length *length = lengthOf(key);
    if (length && isReveal(key)) {
        bool &hangs = m_hangs[isAlong(key) ? 0 : 1];
        const Length step = revealStep(m_base.system);
        *length = length->nearestTo(step) + step * (hangs ? -steps : steps);
        if (*length != Length())
            hangs = *length < Length();
    } else if (length) {
        const bool block = key == QStringLiteral("least") || key == QStringLiteral("most");
        const Length step = block ? m_limits.step : revealStep(m_base.system);
        *length = max(length->nearestTo(step) + step * steps, step);
    } else if (key == QStringLiteral("washing")) {
        m_wanted.washing.millionths =
            std::clamp<std::int64_t>(m_wanted.washing.millionths + std::int64_t{5'000} * steps, 0, 295'000);
    } else if (key == QStringLiteral("blocks")) {
        m_limits.mostBlocks = std::clamp<std::int64_t>(m_limits.mostBlocks + steps, 1, mostBlocksEver);
    } else if (key == matsName && hasTable() && matsThatLie() > 0) {
        m_mats.most = std::clamp<std::int64_t>(matsWanted() + steps, 1, matsThatLie());
    } else {
        return;
    }
    m_told = true;
    leave();
    begin();
}

QVariantMap WouldFit::enter(const QString &key, const QString &text)
{
    if (key == QStringLiteral("washing")) {
        const auto read = readShare(text.toStdString());
        if (!read)
            return answer(false, sentence(read.error(), m_base.system));
        m_wanted.washing = read.value();
    } else if (key == QStringLiteral("blocks")) {
        bool number = false;
        const int most = text.toInt(&number);
        if (!number || most < 1 || most > mostBlocksEver)
            return answer(false, tr("Between 1 and %1 blocks.").arg(mostBlocksEver));
        m_limits.mostBlocks = most;
    } else if (key == matsName) {
        bool number = false;
        const int mats = text.toInt(&number);
        const std::int64_t lie = hasTable() ? matsThatLie() : 0;
        if (lie == 0)
            return answer(false, tr("No mats lie on this table."));
        if (!number || mats < 1 || mats > lie)
            return answer(false, lie == 1 ? tr("One mat: no more lie on this table.")
                                          : tr("Between 1 and %1 mats: no more lie on this table.").arg(lie));
        m_mats.most = mats;
    } else if (Length *length = lengthOf(key)) {
        const auto read = readLength(text.toStdString(), m_base.system);
        if (!read)
            return answer(false, sentence(read.error(), m_base.system));
        if (read.value() < Length() || (read.value() == Length() && !isReveal(key)))
            return answer(false, tr("It must be more than nothing."));
        *length = isReveal(key) && m_hangs[isAlong(key) ? 0 : 1] ? -read.value() : read.value();
    } else {
        return answer(false, tr("This cannot be changed here."));
    }
    m_told = true;
    leave();
    begin();
    return answer(true, QString());
}

void WouldFit::pick(const QString &key, bool value)
{
    const bool inch = m_base.system == System::Inch;
    if (key == QStringLiteral("hangs-along") || key == QStringLiteral("hangs-across")) {
        const bool along = isAlong(key);
        Length &reveal = along ? m_wanted.reveal.along : m_wanted.reveal.across;
        m_hangs[along ? 0 : 1] = value;
        reveal = value ? -reveal.magnitude() : reveal.magnitude();
    } else if (key == QStringLiteral("leaf")) {
        m_leafIn = value;
    } else if (key == QStringLiteral("fine")) {
        m_limits.step = value ? max(m_base.finest, inch ? Length::inches(0, 1, 16) : Length::mm(1))
                              : usualLimits(m_base, {}).step;
    } else if (key == QStringLiteral("widen")) {
        m_limits.widen = value;
    } else if (key == QStringLiteral("set") && hasTable()) {
        m_mats.wanted = value;
    } else if (key == QStringLiteral("mat-size")) {
        m_mats.size = value ? 1 : 0;
    } else if (key == QStringLiteral("mat-ends")) {
        m_mats.ends = value;
    } else {
        return;
    }
    m_told = true;
    leave();
    begin();
}

int WouldFit::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant WouldFit::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Candidate &candidate = m_found.list[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Says: {
        const Blocks &blocks = candidate.project.blocks;
        const QString size = blockText(candidate);
        //: columns × rows blocks of a size
        return tr("%1 × %2 blocks of %3").arg(blocks.columns).arg(blocks.rows).arg(size);
    }
    case SizeSays:
        return sizeSays(candidate);
    case TakesSays:
        return takesSays(candidate);
    case BriefSays:
        return briefSays(candidate);
    case SidesSays:
        return sidesSays(candidate);
    case HoursSays:
        return hoursSays(candidate);
    case MoreSays:
        return moreSays(candidate, index.row() == m_chosen);
    case CautionSays:
        return cautionSays(candidate);
    case Drawing:
        return QVariant::fromValue(tableView(candidate.project, candidate.plan));
    case MatPlaces:
        return matsView(candidate.project, candidate.plan);
    default:
        return {};
    }
}

QHash<int, QByteArray> WouldFit::roleNames() const
{
    return {{Says, "says"},           {SizeSays, "sizeSays"},       {TakesSays, "takesSays"},
            {BriefSays, "briefSays"}, {SidesSays, "sidesSays"},     {HoursSays, "hoursSays"},
            {MoreSays, "moreSays"},   {CautionSays, "cautionSays"}, {Drawing, "drawing"},
            {MatPlaces, "mats"}};
}

} // namespace matside
