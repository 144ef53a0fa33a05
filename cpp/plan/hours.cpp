// SPDX-License-Identifier: MIT
#include "plan/hours.h"

#include "plan/thread.h"

namespace matside {

namespace {

/// Tenths of a minute for a length at so many tenths a foot, half up.
std::int64_t tenthsFor(Length length, std::int64_t perFoot)
{
    const Length all = (length * perFoot).scaled(1, Length::ticksPerInch * 12);
    return all.valid() ? all.count() : 0;
}

} // namespace

Hours hoursFor(const Project &project, const Plan &plan)
{
    const std::int64_t kits = project.kits;
    const std::int64_t blocks = blocksInAll(project);
    const Forecast forecast = forecastOf(project, plan);
    Hours hours;
    hours.ownMinutes = forecast.ownMinutes;
    hours.machine = forecast.minuteTenths * blocks;
    hours.trimming = 30 * blocks;
    const std::int64_t aLong = tenthsFor(plan.sashing.longLength, 25) + 50;
    hours.joining = (plan.sashing.shorts * 90 + plan.sashing.longs * aLong) * kits;
    if (plan.binding) {
        const Length around = (plan.size.finished.along + plan.size.finished.across) * 2;
        hours.edging = tenthsFor(around, project.edge.sewn == Sewn::Hand ? 180 : 72) * kits;
    }
    return hours;
}

} // namespace matside
