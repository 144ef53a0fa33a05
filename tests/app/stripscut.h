// SPDX-License-Identifier: MIT
#pragma once

#include "bench/record.h"

namespace desk {

/// Every step of these is done as often as it is wanted.
template <class Which> matside::Project withAllDone(matside::Project project, Which which)
{
    const matside::Plan planned = matside::plan(project);
    if (!planned.problems.empty())
        return project;
    for (const matside::Step &step : matside::steps(project, planned))
        if (which(step) && step.done < step.count)
            matside::countUp(project, step, step.count - step.done, 0);
    return project;
}

/// What is layered at Hoop is cut: all its strips, of each cloth.
inline matside::Project withStripsCut(matside::Project project)
{
    return withAllDone(std::move(project),
                       [](const matside::Step &step) { return step.does == matside::Does::CutStrip; });
}

/// Everything there is to cut is cut.
inline matside::Project withAllCut(matside::Project project)
{
    return withAllDone(std::move(project),
                       [](const matside::Step &step) { return step.station == matside::Station::Cut; });
}

/// Every step before the edge is done, the binding cut and all.
inline matside::Project withAllButTheEdge(matside::Project project)
{
    return withAllDone(std::move(project),
                       [](const matside::Step &step) { return step.station < matside::Station::Edge; });
}

/// What the steps of a station take is cut: the hoop strips, or, once the trial is past, all for the joins.
inline matside::Project withCutFor(matside::Station station, matside::Project project)
{
    if (station == matside::Station::Hoop)
        return withStripsCut(std::move(project));
    return station == matside::Station::Join && project.made.trialPutOff && !project.made.testJoin
               ? withAllCut(std::move(project))
               : project;
}

} // namespace desk
