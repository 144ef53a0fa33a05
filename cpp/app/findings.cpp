// SPDX-License-Identifier: MIT
#include "app/findings.h"

#include "app/planfile.h"

#include <QVariantMap>

#include <algorithm>

namespace matside {

namespace {

using Json = nlohmann::ordered_json;

/// The true rectangle: on a square block its side stands for both.
Json sizeFile(const Pair &size, Marks marks)
{
    Json file = lengthFile(min(size.along, size.across), marks, Round::Down);
    file["along"] = lengthFile(size.along, marks, Round::Down);
    file["across"] = lengthFile(size.across, marks, Round::Down);
    return file;
}

} // namespace

Target targetOf(const Project &project, const Plan &plan)
{
    Target target;
    target.outline = plan.block.outline;
    const Tolerances tolerances = usualTolerances(project.system);
    target.common =
        isCommonSize(ownSizes(project, tolerances), plan.block.outline, tolerances, project.marks());
    target.allowance = plan.basis.allowance;
    return target;
}

std::optional<Length> offItsSize(const Project &project, const Plan &plan,
                                 const std::array<Length, 2> &outline)
{
    const Pair &planned = plan.block.outline;
    const Length off =
        max((outline[0] - planned.along).magnitude(), (outline[1] - planned.across).magnitude());
    return off > usualTolerances(project.system).size ? std::optional(off) : std::nullopt;
}

std::optional<Finding> findingOf(const Project &project, const Plan &plan, const MadeBlock &block)
{
    const auto readings = readingsOf(block);
    if (!readings)
        return std::nullopt;
    const Target target = targetOf(project, plan);
    const Tolerances tolerances = usualTolerances(project.system);
    return judge(*readings, measuredOn(block, target, tolerances), target, tolerances, project.marks());
}

std::optional<CommonSize> commonOf(const Project &project, const Plan &plan)
{
    const Tolerances tolerances = usualTolerances(project.system);
    const auto sizes = ownSizes(project, tolerances);
    if (sizes.size() < 2)
        return std::nullopt;
    const Pair planned = plan.block.outline;
    return commonSize(sizes, planned, planned, tolerances, project.marks());
}

QVariantList cornersOf(const Finding &finding, double times)
{
    QVariantList list;
    if (!finding.shape)
        return list;
    // Each corner's departure from the mean rectangle is drawn several times over.
    const Shape &shape = *finding.shape;
    Point middle;
    for (const Point &corner : shape.corner) {
        middle.x += corner.x / 4;
        middle.y += corner.y / 4;
    }
    const auto w = static_cast<double>(finding.own.along.count());
    const auto h = static_cast<double>(finding.own.across.count());
    const double longest = std::max({w, h, 1.0});
    for (std::size_t i = 0; i < 4; ++i) {
        const double x = (i == 0 || i == 3 ? -w : w) / 2;
        const double y = (i < 2 ? -h : h) / 2;
        const double dx = (shape.corner[i].x - middle.x - x) * times;
        const double dy = (shape.corner[i].y - middle.y - y) * times;
        list.append(QVariantMap{{QStringLiteral("x"), (x + dx) / longest},
                                {QStringLiteral("y"), (y + dy) / longest}});
    }
    return list;
}

nlohmann::ordered_json findingsFile(const Project &project, const Plan &plan)
{
    Json all = Json::array();
    const Marks marks = project.marks();
    for (const MadeBlock &block : project.made.blocks) {
        const auto finding = findingOf(project, plan, block);
        if (!finding)
            continue;
        Json file{{"block", block.block},
                  {"finding", std::string(nameOf(finding->kind))},
                  {"says", unbraced(verdictText(*finding, marks)).toStdString()},
                  {"does", unbraced(remedyText(*finding, marks)).toStdString()},
                  {"remedy", std::string(nameOf(finding->does))},
                  {"figures",
                   {{"K", lengthFile(finding->figures.K, marks, Round::Fine)},
                    {"lean", lengthFile(finding->figures.lean, marks, Round::Fine)},
                    {"tilt", lengthFile(finding->figures.tilt, marks, Round::Fine)},
                    {"trueSize", sizeFile(finding->figures.trueSize, marks)}}}};
        all.push_back(std::move(file));
    }
    return all;
}

} // namespace matside
