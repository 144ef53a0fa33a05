// SPDX-License-Identifier: MIT
#include "keeping.h"

#include "plainrows.h"
#include "planning.h"
#include "project/codec.h"
#include "store/photohelp.h"
#include "window.h"

#include <QTemporaryDir>

namespace measure {

using namespace matside;

namespace {

QString text(const Project &project)
{
    return QString::fromStdString(writeProject(project));
}

/// "A1": row letter from the top, column from the left.
QString nameOf(int row, int column)
{
    return QString(QChar('A' + row)) + QString::number(column + 1);
}

/// A piece that a table holds, with that many things made of it.
Project worn(const std::string &name, int events)
{
    Project project = freshProject(System::Inch);
    project.name = name;
    for (int i = 0; i < events; ++i) {
        MadeEvent event;
        event.event = "new-bobbin";
        event.count = i;
        project.made.events.push_back(event);
    }
    return project;
}

/// Goes round four stations four times; the first visit makes the page and is not counted.
bool changeStations(const QString &folder, Times &station)
{
    Stage stage({}, folder);
    if (!stage.stands())
        return false;
    for (int round = 0; round < 4; ++round)
        for (const Station to : {Station::Cut, Station::Hoop, Station::Shop, Station::Fit}) {
            int frames = 0;
            const auto counting = QObject::connect(&stage.window(), &QQuickWindow::frameSwapped,
                                                   &stage.window(), [&frames] { ++frames; });
            const auto asked = std::chrono::steady_clock::now();
            stage.room().session().setStation(static_cast<int>(to));
            while (frames == 0 && std::chrono::steady_clock::now() - asked < std::chrono::seconds(2))
                QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 20);
            if (round > 0)
                station.add(std::chrono::steady_clock::now() - asked);
            QObject::disconnect(counting);
            idle(50);
        }
    return true;
}

} // namespace

bool fillShelf(const QString &folder, const Crowd &crowd)
{
    auto store = openStore(folder);
    if (!store)
        return false;
    NoteBook book(*store.value());
    for (int number = 0; number < crowd.projects; ++number) {
        std::vector<Note> all;
        for (int i = 0; i < crowd.notes / crowd.projects; ++i)
            all.push_back(photohelp::noteOf(nameOf(i % 3, i / 3), {}));
        const QString document = text(worn("Piece " + std::to_string(number), crowd.events / crowd.projects));
        if (!book.bringIn({}, document, all))
            return false;
    }
    const auto last = store.value()->create(text(worn("The last", 100)));
    return last && store.value()->setSetting(settings::openProject, last.value());
}

std::optional<Logged> logBlocks(int count)
{
    QTemporaryDir folder;
    QTemporaryDir beside;
    auto store = openStore(folder.path());
    auto other = openStore(beside.path());
    if (!store || !other)
        return std::nullopt;
    Project project = largePiece();
    const auto id = store.value()->create(text(project));
    const auto there = other.value()->create(text(project));
    other.value().reset(); // its tables are written by plain sqlite3 from here on
    if (!id || !there)
        return std::nullopt;
    PlainRows rows(storeFile(beside.path()), there.value(), QString::fromStdString(project.name));
    if (!rows.open())
        return std::nullopt;
    NoteBook book(*store.value());
    Logged times;
    for (int number = 0; number < count; ++number) {
        const Note note = photohelp::noteOf(nameOf(number % 26, number / 26 % 30), {});
        const QString before = text(project);
        MadeBlock block;
        block.block = note.block.toStdString();
        project.made.blocks.push_back(block);
        const Command command{
            {QStringLiteral("edit"), QStringLiteral("log"), QStringLiteral("[]")}, before, text(project)};
        // Turn about, and first in turn: who flushes second finds a disk that was just flushed.
        for (const bool ours : {number % 2 == 0, number % 2 != 0}) {
            const auto begun = std::chrono::steady_clock::now();
            if (ours ? !book.log(id.value(), command, note) : !rows.write(command, note))
                return std::nullopt;
            (ours ? times.ours : times.plain).add(std::chrono::steady_clock::now() - begun);
        }
    }
    return times;
}

std::optional<Growth> grow(const QString &alone, const QString &crowded, int rounds)
{
    Growth times;
    for (int round = 0; round < rounds; ++round)
        if (!changeStations(alone, times.stationAlone) || !changeStations(crowded, times.stationCrowded))
            return std::nullopt;
    return times;
}

std::optional<Noted> logBeside(int notes)
{
    QTemporaryDir folder;
    auto store = openStore(folder.path());
    if (!store)
        return std::nullopt;
    NoteBook book(*store.value());
    Project project = freshProject(System::Inch);
    std::vector<Note> all;
    for (int i = 0; i < notes; ++i)
        all.push_back(photohelp::noteOf(nameOf(i % 26, i / 26 % 30), {}));
    const auto id = book.bringIn({}, text(project), all);
    if (!id)
        return std::nullopt;
    Noted noted{notes, {}, {}};
    for (int round = 0; round < 51; ++round) {
        const QString before = text(project);
        project.slack = Length::ticks(round + 1);
        const Command command{
            {QStringLiteral("edit"), QStringLiteral("log"), QStringLiteral("[]")}, before, text(project)};
        auto begun = std::chrono::steady_clock::now();
        if (!book.log(id.value(), command, photohelp::noteOf(nameOf(round % 26, 0), {})))
            return std::nullopt;
        noted.log.add(std::chrono::steady_clock::now() - begun);
        begun = std::chrono::steady_clock::now();
        if (!book.covers(id.value()))
            return std::nullopt;
        noted.look.add(std::chrono::steady_clock::now() - begun);
    }
    return noted;
}

bool fillGallery(const QString &folder, int blocks)
{
    auto store = openStore(folder);
    if (!store)
        return false;
    Project project = freshProject(System::Inch);
    project.name = "Gallery";
    project.table.reset();
    project.blocks.columns = 20;
    project.blocks.rows = (blocks + 19) / 20;
    const auto id = store.value()->create(text(project));
    if (!id || !store.value()->setSetting(settings::openProject, id.value()))
        return false;
    NoteBook book(*store.value());
    const QByteArray whole = photohelp::encoded(photohelp::picture(7, {4000, 3000}, true));
    for (int number = 0; number < blocks; ++number) {
        const QString before = text(project);
        project.slack = Length::ticks(number + 1);
        const auto photo = book.folder().keep(whole + QByteArray::number(number));
        if (!photo || !book.log(id.value(),
                                {{QStringLiteral("edit"), QStringLiteral("log"), QStringLiteral("[]")},
                                 before,
                                 text(project)},
                                photohelp::noteOf(nameOf(number / 20, number % 20), photo.value())))
            return false;
    }
    return true;
}

} // namespace measure
