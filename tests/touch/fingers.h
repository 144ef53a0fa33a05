// SPDX-License-Identifier: MIT
#pragma once

#include <QEventPoint>
#include <QPointF>

#include <map>
#include <memory>

class QPointingDevice;
class QQuickWindow;

namespace touching {

/// A hand over a panel that reports how wide each contact is. Fingers go by number. Points are pixels of the
/// window, widths pixels too.
class Fingers {
public:
    Fingers();
    Fingers(const Fingers &) = delete;
    Fingers &operator=(const Fingers &) = delete;
    ~Fingers();

    void press(QQuickWindow &window, QPointF at, double width, int finger = 1);
    void move(QQuickWindow &window, QPointF at, int finger = 1);
    void release(QQuickWindow &window, int finger = 1);
    void tap(QQuickWindow &window, QPointF at, double width, int finger = 1);
    /// Pushes what lies under the finger by so many pixels, and holds still at the end so that nothing flies
    /// on.
    void push(QQuickWindow &window, QPointF from, double down);

private:
    struct Contact {
        QPointF at;
        double width = 0;
    };
    void send(QQuickWindow &window, int finger, QEventPoint::State state);

    std::unique_ptr<QPointingDevice> m_panel;
    std::map<int, Contact> m_down;
};

} // namespace touching
