// SPDX-License-Identifier: MIT
#include "program.h"

#include "main/scenes.h"
#include "project/codec.h"

#include "testing.h"
#include <QFile>
#include <QQmlComponent>
#include <QQuickWindow>

namespace touching {

using namespace matside;

std::int64_t Papers::doneOf(const std::string &id) const
{
    for (const Step &step : steps)
        if (step.id == id)
            return step.done;
    return -1;
}

std::int64_t Papers::doneInAll() const
{
    std::int64_t all = 0;
    for (const Step &step : steps)
        all += step.done;
    return all;
}

Papers papersIn(const Store &store, const QString &id)
{
    Papers papers;
    const auto document = store.load(id);
    if (!document)
        return papers;
    const auto read = readProject(document.value().toStdString());
    if (!read.ok())
        return papers;
    papers.project = read.value().project;
    papers.plan = plan(papers.project);
    papers.steps = steps(papers.project, papers.plan);
    papers.next = matside::nextStep(papers.steps);
    return papers;
}

bool Program::open(const QString &folder, QSize size)
{
    auto store = openStore(folder);
    if (!store || !store.value()->canWrite())
        return false;
    m_room = std::make_unique<Room>(std::move(store).value(), pxPerMm);
    m_room->session().resume();
    m_room->steps().askAboutLast();
    if (!m_room->show())
        return false;
    m_window = qobject_cast<QQuickWindow *>(m_room->engine().rootObjects().value(0));
    if (!m_window)
        return false;
    // Here fingers tap faster than hands; the pause itself is tested with the button.
    QQmlComponent hasty(&m_room->engine());
    hasty.setData("import QtQml\nimport Matside.Theme\nQtObject { Component.onCompleted: Theme.pause = 0 }",
                  QUrl());
    const std::unique_ptr<QObject> made(hasty.create());
    if (!made)
        return false;
    m_window->resize(size);
    return QTest::qWaitForWindowExposed(m_window) &&
           QTest::qWaitFor([&] { return m_window->size() == size; }, 5000);
}

bool Program::openExample(const QString &folder)
{
    QFile file(QStringLiteral(TEST_DATA_DIR "/project-example.json"));
    if (!file.open(QIODevice::ReadOnly))
        return false;
    {
        auto store = openStore(folder);
        if (!store)
            return false;
        const auto id = store.value()->create(QString::fromUtf8(file.readAll()));
        if (!id || !store.value()->setSetting(settings::openProject, id.value()))
            return false;
    }
    if (!open(folder, QSize(1280, 800)))
        return false;
    m_room->steps().answerResume(false);
    m_window->requestActivate();
    return QTest::qWaitForWindowActive(m_window);
}

void Program::at(Station station)
{
    m_room->session().setView(QStringLiteral("station"));
    m_room->session().setStation(static_cast<int>(station));
    settle(60);
}

void Program::close()
{
    m_window = nullptr;
    m_room.reset();
}

Papers Program::papers() const
{
    const Workspace &workspace = m_room->workspace();
    return papersIn(m_room->workspace().store(), workspace.id());
}

} // namespace touching
