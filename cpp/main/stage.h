// SPDX-License-Identifier: MIT
#pragma once

#include "main/scenes.h"

#include <array>
#include <memory>

namespace matside {

using Make = std::function<Project(const Project &)>;
using Opens = std::function<void()>;

/// The shelf: with what is on it, with nothing, and with all of it put away.
[[nodiscard]] std::vector<Scene> shelfScenes(Room &room, QQuickWindow &window);
/// The work done, without its trial, until a step of this kind is at hand; with `more` so many of it are
/// done.
[[nodiscard]] Project upTo(Project project, Does wanted, std::int64_t more = 0);
[[nodiscard]] Make until(Does wanted, std::int64_t more = 0);
/// Everything there is to cut is cut, for the trial too where one is to be made; nothing is sewn.
[[nodiscard]] Project withAllCut(Project project);
/// What a step of this kind takes is cut and made, the trial put off. How many changes that was.
int makeUntil(Room &room, Does wanted);
/// All there is to cut is cut, for a trial too, which is still to be made.
int cutAll(Room &room);
/// What is at hand at Join and Edge could not be done before what it takes is cut and made.
int makeFor(Room &room, Station station);
/// Changes made to show a scene are taken back on leaving it.
void takeBack(Room &room, int &changes);
/// So many sixteenths of an inch or millimetres, whichever the maker's ruler has.
[[nodiscard]] Length marks(const Project &project, std::int64_t number);

/// Where a state is shown; both outlive every scene.
struct Stage {
    Room *room;
    QQuickWindow *window;

    [[nodiscard]] QQuickItem *item(const char *name) const
    {
        return visibleItem(*window, QLatin1String(name));
    }
    /// A page beside the work of a wide station.
    [[nodiscard]] Opens side(const char *page, const char *name) const
    {
        return [stage = *this, page, name] {
            if (QQuickItem *found = stage.item(page))
                QMetaObject::invokeMethod(found, "openSide", Q_ARG(QString, QString::fromLatin1(name)));
        };
    }
    /// The answers to what went wrong; null while they are not open.
    [[nodiscard]] QQuickItem *wrongSheet() const;
    /// What went wrong, asked; with a `kind`, answered.
    [[nodiscard]] Opens wrong(const char *kind) const;
    void show(Station station) const { room->session().setStation(static_cast<int>(station)); }
};

class States {
public:
    explicit States(Stage stage) : m_stage(stage) {}

    void add(const char *name, Station station, Make make, Opens opens = {}, Opens closes = {})
    {
        const auto before = std::make_shared<QString>();
        m_all.push_back({QString::fromLatin1(name), false,
                         [stage = m_stage, before, station, make = std::move(make),
                          opens = std::move(opens)] { open(stage, *before, station, make, opens); },
                         [stage = m_stage, before, closes = std::move(closes)] {
                             if (closes)
                                 closes();
                             leave(stage, *before);
                         }});
    }
    [[nodiscard]] Opens side(const char *page, const char *name) const { return m_stage.side(page, name); }
    [[nodiscard]] Stage stage() const { return m_stage; }
    [[nodiscard]] std::vector<Scene> take() { return std::move(m_all); }

private:
    static void open(const Stage &stage, QString &before, Station station, const Make &make,
                     const Opens &opens);
    static void leave(const Stage &stage, const QString &before);

    Stage m_stage;
    std::vector<Scene> m_all;
};

void hoopStates(States &states);
void logStates(States &states);
void trimStates(States &states);
void joinStates(States &states);
void fitStates(States &states);
void edgeStates(States &states);

} // namespace matside
