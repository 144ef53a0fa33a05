// SPDX-License-Identifier: MIT
#include "program.h"

#include "project/codec.h"

#include <QQuickWindow>
#include <QtTest>

namespace touching {

using namespace matside;

std::int64_t Papers::doneOf(const std::string &id) const
{
    for (const Step &step : steps)
        if (step.id == id)
            return step.done;
    return -1;
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
    m_window->resize(size);
    return QTest::qWaitForWindowExposed(m_window) &&
           QTest::qWaitFor([&] { return m_window->size() == size; }, 5000);
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
