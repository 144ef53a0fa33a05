// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"

#include <cstdint>
#include <optional>

namespace matside {

/// How much is stitched: lengths of stitch path in one sandwich.
struct StitchPath {
    Length running; ///< stippling, echo and outer line
    Length bean;    ///< path of the bean stitch; each of its stitches is sewn three times
    Length stitch;  ///< one stitch
};

/// Thread on a full bobbin: as told, else 60 m.
[[nodiscard]] Length bobbinOf(const Project &project);

/// Thread for one block, lockstitch type 301 (F19): C = 2 + 2·T_s·S_n with T_s = 0.08 in compressed.
struct ThreadUse {
    Length all;                ///< needle and bobbin
    Length bobbin;             ///< half, and 12 % for waste (10–15 % is reckoned in the trade)
    std::int64_t stitches = 0; ///< half up
};
[[nodiscard]] ThreadUse threadFor(const StitchPath &path);
/// Whole blocks a bobbin of that length serves (F19).
[[nodiscard]] std::int64_t blocksOn(Length bobbin, Length perBlock);

/// Minutes at the machine for a block, in tenths (F20): hoop 3 + stitches/(speed · 0.8) + a placing of 0.5
/// for each patch (and 1.5 for trimming it at the stop) + 1 for each change but the last.
[[nodiscard]] std::int64_t minuteTenths(std::int64_t stitches, std::int64_t speed, std::int64_t patches,
                                        std::int64_t changes, bool trimAtStops);

/// What the next block takes, and how long the bobbin lasts; her own averages once three blocks were logged.
struct Forecast {
    StitchPath path;
    ThreadUse use;
    std::int64_t minuteTenths = 0;
    bool ownMinutes = false; ///< from her own logged blocks
    std::int64_t blocksPerBobbin = 0;
    bool ownBobbin = false;
    std::int64_t bobbinLeft = 0; ///< whole blocks left on the present bobbin; under 1: change before starting
};
[[nodiscard]] Forecast forecastOf(const Project &project, const Plan &plan);

/// One decorative line down every sashing of the piece, sewn once through both faces; nothing unless planned.
[[nodiscard]] StitchPath sashingPath(const Project &project, const Plan &plan);

/// One stop of the machine, in stitching order (trade notes, step 22).
struct Stop {
    enum class Kind { Stipple, Echo, Patch, Outline };
    Kind kind = Kind::Stipple;
    std::string name;  ///< the patch's
    std::string cloth; ///< the patch's
    Pair rectangle;    ///< cut for the patch
};
/// The stops of one block by its own design: stippling and echo, patches from the lowest up, the outer line
/// last.
[[nodiscard]] std::vector<Stop> stopsOf(const Project &project, const Plan &plan, const std::string &block);

/// The design of a block ("A1") by the layout, with its quarter turns in degrees; nothing when all are alike.
struct Designed {
    const Design *design = nullptr;
    int turned = 0;
};
[[nodiscard]] Designed designOf(const Project &project, const std::string &block);

} // namespace matside
