// SPDX-License-Identifier: MIT
#include "main/stage.h"

#include "bench/record.h"
#include "main/states.h"

namespace matside {

Project upTo(Project project, Does wanted, std::int64_t more)
{
    project.made.trialPutOff = true;
    constexpr int mostSteps = 3000;
    for (int guard = 0; guard < mostSteps; ++guard) {
        const Plan made = plan(project);
        const std::vector<Step> all = steps(project, made);
        const auto next = nextStep(all);
        if (!next || (all[*next].does == wanted && all[*next].done >= more))
            break;
        project = withDone(project, made, all[*next]);
    }
    return project;
}

Make until(Does wanted, std::int64_t more)
{
    return [=](const Project &project) { return upTo(project, wanted, more); };
}

Length marks(const Project &project, std::int64_t number)
{
    return project.finest * number;
}

void States::open(const Stage &stage, QString &before, Station station, const Make &make, const Opens &opens)
{
    Workspace &workspace = stage.room->workspace();
    before = workspace.document();
    (void)workspace.commit("edit", make(workspace.project()));
    stage.room->session().setView(QStringLiteral("station"));
    stage.show(Station::Fit); // closes whatever lies over the work
    stage.show(station);
    stage.room->steps().answerResume(false);
    settle(40);
    if (opens)
        opens();
}
void States::leave(const Stage &stage, const QString &before)
{
    stage.show(Station::Shop);
    constexpr int mostChanges = 30;
    for (int undone = 0; undone < mostChanges; ++undone)
        if (stage.room->workspace().document() == before || !stage.room->workspace().undo())
            break;
}

std::vector<Scene> statesOf(Room &room, QQuickWindow &window)
{
    States states({&room, &window});
    hoopStates(states);
    logStates(states);
    trimStates(states);
    joinStates(states);
    edgeStates(states);
    return states.take();
}

} // namespace matside
