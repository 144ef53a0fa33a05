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

/// What a change of station took beside so many other projects.
struct Growth {
    Times stationAlone;
    Times stationCrowded;
};
/// Needs a QGuiApplication. Both folders as fillShelf() left them.
[[nodiscard]] std::optional<Growth> grow(const QString &alone, const QString &crowded, int rounds);

/// A folder holding a store with so many projects, rows of what was made and notes in all, and one more
/// project, always the same, that opens at the next start.
struct Crowd {
    int projects = 1;
    int events = 100;
    int notes = 20;
};
[[nodiscard]] bool fillShelf(const QString &folder, const Crowd &crowd);

/// What one more note costs in a project that has so many, and looking at all its blocks' newest.
struct Noted {
    int notes = 0;
    Times log;
    Times look;
};
[[nodiscard]] std::optional<Noted> logBeside(int notes);

/// A folder holding a store with one project of `blocks` blocks, each with a photograph of 12 MP.
[[nodiscard]] bool fillGallery(const QString &folder, int blocks);

} // namespace measure
