// SPDX-License-Identifier: MIT
#pragma once

#include <QList>
#include <QRectF>
#include <QString>

class QQuickItem;
class QQuickWindow;

/// What can be seen on a window, found as a reader or a finger finds it: by names, never through the models.
namespace touching {

/// The items under `root` that are shown, those in front last.
[[nodiscard]] QList<QQuickItem *> shown(QQuickItem *root);
/// The name a screen reader would say; empty for what it passes over.
[[nodiscard]] QString spokenName(const QQuickItem *item);
/// Whether the item is one to press: a button, a tab, a choice.
[[nodiscard]] bool pressable(const QQuickItem *item);
/// Whether a reader would say of it that it is the chosen one.
[[nodiscard]] bool selected(const QQuickItem *item);
/// Whether the item is of the QML type so called, or one made from it.
[[nodiscard]] bool is(const QQuickItem *item, const char *type);
[[nodiscard]] bool isText(const QQuickItem *item);
/// Whether the item is a drawing that a reader is to be told of.
[[nodiscard]] bool isDrawing(const QQuickItem *item);
/// Whether the item answers to a finger of itself: a pressable, or a line to write on.
[[nodiscard]] bool takesTouch(const QQuickItem *item);
/// What of such an item, or around it, a finger may come down on: a line to write on is as high as its field.
[[nodiscard]] const QQuickItem *touchField(const QQuickItem *item);
/// Whether the item says to a reader what it is.
[[nodiscard]] bool hasRole(const QQuickItem *item);
/// An item and what of it can be seen, in pixels of the window.
struct Sight {
    QQuickItem *item;
    QRectF place;
};
/// Everything that can be seen on the window, those in front last: not what is cut off, and not what lies
/// under something that hides it.
[[nodiscard]] QList<Sight> inSight(const QQuickWindow &window);
/// The part of the item that is on the window and cut off by nothing, in pixels of the window.
[[nodiscard]] QRectF seen(const QQuickItem *item);

/// The shown item with this objectName, the one in front if there are more; null if there is none.
[[nodiscard]] QQuickItem *byObjectName(QQuickItem *root, const QString &name);
/// The enabled pressable so called; `begins` takes any name that begins so.
[[nodiscard]] QQuickItem *called(QQuickItem *root, const QString &name, bool begins = false);
/// The enabled pressable that is called so and says its value after its name: "rows 3".
[[nodiscard]] QQuickItem *valueCalled(QQuickItem *root, const QString &name);
/// Every word and numeral printed under `root`, in the order of the items.
[[nodiscard]] QStringList printed(QQuickItem *root);
/// The names of everything that can be pressed, for telling what was there instead.
[[nodiscard]] QString everythingCalled(QQuickItem *root);

} // namespace touching
