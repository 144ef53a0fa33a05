// SPDX-License-Identifier: MIT
#pragma once

#include "app/stepmodel.h"
#include "project/codec.h"
#include "stripscut.h"

#include <QTemporaryDir>

#include <memory>
#include <string>

/// What the tests of the stations' models stand on.
namespace desk {

using namespace matside;

/// Case 1 of the trade notes: 3 × 3 blocks of 6 in, hoop P, finished 21 in square; the trial put off.
inline Project topper()
{
    Project project = freshProject(System::Inch);
    project.name = "Topper";
    project.strip.usable = Length::inches(40, 1, 2);
    project.hoop.name = "P";
    project.hoop.field = Pair{Length::inches(7, 7, 8), Length::inches(7, 7, 8)};
    project.hoop.opening = Pair{Length::inches(8, 1, 2), Length::inches(8, 1, 2)};
    project.hoop.outside = Pair{Length::inches(9, 3, 4), Length::inches(9, 3, 4)};
    project.made.trialPutOff = true;
    return project;
}

/// A store, and the models every station stands on. Without a folder it has one of its own.
struct Open {
    explicit Open(const QString &folder = {})
        : store(std::move(openStore(folder.isEmpty() ? dir.path() : folder).value()))
    {
    }
    Open(const Project &project, Station station) : Open() { lay(project, station); }
    /// Puts a new project into the store and opens it at a station.
    void lay(const Project &project, Station station)
    {
        const Project ready = withCutFor(station, project);
        session.openProject(store->create(QString::fromStdString(writeProject(ready))).value());
        session.setStation(static_cast<int>(station));
    }
    /// What lies in the store, read anew.
    Project kept() const
    {
        return readProject(store->load(workspace.id()).value().toStdString()).value().project;
    }

    QTemporaryDir dir;
    std::unique_ptr<Store> store;
    Workspace workspace{*store};
    Session session{workspace};
    StepModel steps{workspace, session};
};

} // namespace desk
