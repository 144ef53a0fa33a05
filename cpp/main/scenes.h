// SPDX-License-Identifier: MIT
#pragma once

#include "main/room.h"

#include <QQuickItem>
#include <QQuickWindow>

#include <functional>
#include <vector>

namespace matside {

/// A size of screen the window is drawn at: 10.1 in flat and upright, 8 in, 10.4 in.
struct Sheet {
    int width; ///< pixels
    int height;
    double pxPerMm; ///< pixels to the millimetre
};
inline constexpr Sheet sheets[] = {
    {1280, 800, 5.87}, {800, 1280, 5.87}, {1024, 600, 5.84}, {2000, 1200, 8.83}};

/// Something the window can show: how it is come to, and how it is left again.
struct Scene {
    QString name;
    /// Drawn for both hands in every set of colours; what lies over the work is drawn for one hand a set.
    bool bothHands = false;
    std::function<void()> open;
    std::function<void()> leave = [] {};
};

/// Every page, and what can lie over it, of the project that is open.
[[nodiscard]] std::vector<Scene> scenesOf(Room &room, QQuickWindow &window);

/// The window of the room; null before it is shown.
[[nodiscard]] QQuickWindow *windowOf(Room &room);

/// Lets the window come to rest for so many milliseconds.
void settle(int ms);

/// The first visible item of that object name, in drawing order; null when there is none.
[[nodiscard]] QQuickItem *visibleItem(QQuickWindow &window, const QString &name);
/// The same where it need not be seen yet, as what will lie over a page.
[[nodiscard]] QQuickItem *anyItem(QQuickWindow &window, const QString &name);

} // namespace matside
