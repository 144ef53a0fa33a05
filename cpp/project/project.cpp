// SPDX-License-Identifier: MIT
#include "project/project.h"

#include <algorithm>

namespace matside {

namespace {

void inchDefaults(Project &p)
{
    const auto in = [](std::int64_t whole, std::int64_t num = 0, std::int64_t den = 1) {
        return Length::inches(whole, num, den);
    };
    p.finest = in(0, 1, 16);
    p.blocks.width = p.blocks.height = in(6);
    p.seam = in(0, 1, 2);
    p.fold.fold_catch = p.loft = p.strip.placing = in(0, 1, 8);
    p.fold.turn = in(0, 1, 32);
    p.strip.margin = in(1);
    p.strip.sliver = p.strip.tail = in(0, 1, 2);
    p.slack = in(8);
    p.rulers = {{"long", in(24), in(6), std::nullopt, {}},
                {"square", in(12, 1, 2), in(12, 1, 2), std::nullopt, {}}};
}

void metricDefaults(Project &p)
{
    p.finest = Length::mm(1);
    p.blocks.width = p.blocks.height = Length::mm(150);
    p.seam = Length::mm(12);
    p.fold.fold_catch = p.loft = p.strip.placing = Length::mm(3);
    p.fold.turn = Length::mmTenths(8);
    p.strip.margin = Length::mm(25);
    p.strip.sliver = p.strip.tail = Length::mm(12);
    p.slack = Length::mm(200);
    p.rulers = {{"long", Length::mm(600), Length::mm(150), std::nullopt, {}},
                {"square", Length::mm(300), Length::mm(300), std::nullopt, {}}};
}

/// Every length of a project goes through this, so that a copy in millimetres misses none.
class Millimetres {
public:
    void whole(Length &length) const
    {
        const Length mm = length.nearestTo(Length::mm(1));
        length = mm == Length() && length > Length() ? Length::mm(1) : mm;
    }
    void whole(std::optional<Length> &length) const
    {
        if (length)
            whole(*length);
    }
    void whole(std::optional<Pair> &pair) const
    {
        if (!pair)
            return;
        whole(pair->along);
        whole(pair->across);
    }
};

} // namespace

Project freshProject(System system)
{
    Project project;
    project.system = system;
    if (system == System::Inch)
        inchDefaults(project);
    else
        metricDefaults(project);
    return project;
}

const Cloth *clothFor(const Project &project, ClothRole role)
{
    const auto found = std::find_if(project.cloths.begin(), project.cloths.end(),
                                    [&](const Cloth &cloth) { return cloth.role == role; });
    return found == project.cloths.end() ? nullptr : &*found;
}

Project inWholeMillimetres(const Project &inches)
{
    const Millimetres mm;
    Project p = inches;
    p.system = System::Metric;
    p.made = {};
    p.finest = Length::mm(1);
    if (p.table)
        for (std::optional<Length> *side : {&p.table->length, &p.table->width, &p.table->diameter})
            mm.whole(*side);
    for (Length *length : {&p.blocks.width, &p.blocks.height, &p.seam, &p.loft, &p.slack, &p.fold.fold_catch,
                           &p.strip.margin, &p.strip.placing, &p.strip.sliver, &p.strip.tail})
        mm.whole(*length);
    // A seam of 1/2 in is sewn as 12 mm, the metric seam, not as 13: whole sizes from a whole seam.
    if (inches.seam == Length::inches(0, 1, 2))
        p.seam = Length::mm(12);
    p.fold.turn = p.fold.turn.nearestTo(Length::mmTenths(1));
    for (std::optional<Length> *length : {&p.sashing.cutBack, &p.sashing.allowance, &p.edge.outside,
                                          &p.edge.seam, &p.strip.usable, &p.strip.gap})
        mm.whole(*length);
    // A sashing, edge or allowance that was so many seams stays so many.
    const auto follow = [&](std::optional<Length> &to, const std::optional<Length> &from,
                            std::int64_t seams) {
        if (from && *from == inches.seam * seams)
            to = p.seam * seams;
        else
            mm.whole(to);
    };
    follow(p.sashing.finished, inches.sashing.finished, 2);
    follow(p.edge.outside, inches.edge.outside, 1);
    follow(p.edge.seam, inches.edge.seam, 1);
    follow(p.sashing.allowance, inches.sashing.allowance, 1);
    p.sashing.cutBack.reset();
    for (std::optional<Pair> *pair : {&p.hoop.field, &p.hoop.opening, &p.hoop.outside})
        mm.whole(*pair);
    for (Cloth &cloth : p.cloths) {
        mm.whole(cloth.usable);
        cloth.soldBy = "10 cm";
        cloth.soldStep = Length::mm(100);
    }
    for (Patch &patch : p.patches)
        for (Length *length : {&patch.width, &patch.height, &patch.over})
            mm.whole(*length);
    p.rulers = freshProject(System::Metric).rulers;
    return p;
}

} // namespace matside
