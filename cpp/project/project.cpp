// SPDX-License-Identifier: MIT
#include "project/project.h"

#include <algorithm>
#include <cctype>

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

/// A price per yard as the price per metre (1 yd = 0.9144 m exactly), half up to as many places as it was
/// written with, at least two. None when it is no plain decimal of up to twelve digits.
std::optional<std::string> perMetre(const std::string &perYard)
{
    std::int64_t digits = 0;
    std::size_t places = 0;
    bool point = false;
    for (const char c : perYard) {
        if (c == '.' && !point) {
            point = true;
            continue;
        }
        if (!std::isdigit(static_cast<unsigned char>(c)) || digits >= 100'000'000'000)
            return std::nullopt;
        digits = digits * 10 + (c - '0');
        places += point ? 1 : 0;
    }
    for (; places < 2; ++places)
        digits *= 10;
    std::string text = std::to_string((digits * 2500 + 1143) / 2286);
    text.insert(0, text.size() <= places ? places + 1 - text.size() : 0, '0');
    return text.insert(text.size() - places, 1, '.');
}

/// Every length of a project goes through this, so that a copy in millimetres misses none.
class Millimetres {
public:
    void whole(Length &length) const
    {
        const Length mm = length.nearestTo(Length::mm(1));
        length = mm == Length() && length > Length() ? Length::mm(1) : mm;
    }
    /// What was left at the inch default takes the metric one: 12 mm for 1/2 in, not 13.
    void whole(Length &length, Length inchDefault, Length metricDefault) const
    {
        if (length == inchDefault)
            length = metricDefault;
        else
            whole(length);
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

bool isOneSet(const Project &project)
{
    return project.kits > 1 && project.kitsShareStrips && !project.lesson;
}

std::int64_t sparesOfSet(const Project &project)
{
    return isOneSet(project) ? project.blocks.spareInAll : 0;
}

std::int64_t blocksOfKit(const Project &project)
{
    return project.blocks.columns * project.blocks.rows + project.blocks.spare;
}

bool onSharedStrips(const Project &project)
{
    return project.kitsShareStrips || project.kits == 1;
}

std::int64_t blocksInAll(const Project &project)
{
    return blocksOfKit(project) * project.kits + sparesOfSet(project);
}

std::int64_t usualSpares(std::int64_t blocks)
{
    constexpr std::int64_t forEach = 12;
    return (std::max<std::int64_t>(blocks, 0) + forEach - 1) / forEach;
}

const Cloth *clothFor(const Project &project, ClothRole role)
{
    const auto found = std::find_if(project.cloths.begin(), project.cloths.end(),
                                    [&](const Cloth &cloth) { return cloth.role == role; });
    return found == project.cloths.end() ? nullptr : &*found;
}

const Cloth *clothNamed(const Project &project, std::string_view id)
{
    const auto found = std::find_if(project.cloths.begin(), project.cloths.end(),
                                    [&](const Cloth &cloth) { return cloth.id == id; });
    return found == project.cloths.end() ? nullptr : &*found;
}

Length usualSoldStep(System system)
{
    return system == System::Inch ? Length::inches(4, 1, 2) : Length::mm(100);
}

namespace {

void widthsInMillimetres(Project &p, const Project &inches)
{
    const Millimetres mm;
    const Project from = freshProject(System::Inch);
    const Project to = freshProject(System::Metric);
    mm.whole(p.blocks.width);
    mm.whole(p.blocks.height);
    mm.whole(p.seam, from.seam, to.seam);
    mm.whole(p.loft, from.loft, to.loft);
    mm.whole(p.slack, from.slack, to.slack);
    mm.whole(p.fold.fold_catch, from.fold.fold_catch, to.fold.fold_catch);
    // Bulk is a matter of tenths: 1/32 in is 0.8 mm.
    p.fold.turn = p.fold.turn.nearestTo(Length::mmTenths(1));
    mm.whole(p.strip.margin, from.strip.margin, to.strip.margin);
    mm.whole(p.strip.placing, from.strip.placing, to.strip.placing);
    mm.whole(p.strip.sliver, from.strip.sliver, to.strip.sliver);
    mm.whole(p.strip.tail, from.strip.tail, to.strip.tail);
    for (std::optional<Length> *length : {&p.sashing.cutBack, &p.strip.usable, &p.strip.gap})
        mm.whole(*length);
    // A sashing, edge or allowance that was so many seams stays so many.
    const auto follow = [&](std::optional<Length> &length, std::int64_t seams) {
        if (length && *length == inches.seam * seams)
            length = p.seam * seams;
        else
            mm.whole(length);
    };
    follow(p.sashing.finished, 2);
    follow(p.sashing.allowance, 1);
    follow(p.edge.outside, 1);
    follow(p.edge.seam, 1);
    mm.whole(p.edge.corner.radius);
    mm.whole(p.edge.corner.depth);
}

void listsInMillimetres(Project &p)
{
    const Millimetres mm;
    for (Cloth &cloth : p.cloths) {
        mm.whole(cloth.usable);
        cloth.soldBy = "10 cm";
        cloth.soldStep = Length::mm(100);
        for (OwnedPiece &owned : cloth.owned) { // never more than there is
            owned.length = max(owned.length.downTo(Length::mm(1)), Length::mm(1));
            owned.width = max(owned.width.downTo(Length::mm(1)), Length::mm(1));
        }
        for (Package &package : cloth.packages) {
            package.length = max(package.length.downTo(Length::mm(1)), Length::mm(1));
            package.width = max(package.width.downTo(Length::mm(1)), Length::mm(1));
        }
        if (cloth.price)
            cloth.price = perMetre(*cloth.price);
    }
    for (Patch &patch : p.patches) {
        mm.whole(patch.width);
        mm.whole(patch.height);
        mm.whole(patch.over, Length::inches(0, 1, 2), Length::mm(12));
    }
    if (p.rulers == freshProject(System::Inch).rulers) {
        p.rulers = freshProject(System::Metric).rulers;
        return;
    }
    for (Ruler &ruler : p.rulers) {
        mm.whole(ruler.length);
        mm.whole(ruler.width);
        ruler.finest.reset(); // its marks are not metric ones; the project's finest holds
    }
}

} // namespace

Project inWholeMillimetres(const Project &inches)
{
    if (inches.system == System::Metric) {
        Project copy = inches;
        copy.made = {};
        return copy;
    }
    const Millimetres mm;
    Project p = inches;
    p.system = System::Metric;
    p.made = {};
    p.finest = Length::mm(1);
    if (p.table)
        for (std::optional<Length> *side :
             {&p.table->length, &p.table->width, &p.table->diameter, &p.table->leaf})
            mm.whole(*side);
    widthsInMillimetres(p, inches);
    for (std::optional<Pair> *pair : {&p.hoop.field, &p.hoop.opening, &p.hoop.outside})
        mm.whole(*pair);
    for (std::optional<Length> *length : {&p.hoop.sandwich, &p.thread.spacing, &p.thread.bobbin})
        mm.whole(*length);
    listsInMillimetres(p);
    return p;
}

} // namespace matside
