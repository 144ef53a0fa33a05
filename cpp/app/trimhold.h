// SPDX-License-Identifier: MIT
#pragma once

#include "made/commonsize.h"
#include "made/finding.h"
#include "plan/plan.h"

#include <QString>

namespace matside {

/// Which lines hold for the cuts of a block, by what was measured on it (F23, F25).
enum class TrimLines {
    BothLines, ///< the stitches, and from the third side on the cut side with them
    CutSide,   ///< it leans, or a side tilts: the cut side decides, and stitches may lie off the line
    Nothing    ///< it is not to be cut by the plan's figures as it is
};
/// What there is to do about a block before, or with, its next cut.
enum class TrimWay {
    Cut,     ///< the ruler's line holds
    Measure, ///< it was not measured, its readings disagree, or it is to be mended and measured again
    Others,  ///< a common size is wanted, and other blocks have no size yet
    Common   ///< a common size is known: it is told before it is taken
};
struct TrimHold {
    TrimLines holds = TrimLines::BothLines;
    Length line;      ///< the ruler's, on the outer stitches at mid-side
    bool own = false; ///< not the plan's: it centres a block larger or smaller than planned, or follows a cut
    Length stitches;  ///< the block's own size across this cut, where `own`
};

/// The outline a block came off the hoop with, as far as is known without its readings: as it was logged,
/// else as it was planned when it was stitched, which a common size taken since does not alter.
[[nodiscard]] Pair stitchedAs(const MadeBlock &block, const Plan &plan, Marks marks);

/// What it was planned at when it was stitched, by what was sent then; nothing where that was not noted.
[[nodiscard]] std::optional<Pair> stitchedFor(const MadeBlock &block, const Plan &plan, Marks marks);

/// What is known of a block when a side of it is cut.
struct TrimBlock {
    std::optional<Finding> finding; ///< on its readings
    Pair stitched;                  ///< without them
    bool off = false;               ///< that is off its size
    Side own = Side::Right;         ///< which of its sides lies at the blade
    std::optional<Length> opposite; ///< the line by which the side across from this one was cut
};
/// Which of the block's sides is cut as its first. Where a side tilts it begins with the truest, unless one
/// was cut before that was known; else with the one that lies at the blade when the block lies upright.
[[nodiscard]] Side firstCutSide(const std::optional<Finding> &finding, bool begunByLine, Hand hand);
/// The side at the blade for the cut 1…4: what was cut lies at the foot after a quarter turn.
[[nodiscard]] Side sideAtBlade(Side first, int cut, Hand hand);
[[nodiscard]] TrimHold trimHoldOf(const TrimBlock &block, const Plan &plan, Marks marks);

/// `common` is the size that could be taken, `other` the next block that has no size yet.
[[nodiscard]] TrimWay trimWayOf(const TrimHold &hold, const std::optional<Finding> &finding,
                                const std::optional<CommonSize> &common, const Plan &plan,
                                const QString &other);
/// The one thing to press for it; `side` 1…4.
[[nodiscard]] QString trimWaySays(TrimWay way, const std::optional<Finding> &finding, int side,
                                  const QString &other);

/// What the first reading lies on, and why where that is not the plan's.
[[nodiscard]] QString trimFirstSays(const TrimHold &hold, const Plan &plan, Marks marks, int side);
/// What to look to at a side of a block.
[[nodiscard]] QString trimHoldCheck(const TrimHold &hold, const std::optional<Finding> &finding, Marks marks,
                                    int side);
/// Why no figure holds, with the planned one; `common` is the size that could be taken.
[[nodiscard]] QString noFigureSays(const std::optional<Finding> &finding,
                                   const std::optional<CommonSize> &common, const Plan &plan, Marks marks);

} // namespace matside
