// SPDX-License-Identifier: MIT
#include "cutout.h"

#include <QPainter>

Cutout::Cutout(QQuickItem *parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    for (const auto change :
         {&Cutout::cornersChanged, &Cutout::fillChanged, &Cutout::strokeChanged, &Cutout::strokeWidthChanged})
        connect(this, change, this, [this] { update(); });
}

void Cutout::paint(QPainter *painter)
{
    QPolygonF figure;
    for (const QVariant &corner : std::as_const(m_corners))
        figure << corner.toPointF();
    QPen pen(m_stroke, m_strokeWidth);
    pen.setJoinStyle(Qt::MiterJoin);
    painter->setPen(m_strokeWidth > 0 ? pen : QPen(Qt::NoPen));
    painter->setBrush(m_fill);
    painter->drawPolygon(figure);
}
