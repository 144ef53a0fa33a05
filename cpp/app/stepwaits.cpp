// SPDX-License-Identifier: MIT
//
// What the step at hand waits for, and where that is done.
#include "app/stepmodel.h"
#include "app/wording.h"
#include "bench/lacking.h"
#include "bench/record.h"
#include "bench/sides.h"
#include "made/piece.h"

#include <algorithm>

namespace matside {

namespace {

/// The pins of the piece in hand were counted, and as many came out as went in or she knows why.
bool pinsSettled(const Project &project)
{
    return project.made.pins && project.made.pins->settled();
}

/// The piece was measured, and its readings cannot all be right: nothing is cut by them.
bool measuredAmiss(const Project &project)
{
    if (!project.made.piece)
        return false;
    const Readings readings{project.made.piece->sides, project.made.piece->diagonals};
    return judgePiece(readings, usualTolerances(project.system), project.marks()).measureAgain;
}

/// Layered, joined or edged ahead of what it is made of, a thing would be counted that is not there; at the
/// other steps she may have begun before she told the program.
bool takesWhatIsMade(const Step &step)
{
    return step.does == Does::Layer || step.station == Station::Join || step.station == Station::Edge;
}

/// Where the trial goes on once its own pieces are cut, while nothing was cut yet of what hangs on it. The
/// cloth for all of the piece waits for it; a maker who began without, or who put it off, is not held up.
std::optional<Station> trialComesFirst(const std::vector<Step> &all, const Step &step)
{
    if (step.trial || !step.notTried || step.station != Station::Cut)
        return std::nullopt;
    const bool begun = std::any_of(all.begin(), all.end(), [](const Step &each) {
        return !each.trial && each.notTried && each.done > 0;
    });
    const auto open = std::find_if(all.begin(), all.end(),
                                   [](const Step &each) { return each.trial && each.done < each.count; });
    if (begun || open == all.end() || open->station == Station::Cut)
        return std::nullopt;
    return open->station;
}

} // namespace

StepModel::Wait StepModel::waitNow() const
{
    const std::vector<Step> &all = m_workspace.steps();
    if (m_session.readOnly())
        return {tr("Nothing can be changed now"), {}};
    if (!m_workspace.plan().problems.empty())
        return {tr("First mend what Fit says"), Station::Fit};
    const Step *step = current();
    if (!step)
        return {};
    if (step->does == Does::LastLook && !pinsSettled(m_workspace.project()))
        return {tr("Pins first"), {}};
    if (step->does == Does::SquarePiece && measuredAmiss(m_workspace.project()))
        //: the readings of the piece's sides and diagonals cannot all be right; short: it stands on a button
        return {tr("First measure again"), {}};
    if (const auto where = trialComesFirst(all, *step)) {
        const QString station = stationText(*where);
        return {
            *where == Station::Join
                //: %1 is a station's name; the trial's join comes before cloth is cut; short: on a button
                ? tr("First, at %1: test join").arg(station)
                //: %1 is a station's name; the trial's block comes before cloth is cut; short: on a button
                : tr("First, at %1: test block").arg(station),
            where};
    }
    if (waitsForScissors(all, *step))
        return {tr("First trim all its patches"), Station::Hoop};
    if (const auto more = stitchedBeforeApart(all, m_workspace.plan(), *step))
        //: the strip that would be cut apart holds %1 blocks that are not stitched yet
        return {tr("First stitch all its blocks: %1 more").arg(more), Station::Hoop};
    const auto lacking = takesWhatIsMade(*step) ? lackingFor(all, *step) : std::nullopt;
    if (!lacking)
        return {};
    const Station where = all[lacking->maker].station;
    const QString station = stationText(where);
    return {lacking->inAll == 1
                //: %1 is a station's name; short: it stands on a button
                ? tr("First, at %1").arg(station)
                //: %1 is a station's name, %2 how many steps there come first; short: it stands on a button
                : tr("%1 first: %2 steps").arg(station).arg(lacking->inAll),
            where};
}

bool StepModel::canGoNext() const
{
    return current() && waiting().isEmpty();
}

QString StepModel::waiting() const
{
    return waitNow().says;
}

int StepModel::waitsAt() const
{
    const Wait wait = waitNow();
    const bool elsewhere = wait.station && static_cast<int>(*wait.station) != m_session.station();
    return elsewhere ? static_cast<int>(*wait.station) : -1;
}

} // namespace matside
