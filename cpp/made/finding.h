// SPDX-License-Identifier: MIT
#pragma once

#include "length/show.h"
#include "made/laying.h"
#include "made/tolerances.h"
#include "project/made.h"

#include <array>
#include <optional>
#include <string_view>
#include <vector>

namespace matside {

enum class FindingKind { Plain, Split, CommonSize, Tilted, Taper, Remake, MeasureAgain };
/// `plain`, `split`, `common-size`, `tilted`, `taper`, `remake`, `measure-again`.
[[nodiscard]] std::string_view nameOf(FindingKind kind);

/// What to do (F25); the app words it.
enum class Remedy {
    CutPlainly,     ///< square off the first side
    CutSplit,       ///< turned half the lean
    UseAsIs,        ///< trimmed: good enough
    TrimToSize,     ///< trimmed, but larger than it should be
    TrimTrue,       ///< trimmed: the largest true rectangle, laid as `cut` says
    TakeCommonSize, ///< judged again once the common size is known
    HideInSeam,     ///< cut parallel to the base, hide the tilted line in the seam, unpick what shows
    HideBothSides,  ///< the same for the two sides of a taper
    RestitchLine,   ///< hoop again, unpick, stitch the outer line at size; remake if the stippling is short
    BlockWet,       ///< pin square, steam, dry, measure again; remake if that does not help
    PatchAllowance, ///< zigzag a scrap of sandwich edge to edge, or put the block at an outer edge
    MakeAgain,
    MeasureFirst, ///< the reading `suspect` first, then the others
    ReadTheRest   ///< the readings in `missing`, before any is called doubtful
};
/// `cut-plainly`, `cut-split`, `use-as-is`, `trim-to-size`, `trim-true`, `take-common-size`, `hide-in-seam`,
/// `hide-both-sides`, `restitch-line`, `block-wet`, `patch-allowance`, `make-again`, `measure-first`,
/// `read-the-rest`.
[[nodiscard]] std::string_view nameOf(Remedy remedy);

enum class Agreement { Good, Doubtful, None };

struct Figures {
    Length K;      ///< the readings' disagreement, F23
    Length lean;   ///< λ, + when the bottom is pushed to the right
    Length tilt;   ///< of the tilted side over its length; of each side of a taper; else 0
    Pair trueSize; ///< largest true rectangle inside (a square where a square is wanted)
};

/// What the advice promises when it is followed, each reading within half a mark of the truth (a whole mark
/// where the readings agree but doubtfully).
struct Promise {
    Length shows;     ///< the stitched line shows by no more than this outside the seam, after unpicking
    Length allowance; ///< no allowance, from stitched line to cut, is under this
    Length unpick;    ///< before unpicking the tilted sides may show by this; 0 when nothing is unpicked
};

/// Which of the six readings came off a ruler, in the order of `Six`.
using Taken = std::array<bool, 6>;
inline constexpr Taken allTaken{true, true, true, true, true, true};

/// What was measured: the stitched outline before trimming, or the edges of a trimmed block.
enum class Measured { Outline, Trimmed };

struct Target {
    Pair outline;        ///< planned, or the common size
    bool common = false; ///< a common size: a larger outline loses stippling instead of being off size
    Length allowance;    ///< kept outside the outline
};

/// A judgement on a measured block with its remedy. `measure-again` never comes with cutting advice.
struct Finding {
    FindingKind kind = FindingKind::MeasureAgain;
    Remedy does = Remedy::MeasureFirst;
    Agreement agreement = Agreement::None;
    Figures figures;
    Pair own;                  ///< mean size of what was measured
    Pair wanted;               ///< its size as it should be
    std::optional<Side> side;  ///< tilted, or the wider end of a taper
    std::optional<Laying> cut; ///< where a cut is advised
    std::optional<Promise> promise;
    std::optional<std::size_t> suspect; ///< reading to take first: 0…3 sides, 4, 5 diagonals; one she took
    std::vector<std::size_t> missing;   ///< where readings disagree: those that were not taken
    std::optional<Shape> shape;         ///< the fitted figure, for drawing its departure exaggerated
};

/// How far the block is off by what its finding goes by: the lean where that is too much, else the larger of
/// its size's departure and its tilt.
[[nodiscard]] Length offBy(const Finding &finding);

/// Judges one block. `marks` are those of the ruler it was read with: a reading is good to half a mark.
///
/// Sizes are the means of opposite sides as read, so that her marks decide; shape is that of the fit. A size
/// off by more than `under` or `over`, a side tilted by more than `tiltMost`, a lean that no split mends:
/// remake. A size more than `size` off: common-size, to be judged again against it. Opposite sides that
/// differ: tilted or taper. Else the lean decides between plain and split (F23–F25). Where the readings agree
/// but doubtfully the advice stands, and its promise is reckoned for readings good to a whole mark. Readings
/// that are not `taken` stand where the planned size put them: when the six disagree those are asked for, and
/// none that was taken is blamed.
[[nodiscard]] Finding judge(const Readings &readings, Measured what, const Target &target,
                            const Tolerances &tolerances, Marks marks, const Taken &taken = allTaken);

/// The readings of a block and what they were taken on; nothing when they are not all there.
[[nodiscard]] std::optional<Readings> readingsOf(const MadeBlock &block);
[[nodiscard]] Measured measuredOn(const MadeBlock &block);
/// The same, where the sizes themselves may say otherwise: readings taken on the stitches stay with a block
/// after it was trimmed, and a trimmed edge may be read before that is noted.
[[nodiscard]] Measured measuredOn(const MadeBlock &block, const Target &target, const Tolerances &tolerances);

} // namespace matside
