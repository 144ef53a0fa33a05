// SPDX-License-Identifier: MIT
//
// Something's wrong with a block or a join: cut into, off its size, sewn wrong, the fold missed, a block gone
// (F7, F10, F24, F25). The limits are those of the tolerances: common practice, no published source.
#include "bench/mishapcase.h"

#include "bench/account.h"
#include "bench/progress.h"
#include "bench/record.h"
#include "made/tolerances.h"
#include "plan/formulas.h"
#include "plan/onstrip.h"

#include <algorithm>

namespace matside {

namespace {

Told fine(Length length)
{
    return {length.magnitude(), Round::Fine};
}

bool joins(const Step &step)
{
    return step.does == Does::JoinShort || step.does == Does::JoinLongRow;
}

/// The step that made a piece: the cutting of it before the pieces that the gaps yielded.
const Step *makerOf(const Case &at, const std::string &piece)
{
    const Step *maker = nullptr;
    for (const Step &step : at.steps)
        for (const Piece &made : step.makes)
            if (made.name == piece && step.done > 0 && !step.trial)
                maker = &step;
    return maker;
}

/// A strip or a backing that went into the spoiled work is to be cut again; a long sewn of pieces, with them.
void cutAgain(const Case &at, const Piece &piece, Answered &answer)
{
    const Step *maker = makerOf(at, piece.name);
    if (!maker || goesBlockByBlock(*maker))
        return;
    const bool sewn = maker->does == Does::JoinLong;
    if (!sewn && maker->station != Station::Cut && maker->does != Does::HarvestShort)
        return;
    countUp(answer.next, *maker, 0, piece.count);
    if (sewn) {
        for (const Piece &part : maker->takes)
            cutAgain(at, {part.name, part.count * piece.count}, answer);
        return;
    }
    answer.says.push_back({"make-again", {piece.count, maker->id}});
    // A sashing comes out of what its bands left over, or out of one more across the cloth.
    if (maker->does == Does::CutShort || maker->does == Does::CutLong || maker->does == Does::CutLongPiece)
        answer.says.push_back({"strip-again",
                               {maker->cloth, Told{maker->size->across, Round::Nearest},
                                Told{maker->size->along, Round::UpQuarter}}});
    sayWhetherTheRestYields(at, answer.next, maker->cloth, answer.says);
}

/// A trimmed block's raw size; the side of the plan that is nearest is meant.
Length nearestOff(const Case &at)
{
    const Length along = *at.measure - at.step.size->along;
    const Length across = *at.measure - at.step.size->across;
    const bool row = at.step.does == Does::JoinRow;
    return row || along.magnitude() <= across.magnitude() ? along : across;
}

Answered blockOff(const Case &at, Length off, const Tolerances &tolerances)
{
    if (off > Length())
        return unchanged(at, {{"trim-again", {fine(off)}}});
    Answered answer = unchanged(at, {});
    answer.mayRemake = -off > tolerances.under;
    answer.says.push_back({answer.mayRemake ? "far-under" : "seam-from-line", {fine(off)}});
    return answer;
}

/// F24: every seam of a row taken δ too deep makes it 4 (c − 1) δ shorter.
Answered rowOff(const Case &at, Length off, const Tolerances &tolerances)
{
    const std::int64_t columns = at.project.blocks.columns;
    const Length limit = tolerances.rowPerColumn * columns;
    if (off.magnitude() <= limit || columns < 2)
        return unchanged(at, {{"ease-row", {fine(off), fine(limit)}}});
    const Length each = off.magnitude().scaled(1, 4 * (columns - 1));
    return unchanged(at, {{off > Length() ? "seams-too-scant" : "seams-too-deep", {fine(each), fine(off)}},
                          {"find-the-one", {}}});
}

} // namespace

Answered cutInto(const Case &at)
{
    if (!at.measure)
        return unchanged(at, {{"nothing-to-record", {}}});
    if (at.step.station == Station::Edge)
        return cutIntoEdge(at);
    const LeastAllowance least = leastAllowance(at.plan.basis.allowance, at.project.system);
    if (*at.measure >= least.pare)
        return unchanged(at, {{"allowance-will-do", {fine(*at.measure)}}});
    Answered answer = unchanged(at, {});
    answer.mayRemake = true;
    answer.asksBlock = !goesBlockByBlock(at.step);
    if (*at.measure >= least.remake)
        answer.says = {{"patch-allowance", {fine(*at.measure), fine(least.pare)}}, {"or-outer-edge", {}}};
    else
        answer.says = {{"too-little-left", {fine(*at.measure), fine(least.remake)}}};
    return answer;
}

Answered sizeOff(const Case &at)
{
    if (!at.measure || !at.step.size)
        return unchanged(at, {{"nothing-to-record", {}}});
    const Tolerances tolerances = usualTolerances(at.project.system);
    const Length off = nearestOff(at);
    const Length good = at.step.does == Does::TrimBlock ? tolerances.trim
                        : at.step.does == Does::JoinRow ? tolerances.crossing
                                                        : tolerances.opposite;
    if (off.magnitude() <= good)
        return unchanged(at, {{"size-within", {fine(off), fine(good)}}});
    if (at.step.does == Does::TrimBlock)
        return blockOff(at, off, tolerances);
    return at.step.does == Does::JoinRow ? rowOff(at, off, tolerances) : pieceOff(at, off);
}

Answered sewnWrong(const Case &at)
{
    Answered answer = unchanged(at, {});
    const bool binding = at.step.does == Does::SewBinding || at.step.does == Does::LastLook;
    answer.says.push_back({binding ? "unpick-binding" : "unpick-seam", {}});
    if (at.step.seam)
        answer.says.push_back({"sew-again-at", {fine(*at.step.seam)}});
    const bool strip = joins(at.step) || at.step.does == Does::SewBinding || at.step.does == Does::SewFrame;
    if (strip)
        answer.says.push_back({"strip-may-serve", {}});
    answer.mayRemake = strip;
    return answer;
}

Answered foldMissed(const Case &at)
{
    std::vector<Said> says;
    const bool edge = at.step.does == Does::SewBinding || at.step.does == Does::LastLook;
    if (edge && at.plan.binding)
        says.push_back({"binding-missed", {}});
    if (at.step.does == Does::SewBinding || !at.plan.fold)
        return unchanged(at, says.empty() ? std::vector<Said>{{"nothing-to-record", {}}} : std::move(says));
    says.push_back({"unpick-missed", {}});
    if (!at.plan.fold->doubled) {
        // As planned when that holds; else with the least that can be pressed (F10).
        const Measures m = measures(at.project.system);
        const Length planned = show(at.plan.fold->under, at.project.marks(), Round::Down).mark;
        const Length beyond = at.plan.fold->under + at.plan.fold->fold_catch;
        const Length fold = beyond - planned >= m.leastCatch ? planned : m.leastFold;
        if (beyond - fold >= m.leastCatch)
            says.push_back({"fold-less", {Told{fold, Round::Down}, fine(beyond - fold)}});
    }
    says.push_back({"fold-by-hand", {}});
    return unchanged(at, std::move(says));
}

Answered blockGone(const Case &at, BlockState as)
{
    const std::string name =
        at.block.empty() ? blockInHand(at.project, at.plan, at.step, at.strip) : at.block;
    if (!at.project.made.goodBlock(name))
        return unchanged(at, {{"no-such-block", {}}});
    Answered answer;
    answer.next = withBlockGone(at.project, at.steps, at.step, name, as);
    answer.changed = true;
    const bool again = blocksToStitch(answer.next).size() > blocksToStitch(at.project).size();
    answer.says.push_back(again ? Said{"block-again", {name}} : Said{"spare-takes-it", {name}});
    if (again)
        sayOfStrips(at, answer.next, answer.says);
    const bool moreCloth = answer.says.back().code == "more-strips";
    for (const Step &step : at.steps)
        if (moreCloth && step.does == Does::CutStrip && !step.trial)
            sayWhetherTheRestYields(at, answer.next, step.cloth, answer.says);
    const bool sewn = std::any_of(at.steps.begin(), at.steps.end(), [](const Step &step) {
        return joins(step) && !step.trial && step.done > 0;
    });
    answer.says.push_back(sewn ? Said{"unpick-its-joins", {name}} : Said{"nothing-wrong-with-the-rest", {}});
    return answer;
}

Answered joinSpoiled(const Case &at)
{
    Answered answer;
    answer.next = withSpoiled(at.project, at.plan, at.steps, at.step, at.strip);
    answer.changed = true;
    for (const Piece &piece : at.step.takes)
        cutAgain(at, piece, answer);
    if (answer.says.empty())
        answer.says.push_back({"make-again", {std::int64_t{1}, at.step.id}});
    return answer;
}

} // namespace matside
