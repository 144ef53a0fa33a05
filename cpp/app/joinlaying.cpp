// SPDX-License-Identifier: MIT
//
// The blocks laid on the table before they are joined: which should change places, and the change itself.
#include "app/joinmodel.h"
#include "app/remembered.h"
#include "app/reply.h"
#include "app/wording.h"
#include "made/commonsize.h"
#include "plan/onstrip.h"

#include <algorithm>
#include <map>

namespace matside {

namespace {

/// More blocks than this are not laid out one by one.
constexpr std::int64_t mostLaid = 900;

} // namespace

const JoinModel::Layout &JoinModel::layout() const
{
    if (m_layout)
        return *m_layout;
    const Project &project = m_workspace.project();
    const std::int64_t all = project.blocks.columns * project.blocks.rows;
    m_layout.emplace();
    m_layout->places = blockNames(project);
    if (m_layout->places.size() > static_cast<std::size_t>(all))
        m_layout->places.resize(static_cast<std::size_t>(all)); // without the spares and the further pieces
    m_layout->labels = laidOut(project, m_layout->places);
    if (m_session.readOnly() || project.kits > 1 || all > mostLaid)
        return *m_layout;
    m_layout->laid = laidAt(m_layout->labels);
    if (mayLay())
        m_layout->swap = nextSwap(project.blocks.columns, project.blocks.rows, m_layout->laid,
                                  usualTolerances(project.system));
    return *m_layout;
}

std::vector<Laid> JoinModel::laidAt(const std::vector<std::string> &labels) const
{
    const Project &project = m_workspace.project();
    const Plan &plan = m_workspace.plan();
    std::map<std::string, Length> off;
    for (const OwnSize &size : ownSizes(project, usualTolerances(project.system)))
        off[size.block] = max((size.outline.along - plan.block.outline.along).magnitude(),
                              (size.outline.across - plan.block.outline.across).magnitude());
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
        if (const auto size = off.find(labels[place]); size != off.end()) {
            here.measured = true;
            here.off = size->second;
        }
        laid.push_back(here);
    }
    return laid;
}

bool JoinModel::mayLay() const
{
    const std::vector<Laid> &all = layout().laid;
    return std::count_if(all.begin(), all.end(), [](const Laid &block) { return !block.fixed; }) > 1;
}

QString JoinModel::swapSays() const
{
    const auto &[places, labels, laid, swap] = layout();
    if (!swap)
        return {};
    const QString first = toQt(labels[swap->first]);
    const QString second = toQt(labels[swap->second]);
    const QString off = braced(laid[swap->first].off, m_workspace.project().marks());
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

QString JoinModel::remembered() const
{
    const int across = columns();
    if (!doing("join-short") || across < 2)
        return {};
    const auto left =
        static_cast<std::size_t>((at() / (across - 1)) % std::max(rows(), 1) * across + at() % (across - 1));
    const std::vector<std::string> &names = layout().labels;
    QStringList all;
    for (const std::size_t place : {left, left + 1})
        if (place < names.size())
            if (const QString noted = rememberedOf(m_workspace, names[place]); !noted.isEmpty())
                all.append(noted);
    return all.join(QStringLiteral(". "));
}

QVariantMap JoinModel::takeSwap()
{
    const std::optional<Swap> swap = layout().swap;
    if (!swap)
        return answer(false, tr("The blocks lie well as they are."));
    return swapPlaces(static_cast<int>(swap->first), static_cast<int>(swap->second));
}

QVariantMap JoinModel::swapPlaces(int first, int second)
{
    const std::vector<Laid> &all = layout().laid;
    const auto inside = [&](int place) { return place >= 0 && static_cast<std::size_t>(place) < all.size(); };
    if (!mayLay() || !inside(first) || !inside(second) || first == second)
        return answer(false, tr("There is nothing to swap here."));
    const auto one = static_cast<std::size_t>(first);
    const auto other = static_cast<std::size_t>(second);
    if (all[one].fixed || all[other].fixed)
        return answer(false, tr("What is sewn already stays where it is."));
    const auto next = withSwapped(m_workspace.project(), layout().places, one, other);
    if (!next)
        return answer(false, tr("That block is not made yet."));
    const bool saved = m_workspace.commit("swap", *next);
    return answer(saved, saved ? QString() : tr("That could not be saved."));
}

} // namespace matside
