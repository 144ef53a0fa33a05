// SPDX-License-Identifier: MIT
#include "bench/build.h"

#include "plan/parts.h"

namespace matside {

namespace {

std::vector<Piece> bothFaces(const Bench &bench, const char *piece)
{
    std::vector<Piece> faces{{std::string(piece) + "/front", 1}};
    if (bench.plan.sashing.cutBack)
        faces.push_back({std::string(piece) + "/back", 1});
    return faces;
}

void joinBlocks(Bench &bench)
{
    const Project &project = bench.project;
    const std::int64_t kits = project.kits;
    const SashingPlan &sashing = bench.plan.sashing;
    const auto join = [&](Does does, std::int64_t count, const char *piece, const char *makes) {
        Step &step = add(bench, Station::Join, does, count);
        step.takes = bothFaces(bench, piece);
        step.makes = {{makes, 1}};
        step.seam = bench.plan.basis.seam;
        if (bench.plan.fold)
            step.fold = bench.plan.fold->under;
        step.figure = bench.plan.fold ? "fold.under" : "sashing.finished";
        step.caution = "needle";
        step.check = "both-strips-caught";
        return &step;
    };
    if (sashing.shorts > 0)
        join(Does::JoinShort, sashing.shorts * kits, "short", "short-join");

    Step &row = add(bench, Station::Join, Does::JoinRow, project.blocks.rows * kits);
    row.takes = {{"block", project.blocks.columns}};
    if (project.blocks.columns > 1)
        row.takes.push_back({"short-join", project.blocks.columns - 1});
    row.makes = {{"row", 1}};
    row.figure = "sashing.longs.length";
    row.size = Pair{bench.plan.size.raw.along, bench.plan.block.trimmed.across};
    row.check = "rows-alike";
    if (sashing.longs > 0) {
        Step *longJoin = join(Does::JoinLongRow, sashing.longs * kits, "long", "long-join");
        longJoin->at = sashing.marks;
        longJoin->check = "mark-on-every-short";
    }
}

void layBacking(Bench &bench)
{
    if (!bench.plan.size.backing)
        return;
    const std::string cloth = clothId(bench.project, ClothRole::Back);
    straighten(bench, cloth);
    Step &cut = add(bench, Station::Cut, Does::CutBacking, bench.project.kits, cloth);
    cut.size = bench.plan.size.backing;
    cut.ruler =
        placeRulers(bench.project.rulers, bench.plan.size.backing->across, bench.plan.size.backing->along, 1);
    cut.takes = {{"straight/" + cloth, 0}};
    cut.makes = {{"backing", 1}};
    cut.check = "line-at-both-ends";
    const bool bagged = isBagged(bench.project);
    Step &lay = add(bench, Station::Edge, bagged ? Does::BagOut : Does::LayBacking, bench.project.kits);
    lay.takes = {{"squared-piece", 1}, {"backing", 1}};
    lay.makes = {{bagged ? "closed-piece" : "backed-piece", 1}};
    lay.check = bagged ? "opening-closed" : "held-flat";
    lay.caution = "needle";
    if (bagged)
        lay.seam = bench.plan.basis.allowance;
}

void bindEdge(Bench &bench, const char *piece)
{
    const BindingPlan &binding = *bench.plan.binding;
    const std::string cloth = bandCloth(bench.project, ClothRole::Binding);
    const std::int64_t kits = bench.project.kits;
    Step &cut = cutAcross(bench, Does::CutBinding, cloth, binding.strips * kits,
                          {bench.plan.basis.usableBinding, binding.cut}, Length());
    cut.figure = "binding.cut";
    cut.makes = {{"binding-strip", 1}};
    Step &sew = add(bench, Station::Edge, Does::SewBinding, kits);
    sew.takes = {{piece, 1}, {"binding-strip", binding.strips}};
    sew.makes = {{"closed-piece", 1}};
    sew.seam = bench.plan.basis.edgeSeam;
    sew.figure = "binding.length";
    sew.check = "no-join-on-a-corner";
    sew.caution = "needle";
}

} // namespace

void addJoining(Bench &bench)
{
    const Project &project = bench.project;
    joinBlocks(bench);
    Step &square = add(bench, Station::Edge, Does::SquarePiece, project.kits);
    square.takes = {{"row", project.blocks.rows}};
    if (project.blocks.rows > 1)
        square.takes.push_back({"long-join", project.blocks.rows - 1});
    square.makes = {{"squared-piece", 1}};
    square.size = bench.plan.size.raw;
    square.figure = "size.raw.along";
    square.check = "diagonals-alike";
    square.caution = "blade";
    layBacking(bench);
    if (bench.plan.binding)
        bindEdge(bench, bench.plan.size.backing ? "backed-piece" : "squared-piece");
    Step &last = add(bench, Station::Edge, Does::LastLook, project.kits);
    last.takes = {{bench.plan.binding || bench.plan.size.backing ? "closed-piece" : "squared-piece", 1}};
    last.makes = {{"finished-piece", 1}};
    last.figure = "size.finished.along";
    last.check = "pins-in-equal-pins-out";
    last.caution = "finished-use";
}

} // namespace matside
