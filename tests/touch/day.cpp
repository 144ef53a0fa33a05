// SPDX-License-Identifier: MIT
#include "day.h"

#include "app/wording.h"
#include "eyes.h"
#include "plan/hours.h"

#include "testing.h"
#include <QQuickItem>
#include <QQuickWindow>

#include <utility>

namespace touching {

using namespace matside;

namespace {

constexpr int patienceMs = 15000;
constexpr int glanceMs = 300;
constexpr int newlyShownMs = 450; // what just came up is not pressed by what was meant for the sheet before

/// A word of the screen in the language it speaks now.
QString now(const char *page, const char *english)
{
    return QCoreApplication::translate(page, english);
}

QString toTheWork(const char *page)
{
    return now(page, "Back to the work");
}

/// Minutes a touch of the action stands for.
double minutesEach(const Papers &papers)
{
    std::int64_t touches = 0;
    for (const Step &step : papers.steps)
        touches += step.count;
    return touches == 0 ? 0
                        : static_cast<double>(hoursFor(papers.project, papers.plan).all()) / 10.0 /
                              static_cast<double>(touches);
}

} // namespace

Day::Day(Program &program, Maker &maker, QString piece, int pictures, unsigned seed)
    : m_program(program), m_maker(maker), m_piece(std::move(piece)), m_pictures(pictures), m_random(seed)
{
}

bool Day::there(const char *objectName) const
{
    return byObjectName(m_maker.screen(), QLatin1String(objectName)) != nullptr;
}

bool Day::comes(const char *sheet)
{
    if (QTest::qWaitFor([&] { return there(sheet); }, patienceMs))
        return true;
    m_waited = QStringLiteral("%1 does not come").arg(QLatin1String(sheet));
    return false;
}

bool Day::gone(const char *sheet)
{
    if (QTest::qWaitFor([&] { return !there(sheet); }, patienceMs))
        return true;
    m_waited = QStringLiteral("%1 does not go").arg(QLatin1String(sheet));
    return false;
}

bool Day::lookInto(const QString &name, const QString &back)
{
    if (!called(m_maker.screen(), name, true))
        return true;
    // What has just come up takes no touch yet; where nothing opened she presses once more.
    QTest::qWait(newlyShownMs);
    if (!m_maker.touch(name, true))
        return false;
    constexpr int openingMs = 3000;
    if (!QTest::qWaitFor([&] { return called(m_maker.screen(), back) != nullptr; }, openingMs) &&
        !m_maker.touch(name, true))
        return false;
    return m_maker.touch(back);
}

bool Day::lap(int actions)
{
    ++m_laps;
    if (!m_program.papers().next && !takeUpAnother())
        return false;
    for (int done = 0; done < actions && m_program.papers().next; ++done) {
        if (!work())
            return false;
        if (done == 0 && !takeBack())
            return false;
    }
    return lookAround() && atTheShelf();
}

bool Day::work()
{
    const Papers papers = m_program.papers();
    const bool stitches = papers.nextStep() && papers.nextStep()->does == Does::StitchBlock;
    if (!m_maker.workOnce())
        return false;
    ++m_actions;
    m_minutes += minutesEach(papers);
    return !stitches || logWithPicture();
}

bool Day::takeBack()
{
    // By turns through the band, and by the station's own way back.
    const Session &session = m_program.room().session();
    const QQuickItem *back = byObjectName(m_maker.screen(), QStringLiteral("back"));
    if (m_laps % 2 == 0 && session.canUndo())
        return m_maker.touch(session.undoText());
    if (!back || !back->isEnabled())
        return true;
    if (!m_maker.touchObject(QStringLiteral("back")))
        return false;
    // Only of work it is asked whether it was spoiled.
    const bool asked = QTest::qWaitFor([&] { return there("sheet-undone"); }, glanceMs);
    return !asked || m_maker.touch(now("UndoneSheet", "Tapped by mistake"));
}

bool Day::logWithPicture()
{
    if (!comes("sheet-log"))
        return false;
    // The front of every block, the back of some.
    for (const char *face : {"front", "rear"}) {
        if (face[0] == 'r' && m_random() % 3 != 0)
            continue;
        const int picture = 1 + static_cast<int>(m_random() % static_cast<unsigned>(m_pictures));
        if (!m_maker.touchObject(QLatin1String(face)) ||
            !m_maker.touch(QStringLiteral("picture-%1").arg(picture)) || !gone("photo"))
            return false;
        ++m_photographs;
    }
    QTest::qWait(newlyShownMs);
    return m_maker.touchObject(QStringLiteral("log-it")) && gone("sheet-log");
}

bool Day::takeUpAnother()
{
    // The finished piece is thrown away, so that the shelf does not grow, and the same is made again.
    const QString again = m_piece + QStringLiteral(", again");
    ++m_pieces;
    if (!m_maker.touch(now("Band", "Shelf")))
        return false;
    if (called(m_maker.screen(), again, true) && (!m_maker.touchBeside(now("ProjectRow", "More"), again) ||
                                                  !m_maker.hold(now("ProjectRow", "Hold to throw away"))))
        return false;
    if (!m_maker.touchBeside(now("ProjectRow", "More"), m_piece + QLatin1Char('.')) ||
        !m_maker.touch(now("ProjectRow", "Make again in other cloth")))
        return false;
    return takeUp(again);
}

bool Day::takeUp(const QString &name)
{
    // The rows have moved: she looks where it lies now, once it lies still.
    QPointF lay;
    const bool still = QTest::qWaitFor(
        [&] {
            QTest::qWait(glanceMs);
            const QQuickItem *row = called(m_maker.screen(), name, true);
            const QPointF lies = row ? row->mapToScene({}) : QPointF();
            return row && lies == std::exchange(lay, lies);
        },
        patienceMs);
    if (still && !m_maker.touch(name, true))
        return false;
    if (still &&
        QTest::qWaitFor([&] { return m_program.room().session().projectName() == name; }, patienceMs))
        return true;
    m_waited = QStringLiteral("%1 is not taken up").arg(name);
    return false;
}

bool Day::lookAround()
{
    if (!m_maker.goTo(Station::Cut))
        return false;
    const QQuickItem *figure = byObjectName(m_maker.screen(), QStringLiteral("figure"));
    if (figure && figure->isEnabled() &&
        (!m_maker.touchObject(QStringLiteral("figure")) || !m_maker.touch(toTheWork("WorkingSheet"))))
        return false;
    if (there("wrong") &&
        (!m_maker.touchObject(QStringLiteral("wrong")) || !m_maker.touch(now("WrongSheet", "Close"))))
        return false;
    if (!m_maker.goTo(Station::Hoop))
        return false;
    // A block just off the hoop may still have to be logged.
    QTest::qWait(newlyShownMs);
    if (there("sheet-log") && (!m_maker.touchObject(QStringLiteral("log-it")) || !gone("sheet-log")))
        return false;
    if (!lookInto(now("HoopAside", "Hoops"), toTheWork("SideSheet")) || !lookAtPictures())
        return false;
    return m_maker.goTo(Station::Fit) &&
           lookInto(now("FitPage", "Show the back"), now("FitPage", "Show the front")) &&
           m_maker.goTo(Station::Shop) &&
           lookInto(now("ShopPage", "List to take"), now("TakeSheet", "Back")) &&
           lookInto(now("ShopPage", "Light and dark"), toTheWork("ShadePage")) &&
           m_maker.goTo(Station::Trim) && m_maker.goTo(Station::Join) &&
           lookInto(now("JoinAside", "Layout, front and back"), toTheWork("SideSheet")) &&
           m_maker.goTo(Station::Edge) &&
           lookInto(now("EdgeAside", "Care, label, sleeve, pillow"), toTheWork("SideSheet"));
}

bool Day::lookAtPictures()
{
    // While the trial is measured its sheet lies over the way there.
    const QString way = now("HoopAside", "Pictures and notes");
    return !called(m_maker.screen(), way, true) ||
           (m_maker.touch(way, true) && m_maker.touch(QStringLiteral("Block A1,"), true) &&
            m_maker.touch(now("GalleryNotes", "Back to the gallery")) &&
            m_maker.touch(toTheWork("GalleryPage")));
}

bool Day::atTheShelf()
{
    constexpr const char *tongues[] = {"Deutsch", "Español", "Français"};
    const QString open = m_program.room().session().projectName();
    return m_maker.touch(now("Band", "Shelf")) &&
           speak(QString::fromUtf8(tongues[m_laps % std::size(tongues)])) &&
           m_maker.touch(open + QLatin1Char('.'), true) && m_maker.goTo(Station::Fit) &&
           m_maker.goTo(Station::Shop) && m_maker.goTo(Station::Hoop) && m_maker.goTo(Station::Edge) &&
           m_maker.touch(now("Band", "Shelf")) && speak(QStringLiteral("English")) &&
           m_maker.touch(open + QLatin1Char('.'), true);
}

bool Day::speak(const QString &name)
{
    return m_maker.touch(now("ShelfPage", "Language, screen")) &&
           m_maker.touch(now("SettingsPage", "Language"), true) && m_maker.touch(name) &&
           m_maker.touch(now("SettingsPage", "Back to the shelf"));
}

} // namespace touching
