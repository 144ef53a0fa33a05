// SPDX-License-Identifier: MIT
#include "app/findings.h"

#include "app/planfile.h"
#include "made/commonsize.h"

namespace matside {

namespace {

using Json = nlohmann::ordered_json;

/// A plain sentence without the braces that set lengths apart on the screen.
std::string plain(QString text)
{
    text.remove(u'{').remove(u'}');
    return text.toStdString();
}

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
                  {"says", plain(verdictText(*finding, marks))},
                  {"does", plain(remedyText(*finding, marks))},
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
