// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"

#include <optional>
#include <string>
#include <vector>

namespace matside {

/// A block that is still to be stitched, or was: its name ("A1" of the layout, "+1" of the spares; with
/// several kits "A1.2" for the second).
struct StripPlace {
    std::int64_t place = 1; ///< from the zero end, 1 first
    std::string block;      ///< empty when nothing is left to stitch there
    bool stitched = false;  ///< something was stitched here, good or spoiled
    Length start;           ///< flat cloth, from the one zero: for marking
    Length centre;          ///< flat cloth
    Length drawn; ///< start on cloth already drawn in: as measured or logged, else as it follows from there
    Length along; ///< its outline on that cloth, along: as measured or logged, else as planned
};

/// Where the next block of a strip goes, on the cloth as it lies now.
struct NextPlace {
    std::int64_t place = 1;
    std::string block;
    bool first = false; ///< nothing is stitched here yet: measured from the zero end, not from an outline
    Length gap;         ///< from the last outline (or the end margin from the zero end)
    Length start;       ///< from zero: the last outline's real end + gap, else as expected
    Length centre;      ///< start + half the sent size
    Length expected;    ///< `strip.drawn`: where the plan expects the start on drawn-in cloth
    bool fits = true;
    Length missing;                    ///< how much too short the strip is, 0 when it fits
    bool fitsWithTail = true;          ///< with a waste tail sewn to the far end (F4)
    std::optional<Length> fitsWithGap; ///< a smaller gap that still is allowed (never under 2·seam)
};

/// One hoop strip in work.
struct StripWork {
    std::int64_t strip = 1;
    Length usable;               ///< its own end on flat cloth
    Length end;                  ///< its own end now that the stitched blocks have drawn it in
    std::optional<Length> ended; ///< where the last outline really ended, when that was measured
    Length far;                  ///< the same, or where it ends by the outlines as logged; 0 before the first
    std::int64_t capacity = 0;   ///< blocks it takes in all
    std::vector<StripPlace> places;
    std::optional<NextPlace> next; ///< nothing when the strip is full, closed or nothing is left
    std::optional<NextPlace> over; ///< a block the plan had here that no longer fits, with the ways out
};

/// Names of the blocks of the layout, row by row, then the spares; all kits.
[[nodiscard]] std::vector<std::string> blockNames(const Project &project);
/// Blocks that still have to be stitched, in order; spares before new cloth: a spoiled block is first made
/// good by a spare (trade notes, F25 "one spare block per 12").
[[nodiscard]] std::vector<std::string> blocksToStitch(const Project &project);
/// The good block that lies at a place of the layout ("A3"), itself or what replaces it; nullptr when none.
[[nodiscard]] const MadeBlock *blockAt(const Project &project, const std::string &name);

/// The strip with its own zero, measured ends and blocks (F5; re-zero by design page 5.3): next = measured
/// far edge + gap, and it fits while far edge + gap + sent + end margin ≤ the strip's measured end.
[[nodiscard]] StripWork stripWork(const Project &project, const Plan &plan, std::int64_t strip);
/// Every strip the piece needs now, those already begun first counted as they are. At most 1000.
[[nodiscard]] std::vector<StripWork> stripsInWork(const Project &project, const Plan &plan);
/// Of these the strip the next block goes on: the one asked for when it is open, else the first that is.
[[nodiscard]] const StripWork *openStrip(const std::vector<StripWork> &all, std::int64_t strip);
/// How many hoop strips are needed now: as planned, or more after strips were torn, closed or too short.
[[nodiscard]] std::int64_t stripsNeeded(const Project &project, const Plan &plan);

/// Gaps that yield sashing (F3), beside the gap as it stands.
struct HarvestOffer {
    Length gap;                     ///< G_y
    Length extra;                   ///< on one strip, (n − 1)(G_y − G)
    bool free = false;              ///< it goes into the remainder
    std::int64_t perStrip = 0;      ///< blocks on a strip with every gap widened
    std::int64_t perStripTails = 0; ///< the same with waste tails at both ends
    std::int64_t pairs = 0;         ///< front and back shorts it would yield in all
    std::int64_t someGaps = 0;      ///< gaps that can be widened on each strip without losing a block
    bool exact = false;             ///< the pieces are just as long as a short: no spare to trim
};
/// Nothing where there is no short sashing or only one block on a strip.
[[nodiscard]] std::optional<HarvestOffer> harvestOffer(const Project &project, const Plan &plan);

} // namespace matside
