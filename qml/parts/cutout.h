// SPDX-License-Identifier: MIT
#pragma once

#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

/// A closed figure of straight edges, filled and outlined.
///
/// Painted, not a Shape: where Qt 6.4.2 draws without a graphics card, a Shape that has been scrolled out of
/// a list whole is drawn all the same, over what stands above the list.
class Cutout : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    /// Its corners in px, in order.
    Q_PROPERTY(QVariantList corners MEMBER m_corners NOTIFY cornersChanged)
    /// Without corners of its own: a rectangle as large as the item, by so many px cut off at each corner,
    /// its line inside the edge. Reckoned here, when it is painted: while a page is laid out every size
    /// changes many times over.
    Q_PROPERTY(qreal cut MEMBER m_cut NOTIFY cutChanged)
    Q_PROPERTY(QColor fill MEMBER m_fill NOTIFY fillChanged)
    Q_PROPERTY(QColor stroke MEMBER m_stroke NOTIFY strokeChanged)
    /// In px, half of it to each side of an edge; 0 draws no line.
    Q_PROPERTY(qreal strokeWidth MEMBER m_strokeWidth NOTIFY strokeWidthChanged)

public:
    explicit Cutout(QQuickItem *parent = nullptr);
    void paint(QPainter *painter) override;

signals:
    void cornersChanged();
    void cutChanged();
    void fillChanged();
    void strokeChanged();
    void strokeWidthChanged();

protected:
    void geometryChange(const QRectF &now, const QRectF &before) override;
    void itemChange(ItemChange change, const ItemChangeData &data) override;
    QSGNode *updatePaintNode(QSGNode *node, UpdatePaintNodeData *data) override;

private:
    [[nodiscard]] QPolygonF figure() const;

    QVariantList m_corners;
    qreal m_cut = 0;
    QColor m_fill = Qt::transparent;
    QColor m_stroke = Qt::transparent;
    qreal m_strokeWidth = 0;
};
