// SPDX-License-Identifier: MIT
#pragma once

#include <QColor>
#include <QQuickItem>
#include <QtQml/qqmlregistration.h>

/// A line of square dots, as long as the item is wide: whole dots only, and at least one. One item, where
/// each dot for itself would have to be made anew whenever the line grows.
class DotLine : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    /// Side of a dot in px.
    Q_PROPERTY(qreal dot MEMBER m_dot NOTIFY changed)
    /// From the start of one dot to the start of the next in px.
    Q_PROPERTY(qreal step MEMBER m_step NOTIFY changed)
    Q_PROPERTY(QColor color MEMBER m_color NOTIFY changed)

public:
    explicit DotLine(QQuickItem *parent = nullptr);

signals:
    void changed();

protected:
    void geometryChange(const QRectF &now, const QRectF &before) override;
    QSGNode *updatePaintNode(QSGNode *node, UpdatePaintNodeData *data) override;

private:
    qreal m_dot = 1;
    qreal m_step = 2;
    QColor m_color = Qt::black;
};
