// SPDX-License-Identifier: MIT
#include "main/stage.h"

#include "plan/onstrip.h"

#include <QFile>
#include <QImage>
#include <QPainter>
#include <QTemporaryDir>

namespace matside {

namespace {

/// The last of so many outlines found so many marks from where it was expected.
Project withEnd(const Project &from, std::int64_t stitched, std::int64_t offMarks)
{
    Project project = upTo(from, Does::StitchBlock, stitched);
    const StripWork work = stripWork(project, plan(project), 1);
    project.made.recordOf(1).ended = work.far + marks(project, offMarks);
    return project;
}

/// All blocks of the first strip but one, the last of them so far on that the other is half an inch short.
Project withoutRoom(const Project &from)
{
    const StripPlan planned = plan(upTo(from, Does::Layer)).strip;
    Project project = upTo(from, Does::StitchBlock, std::max<std::int64_t>(planned.perStrip - 1, 1));
    const Plan now = plan(project);
    const StripWork work = stripWork(project, now, 1);
    project.made.recordOf(1).ended =
        work.end - planned.end - now.block.sent.along - planned.gap + marks(project, 8);
    return project;
}

} // namespace

void hoopStates(States &states)
{
    // Pieces cut off their bands, and joined to one long one.
    states.add("cut-short", Station::Cut, until(Does::CutShort));
    states.add("cut-long", Station::Cut, until(Does::CutLongPiece));
    // The program is started again while a strip is being cut; a strip is spoiled.
    states.add("resume", Station::Cut, until(Does::CutStrip, 1),
               [stage = states.stage()] { stage.room->steps().askAboutLast(); });
    states.add("wrong-spoiled", Station::Cut, until(Does::CutStrip, 1), states.stage().wrong("spoiled"));
    const Station hoop = Station::Hoop;
    states.add("hoop-bobbin", hoop, [](const Project &p) {
        Project project = p;
        project.thread.bobbin = Length::mm(25'000); // for one block
        return upTo(project, Does::StitchBlock, 1);
    });
    states.add("trim-press", Station::Trim, until(Does::PressBlock));
    states.add("hoop-layer", hoop, until(Does::Layer));
    states.add("hoop-waits", hoop, until(Does::CutStrip, 1)); // layered no sooner than it is cut
    states.add("hoop-mark", hoop, until(Does::MarkStrip));
    states.add("hoop-first", hoop, until(Does::StitchBlock));
    states.add("hoop-next", hoop, until(Does::StitchBlock, 1));
    states.add(
        "hoop-zero", hoop, [](const Project &p) { return withEnd(p, 1, -2); },
        states.side("hoop-page", "zero"));
    states.add("hoop-short", hoop, withoutRoom);
    states.add("hoop-tail", hoop, [](const Project &p) {
        Project project = p;
        project.strip.tails = true;
        return upTo(project, Does::StitchBlock, 1);
    });
    states.add("hoop-strips", hoop, until(Does::StitchBlock, 1), states.side("hoop-page", "strip"));
    states.add(
        "hoop-drawup", hoop,
        [](const Project &p) {
            Project project = upTo(p, Does::StitchBlock, 3);
            const Plan now = plan(project);
            for (MadeBlock &block : project.made.blocks)
                block.outline = {now.block.outline.along - marks(project, 2),
                                 now.block.outline.across - marks(project, 1)};
            return project;
        },
        states.side("hoop-page", "drawup"));
    states.add("hoop-harvest", hoop, until(Does::MarkStrip), states.side("hoop-page", "strip"));
    states.add("hoop-stops", hoop, until(Does::StitchBlock, 1), states.side("hoop-page", "stops"));
    states.add("hoop-hoops", hoop, until(Does::StitchBlock), states.side("hoop-page", "hoops"));
    // Another block is looked at than the one in hand; what went wrong; taking back what was done.
    const Stage stage = states.stage();
    states.add("hoop-ahead", hoop, until(Does::StitchBlock, 1), [stage] {
        if (QQuickItem *page = stage.item("hoop-page"))
            QMetaObject::invokeMethod(page, "scanned", Q_ARG(int, 2));
    });
    states.add("wrong-hoop", hoop, until(Does::StitchBlock, 1), [stage] {
        // The picture goes back to the block in hand.
        if (QQuickItem *wrong = stage.item("wrong"))
            QMetaObject::invokeMethod(wrong, "press");
    });
    states.add(
        "undone", hoop, until(Does::MarkStrip),
        [stage] {
            stage.room->steps().next();
            stage.room->steps().back();
        },
        [stage] { stage.room->steps().answerUndo(QStringLiteral("mistake")); });
    states.add("hoop-trim", hoop, until(Does::TrimPatches));
    states.add("hoop-press", hoop, until(Does::PressBlock));
}

namespace {

/// A photograph of a block in a file of its own: cloth, its outline and two patches.
QString photographed(const QString &folder, int number)
{
    QImage picture(800, 800, QImage::Format_RGB32);
    picture.fill(QColor::fromHsv((number * 67) % 360, 60, 205));
    QPainter painter(&picture);
    painter.setPen(QPen(QColor(60, 50, 45), 6));
    painter.setBrush(QColor::fromHsv((number * 67 + 120) % 360, 110, 170));
    painter.drawRect(QRect(120, 120, 560, 560));
    painter.setBrush(QColor::fromHsv((number * 67 + 220) % 360, 120, 220));
    painter.drawPolygon(QPolygon({QPoint(400, 180), QPoint(620, 400), QPoint(400, 620), QPoint(180, 400)}));
    painter.end();
    const QString path = QStringLiteral("%1/block-%2.jpg").arg(folder).arg(number);
    return picture.save(path) ? path : QString();
}

/// The log of the block next off the hoop, a camera pretended to be there.
void openFinder(const Stage &stage)
{
    if (QQuickItem *page = stage.item("hoop-page"))
        QMetaObject::invokeMethod(page, "logBlock", Q_ARG(QString, QStringLiteral("A1")));
    settle(40);
    if (QQuickItem *log = stage.item("sheet-log"))
        log->setProperty("over", QStringLiteral("photo"));
    settle(40);
    stage.room->camera().report(true, true);
    settle(40);
}

} // namespace

void logStates(States &states)
{
    const Stage stage = states.stage();
    const auto folder = std::make_shared<QTemporaryDir>();
    const auto unplug = [&room = *stage.room] {
        room.log().dismissProblem();
        room.camera().report(false, false);
    };
    const auto finder = [stage] { openFinder(stage); };
    states.add("photo-camera", Station::Hoop, until(Does::StitchBlock, 1), finder, unplug);
    states.add(
        "photo-stalled", Station::Hoop, until(Does::StitchBlock, 1),
        [&room = *stage.room, finder] {
            finder();
            room.camera().setPatience(1);
            room.camera().capture();
            settle(60);
            room.camera().setPatience(PhotoSource::patienceMs);
        },
        unplug);
    states.add(
        "photo-gone", Station::Hoop, until(Does::StitchBlock, 1),
        [&room = *stage.room, finder] {
            finder();
            room.camera().capture();
            room.camera().report(false, false);
        },
        unplug);
    states.add(
        "photo-refused", Station::Hoop, until(Does::StitchBlock, 1),
        [&room = *stage.room, finder, folder] {
            finder();
            const QString path = folder->filePath(QStringLiteral("no-picture.jpg"));
            QFile file(path);
            if (file.open(QIODevice::WriteOnly))
                file.write("this is no picture");
            file.close();
            room.camera().capture();
            room.camera().saved(path);
            settle(300);
        },
        unplug);
    const auto pictured = [&room = *stage.room, folder] {
        int number = 0;
        for (const char *block : {"A1", "A2", "A3"}) {
            BlockLog &log = room.log();
            log.setBlock(QString::fromLatin1(block));
            room.camera().report(true, true);
            for (const int face : {0, 1}) {
                log.setFace(face);
                room.camera().capture();
                room.camera().saved(photographed(folder->path(), ++number));
                settle(400);
            }
            if (number == 4) {
                log.toggleFlag(QStringLiteral("pleat"));
                log.setWords(QStringLiteral("new spool of thread"));
            }
            (void)log.save();
            settle(60);
        }
        room.camera().report(false, false);
    };
    states.add(
        "gallery-pictured", Station::Hoop, until(Does::StitchBlock, 3),
        [stage, pictured] {
            pictured();
            stage.side("hoop-page", "gallery")();
            settle(200);
        },
        unplug);
    states.add(
        "history", Station::Hoop, until(Does::StitchBlock, 3),
        [stage, pictured] {
            pictured();
            stage.side("hoop-page", "gallery")();
            settle(100);
            if (QQuickItem *grid = stage.item("grid"))
                grid->parentItem()->setProperty("open", QStringLiteral("A2"));
            settle(200);
        },
        unplug);
}

} // namespace matside
