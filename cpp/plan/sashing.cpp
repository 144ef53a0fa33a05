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

/// What a set of joins makes of a long: the pieces' cut lengths, with spare at the ends and join seams.
LongPieces piecesAt(const SashingPlan &sashing, std::vector<Length> joins, const Measures &m)
{
    LongPieces cut;
    const Length half = sashing.longSpare.scaled(1, 2);
    Length left = -half;
    for (std::size_t i = 0; i <= joins.size(); ++i) {
        const bool first = i == 0;
        const bool last = i == joins.size();
        const Length right = last ? sashing.longLength + half : joins[i];
        const Length seams =
            m.joinSeam * (static_cast<std::int64_t>(!first) + static_cast<std::int64_t>(!last));
        cut.pieces.push_back(right - left + seams);
        left = right;
    }
    cut.joins = std::move(joins);
    return cut;
}

bool fits(const LongPieces &cut, Length usable)
{
    return std::all_of(cut.pieces.begin(), cut.pieces.end(), [&](Length piece) { return piece <= usable; });
}

/// The fewest joins: each at the last mid-block the cloth still reaches. Empty when no mid-block serves.
std::vector<Length> fewestJoins(const SashingPlan &sashing, const std::vector<Length> &mids, Length usable,
                                const Measures &m)
{
    std::vector<Length> joins;
    const Length half = sashing.longSpare.scaled(1, 2);
    Length from = -half;
    while (sashing.longLength - from + half + (joins.empty() ? Length() : m.joinSeam) > usable) {
        const Length reach = from + usable - m.joinSeam * (joins.empty() ? 1 : 2);
        const auto past = std::upper_bound(mids.begin(), mids.end(), reach);
        if (past == mids.begin() || *(past - 1) <= from)
            return {};
        from = *(past - 1);
        joins.push_back(from);
    }
    return joins;
}

/// As many joins, spread evenly so that no piece is longer than need be; the back's stand one block on, so
/// that they do not fall on the front's.
LongPieces pieced(const SashingPlan &sashing, const std::vector<Length> &mids, Length usable, bool back,
                  const Measures &m)
{
    if (sashing.longs == 0 || sashing.longLength + sashing.longSpare <= usable)
        return {};
    const std::vector<Length> fewest = fewestJoins(sashing, mids, usable, m);
    if (fewest.empty())
        return {};
    const auto count = static_cast<std::int64_t>(fewest.size());
    std::vector<Length> even;
    for (std::int64_t i = 1; i <= count; ++i) {
        const Length wanted = sashing.longLength.scaled(i, count + 1);
        const auto past = std::upper_bound(mids.begin(), mids.end(), wanted);
        const auto before = past == mids.begin() ? past : past - 1;
        const auto chosen = back && past != mids.end() ? past : before;
        if (even.empty() || *chosen > even.back())
            even.push_back(*chosen);
    }
    LongPieces cut = piecesAt(sashing, std::move(even), m);
    if (cut.joins.size() == fewest.size() && fits(cut, usable))
        return cut;
    std::vector<Length> joins = fewest;
    if (back) { // the same from the other end
        std::reverse(joins.begin(), joins.end());
        std::transform(joins.begin(), joins.end(), joins.begin(),
                       [&](Length join) { return sashing.longLength - join; });
    }
    return piecesAt(sashing, std::move(joins), m);
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
        const Length caught = basis.sewnSeam + basis.between + basis.turn + project.fold.fold_catch;
        const Length needed = project.fold.doubled
                                  ? caught * 2
                                  : max(sashing.cutFront, caught + leastFoldFor(project.fold.fold_catch, m));
        sashing.cutBack = project.sashing.cutBack.value_or(needed.upTo(m.cutStep));
    }
    sashing.allowanceGap = basis.finished - basis.allowance * 2;
    if (sashing.allowanceGap > m.gapOpen)
        sashing.filler = sashing.allowanceGap;
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
        sashing.back = pieced(sashing, mids, basis.usableSashBack, true, m);
    return sashing;
}

std::optional<FoldPlan> planFold(const Project &project, const Basis &basis, const SashingPlan &sashing,
                                 const Measures &m)
{
    if (!sashing.cutBack)
        return std::nullopt;
    FoldPlan fold;
    fold.fold_catch = project.fold.fold_catch;
    if (project.fold.doubled) {
        fold.doubled = true;
        fold.catchShown = sashing.cutBack->scaled(1, 2) - basis.sewnSeam - basis.between - basis.turn;
        return fold;
    }
    fold.leastFold = leastFoldFor(fold.fold_catch, m);
    const Length beyond = *sashing.cutBack - basis.sewnSeam - basis.between - basis.turn;
    fold.under = beyond - fold.fold_catch;
    fold.catchShown = beyond - show(fold.under, project.marks(), Round::Down).mark;
    return fold;
}

} // namespace matside
