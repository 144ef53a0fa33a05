// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QPointF>
#include <QQuickItem>
#include <QVariantList>

#include <memory>

class QPointingDevice;

/// Hands for the tests: contacts of a given width, which the ordinary test functions cannot send.
class Hands : public QObject {
    Q_OBJECT

public:
    explicit Hands(QObject *parent = nullptr);
    ~Hands() override;

    /// Puts a contact `widthPx` wide on the middle of `item` and takes it away again.
    Q_INVOKABLE void tap(QQuickItem *item, double widthPx);
    /// One event of several fingertips on `item`: of each {id, state ("down", "still", "move", "up"), x, y}
    /// from its middle.
    Q_INVOKABLE void fingers(QQuickItem *item, const QVariantList &points);

private:
    void send(QQuickItem *item, double widthPx, int state);

    std::unique_ptr<QPointingDevice> panel_;
};
