// SPDX-License-Identifier: MIT
#pragma once

#include "main/room.h"
#include "times.h"

#include <QPoint>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>

#include <functional>
#include <memory>
#include <optional>

namespace measure {

/// The real window, 1280 × 800 at 5.87 px/mm, over a store in a folder of its own. Needs a QGuiApplication.
class Stage {
public:
    /// Opens the store in that folder, or in one that goes with the stage, with the document in it if any.
    explicit Stage(const QString &document, const QString &folder = {});

    /// False when the window, or anything before it, could not be had.
    [[nodiscard]] bool stands() const { return m_window != nullptr; }
    [[nodiscard]] matside::Room &room() { return *m_room; }
    [[nodiscard]] QQuickWindow &window() { return *m_window; }
    /// The first visible item whose QML type begins with that name.
    [[nodiscard]] QQuickItem *itemOf(const char *type) const;

private:
    QTemporaryDir m_own;
    std::unique_ptr<matside::Room> m_room;
    QQuickWindow *m_window = nullptr;
};

void idle(int ms);

/// What a finger's moves took: until the models had followed, and until the frame that shows it had ended.
struct Followed {
    Times models;
    Times frames;
    int still = 0; ///< moves that changed nothing
};

/// A finger put down at `from` and moved to where `path` says for each move. `changes` counts how often what
/// follows the finger has changed; after a move that changed it the next frame is awaited.
[[nodiscard]] Followed follow(QQuickWindow &window, QPoint from, int moves,
                              const std::function<QPoint(int)> &path, const std::function<int()> &changes);

} // namespace measure
