// SPDX-License-Identifier: MIT
#include "plan/plan.h"

#include "plan/curves.h"
#include "plan/parts.h"
#include "plan/problems.h"

namespace matside {

BlockPlan planBlock(const Project &project, const Basis &basis)
{
    BlockPlan block;
    block.outline = {project.blocks.width, project.blocks.height};
    block.sent = {sentFor(block.outline.along, basis.drawAlong),
                  sentFor(block.outline.across, basis.drawAcross)};
    const Length both = basis.allowance * 2;
    block.trimmed = {block.outline.along + both, block.outline.across + both};
    return block;
}

SizePlan planSize(const Project &project, const Basis &basis, const BlockPlan &block,
                  const SashingPlan &sashing, const Measures &m)
{
    const std::int64_t columns = project.blocks.columns;
    const std::int64_t rows = project.blocks.rows;
    const auto row = [](std::int64_t n, Length piece, Length between) {
        return piece * n + between * (n - 1);
    };

    SizePlan size;
    size.outline = {row(columns, block.outline.along, basis.finished),
                    row(rows, block.outline.across, basis.finished)};
    size.raw = {row(columns, block.trimmed.along, sashing.allowanceGap),
                row(rows, block.trimmed.across, sashing.allowanceGap)};
    const Length edge = isBagged(project) ? Length() : basis.outside * 2;
    size.finished = {size.outline.along + edge, size.outline.across + edge};
    if (isBagged(project))
        size.backing = Pair{size.raw.along - m.bagLess, size.raw.across - m.bagLess};
    else if (project.build == Build::CleanBack)
        size.backing = isFramed(project)
                           ? Pair{size.finished.along + m.backingOver, size.finished.across + m.backingOver}
                           : Pair{size.raw.along + m.backingOver, size.raw.across + m.backingOver};
    return size;
}

namespace {

/// Scallops from inside point to inside point, on the lines `depth` inside the raw edge.
ScallopPlan planScallops(const Project &project, const Basis &basis, const Pair &finished)
{
    const Corner &corner = project.edge.corner;
    ScallopPlan plan;
    plan.depth = basis.scallopDepth;
    plan.along = corner.along > 0 ? corner.along : project.blocks.columns;
    plan.across = corner.across > 0 ? corner.across : project.blocks.rows;
    plan.chord = {(finished.along - plan.depth * 2).scaled(1, plan.along),
                  (finished.across - plan.depth * 2).scaled(1, plan.across)};
    const auto along = scallop(plan.chord.along, plan.depth);
    const auto across = scallop(plan.chord.across, plan.depth);
    if (along && across) {
        plan.radius = {along->radius, across->radius};
        plan.arc = {along->arc, across->arc};
    }
    plan.border = scallopBorder(plan.depth, basis.edgeSeam, project.system);
    return plan;
}

/// One continuous bias strip round a curved edge.
void bindOnBias(const Project &project, const Basis &basis, const SizePlan &size, BindingPlan &binding)
{
    BiasPlan bias;
    bias.least = leastRadius(basis.edgeSeam);
    bias.bites = cornerBite(basis.cornerRadius, basis.outside);
    if (project.edge.corner.kind == CornerKind::Scalloped) {
        bias.scallops = planScallops(project, basis, size.finished);
        const ScallopPlan &edge = *bias.scallops;
        bias.bites = max(Length(), edge.depth - basis.outside);
        binding.length =
            (edge.arc.along * edge.along + edge.arc.across * edge.across) * 2 + binding.cut + project.slack;
    }
    bias.square = biasSquare(binding.length, binding.cut, project.system);
    binding.strips = 1;
    binding.bias = bias;
}

} // namespace

std::optional<BindingPlan> planBinding(const Project &project, const Basis &basis, const SizePlan &size,
                                       const Measures &m)
{
    if (isBagged(project))
        return std::nullopt;
    BindingPlan binding;
    const Length reach = project.edge.sewn == Sewn::Hand ? m.bindingHand : m.bindingMachine;
    binding.width = bindingWidth(basis.edgeSeam, project.loft, reach, m.bindingTurn, project.edge.binding);
    binding.cut = binding.width.upTo(m.bindingStep);
    const Length perimeter = (size.finished.along + size.finished.across) * 2;
    binding.length = perimeter - cornersSave(basis.cornerRadius) + binding.cut + project.slack;
    if (project.edge.corner.kind != CornerKind::Square) {
        bindOnBias(project, basis, size, binding);
        return binding;
    }
    // A diagonal join takes one strip width from each further strip (F15).
    const Length yields = basis.usableBinding - binding.cut;
    binding.strips = yields > Length() ? (perimeter + project.slack).ceilDiv(yields) : 0;
    return binding;
}

TableSeen seenOf(const Table &table, Length along, Length across, const Pair &finished, bool leafIn)
{
    TableSeen seen;
    seen.leafIn = leafIn;
    seen.reveal = {(along - finished.along).scaled(1, 2), (across - finished.across).scaled(1, 2)};
    if (table.diameter) {
        // Beside the leaf the rim runs straight: only what lies beyond it is in a half round.
        const Length beyond = max(finished.along - table.leafLying(leafIn), Length());
        seen.corner = (across - diagonalOf(beyond, finished.across)).scaled(1, 2);
    }
    return seen;
}

std::optional<TablePlan> planTable(const Project &project, const SizePlan &size)
{
    if (!project.table)
        return std::nullopt;
    const Table &table = *project.table;
    const bool in = table.leaf && table.leafIn;
    const std::optional<Length> along = table.along(in);
    const std::optional<Length> across = table.across();
    if (!along || !across)
        return std::nullopt;
    TablePlan plan;
    static_cast<TableSeen &>(plan) = seenOf(table, *along, *across, size.finished, in);
    plan.round = table.diameter.has_value();
    if (table.leaf)
        plan.other = seenOf(table, *table.along(!in), *across, size.finished, !in);
    return plan;
}

std::vector<PatchPlan> planPatches(const Project &project, const Measures &m)
{
    const std::int64_t blocks = blocksOfKit(project);
    std::vector<PatchPlan> patches;
    patches.reserve(project.patches.size());
    for (const Patch &patch : project.patches) {
        PatchPlan cut;
        cut.name = patch.name;
        cut.cloth = patch.cloth;
        cut.rectangle = {patch.width + patch.over * 2, patch.height + patch.over * 2};
        cut.web = {cut.rectangle.along - m.webLess * 2, cut.rectangle.across - m.webLess * 2};
        cut.count = patch.perBlock * blocks;
        patches.push_back(std::move(cut));
    }
    return patches;
}

BattingPlan planBatting(const Project &project, const Basis &basis, const BlockPlan &block,
                        const StripPlan &strip, const Measures &m)
{
    BattingPlan batting;
    batting.width = strip.width;
    batting.least = block.sent.across + (basis.seam + m.fray) * 2;
    const Length inside = basis.seam * 2 + m.halfSeam;
    batting.inside = {block.outline.along + inside, block.outline.across + inside};
    if (project.hoop.opening)
        batting.insideFits = batting.inside.along <= project.hoop.opening->along &&
                             batting.inside.across <= project.hoop.opening->across;
    return batting;
}

Plan planFigures(const Project &project)
{
    const Measures m = measures(project.system);
    Plan plan;
    plan.basis = basisOf(project);
    plan.block = planBlock(project, plan.basis);
    plan.sashing = planSashing(project, plan.basis, plan.block, m);
    plan.strip = planStrip(project, plan.basis, plan.block, plan.sashing, m);
    plan.fold = planFold(project, plan.basis, plan.sashing, m);
    plan.size = planSize(project, plan.basis, plan.block, plan.sashing, m);
    plan.frame = planFrame(project, plan.basis, plan.size, m);
    plan.binding = planBinding(project, plan.basis, plan.size, m);
    plan.table = planTable(project, plan.size);
    plan.batting = planBatting(project, plan.basis, plan.block, plan.strip, m);
    plan.patches = planPatches(project, m);
    return plan;
}

Plan plan(const Project &project)
{
    Plan plan = planFigures(project);
    plan.problems = problemsOf(project, plan);
    plan.cautions = cautionsOf(project, plan);
    return plan;
}

} // namespace matside
