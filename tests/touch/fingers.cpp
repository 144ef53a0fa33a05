// SPDX-License-Identifier: MIT
#include "fingers.h"

#include "testing.h"
#include <QPointingDevice>
#include <QQuickWindow>
#include <qpa/qwindowsysteminterface.h>

namespace touching {

Fingers::Fingers()
    : m_panel(std::make_unique<QPointingDevice>(
          QStringLiteral("panel"), 4712, QInputDevice::DeviceType::TouchScreen,
          QPointingDevice::PointerType::Finger,
          QInputDevice::Capability::Position | QInputDevice::Capability::Area, 10, 0))
{
    QWindowSystemInterface::registerInputDevice(m_panel.get());
}

Fingers::~Fingers() = default;

void Fingers::press(QQuickWindow &window, QPointF at, double width, int finger)
{
    m_down[finger] = {at, width};
    send(window, finger, QEventPoint::State::Pressed);
}

void Fingers::move(QQuickWindow &window, QPointF at, int finger)
{
    m_down[finger].at = at;
    send(window, finger, QEventPoint::State::Updated);
}

void Fingers::release(QQuickWindow &window, int finger)
{
    send(window, finger, QEventPoint::State::Released);
    m_down.erase(finger);
}

void Fingers::tap(QQuickWindow &window, QPointF at, double width, int finger)
{
    press(window, at, width, finger);
    release(window, finger);
}

void Fingers::push(QQuickWindow &window, QPointF from, double down)
{
    constexpr int moves = 12;
    press(window, from, 50);
    for (int move = 1; move <= moves; ++move) {
        this->move(window, from + QPointF(0, down * move / moves));
        QTest::qWait(16);
    }
    for (int still = 0; still < 6; ++still) {
        move(window, from + QPointF(0, down + still % 2));
        QTest::qWait(30);
    }
    release(window);
}

void Fingers::send(QQuickWindow &window, int finger, QEventPoint::State state)
{
    QList<QWindowSystemInterface::TouchPoint> points;
    for (const auto &[id, contact] : m_down) {
        QWindowSystemInterface::TouchPoint point;
        point.id = id;
        point.state = id == finger ? state : QEventPoint::State::Stationary;
        const QPointF onScreen = window.mapToGlobal(contact.at);
        point.area = QRectF(onScreen.x() - contact.width / 2, onScreen.y() - contact.width / 2, contact.width,
                            contact.width);
        points.append(point);
    }
    QWindowSystemInterface::handleTouchEvent(&window, m_panel.get(), points);
    QCoreApplication::processEvents();
}

} // namespace touching
