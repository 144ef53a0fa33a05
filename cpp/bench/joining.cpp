// SPDX-License-Identifier: MIT
#include "bench/account.h"
#include "bench/build.h"
#include "bench/clothlay.h"
#include "made/rows.h"

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
        if (sashing.filler) // cut off the strips to the sashing's length
            step.takes.push_back({"sashing-filler", 0});
        step.makes = {{makes, 1}};
        step.seam = bench.plan.basis.nextSeam; // as planned, or as the test join corrected it (F9)
        if (bench.plan.fold && !bench.plan.fold->doubled)
            step.fold = bench.plan.fold->under;
        step.figure = joinFigure(bench.plan);
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

/// The rows and what joins them, for one piece.
std::vector<Piece> joinedRows(const Project &project)
{
    std::vector<Piece> rows{{"row", project.blocks.rows}};
    if (project.blocks.rows > 1)
        rows.push_back({"long-join", project.blocks.rows - 1});
    return rows;
}

/// The rows, before their frame or their edge; a framed piece is squared once more with its frame.
void squarePiece(Bench &bench, std::vector<Piece> takes, bool withFrame)
{
    Step &square = add(bench, Station::Edge, Does::SquarePiece, bench.project.kits, {}, withFrame ? 2 : 0);
    square.takes = std::move(takes);
    square.makes = {{withFrame ? "squared-frame" : "squared-piece", 1}};
    square.size = withFrame ? bench.plan.size.finished : bench.plan.size.raw;
    if (!withFrame) // cloth cannot be trimmed longer than it is
        square.size->along = joinedAlong(bench.project.made.rows, square.size->along);
    square.figure = withFrame ? "size.finished.along" : "size.raw.along";
    square.check = "diagonals-alike";
    square.caution = "blade";
}

/// Cuts the backing and brings it to the piece: laid under it and held, or bagged out.
void layBacking(Bench &bench, std::vector<Piece> piece, bool bagged)
{
    const std::string cloth = clothId(bench.project, ClothRole::Back);
    straighten(bench, cloth);
    std::vector<Piece> from = bandsFrom(bench, cloth, nameOf(Does::CutBacking));
    if (from.empty())
        from.push_back({"straight/" + cloth, 0});
    Step &cut = add(bench, Station::Cut, Does::CutBacking, bench.project.kits, cloth);
    const Pair size = *bench.plan.size.backing;
    cut.size = size;
    // What is measured off the cloth's end is the side that lies along the selvage.
    const bool turned = takenBy(cut, bench.plan, 1, usableOf(bench.project, bench.plan, cloth)) == size.along;
    cut.ruler = turned ? placeRulers(bench.project.rulers, size.along, size.across, 1)
                       : placeRulers(bench.project.rulers, size.across, size.along, 1);
    cut.takes = std::move(from);
    cut.makes = {{"backing", 1}};
    cut.check = "line-at-both-ends";
    Step &lay = add(bench, Station::Edge, bagged ? Does::BagOut : Does::LayBacking, bench.project.kits);
    lay.takes = std::move(piece);
    lay.takes.push_back({"backing", 1});
    lay.makes = {{bagged ? "closed-piece" : "backed-piece", 1}};
    lay.check = bagged ? "opening-closed" : "held-flat";
    lay.caution = "needle";
    if (bagged)
        lay.seam = bench.plan.basis.allowance;
}

void sewBinding(Bench &bench, const BindingPlan &binding)
{
    Step &sew = add(bench, Station::Edge, Does::SewBinding, bench.project.kits);
    sew.takes = {{bench.plan.frame ? "squared-frame" : "squared-piece", 1},
                 {"binding-strip", binding.strips}};
    sew.makes = {{"closed-piece", 1}};
    sew.seam = bench.plan.basis.edgeSeam;
    sew.figure = "binding.length";
    sew.check = "no-join-on-a-corner";
    sew.caution = "needle";
}

void bindEdge(Bench &bench)
{
    const BindingPlan &binding = *bench.plan.binding;
    const std::string cloth = bandCloth(bench.project, ClothRole::Binding);
    const std::int64_t kits = bench.project.kits;
    if (binding.bias) {
        straighten(bench, cloth);
        const Length side = binding.bias->square;
        std::vector<Piece> from = bandsFrom(bench, cloth, nameOf(Does::CutBias));
        if (from.empty())
            from.push_back({"straight/" + cloth, 0});
        Step &square = add(bench, Station::Cut, Does::CutBias, kits, cloth);
        square.size = Pair{side, side};
        square.ruler = placeRulers(bench.project.rulers, side, side, 1);
        square.takes = std::move(from);
        square.makes = {{"binding-strip", 1}};
        square.figure = "binding.square";
        square.check = "line-at-both-ends";
        square.caution = "blade";
        sewBinding(bench, binding);
        return;
    }
    const std::vector<Piece> bands = bandsFrom(bench, cloth, nameOf(Does::CutBinding));
    Step &cut = cutAcross(bench, Does::CutBinding, cloth, binding.strips * kits,
                          {bench.plan.basis.usableBinding, binding.cut}, Length());
    crossCutFrom(bench, cut, bands);
    cut.figure = "binding.cut";
    cut.makes = {{"binding-strip", 1}};
    sewBinding(bench, binding);
}

} // namespace

std::string joinFigure(const Plan &plan)
{
    if (!plan.fold)
        return "sashing.finished";
    return plan.fold->doubled ? "fold.catchShown" : "fold.under";
}

void addJoining(Bench &bench)
{
    const Project &project = bench.project;
    joinBlocks(bench);
    // A layered backing is laid under the rows and squared with them, for it is cut larger; a bagged one is
    // cut to the squared piece.
    const bool bagged = isBagged(project);
    std::vector<Piece> piece = joinedRows(project);
    if (bench.plan.frame) {
        squarePiece(bench, std::move(piece), false);
        piece = addFrame(bench);
    }
    if (bench.plan.size.backing && !bagged) {
        layBacking(bench, std::move(piece), false);
        piece = {{"backed-piece", 1}};
    }
    squarePiece(bench, std::move(piece), bench.plan.frame.has_value());
    if (bench.plan.size.backing && bagged)
        layBacking(bench, {{"squared-piece", 1}}, true);
    if (bench.plan.binding)
        bindEdge(bench);
    Step &last = add(bench, Station::Edge, Does::LastLook, project.kits);
    last.takes = {{"closed-piece", 1}};
    last.makes = {{"finished-piece", 1}};
    last.figure = "size.finished.along";
    last.check = "pins-in-equal-pins-out";
    last.caution = "finished-use";
}

} // namespace matside
