// SPDX-License-Identifier: MIT
#pragma once

#include "times.h"

#include <QString>

#include <optional>

namespace measure {

/// A block logged, and the same rows written by plain sqlite3 with the same pragmas, turn about.
struct Logged {
    Times ours;
    Times plain;
};
[[nodiscard]] std::optional<Logged> logBlocks(int count);

/// What a start and a change of station took beside so many other projects.
struct Growth {
    Times startAlone;
    Times startCrowded;
    Times stationAlone;
    Times stationCrowded;
    int projects = 0;
    int events = 0;
    int notes = 0;
};
/// Needs a QGuiApplication. `part` (0…1) of 500 projects, 50 000 rows of what was made and 10 000 notes.
[[nodiscard]] std::optional<Growth> grow(double part, int rounds);

/// A folder holding a store with one project of `blocks` blocks, each with a photograph of 12 MP.
[[nodiscard]] bool fillGallery(const QString &folder, int blocks);

} // namespace measure
