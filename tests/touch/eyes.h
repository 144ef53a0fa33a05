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
