// SPDX-License-Identifier: MIT
#include "eyes.h"

#include <QAccessible>
#include <QColor>
#include <QQuickItem>
#include <QQuickWindow>
#include <QStringList>

#include <algorithm>

namespace touching {

namespace {

/// The drawings that stand on a page of their own accord.
constexpr const char *drawings[] = {"BindingSection", "BlockShape",   "ClothLayout", "EdgeDrawing",
                                    "HoopDrawing",    "JoinMap",      "MarkTape",    "RulerDrawing",
                                    "SectionDrawing", "StripDrawing", "TableDrawing"};

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

/// Children as they are painted: by z, then in order.
QList<QQuickItem *> painted(const QQuickItem *item)
{
    QList<QQuickItem *> children = item->childItems();
    std::stable_sort(children.begin(), children.end(),
                     [](const QQuickItem *a, const QQuickItem *b) { return a->z() < b->z(); });
    return children;
}

void gatherPainted(QQuickItem *item, QList<QQuickItem *> &found)
{
    if (!item->isVisible() || item->opacity() <= 0)
        return;
    found.append(item);
    for (QQuickItem *child : painted(item))
        gatherPainted(child, found);
}

/// A ground that hides what was painted before it.
bool hides(const QQuickItem *item)
{
    return item->inherits("QQuickRectangle") && item->property("color").value<QColor>().alpha() == 255 &&
           item->opacity() >= 1;
}

/// What is left of a place when another is laid over it. A corner laid over is taken for seen.
QRectF leftOf(const QRectF &place, const QRectF &over)
{
    const QRectF shared = place & over;
    if (shared.isEmpty())
        return place;
    QRectF left = place;
    if (shared.width() >= place.width() - 0.5) {
        if (shared.top() - place.top() > place.bottom() - shared.bottom())
            left.setBottom(shared.top());
        else
            left.setTop(shared.bottom());
    } else if (shared.height() >= place.height() - 0.5) {
        if (shared.left() - place.left() > place.right() - shared.right())
            left.setRight(shared.left());
        else
            left.setLeft(shared.right());
    }
    // Less than a hair of it is not seen at all.
    return left.width() < 1 || left.height() < 1 ? QRectF() : left;
}

} // namespace

bool is(const QQuickItem *item, const char *type)
{
    const QByteArray begins = QByteArray(type) + "_QML";
    for (const QMetaObject *kind = item->metaObject(); kind; kind = kind->superClass())
        if (QByteArray(kind->className()).startsWith(begins))
            return true;
    return false;
}

bool isText(const QQuickItem *item)
{
    return item->inherits("QQuickText") && !item->property("text").toString().isEmpty();
}

bool isDrawing(const QQuickItem *item)
{
    // One that is printed on a target is told with the target.
    for (const QQuickItem *around = item->parentItem(); around; around = around->parentItem())
        if (takesTouch(around))
            return false;
    return std::any_of(std::begin(drawings), std::end(drawings),
                       [&](const char *type) { return is(item, type); });
}

bool takesTouch(const QQuickItem *item)
{
    return is(item, "Pressable") ? item->property("listening").toBool() : item->inherits("QQuickTextInput");
}

const QQuickItem *touchField(const QQuickItem *item)
{
    const QQuickItem *around = item->parentItem();
    return around && is(around, "PlainField") ? around : item;
}

bool hasRole(const QQuickItem *item)
{
    const QObject *said = attached(item);
    return said && !said->property("ignored").toBool() &&
           said->property("role").toInt() != QAccessible::NoRole;
}

QList<Sight> inSight(const QQuickWindow &window)
{
    QList<QQuickItem *> all;
    gatherPainted(window.contentItem(), all);
    QList<Sight> found;
    QList<Sight> grounds;
    // From the front to the back: what hides is known before what it may hide.
    for (auto at = all.crbegin(); at != all.crend(); ++at) {
        QRectF place = seen(*at);
        for (const Sight &ground : grounds)
            if (!(*at)->isAncestorOf(ground.item))
                place = leftOf(place, ground.place);
        if (place.isEmpty())
            continue;
        found.prepend({*at, place});
        if (hides(*at))
            grounds.append({*at, place});
    }
    return found;
}

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
        if (isText(item))
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
