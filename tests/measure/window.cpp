// SPDX-License-Identifier: MIT
#include "window.h"

#include "testing.h"
#include <QCoreApplication>
#include <QElapsedTimer>

namespace measure {

using namespace matside;

namespace {

QQuickItem *below(QQuickItem *item, const QByteArray &type)
{
    if (item->isVisible() && QByteArray(item->metaObject()->className()).startsWith(type))
        return item;
    for (QQuickItem *child : item->childItems())
        if (QQuickItem *found = below(child, type))
            return found;
    return nullptr;
}

} // namespace

void idle(int ms)
{
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < ms)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
}

Stage::Stage(const QString &document, const QString &folder)
{
    auto store = openStore(folder.isEmpty() ? m_own.path() : folder);
    if (!store)
        return;
    QString id;
    if (!document.isEmpty()) {
        const auto made = store.value()->create(document);
        if (!made)
            return;
        id = made.value();
    }
    m_room = std::make_unique<Room>(std::move(store).value(), 5.87, QStringLiteral("en"));
    if (id.isEmpty())
        m_room->session().resume();
    else
        m_room->session().openProject(id);
    if (!m_room->show())
        return;
    m_window = qobject_cast<QQuickWindow *>(m_room->engine().rootObjects().value(0));
    if (!m_window)
        return;
    m_window->resize(1280, 800);
    m_window->show();
    idle(500);
}

QQuickItem *Stage::itemOf(const char *type) const
{
    return below(m_window->contentItem(), type);
}

Followed follow(QQuickWindow &window, QPoint from, int moves, const std::function<QPoint(int)> &path,
                const std::function<int()> &changes)
{
    Followed took;
    int frames = 0;
    const auto counting =
        QObject::connect(&window, &QQuickWindow::frameSwapped, &window, [&frames] { ++frames; });
    QPointingDevice *finger = QTest::createTouchDevice();
    QTest::touchEvent(&window, finger).press(0, from);
    idle(60);
    for (int move = 1; move <= moves; ++move) {
        const int before = changes();
        const int drawn = frames;
        const auto start = std::chrono::steady_clock::now();
        QTest::touchEvent(&window, finger).move(0, path(move));
        QElapsedTimer patience;
        patience.start();
        // A move is told to the item before the next frame; one that changes nothing may draw none.
        while (frames == drawn && patience.elapsed() < 60)
            QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 20);
        if (changes() == before)
            ++took.still;
        else if (frames > drawn)
            took.frames.add(std::chrono::steady_clock::now() - start);
    }
    QTest::touchEvent(&window, finger).release(0, from);
    QObject::disconnect(counting);
    return took;
}

} // namespace measure
