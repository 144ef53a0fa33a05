// SPDX-License-Identifier: MIT
#include "eyes.h"

#include <QAccessible>
#include <QQuickItem>
#include <QQuickWindow>
#include <QStringList>

#include <algorithm>

namespace touching {

namespace {

void gather(QQuickItem *item, QList<QQuickItem *> &found)
{
    if (!item->isVisible() || item->opacity() <= 0)
        return;
    found.append(item);
    for (QQuickItem *child : item->childItems())
        gather(child, found);
}

/// What QML attached to the item for readers. It stands among the item's children.
const QObject *attached(const QQuickItem *item)
{
    for (const QObject *child : item->children())
        if (QByteArray(child->metaObject()->className()) == "QQuickAccessibleAttached")
            return child;
    return nullptr;
}

bool isText(const QQuickItem *item)
{
    return item->inherits("QQuickText");
}

} // namespace

QList<QQuickItem *> shown(QQuickItem *root)
{
    QList<QQuickItem *> found;
    gather(root, found);
    return found;
}

QString spokenName(const QQuickItem *item)
{
    const QObject *said = attached(item);
    return said && !said->property("ignored").toBool() ? said->property("name").toString() : QString();
}

bool pressable(const QQuickItem *item)
{
    const QObject *said = attached(item);
    if (!said || said->property("ignored").toBool())
        return false;
    switch (said->property("role").toInt()) {
    case QAccessible::Button:
    case QAccessible::PageTab:
    case QAccessible::RadioButton:
        return true;
    default:
        return false;
    }
}

bool selected(const QQuickItem *item)
{
    const QObject *said = attached(item);
    return said && said->property("selected").toBool();
}

QRectF seen(const QQuickItem *item)
{
    QRectF rect = item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
    for (const QQuickItem *around = item->parentItem(); around; around = around->parentItem())
        if (around->clip())
            rect &= around->mapRectToScene(QRectF(0, 0, around->width(), around->height()));
    const QQuickWindow *window = item->window();
    return window ? rect & QRectF(QPointF(), window->size()) : QRectF();
}

QQuickItem *byObjectName(QQuickItem *root, const QString &name)
{
    QQuickItem *found = nullptr;
    for (QQuickItem *item : shown(root))
        if (item->objectName() == name)
            found = item;
    return found;
}

QQuickItem *called(QQuickItem *root, const QString &name, bool begins)
{
    QQuickItem *found = nullptr;
    for (QQuickItem *item : shown(root)) {
        if (!item->isEnabled() || !pressable(item))
            continue;
        const QString said = spokenName(item);
        if (said == name || (begins && said.startsWith(name)))
            found = item;
    }
    return found;
}

QQuickItem *valueCalled(QQuickItem *root, const QString &name)
{
    QQuickItem *found = nullptr;
    for (QQuickItem *item : shown(root)) {
        const QString said = spokenName(item);
        if (!item->isEnabled() || !pressable(item) || !said.startsWith(name))
            continue;
        const QString rest = said.mid(name.size());
        if (std::any_of(rest.begin(), rest.end(), [](QChar c) { return c.isDigit(); }))
            found = item;
    }
    return found;
}

QStringList printed(QQuickItem *root)
{
    QStringList words;
    for (const QQuickItem *item : shown(root))
        if (isText(item) && !item->property("text").toString().isEmpty())
            words.append(item->property("text").toString());
    return words;
}

QString everythingCalled(QQuickItem *root)
{
    QStringList names;
    for (const QQuickItem *item : shown(root))
        if (pressable(item))
            names.append(spokenName(item) + (item->isEnabled() ? QString() : QStringLiteral(" (not now)")));
    return names.join(QStringLiteral(" | "));
}

} // namespace touching
