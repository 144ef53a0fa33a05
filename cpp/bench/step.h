// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace matside {

enum class Station { Fit, Shop, Cut, Hoop, Trim, Join, Edge };

/// What a step does. The names in the plan file are these, in kebab-case (`nameOf`).
enum class Does {
    Straighten,   ///< square the end of a cloth to its fold
    CutStrip,     ///< hoop strip S × usable
    CutBand,      ///< sashing strip W × usable, to be cross-cut
    CutShort,     ///< short sashing from a band
    CutLong,      ///< a whole long sashing from a band
    CutLongPiece, ///< a piece of a long sashing from a band
    JoinLong,     ///< sew pieces to one long sashing
    HarvestShort, ///< short sashing from a gap piece
    CutPatch,     ///< patch rectangle
    CutBinding,   ///< binding strip
    CutBacking,   ///< clean back: the one backing
    Layer,        ///< back, batting, front: one hoop strip
    MarkStrip,    ///< centre line and ticks
    StitchTest,   ///< trial: stitch the test block
    MeasureTest,  ///< trial: measure it (sets draw-up)
    TestJoin,     ///< trial: make the test join (sets seam, sashing, fold)
    StitchBlock,
    TrimPatches, ///< scissors; before Press, always
    PressBlock,
    RoughApart,  ///< strip into blocks, through the gaps
    TrimBlock,   ///< four sides to T
    JoinShort,   ///< one short join: sew, press, sew, fold, ditch
    JoinRow,     ///< check a row's length (one per row)
    JoinLongRow, ///< one long join between two rows
    LayBacking,  ///< clean back layered: lay and hold
    BagOut,      ///< clean back bagged: sew, turn, close
    SquarePiece,
    SewBinding,
    LastLook,
    CutBias,          ///< square of cloth for continuous bias
    CutFrame,         ///< strip of a framed edge, both faces
    CutFiller,        ///< batting laid into the frame
    SewFrame,         ///< left and right, then top and bottom
    CutSashingFiller, ///< batting laid into sashings wider than two allowances
    CutAlong          ///< strip along the selvage, to be cross-cut
};
[[nodiscard]] std::string nameOf(Does does);
[[nodiscard]] std::string nameOf(Station station);

enum class LineOn { CutEdge, Outline, Fold };
enum class Fence { LongEnough, SlideAlong, Mat };

/// Where the ruler lies. Names of rulers are the maker's own.
struct RulerPlace {
    std::int64_t layers = 1; ///< of cloth under the blade
    std::string first;       ///< ruler whose line is read; empty: mat lines
    Length line;             ///< the line that lies on `on`
    LineOn on = LineOn::CutEdge;
    std::optional<std::string> second; ///< butted to the first; the blade runs along it
    Length secondWidth;                ///< width the second adds (0 without one)
    /// What is measured off: from `on` to the blade.
    [[nodiscard]] Length off() const { return line + secondWidth; }
    std::string keep = "under-rulers"; ///< which piece is kept
    Fence fence = Fence::LongEnough;
    Length firstLength; ///< sizes as the ruler lies, for the drawing
    Length firstWidth;
    Length secondLength;
};

/// So many of one piece taken from, or made by, each repetition of a step.
struct Piece {
    std::string name; ///< "hoop-strip/ground", "block", "short/bands", "row", "piece"…
    std::int64_t count = 1;
};

/// So many pieces that lie alike in bands of a fixed layout.
struct BandLie {
    Length band;  ///< its width
    Length off;   ///< measured off along the band
    Length width; ///< of the piece, the other way; less than the band's: its long side is trimmed too
    std::int64_t count = 0;
};

/// One thing to do at a station: `count` repetitions, `done` of them made.
struct Step {
    std::string id; ///< unique and stable: "cut-strip/ground", "trial/cut-strip/ground"
    Station station = Station::Cut;
    Does does = Does::CutStrip;
    bool trial = false;
    bool notTried = false; ///< its figures hang on a trial not made yet
    std::string cloth;     ///< cloth id, or empty
    std::int64_t count = 1;
    std::int64_t done = 0;
    std::optional<Pair> size; ///< along = length of the piece, across = its width
    std::string figure;       ///< key of the plan figure that is the big number ("strip.width")
    std::optional<RulerPlace> ruler;
    std::optional<Length> seam; ///< for sewing
    std::optional<Length> fold; ///< fold-under, joins only
    std::vector<Piece> takes;   ///< for each repetition
    std::vector<Piece> needs;   ///< so many in all before the next repetition, though it uses none of them up
    std::vector<Piece> makes;
    std::vector<BandLie> lies; ///< of patches and backings out of bands, in the order they are cut
    std::size_t lie = 0;       ///< the one of the next piece
    std::string check;         ///< code: "cut-edge-square-to-fold"
    std::string caution;       ///< code: "blade", "magnets", "needle", "iron", "pins", ""
    std::vector<Length> at;    ///< positions, where the step has them (marks, joins of longs, centres)
};

/// The ordered steps of a project: the trial first, sashings last before joining. Steps after a
/// trial that was put off or not made carry `notTried`. For all kits where the plan counts cuts so.
[[nodiscard]] std::vector<Step> steps(const Project &project, const Plan &plan);

/// The first step not finished, or nothing when the piece is done.
[[nodiscard]] std::optional<std::size_t> nextStep(const std::vector<Step> &steps);

} // namespace matside
