// SPDX-License-Identifier: MIT
#pragma once

#include <QPointF>
#include <QQuickItem>
#include <QtQml/qqmlregistration.h>

/// One finger, or the mouse, put on an item and taken off it again. Others that come meanwhile on the same
/// item are kept from what lies beneath and do nothing.
///
/// In place of a TapHandler: after two fingers on one target that of Qt 6.4.2 may go on waiting for the
/// number of a finger that has gone, deaf to every touch after it. Handlers in the item still hear the touch
/// and may take it over.
class Fingertip : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    /// False when something around it takes the touch.
    Q_PROPERTY(bool listening READ listening WRITE setListening NOTIFY listeningChanged)
    /// Inside what is pushed or drawn by the finger: a touch that travels is no tap.
    Q_PROPERTY(bool pushed MEMBER m_pushed NOTIFY pushedChanged)
    /// A finger is held on the item.
    Q_PROPERTY(bool touched READ touched NOTIFY touchedChanged)
    /// May be drawn along: a finger that travels sideways first keeps the touch, so that no list takes it,
    /// and taps no more.
    Q_PROPERTY(bool drawable MEMBER m_drawable NOTIFY drawableChanged)
    /// A finger draws along the item.
    Q_PROPERTY(bool drawing READ drawing NOTIFY drawingChanged)
    /// How far the finger has drawn to the right since it was put down, in px; negative to the left.
    Q_PROPERTY(qreal drawn READ drawn NOTIFY drawnChanged)
    /// The finger that is held has not slid off the item.
    Q_PROPERTY(bool within READ within NOTIFY withinChanged)
    /// The widest the contact was since it was put down, in px; 0 for the mouse and for panels that tell no
    /// width.
    Q_PROPERTY(qreal contact READ contact NOTIFY contactChanged)

public:
    explicit Fingertip(QQuickItem *parent = nullptr);

    bool listening() const;
    void setListening(bool on);
    bool touched() const;
    bool within() const;
    qreal contact() const;
    bool drawing() const;
    qreal drawn() const;

signals:
    void listeningChanged();
    void pushedChanged();
    void drawableChanged();
    void drawingChanged();
    void drawnChanged();
    void touchedChanged();
    void withinChanged();
    void contactChanged();
    /// The finger was taken off inside the item, at `at` in its own px. Sent while it still counts as
    /// touched.
    void struck(QPointF at);

protected:
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void mouseUngrabEvent() override;
    void touchEvent(QTouchEvent *event) override;
    void touchUngrabEvent() override;
    void itemChange(ItemChange change, const ItemChangeData &data) override;

private:
    static constexpr int nobody = -1;
    static constexpr int mouse = -2;

    void put(int finger, QPointF at, qreal width);
    void move(QPointF at, qreal width);
    void lift(QPointF at, qreal width);
    void letGo();
    void follow(const QEventPoint &point);
    void setWithin(bool within);
    void draw(QPointF way);
    void setDrawing(bool on);

    int m_finger = nobody;
    QPointF m_from;
    qreal m_contact = 0;
    bool m_listening = true;
    bool m_pushed = false;
    bool m_drawable = false;
    bool m_drawing = false;
    qreal m_drawn = 0;
    bool m_within = false;
    bool m_travelled = false;
};
