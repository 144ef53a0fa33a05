// SPDX-License-Identifier: MIT
#include "plan/parts.h"
#include "plan/sums.h"

#include <array>

namespace matside {

namespace {

using Answer = std::optional<Working>;

const char *allowancePointer(const Sums &a)
{
    return a.project.sashing.allowance ? "/sashing/allowance" : "/seam";
}

Answer finished(const Sums &a)
{
    if (a.project.sashing.finished)
        return Tell("F7", "finished", a.plan.sashing.finished)
            .given("finished", *a.project.sashing.finished, "/sashing/finished");
    return Tell("F7", "2 * seam", a.plan.sashing.finished).given("seam", a.plan.basis.seam, "/seam");
}
Answer cutFront(const Sums &a)
{
    return Tell("F7", "finished + 2 * seam", a.plan.sashing.cutFront)
        .from("finished", a.plan.sashing.finished, "sashing.finished")
        .given("seam", a.plan.basis.seam, "/seam");
}
Answer cutBack(const Sums &a)
{
    if (!a.plan.sashing.cutBack)
        return std::nullopt;
    if (a.project.sashing.cutBack)
        return Tell("F10", "cutBack", *a.plan.sashing.cutBack)
            .given("cutBack", *a.project.sashing.cutBack, "/sashing/cutBack");
    if (a.project.fold.doubled)
        return Tell("F10", "up(2 * (sewn + between + turn + catch), cutStep)", *a.plan.sashing.cutBack)
            .given("sewn", a.plan.basis.sewnSeam, a.plan.basis.joinTried ? "/made/testJoin" : "/seam")
            .given("between", a.plan.basis.between,
                   a.plan.basis.joinTried ? "/made/testJoin" : "/sashing/finished")
            .given("turn", a.plan.basis.turn, a.plan.basis.joinTried ? "/made/testJoin" : "/fold/turn")
            .given("catch", a.project.fold.fold_catch, "/fold/catch")
            .fixed("cutStep", a.m.cutStep);
    return Tell("F10", "up(max(cutFront, sewn + between + turn + catch + leastFold), cutStep)",
                *a.plan.sashing.cutBack)
        .from("cutFront", a.plan.sashing.cutFront, "sashing.cutFront")
        .given("sewn", a.plan.basis.sewnSeam, a.plan.basis.joinTried ? "/made/testJoin" : "/seam")
        .given("between", a.plan.basis.between,
               a.plan.basis.joinTried ? "/made/testJoin" : "/sashing/finished")
        .given("turn", a.plan.basis.turn, a.plan.basis.joinTried ? "/made/testJoin" : "/fold/turn")
        .given("catch", a.project.fold.fold_catch, "/fold/catch")
        .fixed("leastFold", leastFoldFor(a.project.fold.fold_catch, a.m))
        .fixed("cutStep", a.m.cutStep);
}
Answer allowanceGap(const Sums &a)
{
    return Tell("F7", "finished - 2 * allowance", a.plan.sashing.allowanceGap)
        .from("finished", a.plan.sashing.finished, "sashing.finished")
        .given("allowance", a.plan.basis.allowance, allowancePointer(a));
}
Answer expected(const Sums &a)
{
    return Tell("F9", "allowanceGap - bulk", a.plan.sashing.expected)
        .from("allowanceGap", a.plan.sashing.allowanceGap, "sashing.allowanceGap")
        .fixed("bulk", overTheBulk(a.plan.basis.loft));
}
Answer shortCount(const Sums &a)
{
    return Tell("F8", "rows * (columns - 1)", a.plan.sashing.shorts)
        .given("rows", a.project.blocks.rows, "/blocks/rows")
        .given("columns", a.project.blocks.columns, "/blocks/columns");
}
Answer shortLength(const Sums &a)
{
    return Tell("F8", "trimmed", a.plan.sashing.shortLength)
        .from("trimmed", a.plan.block.trimmed.across, "block.trimmed.across");
}
Answer longCount(const Sums &a)
{
    return Tell("F8", "rows - 1", a.plan.sashing.longs).given("rows", a.project.blocks.rows, "/blocks/rows");
}
Answer longLength(const Sums &a)
{
    if (!a.project.made.rows.empty())
        return Tell("F8", "rowsMean", a.plan.sashing.longLength)
            .given("rowsMean", a.plan.sashing.longLength, "/made/rows");
    return Tell("F8", "columns * trimmed + (columns - 1) * allowanceGap", a.plan.sashing.longLength)
        .given("columns", a.project.blocks.columns, "/blocks/columns")
        .from("trimmed", a.plan.block.trimmed.along, "block.trimmed.along")
        .from("allowanceGap", a.plan.sashing.allowanceGap, "sashing.allowanceGap");
}
/// As it is cut: its ends are trued in the spare.
Answer shortCut(const Sums &a)
{
    return Tell("F8", "shortLength + spare", a.plan.sashing.shortLength + a.plan.sashing.shortSpare)
        .from("shortLength", a.plan.sashing.shortLength, "sashing.shorts.length")
        .fixed("spare", a.plan.sashing.shortSpare);
}
Answer longCut(const Sums &a)
{
    return Tell("F8", "longLength + spare", a.plan.sashing.longLength + a.plan.sashing.longSpare)
        .from("longLength", a.plan.sashing.longLength, "sashing.longs.length")
        .fixed("spare", a.plan.sashing.longSpare);
}
Answer mark(const Sums &a)
{
    if (a.index < 0 || static_cast<std::size_t>(a.index) >= a.plan.sashing.marks.size())
        return std::nullopt;
    return Tell("F12", "join * trimmed + (join - 1 / 2) * allowanceGap",
                a.plan.sashing.marks[static_cast<std::size_t>(a.index)])
        .fixed("join", a.index + 1)
        .from("trimmed", a.plan.block.trimmed.along, "block.trimmed.along")
        .from("allowanceGap", a.plan.sashing.allowanceGap, "sashing.allowanceGap");
}
Tell foldTerms(const Sums &a, std::string formula, Length value, Round round)
{
    Tell tell("F10", std::move(formula), value, round);
    const bool tried = a.plan.basis.joinTried;
    tell.from("cutBack", a.plan.sashing.cutBack.value_or(Length()), "sashing.cutBack")
        .given("sewn", a.plan.basis.sewnSeam, tried ? "/made/testJoin" : "/seam")
        .given("between", a.plan.basis.between, tried ? "/made/testJoin" : "/sashing/finished")
        .given("turn", a.plan.basis.turn, tried ? "/made/testJoin" : "/fold/turn");
    return tell;
}
Answer under(const Sums &a)
{
    if (!a.plan.fold || a.plan.fold->doubled)
        return std::nullopt;
    return foldTerms(a, "cutBack - sewn - between - turn - catch", a.plan.fold->under, Round::Down)
        .given("catch", a.plan.fold->fold_catch, "/fold/catch");
}
Answer catchShown(const Sums &a)
{
    if (!a.plan.fold)
        return std::nullopt;
    if (a.plan.fold->doubled)
        return foldTerms(a, "cutBack / 2 - sewn - between - turn", a.plan.fold->catchShown, Round::Fine);
    const Length fold = show(a.plan.fold->under, a.project.marks(), Round::Down).mark;
    return foldTerms(a, "cutBack - sewn - between - turn - fold", a.plan.fold->catchShown, Round::Fine)
        .from("fold", fold, "fold.under");
}
bool hasBack(const Plan &plan)
{
    return plan.sashing.cutBack.has_value();
}
bool isFilled(const Plan &plan)
{
    return plan.sashing.filler.has_value();
}
bool hasFold(const Plan &plan)
{
    return plan.fold.has_value();
}
/// None is cut where none is sewn.
bool hasShorts(const Plan &plan)
{
    return plan.sashing.shorts > 0;
}
bool hasLongs(const Plan &plan)
{
    return plan.sashing.longs > 0;
}
bool isTurnedUnder(const Plan &plan)
{
    return plan.fold && !plan.fold->doubled;
}
std::size_t marks(const Plan &plan)
{
    return plan.sashing.marks.size();
}

constexpr std::array sums{
    Sum{"sashing.finished", finished},
    Sum{"sashing.cutFront", cutFront},
    Sum{"sashing.cutBack", cutBack, hasBack},
    Sum{"sashing.allowanceGap", allowanceGap},
    Sum{"sashing.filler", allowanceGap, isFilled},
    Sum{"sashing.expected", expected},
    Sum{"sashing.shorts.count", shortCount},
    Sum{"sashing.shorts.length", shortLength},
    Sum{"sashing.shorts.cut", shortCut, hasShorts},
    Sum{"sashing.longs.count", longCount},
    Sum{"sashing.longs.length", longLength},
    Sum{"sashing.longs.cut", longCut, hasLongs},
    Sum{"sashing.marks", mark, nullptr, marks},
    Sum{"fold.under", under, isTurnedUnder},
    Sum{"fold.catchShown", catchShown, hasFold},
};

} // namespace

std::span<const Sum> sashingSums()
{
    return sums;
}

} // namespace matside
