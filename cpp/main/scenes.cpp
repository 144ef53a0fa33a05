// SPDX-License-Identifier: MIT
#include "main/scenes.h"

#include "main/stage.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <QTimer>

#include <cmath>
#include <memory>

namespace matside {

namespace {

QQuickItem *visibleBelow(QQuickItem &item, const QString &name)
{
    if (!item.isVisible())
        return nullptr;
    if (item.objectName() == name)
        return &item;
    for (QQuickItem *child : item.childItems())
        if (QQuickItem *found = visibleBelow(*child, name))
            return found;
    return nullptr;
}

QQuickItem *below(QQuickItem &item, const QString &name)
{
    if (item.objectName() == name)
        return &item;
    for (QQuickItem *child : item.childItems())
        if (QQuickItem *found = below(*child, name))
            return found;
    return nullptr;
}

/// The first step of the Cut station that has a figure, in hand.
void toAFigure(Room &room)
{
    for (int row = 0; row < room.steps().steps()->count(); ++row) {
        room.steps().goTo(row);
        if (room.steps().figure().valid)
            return;
    }
}

/// The first step of the station that does this, in hand.
void toAStep(Room &room, const char *does)
{
    for (int row = 0; row < room.steps().steps()->count(); ++row) {
        room.steps().goTo(row);
        if (room.steps().doing() == QLatin1String(does))
            return;
    }
}

/// The trimming of the Trim station in hand, that many of the block's sides cut.
void toASide(Room &room, int cut)
{
    toAStep(room, "trim-block");
    for (int side = 0; side < cut; ++side)
        room.trim().cut();
}

/// The trial put off and the blocks of the first strip stitched and pressed, the first of them a little of a
/// diamond; a piece that has blocks already stays as it is. How many changes that were, to be taken back.
int stitchAStrip(Room &room)
{
    Project next = room.workspace().project();
    if (!next.made.blocks.empty())
        return 0;
    const Pair outline = room.workspace().plan().block.outline;
    next.made.trialPutOff = true;
    for (int place = 1; place <= 4; ++place) {
        MadeBlock block;
        block.block = "A" + std::to_string(place);
        block.strip = 1;
        block.place = place;
        block.outline = {outline.along, outline.across};
        next.made.blocks.push_back(block);
    }
    next.made.cut.push_back({"", "press-block", 4, 0, {}});
    const double along = outline.along.asMm();
    const double across = outline.across.asMm();
    const Length diagonal = Length::mmTenths(std::lround(10 * std::sqrt(along * along + across * across)));
    MadeBlock &leans = next.made.blocks.front();
    leans.sides = {outline.along, outline.across, outline.along, outline.across};
    leans.diagonals = {diagonal + Length::mmTenths(24), diagonal - Length::mmTenths(24)};
    return room.workspace().commit("done", next) ? 1 : 0;
}

/// The sheets of the page at hand.
QQuickItem *over(QQuickWindow &window)
{
    settle(40);
    return visibleItem(window, QStringLiteral("sheets"));
}

void openWorking(QQuickWindow &window, const QString &key)
{
    if (QQuickItem *sheets = over(window))
        QMetaObject::invokeMethod(sheets, "work", Q_ARG(QString, key));
}

void openWrong(QQuickWindow &window)
{
    if (QQuickItem *sheets = over(window))
        QMetaObject::invokeMethod(sheets, "openWrong");
}

void openNotes(QQuickWindow &window)
{
    if (QQuickItem *sheets = over(window))
        sheets->setProperty("shows", QStringLiteral("notes"));
}

/// A page beside the work of a wide station.
void openSide(QQuickWindow &window, const QString &station, const char *side)
{
    settle(40);
    if (QQuickItem *page = visibleItem(window, station + QStringLiteral("-page")))
        QMetaObject::invokeMethod(page, "openSide", Q_ARG(QString, QString::fromLatin1(side)));
}

void openKeypad(QQuickWindow &window, const FigureView &figure)
{
    if (QQuickItem *sheets = over(window))
        QMetaObject::invokeMethod(sheets, "enter", Q_ARG(QString, QString()),
                                  Q_ARG(QString, Session::tr("How much of it is left?")),
                                  Q_ARG(QString, figure.whole));
}

/// The layouts that would fit, the first of them on the table; or what is wanted of them.
void openLayouts(Room &room, QQuickWindow &window, bool wishes)
{
    settle(40);
    QQuickItem *page = visibleItem(window, QStringLiteral("fit-page"));
    if (!page)
        return;
    QMetaObject::invokeMethod(page, "openLayouts");
    settle(40);
    if (QQuickItem *layouts = wishes ? visibleItem(window, QStringLiteral("layouts")) : nullptr)
        layouts->setProperty("wishing", true);
    else
        room.wouldFit().choose(1);
}

/// The same for a set of mats.
void openMats(Room &room, QQuickWindow &window, bool wishes)
{
    openLayouts(room, window, wishes);
    room.wouldFit().pick(QStringLiteral("set"), true);
    if (!wishes)
        room.wouldFit().choose(0);
}

/// A group under the shopping list, or the list to take.
void openAtShop(QQuickWindow &window, const char *what)
{
    settle(40);
    QQuickItem *page = visibleItem(window, QStringLiteral("shop-page"));
    if (!page)
        return;
    if (what == std::string_view("take")) {
        page->setProperty("taking", true);
        return;
    }
    QMetaObject::invokeMethod(page, "toTheFoot");
    settle(40);
    QMetaObject::invokeMethod(page, "show", Q_ARG(QString, QString::fromLatin1(what)));
    settle(40);
    QMetaObject::invokeMethod(page, "toTheHead");
}

/// Light and dark of the cloths; a cloth's own sheet; or the way to a photograph of it.
void openShade(Room &room, QQuickWindow &window, const char *cloth, const char *over)
{
    settle(40);
    QQuickItem *page = visibleItem(window, QStringLiteral("shop-page"));
    if (!page)
        return;
    page->setProperty("shading", true);
    settle(40);
    if (*cloth == 0)
        return;
    room.clothColour().setCloth(QString::fromLatin1(cloth));
    settle(40);
    if (QQuickItem *sheet = visibleItem(window, QStringLiteral("shade-cloth")))
        sheet->setProperty("over", QString::fromLatin1(over));
}

/// The log of the first block, with what lies over it.
void openLog(QQuickWindow &window, const char *over)
{
    settle(40);
    if (QQuickItem *page = visibleItem(window, QStringLiteral("hoop-page")))
        QMetaObject::invokeMethod(page, "logBlock", Q_ARG(QString, QStringLiteral("A1")));
    if (QQuickItem *log = visibleItem(window, QStringLiteral("sheet-log")))
        log->setProperty("over", QString::fromLatin1(over));
    settle(40);
}

/// What the pictures of a station are called, in any language.
QString nameOf(int station)
{
    constexpr const char *names[] = {"fit", "shop", "cut", "hoop", "trim", "join", "edge"};
    return QString::fromLatin1(names[station]);
}

Scene stationScene(Room &room, int station)
{
    const bool handed = station == static_cast<int>(Station::Fit) ||
                        station == static_cast<int>(Station::Cut) ||
                        station == static_cast<int>(Station::Edge);
    const auto changes = std::make_shared<int>(0);
    return {nameOf(station), handed,
            [&room, station, changes] {
                *changes = makeFor(room, static_cast<Station>(station));
                room.session().setView(QStringLiteral("station"));
                room.session().setStation(station);
            },
            [&room, changes] { takeBack(room, *changes); }};
}

} // namespace

QQuickWindow *windowOf(Room &room)
{
    return qobject_cast<QQuickWindow *>(room.engine().rootObjects().value(0));
}

void settle(int ms)
{
    // A loop of its own, as the program runs in: outside any loop Qt never deletes what is to be deleted
    // later, and every page that was left would stay in memory.
    QEventLoop loop;
    QTimer timer;
    timer.setSingleShot(true);
    QObject::connect(&timer, &QTimer::timeout, &loop, &QEventLoop::quit);
    timer.start(ms);
    loop.exec();
}

QQuickItem *visibleItem(QQuickWindow &window, const QString &name)
{
    return visibleBelow(*window.contentItem(), name);
}

QQuickItem *anyItem(QQuickWindow &window, const QString &name)
{
    return below(*window.contentItem(), name);
}

std::vector<Scene> scenesOf(Room &room, QQuickWindow &window)
{
    std::vector<Scene> scenes = shelfScenes(room, window);
    for (int station = 0; station <= static_cast<int>(Station::Edge); ++station)
        scenes.push_back(stationScene(room, station));
    // Going to another station closes whatever lies over the work.
    const auto at = [&](const QString &name, Station station, std::function<void()> opens) {
        scenes.push_back({name, false,
                          [&room, station, opens = std::move(opens)] {
                              room.session().setView(QStringLiteral("station"));
                              room.session().setStation(static_cast<int>(station));
                              opens();
                          },
                          [&room, station] {
                              const Station away = station == Station::Fit ? Station::Shop : Station::Fit;
                              room.session().setStation(static_cast<int>(away));
                          }});
    };
    const auto log = [&](const char *name, const char *over) {
        at(QString::fromLatin1(name), Station::Hoop, [&window, over] { openLog(window, over); });
    };
    log("log", "");
    log("photo", "photo");
    log("flags", "flags");
    // What is seen only once something is made: it is made for the scene, and taken back again.
    const auto made = [&](const QString &name, Station station, const std::function<int(Room &)> &make,
                          const std::function<void()> &opens) {
        const auto changes = std::make_shared<int>(0);
        at(name, station, [&room, station, make, opens, changes] {
            *changes = make(room);
            room.session().setStation(static_cast<int>(station));
            opens();
        });
        scenes.back().leave = [&room, leaves = scenes.back().leave, changes] {
            leaves();
            takeBack(room, *changes);
        };
    };
    const auto until = [](Does wanted) { return [wanted](Room &in) { return makeUntil(in, wanted); }; };
    const auto side = [&window](Station station, const char *what) {
        return [&window, name = nameOf(static_cast<int>(station)), what] { openSide(window, name, what); };
    };
    const auto sideName = [](Station station, const char *what) {
        return nameOf(static_cast<int>(station)) + QLatin1Char('-') + QLatin1String(what);
    };
    made(QStringLiteral("gallery"), Station::Hoop, stitchAStrip, side(Station::Hoop, "gallery"));
    made(sideName(Station::Join, "test"), Station::Join, cutAll, side(Station::Join, "test"));
    made(QStringLiteral("join-short"), Station::Join, until(Does::JoinShort),
         [&room] { toAStep(room, "join-short"); });
    made(QStringLiteral("join-rows"), Station::Join, until(Does::JoinLongRow),
         [&room] { toAStep(room, "join-long-row"); });
    for (const char *what : {"map", "gauge", "ways"})
        made(sideName(Station::Join, what), Station::Join, until(Does::JoinShort),
             [&room, opens = side(Station::Join, what)] {
                 toAStep(room, "join-short");
                 opens();
             });
    for (const char *what : {"measure", "joins", "section"})
        made(sideName(Station::Edge, what), Station::Edge, until(Does::SquarePiece),
             side(Station::Edge, what));
    // The corners are chosen before the binding is cut.
    for (const char *what : {"corners", "care"})
        at(sideName(Station::Edge, what), Station::Edge, side(Station::Edge, what));
    // What stands on the button while something is to be done elsewhere first.
    at(QStringLiteral("join-waits"), Station::Join, [] {});
    at(QStringLiteral("edge-waits"), Station::Edge, [] {});
    // Two sides are cut to show the third, and taken back again.
    at(QStringLiteral("trim-side"), Station::Trim, [&room] { toASide(room, 0); });
    at(QStringLiteral("trim-third"), Station::Trim, [&room] { toASide(room, 2); });
    scenes.back().leave = [&room, leaves = scenes.back().leave] {
        while (room.trim().side() > 1)
            (void)room.workspace().undo();
        leaves();
    };
    made(QStringLiteral("measure"), Station::Trim, stitchAStrip, [&room, &window] {
        toASide(room, 0);
        if (QQuickItem *lies = over(window))
            lies->setProperty("shows", QStringLiteral("measure"));
    });
    for (const char *what : {"price", "kits", "stock", "batting", "take"})
        at(QString::fromLatin1(what), Station::Shop, [&window, what] { openAtShop(window, what); });
    // With her hours counted, a class to teach, and a package and a remnant at hand.
    at(QStringLiteral("price-hours"), Station::Shop, [&room, &window] {
        for (const auto &[key, steps] : {std::pair{"rate", 36}, {"margin", 10}, {"sundries", 6}})
            room.price().nudge(QLatin1String(key), steps);
        openAtShop(window, "price");
    });
    scenes.back().leave = [&room, leaves = scenes.back().leave] {
        for (const auto &[key, steps] : {std::pair{"rate", -36}, {"margin", -10}, {"sundries", -6}})
            room.price().nudge(QLatin1String(key), steps);
        leaves();
    };
    const auto changed = [&](const char *name, const char *what, const std::function<void()> &changes) {
        at(QString::fromLatin1(name), Station::Shop, [&window, what, changes] {
            openAtShop(window, what);
            changes();
            openAtShop(window, what);
        });
        scenes.back().leave = [&room, leaves = scenes.back().leave] {
            (void)room.workspace().undo();
            leaves();
        };
    };
    changed("kits-class", "kits", [&room] { room.kits().nudge(QStringLiteral("students"), 11); });
    changed("kits-many", "kits", [&room] { room.kits().nudge(QStringLiteral("students"), 40); });
    changed("batting-package", "batting", [&room] { room.batting().add(); });
    changed("stock-remnant", "stock", [&room] { room.stock().add(); });
    const auto shade = [&](const char *name, const char *cloth, const char *over) {
        at(QString::fromLatin1(name), Station::Shop,
           [&room, &window, cloth, over] { openShade(room, window, cloth, over); });
    };
    shade("shade", "", "");
    shade("shade-cloth", "rust", "");
    shade("shade-photo", "rust", "photo");
    at(QStringLiteral("layouts"), Station::Fit, [&room, &window] { openLayouts(room, window, false); });
    at(QStringLiteral("wishes"), Station::Fit, [&room, &window] { openLayouts(room, window, true); });
    at(QStringLiteral("wishes-blocks"), Station::Fit, [&room, &window] {
        openLayouts(room, window, true);
        visibleItem(window, QStringLiteral("layouts"))->setProperty("about", QStringLiteral("blocks"));
    });
    for (const bool wishes : {false, true}) {
        at(wishes ? QStringLiteral("mats-wanted") : QStringLiteral("mats"), Station::Fit,
           [&room, &window, wishes] { openMats(room, window, wishes); });
        scenes.back().leave = [&room, leaves = scenes.back().leave] {
            room.wouldFit().pick(QStringLiteral("set"), false);
            leaves();
        };
    }
    const auto atCut = [&](const char *name, std::function<void()> opens) {
        at(QString::fromLatin1(name), Station::Cut, [&room, opens = std::move(opens)] {
            toAFigure(room);
            opens();
        });
    };
    atCut("figure", [] {});
    atCut("working", [&room, &window] { openWorking(window, room.steps().figure().key); });
    atCut("wrong", [&window] { openWrong(window); });
    atCut("notes", [&window] { openNotes(window); });
    atCut("keypad", [&room, &window] { openKeypad(window, room.steps().figure()); });
    return scenes;
}

} // namespace matside
