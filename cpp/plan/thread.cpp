// SPDX-License-Identifier: MIT
#include "plan/thread.h"

#include "plan/onstrip.h"

#include <algorithm>
#include <cmath>

namespace matside {

namespace {

/// Whole ticks nearest to a reckoned length; out of range gives an overflow.
Length nearest(double ticks)
{
    return std::isfinite(ticks) && std::fabs(ticks) < 9e15
               ? Length::ticks(static_cast<std::int64_t>(std::llround(ticks)))
               : Length::overflow();
}

constexpr double compressed = 0.08; // in: a low-loft sandwich under the foot (F19)
constexpr double waste = 1.12;
constexpr std::int64_t ownFrom = 3; // blocks until her own figures count

Length usualSpacing(System system)
{
    return system == System::Inch ? Length::inches(0, 1, 4) : Length::mm(6);
}

Length stitchOf(const Project &project)
{
    return project.thread.stitch.value_or(Length::mmTenths(25));
}

/// Patches of one block in stitching order: by its design's names, else every listed one.
std::vector<const Patch *> patchesOf(const Project &project, const std::string &block)
{
    std::vector<const Patch *> patches;
    const Designed designed = designOf(project, block);
    const auto add = [&](const Patch &patch) {
        for (std::int64_t i = 0; i < std::min<std::int64_t>(patch.perBlock, 100); ++i)
            patches.push_back(&patch);
    };
    if (!designed.design || designed.design->patches.empty()) {
        for (const Patch &patch : project.patches)
            add(patch);
        return patches;
    }
    for (const std::string &name : designed.design->patches)
        for (const Patch &patch : project.patches)
            if (patch.name == name)
                add(patch);
    return patches;
}

StitchPath pathOf(const Project &project, const Plan &plan, const std::string &block)
{
    const double spacing =
        static_cast<double>(project.thread.spacing.value_or(usualSpacing(project.system)).count());
    const auto ticks = [](Length length) { return static_cast<double>(length.count()); };
    double area = ticks(plan.block.outline.along) * ticks(plan.block.outline.across);
    double around = 0;
    double echo = 0;
    constexpr double turn = 6.283185307179586;
    for (const Patch *patch : patchesOf(project, block)) {
        // A patch is taken as its rectangle: a little more than its shape needs.
        area -= ticks(patch->width) * ticks(patch->height);
        around += 2 * (ticks(patch->width) + ticks(patch->height));
        echo += 2 * (ticks(patch->width) + ticks(patch->height)) + turn * spacing;
    }
    const double line = 2 * (ticks(plan.block.outline.along) + ticks(plan.block.outline.across));
    StitchPath path;
    path.stitch = stitchOf(project);
    path.running = nearest(std::max(area, 0.0) / std::max(spacing, 1.0) + echo + line);
    path.bean = nearest(around);
    const Designed designed = designOf(project, block);
    if (designed.design && designed.design->stitches > 0) {
        // The design's own count is nearer the truth than area and spacing.
        const double all = static_cast<double>(designed.design->stitches) * ticks(path.stitch);
        path.running = nearest(std::max(all - 3 * around, 0.0));
    }
    return path;
}

std::int64_t stitchedSoFar(const Project &project)
{
    return static_cast<std::int64_t>(project.made.blocks.size());
}

void takeOwnMinutes(const Project &project, Forecast &forecast)
{
    std::int64_t timed = 0;
    std::int64_t minutes = 0;
    for (const MadeBlock &block : project.made.blocks) {
        timed += block.minutes > 0 ? 1 : 0;
        minutes += block.minutes;
    }
    if (timed < ownFrom)
        return;
    forecast.ownMinutes = true;
    forecast.minuteTenths = (minutes * 10 + timed / 2) / timed;
}

/// Blocks between two new bobbins tell what one bobbin serves; at least three blocks must stand behind it.
void takeOwnBobbin(const Project &project, Forecast &forecast)
{
    std::int64_t first = -1;
    std::int64_t last = -1;
    std::int64_t bobbins = 0;
    for (const MadeEvent &event : project.made.events) {
        if (event.event != "new-bobbin")
            continue;
        bobbins += first < 0 ? 0 : 1;
        first = first < 0 ? event.count : first;
        last = event.count;
    }
    if (bobbins > 0 && last - first >= ownFrom) {
        forecast.ownBobbin = true;
        forecast.blocksPerBobbin = std::max<std::int64_t>((last - first) / bobbins, 1);
    }
    const std::int64_t since = stitchedSoFar(project) - std::max<std::int64_t>(last, 0);
    forecast.bobbinLeft = std::max<std::int64_t>(forecast.blocksPerBobbin - since, 0);
}

} // namespace

Length bobbinOf(const Project &project)
{
    return project.thread.bobbin.value_or(Length::mm(60'000));
}

StitchPath sashingPath(const Project &project, const Plan &plan)
{
    StitchPath path;
    if (!project.thread.sashingLine)
        return path;
    path.stitch = stitchOf(project);
    path.running =
        (plan.sashing.shortLength * plan.sashing.shorts + plan.sashing.longLength * plan.sashing.longs) *
        project.kits;
    return path;
}

ThreadUse threadFor(const StitchPath &path)
{
    ThreadUse use;
    const double stitch = path.stitch.asInches();
    if (stitch <= 0)
        return use;
    const double perInch = 1.0 / stitch;
    const double c = 2 + 2 * compressed * perInch;
    const auto ticks = static_cast<double>(path.running.count()) + 3 * static_cast<double>(path.bean.count());
    use.all = nearest(ticks * c);
    use.bobbin = nearest(ticks * c / 2 * waste);
    use.stitches = std::llround(ticks / static_cast<double>(path.stitch.count()));
    return use;
}

std::int64_t blocksOn(Length bobbin, Length perBlock)
{
    return perBlock > Length() ? std::max<std::int64_t>(bobbin.floorDiv(perBlock), 0) : 0;
}

std::int64_t minuteTenths(std::int64_t stitches, std::int64_t speed, std::int64_t patches,
                          std::int64_t changes, bool trimAtStops)
{
    const double running =
        static_cast<double>(stitches) / (static_cast<double>(std::max<std::int64_t>(speed, 1)) * 0.8);
    const double placing = static_cast<double>(patches) * (trimAtStops ? 2.0 : 0.5);
    return std::llround((3 + running + placing + static_cast<double>(changes)) * 10);
}

Forecast forecastOf(const Project &project, const Plan &plan)
{
    const std::vector<std::string> left = blocksToStitch(project);
    const std::string block = left.empty() ? std::string() : left.front();
    Forecast forecast;
    forecast.path = pathOf(project, plan, block);
    forecast.use = threadFor(forecast.path);
    const auto patches = static_cast<std::int64_t>(patchesOf(project, block).size());
    // Every stop but the last is a change: stippling and echo, then one for each patch.
    forecast.minuteTenths = minuteTenths(forecast.use.stitches, project.thread.speed, patches,
                                         patches > 0 ? patches - 1 : 0, project.thread.trimAtStops);
    forecast.blocksPerBobbin = blocksOn(bobbinOf(project), forecast.use.bobbin);
    takeOwnMinutes(project, forecast);
    takeOwnBobbin(project, forecast);
    return forecast;
}

std::vector<Stop> stopsOf(const Project &project, const Plan &plan, const std::string &block)
{
    std::vector<Stop> stops{{Stop::Kind::Stipple, {}, {}, {}}};
    const std::vector<const Patch *> patches = patchesOf(project, block);
    if (!patches.empty())
        stops.push_back({Stop::Kind::Echo, {}, {}, {}});
    for (const Patch *patch : patches) {
        const auto index = static_cast<std::size_t>(patch - project.patches.data());
        stops.push_back({Stop::Kind::Patch, patch->name, patch->cloth, plan.patches[index].rectangle});
    }
    stops.push_back({Stop::Kind::Outline, {}, {}, {}});
    return stops;
}

Designed designOf(const Project &project, const std::string &block)
{
    if (project.designs.empty())
        return {};
    std::string id = project.designs.front().id;
    if (!project.layout.empty()) {
        const std::vector<std::string> names = blockNames(project);
        const auto found = std::find(names.begin(), names.end(), block);
        if (found != names.end()) {
            const auto at = static_cast<std::size_t>(found - names.begin());
            const auto columns = static_cast<std::size_t>(project.blocks.columns);
            const std::size_t row = at / columns;
            if (row < project.layout.size() && at % columns < project.layout[row].size())
                id = project.layout[row][at % columns];
        }
    }
    Designed designed;
    if (const std::size_t mark = id.find('@'); mark != std::string::npos) {
        const std::string turn = id.substr(mark + 1);
        designed.turned = turn == "90" ? 90 : turn == "180" ? 180 : turn == "270" ? 270 : 0;
        id.resize(mark);
    }
    for (const Design &design : project.designs)
        if (design.id == id)
            designed.design = &design;
    return designed;
}

} // namespace matside
