// SPDX-License-Identifier: MIT
#include "maker.h"

#include "app/figures.h"
#include "app/wording.h"
#include "eyes.h"

#include "testing.h"
#include <QQuickItem>
#include <QQuickWindow>
#include <QRegularExpression>

namespace touching {

using namespace matside;

namespace {

constexpr int patienceMs = 15000;
/// An action is not taken twice within 0.4 s (the rule for touch); she is a little slower.
constexpr qint64 betweenActionsMs = 440;
constexpr double fingertipMm = 9;

QQuickItem *listAround(QQuickItem *item)
{
    for (QQuickItem *around = item->parentItem(); around; around = around->parentItem())
        if (around->inherits("QQuickFlickable") && around->property("interactive").toBool())
            return around;
    return nullptr;
}

QPointF middleOf(const QQuickItem *item)
{
    return item->mapToScene(QPointF(item->width() / 2, item->height() / 2));
}

/// Whether the item goes, or is somewhere else, within some drawn frames. A slide begins a frame late.
bool slides(const QQuickItem *item)
{
    const QPointer<const QQuickItem> held(item);
    QQuickWindow *window = item->window();
    const QPointF before = middleOf(item);
    for (int frame = 0; frame < 4; ++frame) {
        bool drawn = false;
        const auto listening =
            QObject::connect(window, &QQuickWindow::frameSwapped, window, [&drawn] { drawn = true; });
        window->update();
        (void)QTest::qWaitFor([&drawn] { return drawn; }, patienceMs);
        QObject::disconnect(listening);
        if (!held || middleOf(held) != before)
            return true;
    }
    return false;
}

bool isMeasured(const Step &step)
{
    return step.does == Does::MeasureTest || step.does == Does::TestJoin;
}

/// What the large figure prints, as it is read: lean, whole, numerator, denominator, unit.
QStringList printedParts(const FigureView &figure)
{
    QStringList parts{figure.lean, (figure.minus ? QStringLiteral("\u2212") : QString()) + figure.whole,
                      figure.num, figure.den, figure.unit};
    parts.removeAll(QString());
    return parts;
}

/// The figure a step is done by: the plan's own by its key; a short or a long is cut with its spare, so the
/// ruler shows the piece's length; what has no key in the plan is read off its size.
FigureView figureDue(const Papers &papers, const Step &step)
{
    const Marks marks = papers.project.marks();
    const bool spare = step.does == Does::CutShort || step.does == Does::CutLong;
    if (spare && step.size)
        return figureOf(step.size->along, marks);
    if (FigureView figure = planFigure(papers.project, papers.plan, step.figure); figure.valid)
        return figure;
    if (!step.size)
        return {};
    return figureOf(step.does == Does::CutLongPiece ? step.size->along : step.size->across, marks);
}

} // namespace

QQuickItem *Maker::screen() const
{
    return m_program.window().contentItem();
}

QStringList Maker::face() const
{
    return printed(screen());
}

bool Maker::fail(const QString &trouble)
{
    m_trouble = trouble;
    // Too long for a failed comparison's own line.
    qInfo("on the screen: %s", qPrintable(face().join(QStringLiteral(" / "))));
    qInfo("to press: %s", qPrintable(everythingCalled(screen())));
    if (const QString picture = qEnvironmentVariable("MATSIDE_TROUBLE_PICTURE"); !picture.isEmpty())
        m_program.window().grabWindow().save(picture);
    return false;
}

bool Maker::bringIntoSight(const std::function<QQuickItem *()> &find)
{
    for (int push = 0; push < 40; ++push) {
        QQuickItem *item = find();
        if (!item)
            return false;
        const QPointF middle = middleOf(item);
        QQuickItem *list = listAround(item);
        if (!list) {
            // A sheet that slides in comes to rest by itself; what was only just shown may turn out a list.
            const bool rests = QTest::qWaitFor(
                [&] {
                    item = find();
                    return item &&
                           (listAround(item) || (seen(item).contains(middleOf(item)) && !slides(item)));
                },
                patienceMs);
            if (!rests || !listAround(item))
                return rests;
            continue;
        }
        if (seen(item).contains(middle))
            return true;
        const QRectF sight = seen(list);
        const double most = sight.height() * 0.6;
        const double wanted = sight.center().y() - middle.y();
        const double by = std::clamp(wanted, -most, most);
        // From where the push has room to go.
        m_hand.push(m_program.window(), {sight.left() + sight.width() * 0.4, sight.center().y() - by / 2},
                    by);
        if (!QTest::qWaitFor([list] { return !list->property("moving").toBool(); }, patienceMs))
            return false;
    }
    return false;
}

bool Maker::touchItem(const std::function<QQuickItem *()> &find, const QString &what)
{
    if (!QTest::qWaitFor([&] { return find() != nullptr; }, patienceMs))
        return fail(QStringLiteral("there was no %1").arg(what));
    if (!bringIntoSight(find))
        return fail(QStringLiteral("%1 could not be brought into sight").arg(what));
    QQuickItem *item = find();
    // What acts is not taken twice within 0.4 s; what steps and types has no such pause.
    const bool acts = item->property("guardMs").toInt() > 0;
    if (acts && m_sinceAction.isValid() && m_sinceAction.elapsed() < betweenActionsMs)
        QTest::qWait(static_cast<int>(betweenActionsMs - m_sinceAction.elapsed()));
    // What still moves is not pressed: it would be gone from under the finger.
    QPointF lay;
    const auto still = [&] {
        constexpr int glanceMs = 40;
        QTest::qWait(glanceMs);
        const QQuickItem *now = find();
        const QPointF was = lay;
        lay = now ? middleOf(now) : QPointF();
        return was == lay;
    };
    if (!QTest::qWaitFor(still, patienceMs))
        return fail(QStringLiteral("%1 does not lie still").arg(what));
    item = find();
    if (!item)
        return fail(QStringLiteral("%1 went away").arg(what));
    m_hand.tap(m_program.window(), middleOf(item), fingertipMm * Program::pxPerMm);
    if (acts)
        m_sinceAction.start();
    return true;
}

bool Maker::touch(const QString &name, bool begins)
{
    return touchItem([&] { return called(screen(), name, begins); },
                     QLatin1Char('"') + name + QLatin1Char('"'));
}

bool Maker::touchObject(const QString &objectName)
{
    const auto find = [&]() -> QQuickItem * {
        QQuickItem *item = byObjectName(screen(), objectName);
        return item && item->isEnabled() ? item : nullptr;
    };
    return touchItem(find, objectName);
}

bool Maker::touchBeside(const QString &name, const QString &row)
{
    const auto find = [&]() -> QQuickItem * {
        const QQuickItem *line = called(screen(), row, true);
        if (!line)
            return nullptr;
        const double level = middleOf(line).y();
        QQuickItem *nearest = nullptr;
        for (QQuickItem *item : shown(screen()))
            if (pressable(item) && item->isEnabled() && spokenName(item) == name &&
                (!nearest || std::abs(middleOf(item).y() - level) < std::abs(middleOf(nearest).y() - level)))
                nearest = item;
        return nearest;
    };
    return touchItem(find, QStringLiteral("\"%1\" beside \"%2\"").arg(name, row));
}

bool Maker::hold(const QString &name)
{
    const auto find = [&] { return called(screen(), name); };
    if (!QTest::qWaitFor([&] { return find() != nullptr; }, patienceMs) || !bringIntoSight(find))
        return fail(QStringLiteral("there was no \"%1\" to hold").arg(name));
    m_hand.press(m_program.window(), middleOf(find()), fingertipMm * Program::pxPerMm);
    const bool acted = QTest::qWaitFor([&] { return find() == nullptr; }, patienceMs);
    m_hand.release(m_program.window());
    return acted || fail(QStringLiteral("\"%1\" was held and nothing came of it").arg(name));
}

bool Maker::typeOn(const QString &text)
{
    for (const QString &part : text.split(QLatin1Char(' '))) {
        if (part.contains(QLatin1Char('/'))) {
            if (!touch(part))
                return false;
            continue;
        }
        for (const QChar digit : part)
            if (!touch(digit == QLatin1Char('.') ? QStringLiteral("decimal point") : QString(digit)))
                return false;
    }
    return touch(QStringLiteral("Done"));
}

bool Maker::enter(const QString &value, const QString &text)
{
    if (!touchItem([&] { return valueCalled(screen(), value); }, value) || !typeOn(text))
        return false;
    const auto taken = [&] {
        const QQuickItem *shows = valueCalled(screen(), value);
        return shows && spokenName(shows).contains(text) && !called(screen(), QStringLiteral("Done"));
    };
    return QTest::qWaitFor(taken, patienceMs) ||
           fail(QStringLiteral("%1 was typed for %2 and not taken").arg(text, value));
}

bool Maker::goTo(Station station)
{
    const QString name = stationText(station);
    const auto here = [&] {
        const QQuickItem *cell = called(screen(), name);
        return cell && selected(cell);
    };
    if (here())
        return true;
    if (!called(screen(), name)) {
        // Folded, the band shows only the station she is at; pressing that opens it.
        int other = 0;
        while (other < static_cast<int>(Station::Edge) &&
               !called(screen(), stationText(static_cast<Station>(other))))
            ++other;
        if (!touch(stationText(static_cast<Station>(other))))
            return false;
    }
    if (!touch(name))
        return false;
    return QTest::qWaitFor(here, patienceMs) || fail(QStringLiteral("%1 did not open").arg(name));
}

bool Maker::figureIsThePlans(const Papers &papers, const Step &step)
{
    QQuickItem *figure = byObjectName(screen(), QStringLiteral("figure"));
    const FigureView due = figureDue(papers, step);
    // A station with a drawing of its own may have its figure in the drawing; those have their own tests.
    if (!figure || !due.valid)
        return true;
    const QStringList wanted = printedParts(due);
    // A press on a figure opens its sum; the word on its tab is no part of the number.
    const auto parts = [&] {
        QQuickItem *number = byObjectName(screen(), QStringLiteral("figure"));
        QStringList words = number ? printed(number) : QStringList();
        words.removeAll(QStringLiteral("sum"));
        return words;
    };
    if (!QTest::qWaitFor([&] { return parts() == wanted; }, patienceMs))
        return fail(QStringLiteral("%1 shows %2, the plan has %3")
                        .arg(QString::fromStdString(step.id), parts().join(QLatin1Char(' ')),
                             wanted.join(QLatin1Char(' '))));
    ++m_compared[step.station];
    return true;
}

bool Maker::workOnce()
{
    const Papers before = m_program.papers();
    const Step *step = before.nextStep();
    if (!step)
        return fail(QStringLiteral("nothing is left to do"));
    if (!goTo(step->station))
        return false;
    // Coming back she is asked whether she finished what she was at; she had not begun it.
    if (!notFinishedYet())
        return false;
    // A block just off the hoop is logged as planned before the work goes on.
    if (byObjectName(screen(), QStringLiteral("sheet-log")) &&
        (!touchObject(QStringLiteral("log-it")) ||
         !QTest::qWaitFor([&] { return !byObjectName(screen(), QStringLiteral("sheet-log")); }, patienceMs)))
        return fail(QStringLiteral("the block could not be logged: ") + m_trouble);
    // What the button says is this step's; a trial's measures are taken on a sheet of their own.
    const QString name = QString::fromStdString(step->id);
    const QString action = isMeasured(*step) ? QStringLiteral("Take these measures") : actionText(*step);
    const bool bySides = step->does == Does::TrimBlock;
    // The last block of a strip came off with the cut before.
    const QString off = step->does == Does::RoughApart ? QStringLiteral("It is apart") : action;
    const auto ready = [&] {
        const QQuickItem *button = byObjectName(screen(), QStringLiteral("action"));
        return button &&
               (bySides || spokenName(button) == action || spokenName(button) == off ||
                (isMeasured(*step) && spokenName(button).endsWith(QStringLiteral("still to read"))));
    };
    if (!QTest::qWaitFor(ready, patienceMs))
        return fail(QStringLiteral("%1: no \"%2\" on the screen").arg(name, action));
    if (bySides)
        return trimFourSides(*step);
    if (step->does == Does::LastLook && !countPins())
        return false;
    const QStringList faceBefore = face();
    if (isMeasured(*step)) {
        if (!measureTrial(*step))
            return false;
    } else if (!figureIsThePlans(before, *step) || !touchObject(QStringLiteral("action"))) {
        return false;
    }
    return seeItDone(*step, faceBefore);
}

bool Maker::countPins()
{
    if (m_program.papers().project.made.pins)
        return true; // counted before the program was killed
    // One went in, and before it came out again the piece is not finished.
    QQuickItem *action = byObjectName(screen(), QStringLiteral("action"));
    if (action && action->isEnabled())
        return fail(QStringLiteral("the piece could be finished with its pins uncounted"));
    if (!touch(QStringLiteral("pins in more")) || !touch(QStringLiteral("pins out more")))
        return false;
    const auto matched = [&] {
        const QQuickItem *button = byObjectName(screen(), QStringLiteral("action"));
        return button && button->isEnabled();
    };
    return QTest::qWaitFor(matched, patienceMs) ||
           fail(QStringLiteral("the pins agree and nothing came of it"));
}

bool Maker::trimFourSides(const Step &step)
{
    // Each side is kept: after a kill the block is where it was, and with the last side it is done.
    constexpr int sides = 4;
    const QQuickItem *action = byObjectName(screen(), QStringLiteral("action"));
    const auto told =
        QRegularExpression(QStringLiteral("[1-4]")).match(action ? spokenName(action) : QString());
    if (!told.hasMatch())
        return fail(QStringLiteral("no side of the block is to be cut"));
    for (int side = told.captured().toInt(); side <= sides; ++side) {
        const QStringList faceBefore = face();
        if (!touchObject(QStringLiteral("action")))
            return false;
        if (side == sides)
            return seeItDone(step, faceBefore);
        if (!QTest::qWaitFor([&] { return face() != faceBefore; }, patienceMs))
            return fail(
                QStringLiteral("side %1 of a block was cut and the screen stayed as it was").arg(side));
        if (m_program.papers().doneOf(step.id) != step.done)
            return fail(QStringLiteral("a block was done with its side %1").arg(side));
    }
    return false;
}

bool Maker::seeItDone(const Step &step, const QStringList &faceBefore)
{
    const QString name = QString::fromStdString(step.id);
    bool drawn = false;
    const auto listening = QObject::connect(&m_program.window(), &QQuickWindow::frameSwapped,
                                            [&] { drawn = drawn || face() != faceBefore; });
    m_program.window().requestUpdate();
    const bool changed = QTest::qWaitFor([&] { return drawn; }, patienceMs);
    QObject::disconnect(listening);
    if (!changed)
        return fail(QStringLiteral("after %1 the screen stayed as it was").arg(name));
    if (shownAsDone)
        shownAsDone(step.id, step.done + 1);
    const std::int64_t saved = m_program.papers().doneOf(step.id);
    return saved == step.done + 1 ||
           fail(QStringLiteral("%1 was %2 times done, and then %3").arg(name).arg(step.done).arg(saved));
}

} // namespace touching
