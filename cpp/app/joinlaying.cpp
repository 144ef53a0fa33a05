// SPDX-License-Identifier: MIT
//
// The blocks laid on the table before they are joined: which should change places, and the change itself.
#include "app/joinmodel.h"
#include "app/reply.h"
#include "app/wording.h"
#include "made/commonsize.h"
#include "plan/onstrip.h"

#include <algorithm>

namespace matside {

std::vector<std::string> JoinModel::places() const
{
    const Project &project = m_workspace.project();
    std::vector<std::string> names = blockNames(project);
    const auto all = static_cast<std::size_t>(project.blocks.columns * project.blocks.rows);
    if (names.size() > all)
        names.resize(all); // without the spares and the further pieces
    return names;
}

std::vector<Laid> JoinModel::laid() const
{
    const Project &project = m_workspace.project();
    const Plan &plan = m_workspace.plan();
    const std::vector<std::string> labels = laidOut(project, places());
    const std::vector<OwnSize> sizes = ownSizes(project, usualTolerances(project.system));
    // Joined row by row from the left: so many places are sewn to a neighbour.
    std::int64_t joins = 0;
    bool rowsJoined = false;
    for (const Step &step : m_workspace.steps()) {
        if (step.does == Does::JoinShort)
            joins = step.done;
        rowsJoined = rowsJoined || (step.does == Does::JoinLongRow && step.done > 0);
    }
    const std::int64_t inRow = project.blocks.columns - 1;
    std::vector<Laid> laid;
    for (std::size_t place = 0; place < labels.size(); ++place) {
        Laid here;
        const auto row = static_cast<std::int64_t>(place) / project.blocks.columns;
        const auto column = static_cast<std::int64_t>(place) % project.blocks.columns;
        const bool sewn =
            inRow > 0 &&
            (row < joins / inRow || (row == joins / inRow && joins % inRow > 0 && column <= joins % inRow));
        here.fixed = sewn || rowsJoined || !blockAt(project, labels[place]);
        for (const OwnSize &size : sizes)
            if (size.block == labels[place]) {
                here.measured = true;
                here.off = max((size.outline.along - plan.block.outline.along).magnitude(),
                               (size.outline.across - plan.block.outline.across).magnitude());
            }
        laid.push_back(here);
    }
    return laid;
}

bool JoinModel::mayLay() const
{
    const Project &project = m_workspace.project();
    if (m_session.readOnly() || project.kits > 1 || project.blocks.columns * project.blocks.rows > 900)
        return false;
    const std::vector<Laid> all = laid();
    return std::count_if(all.begin(), all.end(), [](const Laid &block) { return !block.fixed; }) > 1;
}

QString JoinModel::swapSays() const
{
    const Project &project = m_workspace.project();
    if (!mayLay())
        return {};
    const std::vector<Laid> all = laid();
    const auto swap =
        nextSwap(project.blocks.columns, project.blocks.rows, all, usualTolerances(project.system));
    if (!swap)
        return {};
    const std::vector<std::string> labels = laidOut(project, places());
    const QString first = toQt(labels[swap->first]);
    const QString second = toQt(labels[swap->second]);
    const QString off = braced(all[swap->first].off, project.marks());
    switch (swap->why) {
    case SwapFor::EndColumn:
        return tr("Swap %1 and %2: %1 is %3 off size, and such blocks stand best together in an end column.")
            .arg(first, second, off);
    case SwapFor::End:
        return tr("Swap %1 and %2: %1 is %3 off size, which shows least at an end.").arg(first, second, off);
    case SwapFor::Centre:
        break;
    }
    return tr("Swap %1 and %2: %1 is nearest to its size, and the middle is looked at most.")
        .arg(first, second);
}

QVariantMap JoinModel::takeSwap()
{
    const Project &project = m_workspace.project();
    const auto swap = mayLay() ? nextSwap(project.blocks.columns, project.blocks.rows, laid(),
                                          usualTolerances(project.system))
                               : std::nullopt;
    if (!swap)
        return answer(false, tr("The blocks lie well as they are."));
    return swapPlaces(static_cast<int>(swap->first), static_cast<int>(swap->second));
}

QVariantMap JoinModel::swapPlaces(int first, int second)
{
    const std::vector<Laid> all = laid();
    const auto inside = [&](int place) { return place >= 0 && static_cast<std::size_t>(place) < all.size(); };
    if (!mayLay() || !inside(first) || !inside(second) || first == second)
        return answer(false, tr("There is nothing to swap here."));
    const auto one = static_cast<std::size_t>(first);
    const auto other = static_cast<std::size_t>(second);
    if (all[one].fixed || all[other].fixed)
        return answer(false, tr("What is sewn already stays where it is."));
    const auto next = withSwapped(m_workspace.project(), places(), one, other);
    if (!next)
        return answer(false, tr("That block is not made yet."));
    const bool saved = m_workspace.commit("swap", *next);
    return answer(saved, saved ? QString() : tr("That could not be saved."));
}

} // namespace matside
