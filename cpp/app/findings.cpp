// SPDX-License-Identifier: MIT
#include "app/findings.h"

#include "app/planfile.h"
#include "bench/sides.h"

#include <QCoreApplication>

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

bool commonTaken(const Project &project)
{
    return takenAsCommon(project, project.blocks.width) && takenAsCommon(project, project.blocks.height);
}

Target targetOf(const Project &project, const Plan &plan)
{
    Target target;
    target.outline = plan.block.outline;
    const Tolerances tolerances = usualTolerances(project.system);
    target.common = commonTaken(project) || isCommonSize(ownSizes(project, tolerances), plan.block.outline,
                                                         tolerances, project.marks());
    target.allowance = plan.basis.allowance;
    return target;
}

std::optional<Length> offItsSize(const Project &project, const Plan &plan,
                                 const std::array<Length, 2> &outline)
{
    const Pair &planned = plan.block.outline;
    const Tolerances tolerances = usualTolerances(project.system);
    const Length more = max(outline[0] - planned.along, outline[1] - planned.across);
    const Length less = max(planned.along - outline[0], planned.across - outline[1]);
    // At a common size that was taken a larger one is trimmed to it (F23).
    const bool off =
        less > tolerances.size || more > (commonTaken(project) ? tolerances.over : tolerances.size);
    return off ? std::optional(max(more, less)) : std::nullopt;
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
    // One that was taken stands as long as every block can be trimmed to it: it does not follow each further
    // one.
    const auto fits = [&](const OwnSize &own) {
        const Length more = max(own.outline.along - planned.along, own.outline.across - planned.across);
        const Length less = max(planned.along - own.outline.along, planned.across - own.outline.across);
        return more <= tolerances.over && less <= tolerances.size;
    };
    if (commonTaken(project) && std::all_of(sizes.begin(), sizes.end(), fits))
        return CommonSize{planned, false, {}, {}, {}};
    return commonSize(sizes, planned, planned, tolerances, project.marks());
}

bool trimmedToCommon(const Finding &finding, const Project &project)
{
    const Length more =
        max(finding.own.along - finding.wanted.along, finding.own.across - finding.wanted.across);
    return finding.kind == FindingKind::Plain && finding.does == Remedy::CutPlainly && commonTaken(project) &&
           more > usualTolerances(project.system).size;
}

QString trimmedToCommonSays(const Finding &finding, const std::optional<Pair> &stitchedFor,
                            const Project &project)
{
    const Marks marks = project.marks();
    const Tolerances tolerances = usualTolerances(project.system);
    const auto near = [&](Length own, Length wanted) {
        return (own - wanted).magnitude() <= tolerances.size;
    };
    const bool planned = stitchedFor && near(finding.own.along, stitchedFor->along) &&
                         near(finding.own.across, stitchedFor->across);
    // The size it was stitched for is planned no more: a common size was taken since.
    return (planned ? QCoreApplication::translate("Words", "It came out as first planned: %1.")
                    : QCoreApplication::translate("Words", "It is larger than the common size: %1."))
        .arg(sizeText(finding.own, marks));
}

QString trimmedToCommonDoes(const Plan &plan, Marks marks)
{
    //: %1 is the size of a trimmed block, at the common size of all
    return QCoreApplication::translate("Words", "Trim it to the common size, cut to %1.")
        .arg(sizeText(plan.block.trimmed, marks));
}

Finding besideOthers(const Finding &finding, const std::string &of, const Readings &readings,
                     const std::optional<CommonSize> &common, const Project &project, const Plan &plan)
{
    const bool size = finding.kind == FindingKind::CommonSize ||
                      (finding.kind == FindingKind::Remake && finding.does == Remedy::RestitchLine);
    if (!common || !size)
        return finding;
    Finding beside = finding;
    const auto &out = common->outliers;
    if (std::find(out.begin(), out.end(), of) != out.end()) {
        beside.kind = FindingKind::Remake; // F25: under its fellows
        beside.does = Remedy::RestitchLine;
        return beside;
    }
    if (common->outline == plan.block.outline)
        return finding;
    const Finding again = judge(readings, Measured::Outline, {common->outline, true, plan.basis.allowance},
                                usualTolerances(project.system), project.marks());
    if (again.kind != FindingKind::Remake && again.kind != FindingKind::MeasureAgain) {
        beside.kind = FindingKind::CommonSize;
        beside.does = Remedy::TakeCommonSize;
    }
    return beside;
}

QString remedyBeside(const Finding &finding, const std::optional<CommonSize> &common, const Project &project,
                     const Plan &plan)
{
    const Marks marks = project.marks();
    if (finding.kind != FindingKind::CommonSize || !common || common->outline == plan.block.outline)
        return remedyText(finding, marks);
    //: %1 is the common size of the blocks measured, within their stitches
    return QCoreApplication::translate("Words", "Take the common size, stitched %1.")
        .arg(sizeText(common->outline, marks));
}

std::string nextToMeasure(const Project &project, const std::string &inHand)
{
    for (const MadeBlock &block : project.made.blocks)
        if (block.good() && block.state == BlockState::Stitched && block.block != inHand && !block.outline &&
            !readingsOf(block))
            return block.block;
    return {};
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
                  {"says", unbraced(verdictText(*finding, marks,
                                                measuredOn(block, targetOf(project, plan),
                                                           usualTolerances(project.system))))
                               .toStdString()},
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
