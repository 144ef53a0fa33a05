// SPDX-License-Identifier: MIT
#include "plan/parts.h"

#include <algorithm>

namespace matside {

namespace {

/// Longs are cut to the mean of the measured rows (F8).
Length meanRow(const Project &project, Length planned)
{
    if (project.made.rows.empty())
        return planned;
    Length sum;
    for (const MadeRow &row : project.made.rows)
        sum += row.length;
    return sum.scaled(1, static_cast<std::int64_t>(project.made.rows.size()));
}

/// Where a long may be joined: at mid-block, never at a crossing (F8).
std::vector<Length> midBlocks(const Project &project, const Basis &basis, const BlockPlan &block)
{
    std::vector<Length> mids;
    const Length pitch = block.outline.along + basis.finished;
    for (std::int64_t column = 0; column < project.blocks.columns; ++column)
        mids.push_back(block.trimmed.along.scaled(1, 2) + pitch * column);
    return mids;
}

/// Cuts a row's length into the fewest pieces that fit the cloth. `late` sets the joins as far left as
/// they will go instead of as far right, so that front and back joins do not fall on the same block.
LongPieces pieced(const SashingPlan &sashing, const std::vector<Length> &mids, Length usable, bool late,
                  const Measures &m)
{
    LongPieces cut;
    const Length half = sashing.longSpare.scaled(1, 2);
    const Length whole = sashing.longLength;
    if (sashing.longs == 0 || whole + sashing.longSpare <= usable)
        return cut;

    // From the left, each join at the last mid-block the cloth reaches; mirrored for `late`.
    std::vector<Length> joins;
    Length from = -half;
    while (whole - from + half + (joins.empty() ? Length() : m.joinSeam) > usable) {
        const Length reach = from + usable - m.joinSeam - (joins.empty() ? Length() : m.joinSeam);
        const auto past = std::upper_bound(mids.begin(), mids.end(), reach);
        if (past == mids.begin() || *(past - 1) <= from)
            return {}; // the cloth is narrower than a block: no join can stand at a mid-block
        from = *(past - 1);
        joins.push_back(from);
    }
    if (late) {
        std::reverse(joins.begin(), joins.end());
        std::transform(joins.begin(), joins.end(), joins.begin(), [&](Length join) { return whole - join; });
    }

    Length left = -half;
    for (std::size_t i = 0; i <= joins.size(); ++i) {
        const bool first = i == 0;
        const bool last = i == joins.size();
        const Length right = last ? whole + half : joins[i];
        const Length seams =
            m.joinSeam * (static_cast<std::int64_t>(!first) + static_cast<std::int64_t>(!last));
        cut.pieces.push_back(right - left + seams);
        left = right;
    }
    cut.joins = std::move(joins);
    return cut;
}

/// Puts the back's joins on another block than the front's where they would meet.
void stagger(SashingPlan &sashing, const std::vector<Length> &mids, Length usableBack, const Measures &m)
{
    sashing.back = pieced(sashing, mids, usableBack, true, m);
    if (sashing.back.joins != sashing.front.joins || sashing.back.joins.size() != 1 || mids.size() < 2)
        return;
    // One join in the very middle of the row: the neighbouring block serves if the cloth reaches it.
    const auto middle = std::find(mids.begin(), mids.end(), sashing.back.joins.front());
    const Length half = sashing.longSpare.scaled(1, 2);
    for (const auto &other : {middle == mids.begin() ? middle + 1 : middle - 1,
                              middle + 1 == mids.end() ? middle - 1 : middle + 1}) {
        const Length first = *other + half + m.joinSeam;
        const Length second = sashing.longLength - *other + half + m.joinSeam;
        if (first <= usableBack && second <= usableBack) {
            sashing.back = {{first, second}, {*other}};
            return;
        }
    }
}

} // namespace

Length leastFoldFor(Length foldCatch, const Measures &m)
{
    return max(m.leastFold, foldCatch + m.foldOver);
}

Length leastAllowance(Length seam, const Measures &m)
{
    return seam >= m.halfSeam ? m.parAtHalf : m.parElse;
}

SashingPlan planSashing(const Project &project, const Basis &basis, const BlockPlan &block, const Measures &m)
{
    const std::int64_t columns = project.blocks.columns;
    const std::int64_t rows = project.blocks.rows;
    SashingPlan sashing;
    sashing.finished = basis.finished;
    sashing.cutFront = basis.finished + basis.seam * 2;
    if (project.build == Build::Reversible) {
        const Length needed = basis.sewnSeam + basis.between + basis.turn + project.fold.fold_catch +
                              leastFoldFor(project.fold.fold_catch, m);
        sashing.cutBack = project.sashing.cutBack.value_or(max(sashing.cutFront, needed).upTo(m.cutStep));
    }
    sashing.allowanceGap = basis.finished - basis.allowance * 2;
    sashing.expected = sashing.allowanceGap - overTheBulk(basis.loft);

    sashing.shorts = rows * (columns - 1);
    sashing.shortLength = block.trimmed.across;
    sashing.shortSpare = m.shortSpare;
    sashing.longs = rows - 1;
    sashing.longSpare = m.longSpare;
    const Length pitch = block.trimmed.along + sashing.allowanceGap;
    sashing.longLength = meanRow(project, pitch * columns - sashing.allowanceGap);

    const Length halfGap = sashing.allowanceGap.scaled(1, 2);
    for (std::int64_t join = 1; join < columns; ++join)
        sashing.marks.push_back(pitch * join - halfGap);
    // Marks come from the first row that was measured, not from the plan (F12).
    for (const MadeRow &row : project.made.rows)
        if (row.joins.size() == sashing.marks.size() && !row.joins.empty()) {
            sashing.marks = row.joins;
            break;
        }

    const std::vector<Length> mids = midBlocks(project, basis, block);
    sashing.front = pieced(sashing, mids, basis.usableSashFront, false, m);
    if (sashing.cutBack)
        stagger(sashing, mids, basis.usableSashBack, m);
    return sashing;
}

std::optional<FoldPlan> planFold(const Project &project, const Basis &basis, const SashingPlan &sashing,
                                 const Measures &m)
{
    if (!sashing.cutBack)
        return std::nullopt;
    FoldPlan fold;
    fold.fold_catch = project.fold.fold_catch;
    fold.leastFold = leastFoldFor(fold.fold_catch, m);
    const Length beyond = *sashing.cutBack - basis.sewnSeam - basis.between - basis.turn;
    fold.under = beyond - fold.fold_catch;
    fold.catchShown = beyond - show(fold.under, project.marks(), Round::Down).mark;
    return fold;
}

} // namespace matside
