// SPDX-License-Identifier: MIT
#include "screen.h"

#include "planning.h"
#include "project/codec.h"

#include <QCoreApplication>
#include <QElapsedTimer>

#include <cmath>

namespace measure {

using namespace matside;

QString largeDocument()
{
    Project project = largePiece();
    project.name = "Thirty by thirty";
    project.table = Table{Length::inches(260), Length::inches(260), std::nullopt, {}};
    return QString::fromStdString(writeProject(project));
}

std::optional<Followed> dragCorner(Stage &stage, int moves)
{
    stage.room().session().setStation(static_cast<int>(Station::Fit));
    idle(300);
    const QQuickItem *corner = stage.itemOf("CornerGrip");
    if (!corner)
        return std::nullopt;
    // Connected after the models, so by then they and all that is bound to them have followed.
    int replans = 0;
    std::chrono::steady_clock::time_point followed;
    const auto watching =
        QObject::connect(&stage.room().workspace(), &Workspace::changed, &stage.window(), [&] {
            ++replans;
            followed = std::chrono::steady_clock::now();
        });
    const QPoint from = corner->mapToScene(QPointF(corner->width() / 2, corner->height() / 2)).toPoint();
    Times models;
    auto asked = std::chrono::steady_clock::now();
    int told = 0;
    Followed took = follow(
        stage.window(), from, moves,
        [&](int move) {
            if (replans != told)
                models.add(followed - asked);
            told = replans;
            asked = std::chrono::steady_clock::now();
            // 120 px inwards and back, 5 px at a time.
            const int at = (move * 5) % 240;
            return from - QPoint(at < 120 ? at : 240 - at, at < 120 ? at : 240 - at);
        },
        [&] { return replans; });
    took.models = models;
    QObject::disconnect(watching);
    return took;
}

std::optional<Followed> scrubStrip(Stage &stage, int moves)
{
    stage.room().session().setStation(static_cast<int>(Station::Hoop));
    idle(300);
    const QQuickItem *strip = stage.itemOf("StripDrawing");
    if (!strip)
        return std::nullopt;
    const QPoint from = strip->mapToScene(QPointF(strip->width() * 0.1, strip->height() * 0.6)).toPoint();
    const int way = static_cast<int>(strip->width() * 0.8);
    return follow(
        stage.window(), from, moves,
        [&](int move) {
            const int at = (move * 40) % (2 * way);
            return from + QPoint(at < way ? at : 2 * way - at, 0);
        },
        [&] { return strip->property("at").toInt(); });
}

std::optional<Times> scrollGallery(Stage &stage, int steps)
{
    stage.room().session().setStation(static_cast<int>(Station::Hoop));
    idle(300);
    QQuickItem *page = stage.itemOf("HoopPage");
    if (!page || !QMetaObject::invokeMethod(page, "openSide", Q_ARG(QString, QStringLiteral("gallery"))))
        return std::nullopt;
    idle(1500); // thumbnails come from another thread
    QQuickItem *grid = stage.itemOf("QQuickGridView");
    if (!grid)
        return std::nullopt;
    const double far = grid->property("contentHeight").toDouble() - grid->height();
    if (far <= 0)
        return std::nullopt;
    Times times;
    int frames = 0;
    const auto counting =
        QObject::connect(&stage.window(), &QQuickWindow::frameSwapped, grid, [&] { ++frames; });
    for (int step = 1; step <= steps; ++step) {
        const double at = std::fmod(step * 37.0, 2 * far);
        const int drawn = frames;
        const auto start = std::chrono::steady_clock::now();
        grid->setProperty("contentY", at < far ? at : 2 * far - at);
        QElapsedTimer patience;
        patience.start();
        while (frames == drawn && patience.elapsed() < 1000)
            QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 20);
        times.add(std::chrono::steady_clock::now() - start);
    }
    QObject::disconnect(counting);
    return times;
}

} // namespace measure
