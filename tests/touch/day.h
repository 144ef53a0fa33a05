// SPDX-License-Identifier: MIT
#pragma once

#include "maker.h"

#include <random>

namespace touching {

/// A maker's day at the tablet: a piece is worked to its end by touches and a new one taken up, and on the
/// way she looks at everything else there is. Every act gives whether it could be done.
class Day {
public:
    /// `piece` is the project of the shelf that is made again and again; `pictures`, how many lie in her
    /// folder.
    Day(Program &program, Maker &maker, QString piece, int pictures, unsigned seed);

    /// So many touches of the action, one taken back and done again, then a round through all that lies
    /// beside the work.
    [[nodiscard]] bool lap(int actions);
    /// What the work done would have taken a maker, minutes: the plan's own time for the piece (F20), an
    /// equal share of it for each touch of the action. What the plan gives no time for, as cutting, counts
    /// nothing.
    [[nodiscard]] double minutes() const { return m_minutes; }
    [[nodiscard]] int pieces() const { return m_pieces; }
    [[nodiscard]] int actions() const { return m_actions; }
    [[nodiscard]] int photographs() const { return m_photographs; }
    /// What was in the way.
    [[nodiscard]] QString trouble() const { return m_waited.isEmpty() ? m_maker.trouble() : m_waited; }

private:
    [[nodiscard]] bool work();
    [[nodiscard]] bool takeBack();
    [[nodiscard]] bool logWithPicture();
    [[nodiscard]] bool takeUpAnother();
    [[nodiscard]] bool takeUp(const QString &name);
    [[nodiscard]] bool lookAround();
    [[nodiscard]] bool lookAtPictures();
    [[nodiscard]] bool atTheShelf();
    /// Chooses the language that calls itself so, from the shelf and back to it.
    [[nodiscard]] bool speak(const QString &name);
    /// Waits until a sheet lies there, or no longer does.
    [[nodiscard]] bool comes(const char *sheet);
    [[nodiscard]] bool gone(const char *sheet);
    [[nodiscard]] bool there(const char *objectName) const;
    /// Opens what is called so, if the station has it now, and closes it again.
    [[nodiscard]] bool lookInto(const QString &name, const QString &back);

    Program &m_program;
    Maker &m_maker;
    QString m_piece;
    int m_pictures;
    std::mt19937 m_random;
    double m_minutes = 0;
    int m_pieces = 0;
    int m_actions = 0;
    int m_photographs = 0;
    unsigned m_laps = 0;
    QString m_waited; ///< for what, in vain
};

} // namespace touching
