// SPDX-License-Identifier: MIT
#pragma once

#include "bench/record.h"

namespace desk {

/// What is layered at Hoop is cut: all its strips, of each cloth.
inline matside::Project withStripsCut(matside::Project project)
{
    const matside::Plan planned = matside::plan(project);
    if (!planned.problems.empty())
        return project;
    for (const matside::Step &step : matside::steps(project, planned))
        if (step.does == matside::Does::CutStrip && step.done < step.count)
            matside::countUp(project, step, step.count - step.done, 0);
    return project;
}

} // namespace desk
