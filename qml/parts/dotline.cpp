// SPDX-License-Identifier: MIT
#include "dotline.h"

#include <QQuickWindow>
#include <QSGRectangleNode>

#include <algorithm>

DotLine::DotLine(QQuickItem *parent) : QQuickItem(parent)
{
    setFlag(ItemHasContents);
    connect(this, &DotLine::changed, this, [this] { update(); });
}

void DotLine::geometryChange(const QRectF &now, const QRectF &before)
{
    QQuickItem::geometryChange(now, before);
    update();
}

QSGNode *DotLine::updatePaintNode(QSGNode *node, UpdatePaintNodeData *)
{
    const int dots = std::max(1, m_step > 0 ? static_cast<int>(width() / m_step) : 1);
    // Not a plain node: the software renderer of Qt 6.4 keeps the place of transform nodes only, and dots
    // added later to a plain one are painted far from it.
    QSGNode *line = node ? node : new QSGTransformNode;
    while (line->childCount() > dots) {
        QSGNode *last = line->lastChild();
        line->removeChildNode(last);
        delete last;
    }
    while (line->childCount() < dots)
        line->appendChildNode(window()->createRectangleNode());
    for (int i = 0; i < dots; ++i) {
        auto *dot = static_cast<QSGRectangleNode *>(line->childAtIndex(i));
        dot->setRect({i * m_step, 0, m_dot, m_dot});
        dot->setColor(m_color);
    }
    return line;
}
