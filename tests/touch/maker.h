// SPDX-License-Identifier: MIT
#pragma once

#include "fingers.h"
#include "program.h"

#include <QElapsedTimer>
#include <QString>

#include <functional>
#include <map>

class QQuickItem;

namespace touching {

/// The maker at her tablet: she sees what is on the screen and touches it, nothing else. Every act gives
/// whether it could be done; `trouble` says what was in the way and what the screen showed.
class Maker {
public:
    explicit Maker(Program &program) : m_program(program) {}

    /// Touches the pressable so called, pushing a list until it can be seen.
    [[nodiscard]] bool touch(const QString &name, bool begins = false);
    [[nodiscard]] bool touchObject(const QString &objectName);
    /// Touches the pressable so called that lies level with the one whose name begins with `row`.
    [[nodiscard]] bool touchBeside(const QString &name, const QString &row);
    /// Holds the pressable so called until it has acted.
    [[nodiscard]] bool hold(const QString &name);
    /// Touches a value, types `text` on the keypad ("9 3/4") and takes it. `value` begins its name.
    [[nodiscard]] bool enter(const QString &value, const QString &text);
    [[nodiscard]] bool goTo(matside::Station station);

    /// Where she is asked after a restart whether she finished what she was at: she did not.
    [[nodiscard]] bool notFinishedYet();

    /// Does the next thing there is to do, wherever it is done: one touch of the action, or one trial
    /// measured. Before, the screen is held against the saved plan; after, the saved steps.
    [[nodiscard]] bool workOnce();
    /// Told what the screen showed as done, once its frame was drawn.
    std::function<void(const std::string &step, std::int64_t done)> shownAsDone;
    /// What she types for the test block's outline along; empty leaves it as planned.
    QString trialOutline;

    /// How many large figures were compared with the plan, by station.
    [[nodiscard]] const std::map<matside::Station, int> &figuresCompared() const { return m_compared; }
    [[nodiscard]] int trialsMeasured() const { return m_trials; }
    [[nodiscard]] const QString &trouble() const { return m_trouble; }
    [[nodiscard]] Fingers &hand() { return m_hand; }
    [[nodiscard]] QQuickItem *screen() const;
    /// Everything printed on the window.
    [[nodiscard]] QStringList face() const;

private:
    [[nodiscard]] bool touchItem(const std::function<QQuickItem *()> &find, const QString &what);
    [[nodiscard]] bool bringIntoSight(const std::function<QQuickItem *()> &find);
    [[nodiscard]] bool typeOn(const QString &text);
    [[nodiscard]] bool measureTrial(const matside::Step &step);
    [[nodiscard]] bool figureIsThePlans(const Papers &papers, const matside::Step &step);
    [[nodiscard]] bool countPins();
    [[nodiscard]] bool trimFourSides(const matside::Step &step);
    [[nodiscard]] bool seeItDone(const matside::Step &step, const QStringList &faceBefore);
    bool fail(const QString &trouble);

    Program &m_program;
    Fingers m_hand;
    QElapsedTimer m_sinceAction;
    std::map<matside::Station, int> m_compared;
    int m_trials = 0;
    QString m_trouble;
};

} // namespace touching
