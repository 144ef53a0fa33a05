// SPDX-License-Identifier: MIT
#include "stage.h"

#include "app/figures.h"
#include "project/codec.h"

#include <QFile>

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
    // A strip comes apart only when its blocks are stitched.
    if (station == static_cast<int>(Station::Trim))
        stitchAll(project);
    const auto id = m_room->workspace().store().create(QString::fromStdString(writeProject(project)));
    if (!id)
        return false;
    m_room->session().openProject(id.value());
    m_room->session().setStation(station);
    return m_room->session().view() == QStringLiteral("station");
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
