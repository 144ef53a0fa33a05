// SPDX-License-Identifier: MIT
#include "screen.h"

#include "main/room.h"
#include "planning.h"
#include "project/codec.h"
#include "times.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QtTest>

#include <cstdio>

namespace measure {

using namespace matside;

namespace {

QQuickItem *cornerIn(QQuickItem *item)
{
    if (item->isVisible() && QByteArray(item->metaObject()->className()).startsWith("CornerGrip"))
        return item;
    for (QQuickItem *child : item->childItems())
        if (QQuickItem *found = cornerIn(child))
            return found;
    return nullptr;
}

void idle(int ms)
{
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < ms)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
}

/// The large piece, on a table it nearly covers so that its corner can be taken.
QString largeDocument()
{
    Project project = largePiece();
    project.name = "Thirty by thirty";
    project.table = Table{Length::inches(260), Length::inches(260), std::nullopt, {}};
    return QString::fromStdString(writeProject(project));
}

/// One drag back and forth over some blocks.
void drag(Room &room, QQuickWindow &window, QPoint from, int moves)
{
    Times reckoned;
    Times shown;
    int frames = 0;
    int replans = 0;
    int unseen = 0;
    QObject::connect(&window, &QQuickWindow::frameSwapped, &window, [&frames] { ++frames; });
    // Connected after the models, so by then they and all that is bound to them have followed.
    std::chrono::steady_clock::time_point followed;
    QObject::connect(&room.workspace(), &Workspace::changed, &window, [&] {
        ++replans;
        followed = std::chrono::steady_clock::now();
    });
    QPointingDevice *finger = QTest::createTouchDevice();
    QTest::touchEvent(&window, finger).press(0, from);
    idle(50);
    for (int move = 1; move <= moves; ++move) {
        // 120 px inwards and back, 5 px at a time.
        const int at = (move * 5) % 240;
        const QPoint to = from - QPoint(at < 120 ? at : 240 - at, at < 120 ? at : 240 - at);
        const int plannedBefore = replans;
        const int framesBefore = frames;
        const auto start = std::chrono::steady_clock::now();
        QTest::touchEvent(&window, finger).move(0, to);
        if (replans == plannedBefore) {
            ++unseen;
            continue;
        }
        reckoned.add(followed - start);
        QElapsedTimer patience;
        patience.start();
        while (frames == framesBefore && patience.elapsed() < 1000)
            QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 20);
        if (frames > framesBefore)
            shown.add(std::chrono::steady_clock::now() - start);
    }
    QTest::touchEvent(&window, finger).release(0, from);
    reckoned.print("touch event to all models following");
    shown.print("touch event to the end of its frame");
    std::printf("%-44s %6d moves stayed on the same number of blocks and drew nothing new\n", "", unseen);
}

} // namespace

bool frameWhileDragging(int moves)
{
    QTemporaryDir folder;
    auto store = openStore(folder.path());
    if (!store)
        return false;
    const auto id = store.value()->create(largeDocument());
    if (!id)
        return false;
    Room room(std::move(store).value(), 5.87);
    room.session().openProject(id.value());
    room.session().setStation(static_cast<int>(Station::Fit));
    if (!room.show())
        return false;
    auto *window = qobject_cast<QQuickWindow *>(room.engine().rootObjects().value(0));
    if (!window)
        return false;
    window->resize(1280, 800);
    window->show();
    idle(500);
    QQuickItem *corner = cornerIn(window->contentItem());
    if (!corner)
        return false;
    drag(room, *window, corner->mapToScene(QPointF(corner->width() / 2, corner->height() / 2)).toPoint(),
         moves);
    return true;
}

} // namespace measure
