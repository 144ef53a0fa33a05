// SPDX-License-Identifier: MIT
#include "app/findings.h"

#include "app/planfile.h"

#include <QCoreApplication>
#include <QVariantMap>

#include <algorithm>
#include <array>
#include <cmath>

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

/// A corner as it is drawn, in parts of the longer side.
struct Drawn {
    Point square; ///< of the rectangle it should be
    Point off;    ///< how far the block's is from it
};

/// Less than so much of the longer side, the departure drawn several times over still looks as planned; more
/// than so much of it, it is seen as it was measured.
constexpr double leastSeen = 0.01;
constexpr double mostDrawn = 0.2;

/// The rectangle of a size, its corners from the top left.
Shape rectangleOf(const Pair &size)
{
    const auto w = static_cast<double>(size.along.count()), h = static_cast<double>(size.across.count());
    return {{Point{0, 0}, Point{w, 0}, Point{w, h}, Point{0, h}}};
}

/// The shape laid so that a tilted side is seen to tilt: straight is the one across from it, or the narrower
/// end of a taper. Any other lies on its top as it was fitted. Where it is the size that is spoken of, the
/// size is what is seen: whether it tilts is judged at the common one.
Shape laidStraight(const Finding &finding)
{
    if (finding.kind == FindingKind::CommonSize)
        return rectangleOf(finding.own);
    Shape shape = *finding.shape;
    if (!finding.side)
        return shape;
    const std::size_t across = (static_cast<std::size_t>(*finding.side) + 2) % 4;
    const Point from = shape.corner[across], to = shape.corner[(across + 1) % 4];
    constexpr double quarter = 1.57079632679489661923;
    const double turn = static_cast<double>(across) * quarter - std::atan2(to.y - from.y, to.x - from.x);
    for (Point &corner : shape.corner)
        corner = {corner.x * std::cos(turn) - corner.y * std::sin(turn),
                  corner.x * std::sin(turn) + corner.y * std::cos(turn)};
    return shape;
}

/// The corners of the size it should have, and how far the block's are from them; readings that make no shape
/// leave them where they should be.
std::array<Drawn, 4> drawnOf(const Finding &finding)
{
    const Shape shape = finding.shape ? laidStraight(finding) : rectangleOf(finding.wanted);
    Point middle;
    for (const Point &corner : shape.corner) {
        middle.x += corner.x / 4;
        middle.y += corner.y / 4;
    }
    const auto w = static_cast<double>(finding.wanted.along.count());
    const auto h = static_cast<double>(finding.wanted.across.count());
    const double longest = std::max({w, h, 1.0});
    std::array<Drawn, 4> corners;
    for (std::size_t i = 0; i < 4; ++i) {
        const Point square{(i == 0 || i == 3 ? -w : w) / 2, (i < 2 ? -h : h) / 2};
        const Point &corner = shape.corner[i];
        corners[i] = {
            {square.x / longest, square.y / longest},
            {(corner.x - middle.x - square.x) / longest, (corner.y - middle.y - square.y) / longest}};
    }
    return corners;
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

double timesDrawn(const Finding &finding)
{
    if (!finding.shape)
        return 1;
    double most = 0;
    for (const Drawn &corner : drawnOf(finding))
        most = std::max({most, std::abs(corner.off.x), std::abs(corner.off.y)});
    return most * timesCrooked < leastSeen || most * timesCrooked > mostDrawn ? 1 : timesCrooked;
}

QVariantList cornersOf(const Finding &finding, double times)
{
    QVariantList list;
    if (!finding.shape)
        return list;
    for (const Drawn &corner : drawnOf(finding))
        list.append(QVariantMap{{QStringLiteral("x"), corner.square.x + corner.off.x * times},
                                {QStringLiteral("y"), corner.square.y + corner.off.y * times}});
    return list;
}

QVariantList plannedCorners(const Finding &finding)
{
    QVariantList list;
    for (const Drawn &corner : drawnOf(finding))
        list.append(
            QVariantMap{{QStringLiteral("x"), corner.square.x}, {QStringLiteral("y"), corner.square.y}});
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
