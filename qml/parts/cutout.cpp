// SPDX-License-Identifier: MIT
#include "cutout.h"

#include <QPainter>
#include <QSGNode>

Cutout::Cutout(QQuickItem *parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    for (const auto change : {&Cutout::cornersChanged, &Cutout::cutChanged, &Cutout::fillChanged,
                              &Cutout::strokeChanged, &Cutout::strokeWidthChanged})
        connect(this, change, this, [this] { update(); });
}

void Cutout::geometryChange(const QRectF &now, const QRectF &before)
{
    QQuickPaintedItem::geometryChange(now, before);
    if (m_corners.isEmpty() && now.size() != before.size())
        update();
}

void Cutout::itemChange(ItemChange change, const ItemChangeData &data)
{
    if (change == ItemVisibleHasChanged)
        update();
    QQuickPaintedItem::itemChange(change, data);
}

QSGNode *Cutout::updatePaintNode(QSGNode *node, UpdatePaintNodeData *data)
{
    // Qt Quick paints and keeps a picture of what is hidden, too; most outlines of a page are, at any time.
    if (isVisible())
        return QQuickPaintedItem::updatePaintNode(node, data);
    delete node;
    return nullptr;
}

QPolygonF Cutout::figure() const
{
    QPolygonF figure;
    for (const QVariant &corner : m_corners)
        figure << corner.toPointF();
    if (!figure.isEmpty() || m_cut <= 0)
        return figure;
    const qreal inset = m_strokeWidth / 2;
    const qreal farX = width() - inset;
    const qreal farY = height() - inset;
    figure << QPointF(m_cut, inset) << QPointF(width() - m_cut, inset) << QPointF(farX, m_cut)
           << QPointF(farX, height() - m_cut) << QPointF(width() - m_cut, farY) << QPointF(m_cut, farY)
           << QPointF(inset, height() - m_cut) << QPointF(inset, m_cut);
    return figure;
}

void Cutout::paint(QPainter *painter)
{
    QPen pen(m_stroke, m_strokeWidth);
    pen.setJoinStyle(Qt::MiterJoin);
    painter->setPen(m_strokeWidth > 0 ? pen : QPen(Qt::NoPen));
    painter->setBrush(m_fill);
    painter->drawPolygon(figure());
}
