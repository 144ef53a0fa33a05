// SPDX-License-Identifier: MIT
#include "project/basis.h"

#include <algorithm>

namespace matside {

namespace {

constexpr std::int64_t wholeShare = 1'000'000;

/// A cloth's usable width: measured, else as entered.
std::optional<Length> usableOf(const Project &project, const Cloth &cloth)
{
    const std::optional<Length> measured = measuredUsable(project, cloth.id);
    return measured ? measured : cloth.usable;
}

std::optional<Length> leastUsable(const Project &project)
{
    std::optional<Length> least;
    for (const Cloth &cloth : project.cloths) {
        const bool layered = cloth.role == ClothRole::Front || cloth.role == ClothRole::Back ||
                             cloth.role == ClothRole::Batting;
        const std::optional<Length> usable = layered ? usableOf(project, cloth) : std::nullopt;
        if (usable && (!least || *usable < *least))
            least = usable;
    }
    return least;
}

/// A strip is as long as was entered, unless a measured cloth of its layers is narrower.
Length stripUsable(const Project &project)
{
    const Length usual = project.system == System::Inch ? Length::inches(40) : Length::mm(1000);
    if (!project.strip.usable)
        return leastUsable(project).value_or(usual);
    Length usable = *project.strip.usable;
    for (const MadeCloth &made : project.made.cloths) {
        const Cloth *cloth = clothNamed(project, made.cloth);
        if (!cloth || !made.usable)
            continue;
        if (cloth->role == ClothRole::Front || cloth->role == ClothRole::Back ||
            cloth->role == ClothRole::Batting)
            usable = min(usable, *made.usable);
    }
    return usable;
}

Length bandUsable(const Project &project, ClothRole role, Length strip)
{
    const Cloth *cloth = clothFor(project, role);
    return cloth ? usableOf(project, *cloth).value_or(strip) : strip;
}

Pair fieldOf(const Project &project)
{
    if (project.hoop.field)
        return *project.hoop.field;
    if (!project.hoop.opening)
        return {};
    // F2: where only the opening is known, the foot needs 1/2 in | 12 mm on each side.
    const Length foot = project.system == System::Inch ? Length::inches(1) : Length::mm(24);
    return {project.hoop.opening->along - foot, project.hoop.opening->across - foot};
}

Length gapWanted(System system, Length finished, Length allowance)
{
    const Length least = system == System::Inch ? Length::inches(0, 1, 32) : Length::mmTenths(8);
    const Length planned = finished - allowance * 2;
    return planned > gapLeftOpen(system) ? least : max(least, planned);
}

void takeTestJoin(const Project &project, Basis &basis)
{
    const TestJoin &join = *project.made.testJoin;
    basis.joinTried = true;
    basis.sewnSeam = join.seam.value_or(basis.seam);
    basis.loft = join.loft.value_or(project.loft);
    basis.nextSeam = basis.sewnSeam;
    if (join.gap && join.mend == MendedBy::Seam)
        basis.nextSeam = basis.sewnSeam + (*join.gap - basis.gapWanted).scaled(1, 4);
    if (!join.between)
        return;
    basis.between = *join.between;
    // e_b = 1.5 t + 0.24 H with t = 0.012 in, both over one denominator.
    basis.turn = (Length::inches(18) + basis.loft * 240).scaled(1, 1000);
}

/// F14: a frame is as wide as the sashing unless told otherwise, and bound beyond that.
void takeEdge(const Project &project, Basis &basis)
{
    const Length kept = min(project.seam, basis.allowance);
    if (isFramed(project)) {
        basis.edgeSeam = project.edge.seam.value_or(kept);
        basis.outside = project.edge.outside.value_or(basis.finished + basis.edgeSeam);
        return;
    }
    basis.outside = project.edge.outside.value_or(kept);
    basis.edgeSeam = project.edge.seam.value_or(basis.outside);
}

void takeCorner(const Project &project, Basis &basis)
{
    const Corner &corner = project.edge.corner;
    const bool inch = project.system == System::Inch;
    if (corner.kind == CornerKind::Rounded)
        basis.cornerRadius = corner.radius.value_or(inch ? Length::inches(3) : Length::mm(75));
    if (corner.kind == CornerKind::Scalloped)
        basis.scallopDepth = corner.depth.value_or(inch ? Length::inches(1) : Length::mm(25));
    if (corner.kind != CornerKind::Round)
        return;
    // Half the shorter finished side (F13), which is known before anything else of the plan.
    const Blocks &blocks = project.blocks;
    const auto side = [&](std::int64_t n, Length block) {
        return block * n + basis.finished * (n - 1) + basis.outside * 2;
    };
    basis.cornerRadius =
        min(side(blocks.columns, blocks.width), side(blocks.rows, blocks.height)).scaled(1, 2);
}

} // namespace

bool isBagged(const Project &project)
{
    return project.edge.kind == EdgeKind::Bagged ||
           (project.build == Build::CleanBack && project.cleanBack == CleanBack::Bagged);
}

bool isFramed(const Project &project)
{
    return project.edge.kind == EdgeKind::Framed && !isBagged(project);
}

std::optional<Length> measuredUsable(const Project &project, std::string_view cloth)
{
    const auto measured =
        std::find_if(project.made.cloths.begin(), project.made.cloths.end(),
                     [&](const MadeCloth &made) { return made.cloth == cloth && made.usable; });
    return measured != project.made.cloths.end() ? measured->usable : std::nullopt;
}

Share drawUp(Length sent, Length outline)
{
    if (sent <= Length() || !outline.valid())
        return {};
    // Half up, also for a block that grew; 10 000 m stays far inside 64 bits here.
    const long double share =
        1.0L - static_cast<long double>(outline.count()) / static_cast<long double>(sent.count());
    const long double millionths = share * wholeShare;
    return Share{static_cast<std::int64_t>(millionths < 0 ? millionths - 0.5L : millionths + 0.5L)};
}

Length gapLeftOpen(System system)
{
    return system == System::Inch ? Length::inches(0, 1, 8) : Length::mm(3);
}

Basis basisOf(const Project &project)
{
    Basis basis;
    basis.system = project.system;
    basis.seam = basis.sewnSeam = basis.nextSeam = project.seam;
    basis.finished = project.sashing.finished.value_or(project.seam * 2);
    basis.allowance = project.sashing.allowance.value_or(project.seam);
    basis.gapWanted = gapWanted(project.system, basis.finished, basis.allowance);
    takeEdge(project, basis);
    takeCorner(project, basis);
    basis.between = basis.finished;
    basis.turn = project.fold.turn;
    basis.loft = project.loft;
    basis.usable = stripUsable(project);
    basis.usableSashFront = bandUsable(project, ClothRole::SashingFront, basis.usable);
    basis.usableSashBack = bandUsable(project, ClothRole::SashingBack, basis.usable);
    basis.usableBatting = bandUsable(project, ClothRole::Batting, basis.usable);
    // Out of packages its strips are no longer than the hoop's, so that they lie beside those.
    if (const Cloth *batting = clothFor(project, ClothRole::Batting); batting && !batting->packages.empty())
        basis.usableBatting = min(basis.usableBatting, basis.usable);
    basis.usableBinding = bandUsable(project, ClothRole::Binding, basis.usable);
    basis.drawAlong = project.drawUp.along;
    basis.drawAcross = project.drawUp.across;
    if (project.made.testBlock) {
        const TestBlock &test = *project.made.testBlock;
        basis.blockTried = true;
        basis.drawAlong = drawUp(test.sent[0], test.outline[0]);
        basis.drawAcross = drawUp(test.sent[1], test.outline[1]);
    }
    if (project.made.drawUp) {
        basis.blockTried = true;
        basis.drawAlong = project.made.drawUp->along;
        basis.drawAcross = project.made.drawUp->across;
    }
    basis.field = fieldOf(project);
    basis.hoopOutside = project.hoop.outside.value_or(Pair{});
    if (project.made.testJoin)
        takeTestJoin(project, basis);
    return basis;
}

} // namespace matside
