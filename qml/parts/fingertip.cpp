// SPDX-License-Identifier: MIT
#include "fingertip.h"

#include <QGuiApplication>
#include <QMouseEvent>
#include <QStyleHints>
#include <QTouchEvent>

#include <algorithm>

Fingertip::Fingertip(QQuickItem *parent) : QQuickItem(parent)
{
    setAcceptedMouseButtons(Qt::LeftButton);
    setAcceptTouchEvents(true);
}

bool Fingertip::listening() const
{
    return m_listening;
}

void Fingertip::setListening(bool on)
{
    if (on == m_listening)
        return;
    m_listening = on;
    setAcceptedMouseButtons(on ? Qt::LeftButton : Qt::NoButton);
    setAcceptTouchEvents(on);
    if (!on)
        letGo();
    emit listeningChanged();
}

bool Fingertip::touched() const
{
    return m_finger != nobody;
}

bool Fingertip::within() const
{
    return m_within;
}

qreal Fingertip::contact() const
{
    return m_contact;
}

bool Fingertip::drawing() const
{
    return m_drawing;
}

qreal Fingertip::drawn() const
{
    return m_drawn;
}

void Fingertip::mousePressEvent(QMouseEvent *event)
{
    if (!touched())
        put(mouse, event->position(), 0);
}

void Fingertip::mouseMoveEvent(QMouseEvent *event)
{
    if (m_finger == mouse)
        move(event->position(), 0);
}

void Fingertip::mouseReleaseEvent(QMouseEvent *event)
{
    if (m_finger == mouse)
        lift(event->position(), 0);
}

void Fingertip::mouseUngrabEvent()
{
    if (m_finger == mouse)
        letGo();
}

void Fingertip::touchEvent(QTouchEvent *event)
{
    if (event->type() == QEvent::TouchCancel) {
        letGo();
        return;
    }
    // A first touch of all: whatever was held before has gone, whether its end was told or not.
    if (event->isBeginEvent() && m_finger != mouse)
        letGo();
    for (const QEventPoint &point : event->points())
        follow(point);
    event->accept();
}

void Fingertip::follow(const QEventPoint &point)
{
    const QSizeF size = point.ellipseDiameters();
    const qreal width = std::max(size.width(), size.height());
    if (point.state() == QEventPoint::State::Pressed && !touched())
        put(point.id(), point.position(), width);
    else if (point.id() != m_finger)
        return;
    else if (point.state() == QEventPoint::State::Released)
        lift(point.position(), width);
    else
        move(point.position(), width);
}

void Fingertip::touchUngrabEvent()
{
    if (m_finger != mouse)
        letGo();
}

void Fingertip::itemChange(ItemChange change, const ItemChangeData &data)
{
    QQuickItem::itemChange(change, data);
    const bool gone = (change == ItemVisibleHasChanged || change == ItemEnabledHasChanged) && !data.boolValue;
    if (gone || change == ItemSceneChange)
        letGo();
}

void Fingertip::put(int finger, QPointF at, qreal width)
{
    m_finger = finger;
    m_from = at;
    m_travelled = false;
    m_contact = width;
    emit contactChanged();
    setWithin(contains(at));
    emit touchedChanged();
}

void Fingertip::move(QPointF at, qreal width)
{
    if (width > m_contact) {
        m_contact = width;
        emit contactChanged();
    }
    const QPointF way = at - m_from;
    draw(way);
    const int far = QGuiApplication::styleHints()->startDragDistance();
    if ((m_pushed || m_drawable) && std::max(std::abs(way.x()), std::abs(way.y())) > far)
        m_travelled = true;
    setWithin(contains(at) && !m_travelled);
}

void Fingertip::draw(QPointF way)
{
    const int far = QGuiApplication::styleHints()->startDragDistance();
    if (m_drawable && !m_travelled && std::abs(way.x()) > far && std::abs(way.x()) > std::abs(way.y()))
        setDrawing(true);
    if (!m_drawing)
        return;
    m_drawn = way.x();
    emit drawnChanged();
}

void Fingertip::setDrawing(bool on)
{
    if (on == m_drawing)
        return;
    m_drawing = on;
    setKeepTouchGrab(on);
    setKeepMouseGrab(on);
    emit drawingChanged();
}

void Fingertip::lift(QPointF at, qreal width)
{
    move(at, width);
    if (m_within)
        emit struck(at);
    letGo();
}

void Fingertip::letGo()
{
    if (!touched())
        return;
    m_finger = nobody;
    setDrawing(false);
    setWithin(false);
    emit touchedChanged();
}

void Fingertip::setWithin(bool within)
{
    if (within == m_within)
        return;
    m_within = within;
    emit withinChanged();
}
