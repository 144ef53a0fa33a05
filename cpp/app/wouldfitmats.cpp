// SPDX-License-Identifier: MIT
//
// A set of mats instead of one piece: how many lie on the table, and layouts for one of them.
#include "app/figures.h"
#include "app/matsview.h"
#include "app/wouldfit.h"

#include <algorithm>

namespace matside {

/// A piece that is a set of mats already is looked at as one.
void WouldFit::beginMats()
{
    m_mats = {};
    const auto set = setOfMats(m_base, m_workspace.plan());
    if (!set)
        return;
    const auto &sizes = matUse(m_base.system).sizes;
    const Pair made = m_workspace.plan().size.finished;
    const auto off = [&](const Pair &size) {
        return (max(made.along, made.across) - size.along).magnitude() +
               (min(made.along, made.across) - size.across).magnitude();
    };
    m_mats = {true, off(sizes[1]) < off(sizes[0]) ? std::size_t{1} : std::size_t{0}, set->end > 0,
              m_base.kits};
}

std::int64_t WouldFit::matsThatLie() const
{
    return layMats(*m_base.table, matSize(), m_mats.ends, m_base.system).count();
}

std::int64_t WouldFit::matsWanted() const
{
    const std::int64_t lie = matsThatLie();
    return m_mats.most > 0 ? std::min(m_mats.most, lie) : lie;
}

TableView WouldFit::wantedView() const
{
    if (!m_open)
        return {};
    const Marks marks = m_base.marks();
    TableView view = tableView(m_base, m_workspace.plan());
    const Pair size = mats() ? matSize() : wantedSize();
    view.finishedAlongMm = size.along.asMm();
    view.finishedAcrossMm = size.across.asMm();
    view.revealAlong = figureOf(m_wanted.reveal.along, marks);
    view.revealAcross = figureOf(m_wanted.reveal.across, marks);
    return view;
}

QVariantList WouldFit::wantedMats() const
{
    if (!m_open || !mats())
        return {};
    return placesView(layMats(*m_base.table, matSize(), m_mats.ends, m_base.system, matsWanted()), matSize());
}

/// Layouts for one mat, made as often as mats are wanted; of those only what really lies on the table.
void WouldFit::searchMats()
{
    const std::int64_t mats = matsWanted();
    if (mats == 0) {
        m_found = {};
        m_found.none = whyNoMats(*m_base.table, matSize(), m_base.system);
        return;
    }
    Project one = m_base;
    one.kits = mats;
    one.kitsShareStrips = true;
    one.lesson.reset();
    FitLimits limits = m_limits;
    limits.most = m_limits.most * 2;
    limits.proposeSpares = true;
    m_found = candidatesFor(one, {matSize(), m_wanted.washing}, limits, m_hoops.hoops());
    // What comes out quite another size is no such mat, unless nothing comes nearer.
    const auto off = [](const Candidate &candidate) {
        return max(candidate.over.along.magnitude(), candidate.over.across.magnitude());
    };
    Length near = matUse(one.system).fromEdge * 3;
    if (!m_found.list.empty())
        near = max(near, off(m_found.list.front()));
    std::erase_if(m_found.list, [&](const Candidate &candidate) {
        if (off(candidate) > near)
            return true;
        const Pair &made = candidate.plan.size.finished;
        return layMats(*m_base.table, made, m_mats.ends, m_base.system, mats).count() < mats;
    });
    if (m_found.list.size() > m_limits.most)
        m_found.list.resize(m_limits.most);
    if (m_found.list.empty() && !m_found.none)
        m_found.none = Problem{"/table", "fit-mats-too-large", {mats}, {}};
}

} // namespace matside
