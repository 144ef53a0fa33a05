// SPDX-License-Identifier: MIT
#include "hands.h"

#include <QCoreApplication>
#include <QPointingDevice>
#include <QQuickWindow>
#include <qpa/qwindowsysteminterface.h>

Hands::Hands(QObject *parent)
    : QObject(parent), panel_(std::make_unique<QPointingDevice>(
                           QStringLiteral("panel"), 4711, QInputDevice::DeviceType::TouchScreen,
                           QPointingDevice::PointerType::Finger,
                           QInputDevice::Capability::Position | QInputDevice::Capability::Area, 10, 0))
{
    QWindowSystemInterface::registerInputDevice(panel_.get());
}

Hands::~Hands() = default;

void Hands::tap(QQuickItem *item, double widthPx)
{
    send(item, widthPx, static_cast<int>(QEventPoint::State::Pressed));
    send(item, widthPx, static_cast<int>(QEventPoint::State::Released));
}

void Hands::fingers(QQuickItem *item, const QVariantList &points)
{
    constexpr double fingertipPx = 50;
    QQuickWindow *window = item->window();
    QList<QWindowSystemInterface::TouchPoint> all;
    for (const QVariant &told : points) {
        const QVariantMap finger = told.toMap();
        const QString state = finger[QStringLiteral("state")].toString();
        const QPointF on(item->width() / 2 + finger[QStringLiteral("x")].toDouble(),
                         item->height() / 2 + finger[QStringLiteral("y")].toDouble());
        const QPointF onScreen = window->mapToGlobal(item->mapToScene(on));
        QWindowSystemInterface::TouchPoint point;
        point.id = finger[QStringLiteral("id")].toInt();
        point.state = state == QStringLiteral("down")   ? QEventPoint::State::Pressed
                      : state == QStringLiteral("up")   ? QEventPoint::State::Released
                      : state == QStringLiteral("move") ? QEventPoint::State::Updated
                                                        : QEventPoint::State::Stationary;
        point.area =
            QRectF(onScreen.x() - fingertipPx / 2, onScreen.y() - fingertipPx / 2, fingertipPx, fingertipPx);
        all.append(point);
    }
    QWindowSystemInterface::handleTouchEvent(window, panel_.get(), all);
    QCoreApplication::processEvents();
}

void Hands::send(QQuickItem *item, double widthPx, int state)
{
    QQuickWindow *window = item->window();
    const QPointF middle = item->mapToScene(QPointF(item->width() / 2, item->height() / 2));
    QWindowSystemInterface::TouchPoint point;
    point.id = 1;
    point.state = static_cast<QEventPoint::State>(state);
    const QPointF onScreen = window->mapToGlobal(middle);
    point.area = QRectF(onScreen.x() - widthPx / 2, onScreen.y() - widthPx / 2, widthPx, widthPx);
    QWindowSystemInterface::handleTouchEvent(window, panel_.get(), {point});
    QCoreApplication::processEvents();
}
