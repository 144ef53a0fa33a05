// SPDX-License-Identifier: MIT
#pragma once

#include "main/room.h"

#include <QSize>

#include <memory>

class QQuickWindow;

namespace touching {

/// What the store holds, reckoned anew from the saved document: the measure the screen is held against.
struct Papers {
    matside::Project project;
    matside::Plan plan;
    std::vector<matside::Step> steps;
    std::optional<std::size_t> next;

    [[nodiscard]] const matside::Step *nextStep() const { return next ? &steps[*next] : nullptr; }
    /// How often the step so named is done; -1 when there is none.
    [[nodiscard]] std::int64_t doneOf(const std::string &id) const;
    /// How often all the steps together are done.
    [[nodiscard]] std::int64_t doneInAll() const;
};
[[nodiscard]] Papers papersIn(const matside::Store &store, const QString &id);

/// The program as main wires it, opened on a folder of data. Closing it is all that is left out of a kill.
class Program {
public:
    /// Pixels to the millimetre of a 10.1 in screen of 1280 × 800.
    static constexpr double pxPerMm = 5.87;

    [[nodiscard]] bool open(const QString &folder, QSize size);
    /// The example project in a folder of its own, 1280 × 800, the window active, nothing asked.
    [[nodiscard]] bool openExample(const QString &folder);
    /// Shows a station, whatever was shown before.
    void at(matside::Station station);
    void close();
    [[nodiscard]] bool isOpen() const { return m_window != nullptr; }
    [[nodiscard]] QQuickWindow &window() const { return *m_window; }
    [[nodiscard]] matside::Room &room() const { return *m_room; }
    [[nodiscard]] Papers papers() const;

private:
    std::unique_ptr<matside::Room> m_room;
    QQuickWindow *m_window = nullptr;
};

} // namespace touching
