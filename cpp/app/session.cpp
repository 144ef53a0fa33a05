// SPDX-License-Identifier: MIT
#include "app/session.h"

#include "app/undowords.h"
#include "app/wording.h"

#include <algorithm>
#include <array>

namespace matside {

namespace {
constexpr SettingKey<bool> leftKey{"left-handed"};
constexpr SettingKey<bool> pedalKey{"pedal"};
constexpr SettingKey<bool> pedalToldKey{"pedal-told"};
constexpr SettingKey<bool> stillKey{"reduced-motion"};
constexpr SettingKey<std::int64_t> stationKey{"station-number"};
constexpr int lastStation = static_cast<int>(Station::Edge);

template <class T> std::optional<T> held(const Store &store, SettingKey<T> key)
{
    const auto value = store.setting(key);
    return value ? value.value() : std::optional<T>();
}

/// She is done with it for now: it is not what she left off at.
bool wasPutAway(const Store &store, const QString &project)
{
    const auto rows = store.projects(true);
    return rows && std::any_of(rows.value().begin(), rows.value().end(),
                               [&](const ProjectRow &row) { return row.id == project && row.putAway; });
}
} // namespace

Session::Session(Workspace &workspace) : m_workspace(workspace)
{
    m_left = held(m_workspace.store(), leftKey).value_or(false);
    m_pedalTold = held(m_workspace.store(), pedalToldKey).value_or(false);
    m_pedal = held(m_workspace.store(), pedalKey).value_or(true);
    connect(&m_workspace, &Workspace::changed, this, [this] {
        // A drag saves nothing until its end and renames nothing: what undo takes back is asked of the
        // store only then.
        if (m_workspace.previewing())
            return;
        emit projectChanged();
        emit undoChanged();
    });
    connect(&m_workspace, &Workspace::failed, this, &Session::tell);
    switch (m_workspace.store().access()) {
    case Access::Full:
        break;
    case Access::SecondInstance:
        m_notice = tr("Matside is open elsewhere: here you can look, but not change.");
        break;
    case Access::ReadOnlyFolder:
        m_notice = tr("The folder cannot be written: you can look, but not change.");
        break;
    case Access::Damaged:
        m_notice = tr("The file of projects is damaged. What can be read is shown; nothing is written.");
        break;
    }
}

void Session::resume()
{
    const auto project = held(m_workspace.store(), settings::openProject);
    if (!project || project->isEmpty() || wasPutAway(m_workspace.store(), *project) ||
        !m_workspace.open(*project))
        return;
    m_station = static_cast<int>(held(m_workspace.store(), stationKey).value_or(0));
    m_view = QStringLiteral("station");
    emit stationChanged();
    emit viewChanged();
}

void Session::setStation(int station)
{
    if (station < 0 || station > lastStation || station == m_station)
        return;
    (void)m_workspace.settle("drag");
    m_station = station;
    if (!readOnly())
        (void)m_workspace.store().setSetting(stationKey, static_cast<std::int64_t>(station));
    emit stationChanged();
}

void Session::setView(const QString &view)
{
    if (view == m_view)
        return;
    m_view = view;
    emit viewChanged();
    emit undoChanged();
}

QString Session::projectName() const
{
    return m_workspace.isOpen() ? toQt(m_workspace.project().name) : QString();
}

void Session::setPedal(bool turns)
{
    if (turns == m_pedal)
        return;
    m_pedal = turns;
    if (!readOnly())
        (void)m_workspace.store().setSetting(pedalKey, turns);
    emit pedalChanged();
}

void Session::setHelper(bool shown)
{
    if (shown == m_helper)
        return;
    m_helper = shown;
    emit helperChanged();
}

void Session::setLeftHanded(bool left)
{
    if (left == m_left)
        return;
    m_left = left;
    if (!readOnly())
        (void)m_workspace.store().setSetting(leftKey, left);
    emit handChanged();
}

std::optional<Reversible> Session::next() const
{
    const Store &store = m_workspace.store();
    const bool atWork = m_view == QStringLiteral("station");
    const auto found = atWork ? store.undoable(m_workspace.id()) : store.undoableShelf();
    if (!found || !found.value() || atWork)
        return found ? found.value() : std::optional<Reversible>();
    // A piece that was worked on since it was made goes only by being held, never by one tap on undo.
    constexpr std::array making{"create", "demo", "make-again", "metric-copy", "bring-in"};
    const bool made = std::any_of(making.begin(), making.end(), [&](const char *kind) {
        return found.value()->label.kind == QLatin1String(kind);
    });
    if (!made)
        return found.value();
    const auto worked = store.undoable(found.value()->project);
    return worked && worked.value() ? std::optional<Reversible>() : found.value();
}

bool Session::canUndo() const
{
    return !readOnly() && next().has_value();
}

QString Session::undoText() const
{
    const auto command = next();
    return command ? wordsOrCode(commandWords(), command->label.code.toStdString()) : QString();
}

bool Session::readOnly() const
{
    return !m_workspace.store().canWrite();
}

QString Session::units() const
{
    return m_workspace.project().system == System::Inch ? QStringLiteral("in") : QStringLiteral("mm");
}

void Session::tell(const QString &notice)
{
    m_notice = notice;
    emit noticeChanged();
}

void Session::dismissNotice()
{
    tell({});
}

void Session::pedalPressed()
{
    if (m_pedalTold)
        return;
    m_pedalTold = true;
    if (!readOnly())
        (void)m_workspace.store().setSetting(pedalToldKey, true);
    tell(tr("The pedal turns the steps. Put it where your foot cannot take it for the machine’s, or on the "
            "table; while a block is stitched it does nothing."));
}

void Session::undo()
{
    if (!canUndo())
        return;
    const QString what = undoText();
    if (m_view == QStringLiteral("station")) {
        const QString said = undoneAtWork();
        if (!said.isEmpty())
            emit undone(said);
        return;
    }
    if (const auto taken = m_workspace.store().undoShelf(); !taken)
        tell(storeSentence(taken.error()));
    else
        emit undone(what);
    emit shelfUndone();
    emit undoChanged();
}

QString Session::undoneAtWork()
{
    const auto command = next();
    const QString code = command ? command->label.code : QString();
    const QString words = undoText();
    const QString step = stepSays(m_workspace.steps(), m_workspace.lastAbout(), m_workspace.project());
    const FieldsBefore fields(m_workspace.project(), m_workspace.plan());
    if (!m_workspace.undo())
        return {};
    if (code == QLatin1String("done"))
        return step.isEmpty() ? words : step;
    if (!step.isEmpty() && (code == QLatin1String("spoiled") || code == QLatin1String("wrong")))
        //: %1 is what was taken back ("spoiled"), %2 the step
        return tr("%1: %2").arg(words, step);
    const bool plain =
        code == QLatin1String("edit") || code == QLatin1String("drag") || code == QLatin1String("offer");
    const QString field = plain ? fields.changed(m_workspace.project(), m_workspace.plan()) : QString();
    return field.isEmpty() ? words : field;
}

void Session::openProject(const QString &id)
{
    if (!m_workspace.open(id))
        return;
    // A piece that was begun opens at its next step; one that was not opens at Fit.
    const auto next = nextStep(m_workspace.steps());
    const bool started = m_workspace.project().made.started();
    setStation(started && next ? static_cast<int>(m_workspace.steps()[*next].station) : 0);
    setView(QStringLiteral("station"));
}

void Session::showShelf()
{
    (void)m_workspace.settle("drag");
    setView(QStringLiteral("shelf"));
}

QString Session::stationName(int station) const
{
    return stationText(static_cast<Station>(std::clamp(station, 0, lastStation)));
}

Look::Look(Store &store, double reportedPxPerMm) : m_store(store)
{
    m_set = held(m_store, settings::colours).value_or(m_set);
    m_still = held(m_store, stillKey).value_or(false);
    const double reported = reportedPxPerMm > 1 && reportedPxPerMm < 40 ? reportedPxPerMm : m_pxPerMm;
    m_pxPerMm = held(m_store, settings::calibration).value_or(reported);
}

void Look::setColourSet(const QString &set)
{
    if (set == m_set)
        return;
    m_set = set;
    if (m_store.canWrite())
        (void)m_store.setSetting(settings::colours, set);
    emit changed();
}

void Look::setPxPerMm(double pxPerMm)
{
    if (qFuzzyCompare(pxPerMm, m_pxPerMm))
        return;
    m_pxPerMm = pxPerMm;
    if (m_store.canWrite())
        (void)m_store.setSetting(settings::calibration, pxPerMm);
    emit changed();
}

void Look::setReducedMotion(bool still)
{
    if (still == m_still)
        return;
    m_still = still;
    if (m_store.canWrite())
        (void)m_store.setSetting(stillKey, still);
    emit changed();
}

} // namespace matside
