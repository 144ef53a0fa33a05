// SPDX-License-Identifier: MIT
#include "main/pictures.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QQuickWindow>

#include <cstdio>

namespace matside {

namespace {

struct Size {
    int width;
    int height;
    double pxPerMm;
};
/// 10.1 in at 1280 × 800, upright; 8 in at 1024 × 600; 10.4 in at 2000 × 1200.
constexpr Size sizes[] = {{1280, 800, 5.87}, {800, 1280, 5.87}, {1024, 600, 5.84}, {2000, 1200, 8.83}};

void settle(int ms)
{
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < ms)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 10);
}

QQuickWindow *windowOf(Room &room)
{
    return qobject_cast<QQuickWindow *>(room.engine().rootObjects().value(0));
}

bool take(QQuickWindow &window, const QString &path)
{
    settle(60);
    return window.grabWindow().save(path);
}

/// Any warning while the self test runs fails it, whoever gives it.
int warningsHeard = 0;
QtMessageHandler before = nullptr;
void hear(QtMsgType type, const QMessageLogContext &context, const QString &message)
{
    if (type != QtDebugMsg && type != QtInfoMsg)
        ++warningsHeard;
    if (before)
        before(type, context, message);
}

QString nameOf(Session &session, int station)
{
    return station < 0 ? QStringLiteral("shelf") : session.stationName(station).toLower();
}

} // namespace

int takePictures(Room &room, const QString &dir)
{
    QQuickWindow *window = windowOf(room);
    if (!window || !QDir().mkpath(dir))
        return 1;
    Session &session = room.session();
    int written = 0;
    int failed = 0;
    for (const Size &size : sizes) {
        room.look().setPxPerMm(size.pxPerMm);
        window->resize(size.width, size.height);
        for (const char *set : {"day", "lamp", "contrast"}) {
            room.look().setColourSet(QLatin1String(set));
            for (int station = -1; station <= 6; ++station) {
                session.setView(station < 0 ? QStringLiteral("shelf") : QStringLiteral("station"));
                session.setStation(std::max(station, 0));
                // Both hands where the hand matters most.
                const bool both =
                    station == static_cast<int>(Station::Fit) || station == static_cast<int>(Station::Cut);
                for (const bool left : {false, true}) {
                    if (left && !both)
                        continue;
                    session.setLeftHanded(left);
                    const QString path =
                        QStringLiteral("%1/%2-%3x%4-%5-%6.png")
                            .arg(dir, nameOf(session, station))
                            .arg(size.width)
                            .arg(size.height)
                            .arg(QLatin1String(set), left ? QStringLiteral("left") : QStringLiteral("right"));
                    take(*window, path) ? ++written : ++failed;
                }
                session.setLeftHanded(false);
            }
        }
    }
    std::fprintf(stdout, "%d pictures written to %s\n", written, qPrintable(dir));
    return failed == 0 ? 0 : 1;
}

int selfTest(Room &room)
{
    QQuickWindow *window = windowOf(room);
    if (!window)
        return 1;
    warningsHeard = 0;
    before = qInstallMessageHandler(hear);
    for (const QSize size : {QSize(1280, 800), QSize(800, 1280), QSize(1024, 600)}) {
        window->resize(size);
        for (const QString &view :
             {QStringLiteral("shelf"), QStringLiteral("settings"), QStringLiteral("station")}) {
            room.session().setView(view);
            for (int station = 0; station <= 6; ++station) {
                room.session().setStation(station);
                settle(30);
            }
        }
    }
    qInstallMessageHandler(before);
    return warningsHeard == 0 ? 0 : 1;
}

} // namespace matside
