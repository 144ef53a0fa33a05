// SPDX-License-Identifier: MIT
#include "stage.h"

#include "app/figures.h"
#include "app/stripscut.h"
#include "project/codec.h"
#include "share/unpacking.h"

#include <QFile>

#include <functional>

using namespace matside;

struct Stage::Saved {
    Project project;
    Plan plan;
    std::vector<Step> steps;
};

Stage::Stage(QObject *parent) : QObject(parent)
{
    auto store = openStore(m_folder.path());
    if (store)
        m_room = std::make_unique<Room>(std::move(store).value(), 5.87);
    if (!m_room)
        return;
    // What is written goes to a folder of its own, never to the documents of whoever runs this.
    m_room->fit().files()->setDocuments(m_papers.path());
    m_room->sharing().setDocuments(m_papers.path());
    m_room->backups().setDocuments(m_papers.path());
}

Stage::~Stage() = default;

namespace {

void stitchAll(Project &project)
{
    const std::int64_t full = std::max<std::int64_t>(1, plan(project).strip.perStrip);
    for (std::int64_t i = 0; i < project.blocks.columns * project.blocks.rows; ++i) {
        MadeBlock block;
        block.block = std::string(1, static_cast<char>('A' + i / project.blocks.columns)) +
                      std::to_string(i % project.blocks.columns + 1);
        block.strip = i / full + 1;
        block.place = i % full + 1;
        project.made.blocks.push_back(block);
    }
    const auto all = static_cast<std::int64_t>(project.made.blocks.size());
    project.made.cut.push_back({"", "press-block", all, 0, {}});
}

} // namespace

bool Stage::begin(int station, bool trial)
{
    QFile file(QStringLiteral(TEST_DATA_DIR "/project-example.json"));
    if (!file.open(QIODevice::ReadOnly))
        return false;
    const auto read = readProject(file.readAll().toStdString());
    if (!read.ok())
        return false;
    Project project = read.value().project;
    project.made = Made();
    project.made.trialPutOff = !trial;
    // A strip comes apart only when its blocks are stitched and pressed.
    if (station == static_cast<int>(Station::Trim))
        stitchAll(project);
    project = station == static_cast<int>(Station::Edge)
                  ? desk::withAllButTheEdge(std::move(project))
                  : desk::withCutFor(static_cast<Station>(station), std::move(project));
    const auto id = m_room->workspace().store().create(QString::fromStdString(writeProject(project)));
    if (!id)
        return false;
    m_room->session().openProject(id.value());
    m_room->session().setStation(station);
    return m_room->session().view() == QStringLiteral("station");
}

void Stage::startAgain()
{
    m_room->steps().askAboutLast();
}

bool Stage::forgetTheHoop()
{
    Project project = m_room->workspace().project();
    project.hoop.outside.reset();
    project.hoop.field.reset();
    project.hoop.opening.reset();
    return m_room->workspace().commit("edit", project) && !m_room->workspace().plan().problems.empty();
}

bool Stage::stitchBlocks()
{
    Project project = m_room->workspace().project();
    stitchAll(project);
    return m_room->workspace().commit("edit", project);
}

bool Stage::leaveUncut(const QString &kind)
{
    Project project = m_room->workspace().project();
    std::erase_if(project.made.cut,
                  [&](const MadeCut &cut) { return cut.does.starts_with(kind.toStdString()); });
    return m_room->workspace().commit("edit", project);
}

namespace {

/// The project in a store with something changed.
bool change(Store &store, const QString &id, const std::function<void(Project &)> &change)
{
    const auto document = store.load(id);
    if (!document)
        return false;
    Project project = readProject(document.value().toStdString()).value().project;
    change(project);
    const Command command{{QStringLiteral("edit"), QStringLiteral("edit")},
                          document.value(),
                          QString::fromStdString(writeProject(project))};
    return store.applyEdit(id, command).ok();
}

bool send(const Store &store, const NoteBook &book, const QString &id, const QString &path)
{
    const auto parcel = gather(store, book, id);
    return parcel && writeShare(parcel.value(), book.folder(), path).ok();
}

} // namespace

bool Stage::workOnTwoTablets()
{
    const QTemporaryDir folder;
    Store &mine = m_room->workspace().store();
    const QString id = m_room->workspace().id();
    const auto cutStrips = [](std::int64_t count) {
        return [count](Project &project) {
            project.made.cut = {{project.cloths[0].id, "cut-strip", count, 0, {}}};
        };
    };
    const QString over = folder.filePath(QStringLiteral("over.matside"));
    if (!change(mine, id, cutStrips(1)) || !send(mine, NoteBook(mine), id, over))
        return false;
    auto other = openStore(folder.filePath(QStringLiteral("other")));
    const auto inside = lookInside(over);
    if (!other || !inside)
        return false;
    Store &theirs = *other.value();
    NoteBook book(theirs);
    if (!book.bringIn(id, inside.value().parcel.document, {}))
        return false;
    const bool there = change(theirs, id, [&](Project &project) {
        cutStrips(3)(project);
        project.seam = Length::inches(0, 5, 8);
        project.name = "Runner of two";
    });
    const bool here = change(mine, id, [&](Project &project) {
        cutStrips(2)(project);
        project.seam = Length::inches(0, 3, 8);
    });
    m_room->workspace().open(id);
    return there && here && send(theirs, book, id, m_papers.filePath(QStringLiteral("Other tablet.matside")));
}

QString Stage::seam() const
{
    const Saved now = saved();
    return QString::fromStdString(text(show(now.project.seam, now.project.marks(), Round::Fine)));
}

Stage::Saved Stage::saved() const
{
    Saved saved;
    const auto document = m_room->workspace().store().load(m_room->workspace().id());
    if (!document)
        return saved;
    saved.project = readProject(document.value().toStdString()).value().project;
    saved.plan = plan(saved.project);
    saved.steps = steps(saved.project, saved.plan);
    return saved;
}

int Stage::done(int station) const
{
    std::int64_t all = 0;
    for (const Step &step : saved().steps)
        all += static_cast<int>(step.station) == station ? step.done : 0;
    return static_cast<int>(all);
}

QString Stage::figureDue(int station) const
{
    const Saved held = saved();
    for (const Step &step : held.steps)
        if (static_cast<int>(step.station) == station && step.done < step.count) {
            if (FigureView figure = planFigure(held.project, held.plan, step.figure); figure.valid)
                return figure.text;
            return step.size ? figureOf(step.size->across, held.project.marks()).text : QString();
        }
    return {};
}

QString Stage::finishedAlong() const
{
    const Saved held = saved();
    return figureOf(held.plan.size.finished.along, held.project.marks()).text;
}

int Stage::columns() const
{
    return static_cast<int>(saved().project.blocks.columns);
}
