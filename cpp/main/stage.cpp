// SPDX-License-Identifier: MIT
#include "main/stage.h"

#include "bench/record.h"
#include "main/states.h"

namespace matside {

namespace {

Scene shelfScene(Room &room)
{
    return {QStringLiteral("shelf"), true, [&room] { room.session().setView(QStringLiteral("shelf")); }};
}

/// The shelf as it is before anything lies on it.
Scene firstScene(Room &room)
{
    const auto look = [&room] {
        room.session().setView(QStringLiteral("settings"));
        room.session().setView(QStringLiteral("shelf"));
    };
    return {QStringLiteral("first"), false,
            [&room, look] {
                (void)room.workspace().store().throwAway(room.workspace().id());
                look();
            },
            [&room, look] {
                (void)room.workspace().store().undoShelf();
                look();
            }};
}

/// All that was on the shelf put away; and as it hangs there once it is shown.
Scene putAwayScene(Room &room, QQuickWindow &window, const char *name, bool shown)
{
    const auto turn = [&room](bool away) {
        Store &store = room.workspace().store();
        (void)(away ? store.putAway(room.workspace().id()) : store.bringBack(room.workspace().id()));
        room.session().setView(QStringLiteral("settings"));
        room.session().setView(QStringLiteral("shelf"));
    };
    return {QString::fromLatin1(name), false,
            [&window, turn, shown] {
                turn(true);
                settle(40);
                if (QQuickItem *way = shown ? visibleItem(window, QStringLiteral("demo")) : nullptr)
                    QMetaObject::invokeMethod(way, "clicked");
            },
            [turn] { turn(false); }};
}

/// The place at the mat, with nothing in hand or with the first of what is called so.
Scene settingsScene(Room &room, QQuickWindow &window, const char *name, const char *thing)
{
    return {QString::fromLatin1(name), false, [&room, &window, thing] {
                room.session().setView(QStringLiteral("settings"));
                settle(40);
                if (QQuickItem *page = visibleItem(window, QStringLiteral("settings-page")))
                    QMetaObject::invokeMethod(page, "take", Q_ARG(QString, QLatin1String(thing)));
            }};
}

} // namespace

std::vector<Scene> shelfScenes(Room &room, QQuickWindow &window)
{
    return {shelfScene(room),
            firstScene(room),
            putAwayScene(room, window, "put-away", false),
            putAwayScene(room, window, "put-away-shown", true),
            settingsScene(room, window, "settings", ""),
            settingsScene(room, window, "settings-language", "language"),
            settingsScene(room, window, "settings-light", "light"),
            settingsScene(room, window, "settings-card", "card"),
            settingsScene(room, window, "settings-pedal", "pedal")};
}

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

Project withAllCut(Project project)
{
    const Plan made = plan(project);
    for (const Step &step : steps(project, made))
        if (step.station == Station::Cut && step.done < step.count)
            countUp(project, step, step.count - step.done, 0);
    return project;
}

int makeUntil(Room &room, Does wanted)
{
    return room.workspace().commit("done", upTo(room.workspace().project(), wanted)) ? 1 : 0;
}

int cutAll(Room &room)
{
    return room.workspace().commit("done", withAllCut(room.workspace().project())) ? 1 : 0;
}

int makeFor(Room &room, Station station)
{
    return station == Station::Join   ? cutAll(room)
           : station == Station::Edge ? makeUntil(room, Does::SquarePiece)
                                      : 0;
}

void takeBack(Room &room, int &changes)
{
    for (; changes > 0; --changes)
        (void)room.workspace().undo();
}

Make until(Does wanted, std::int64_t more)
{
    return [=](const Project &project) { return upTo(project, wanted, more); };
}

Length marks(const Project &project, std::int64_t number)
{
    return project.finest * number;
}

QQuickItem *Stage::wrongSheet() const
{
    const QQuickItem *place = anyItem(*window, QStringLiteral("sheet-wrong"));
    return place ? place->property("item").value<QQuickItem *>() : nullptr;
}

Opens Stage::wrong(const char *kind) const
{
    return [stage = *this, kind] {
        QQuickItem *column = anyItem(*stage.window, QStringLiteral("sheets"));
        if (!column)
            return;
        QMetaObject::invokeMethod(column, "openWrong");
        if (*kind != 0)
            (void)stage.room->steps().wrong(QString::fromLatin1(kind));
        if (QQuickItem *sheet = *kind != 0 ? stage.wrongSheet() : nullptr)
            sheet->setProperty("answered", true);
    };
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
    fitStates(states);
    edgeStates(states);
    return states.take();
}

} // namespace matside
