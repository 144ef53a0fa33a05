// SPDX-License-Identifier: MIT
#include "app/stepmodel.h"

#include "app/figures.h"
#include "app/fromowned.h"
#include "app/prints.h"
#include "app/rulerwords.h"
#include "app/wording.h"
#include "bench/account.h"
#include "bench/lacking.h"
#include "bench/record.h"
#include "bench/sides.h"

#include <algorithm>

namespace matside {

namespace {

/// What was measured and counted of one piece says nothing of the next.
Project readyForTheNext(Project project, const Step &step)
{
    const bool another = step.done + 1 < step.count;
    if (step.does == Does::LastLook && another) {
        project.made.pins.reset();
        project.made.piece.reset();
    }
    // A framed piece is squared twice: without its frame, and with it.
    if (step.does == Does::SquarePiece && (another || (isFramed(project) && step.figure == "size.raw.along")))
        project.made.piece.reset();
    return project;
}

/// While the next strip is still to be stitched, the blocks already cut apart can be trimmed: the first step
/// at hand that lacks nothing, instead of the one that waits.
std::size_t readyMeanwhile(const std::vector<Step> &all, const Plan &plan,
                           const std::vector<std::size_t> &rows, std::size_t next)
{
    if (!stitchedBeforeApart(all, plan, all[next]))
        return next;
    const auto ready = std::find_if(rows.begin(), rows.end(), [&](std::size_t row) {
        const Step &step = all[row];
        return step.done < step.count && !stitchedBeforeApart(all, plan, step) && !lackingFor(all, step);
    });
    return ready == rows.end() ? next : *ready;
}

} // namespace

StepModel::StepModel(Workspace &workspace, Session &session)
    : m_workspace(workspace), m_session(session), m_steps(workspace)
{
    connect(&m_workspace, &Workspace::changed, this, &StepModel::refresh);
    connect(&m_session, &Session::handChanged, this, &StepModel::refresh);
    connect(&m_workspace, &Workspace::opened, this, [this] {
        m_chosen.reset();
        m_asking = m_resuming = false;
    });
    connect(&m_session, &Session::stationChanged, this, [this] {
        m_chosen.reset();
        m_asking = m_resuming = false; // asked of the step she was at, and of no other
        refresh();
    });
    refresh();
}

void StepModel::refresh()
{
    // While Fit is dragged no step is on the screen: laying them out can wait.
    const auto station = static_cast<Station>(m_session.station());
    if (station == Station::Fit && m_workspace.previewing())
        return;
    const std::vector<Step> &all = m_workspace.steps();
    std::vector<std::size_t> rows;
    m_current.reset();
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (all[i].station != station) // at Shop nothing is done
            continue;
        rows.push_back(i);
        if (!m_current && all[i].done < all[i].count)
            m_current = i;
    }
    if (station == Station::Trim && m_current)
        m_current = readyMeanwhile(all, m_workspace.plan(), rows, *m_current);
    if (m_chosen && *m_chosen < all.size() && all[*m_chosen].done < all[*m_chosen].count)
        m_current = m_chosen;
    // A block not told as pressed is pressed first, here at the mat too; its strip is stitched whole before.
    if (m_current && !stitchedBeforeApart(all, m_workspace.plan(), all[*m_current]))
        if (const auto press = pressedFirst(all, all[*m_current]))
            m_current = press;
    const Step *step = current();
    m_fromOwned = step && comesFromOwned(m_workspace.project(), m_workspace.plan(), all, *step);
    m_steps.show(std::move(rows), m_current);
    emit changed();
}

const Step *StepModel::current() const
{
    const std::vector<Step> &all = m_workspace.steps();
    return m_current && *m_current < all.size() ? &all[*m_current] : nullptr;
}

QString StepModel::title() const
{
    const Step *step = current();
    return step ? titleText(*step, step->done + 1, block()) : QString();
}

int StepModel::count() const
{
    return current() ? static_cast<int>(current()->count) : 0;
}

int StepModel::done() const
{
    return current() ? static_cast<int>(current()->done) : 0;
}

bool StepModel::atStation(Station station) const
{
    return m_session.station() == static_cast<int>(station);
}

QString StepModel::trialSays() const
{
    const Step *step = current();
    if (!step || !step->trial || step->does != Does::CutStrip)
        return {};
    //: a hoop strip cut for the trial; the station Fit counts those of the piece itself
    return tr("This strip is for the test block: one more than the %1 that Fit counts.")
        .arg(m_workspace.plan().strip.strips);
}

bool StepModel::nothingToDo() const
{
    return current() && apartAlready(m_workspace.plan(), *current());
}

QString StepModel::doesText() const
{
    if (nothingToDo())
        //: the strip was cut apart; the block in hand is all that is left of it
        return tr("No cut here: nothing else is left on its strip.");
    if (doing() == QStringLiteral("press-block") && atStation(Station::Trim))
        //: the block is trimmed next: warm or damp from the iron it is not at its size yet
        return tr("First press the block: it is cut cold and dry.");
    return current() ? matside::doesText(*current(), m_workspace.project()) : QString();
}

FigureView StepModel::figure() const
{
    const Step *step = current();
    if (!step)
        return {};
    if (FigureView figure = planFigure(m_workspace.project(), m_workspace.plan(), step->figure);
        figure.valid) {
        // A sashing is cut with its spare: the figure on the ruler is the cut, and its sum ends there.
        // A piece is squared to what its rows measure, which no sum of the plan tells.
        const bool spare = step->does == Does::CutShort || step->does == Does::CutLong;
        const bool square = step->does == Does::SquarePiece;
        if ((!spare && !square) || !step->size)
            return figure;
        FigureView cut = figureOf(step->size->along, m_workspace.project().marks());
        cut.key = !spare                         ? figure.key
                  : step->does == Does::CutShort ? QStringLiteral("sashing.shorts.cut")
                                                 : QStringLiteral("sashing.longs.cut");
        const QString sum = planFigure(m_workspace.project(), m_workspace.plan(), cut.key.toStdString()).text;
        cut.hasWorking = figure.hasWorking && cut.text == sum;
        return cut;
    }
    if (!step->size)
        return {};
    const bool cut = step->ruler && step->ruler->on == LineOn::CutEdge;
    return figureOf(cut ? step->ruler->off() : step->size->across, m_workspace.project().marks());
}

QStringList StepModel::lines() const
{
    const Step *step = current();
    return step && step->ruler ? rulerLines(*step->ruler, m_workspace.project().marks()) : QStringList();
}

QStringList StepModel::lies() const
{
    const Step *step = current();
    return step && step->ruler ? bracedRulerLines(*step->ruler, m_workspace.project().marks())
                               : QStringList();
}

QString StepModel::caution() const
{
    const Step *step = current();
    return step && !step->caution.empty() && !nothingToDo() ? wordsOrCode(guardWords(), step->caution)
                                                            : QString();
}

QString StepModel::hazard() const
{
    const Step *step = current();
    return step && !step->caution.empty() ? wordsOrCode(hazardWords(), step->caution) : QString();
}

QString StepModel::check() const
{
    const Step *step = current();
    if (!step || step->check.empty() || nothingToDo())
        return {};
    // The end was squared at the cutting hand; strips come off at the other.
    if (step->check == "cut-edge-square-to-fold" && step->done == 0)
        return m_session.leftHanded() ? tr("Turn the cloth round: its cut edge to your right.")
                                      : tr("Turn the cloth round: its cut edge to your left.");
    return checkText(*step, m_workspace.project().marks());
}

QString StepModel::clothName() const
{
    const Step *step = current();
    if (!step || step->cloth.empty())
        return {};
    const QString name = clothText(m_workspace.project(), step->cloth);
    return m_fromOwned
               //: %1 is a cloth; the next strip is cut from a piece of it that she entered as what she has
               ? tr("%1, from the piece you have").arg(name)
               : name;
}

QString StepModel::clothColour() const
{
    return colourDrawn(m_workspace.project(), current() ? current()->cloth : std::string());
}

QString StepModel::clothRole() const
{
    return printOf(m_workspace.project(), current() ? current()->cloth : std::string());
}

QString StepModel::actionText() const
{
    if (nothingToDo())
        //: a block has come off its strip
        return tr("It is apart");
    return current() ? matside::actionText(*current()) : QString();
}

bool StepModel::canGoBack() const
{
    return !m_session.readOnly() && m_session.canUndo();
}

bool StepModel::trial() const
{
    return current() && current()->trial;
}

bool StepModel::mayTryAfterAll() const
{
    return notTried() && m_workspace.project().made.trialPutOff && !m_session.readOnly();
}

bool StepModel::notTried() const
{
    return current() && current()->notTried;
}

QString StepModel::elsewhereText() const
{
    const std::vector<Step> &all = m_workspace.steps();
    if (!m_workspace.plan().problems.empty())
        return figuresWhole(sentence(m_workspace.plan().problems.front(), m_workspace.project().marks()));
    const auto next = nextStep(all);
    if (!next)
        return tr("Everything is done.");
    //: %1 is a station's name, %2 what is to be done there
    return tr("Next, at %1: %2")
        .arg(stationText(all[*next].station), matside::doesText(all[*next], m_workspace.project()));
}

RulerView StepModel::ruler() const
{
    return current() ? rulerView(*current(), m_workspace.project(), m_workspace.plan()) : RulerView();
}

QString StepModel::trialKind() const
{
    const Step *step = current();
    if (!step || (step->does != Does::MeasureTest && step->does != Does::TestJoin))
        return {};
    return toQt(nameOf(step->does));
}

QString StepModel::doing() const
{
    return current() ? toQt(nameOf(current()->does)) : QString();
}

bool StepModel::sided() const
{
    return current() && current()->does == Does::TrimBlock;
}

void StepModel::next()
{
    m_resuming = false;
    if (!canGoNext())
        return;
    const bool offHoop = current()->does == Does::StitchBlock && !current()->trial;
    const QString inHand = block();
    const bool saved = m_workspace.commit(
        "done",
        readyForTheNext(withDone(m_workspace.project(), m_workspace.plan(), *current(), m_strip), *current()),
        current()->id);
    if (saved && offHoop)
        emit stitched(inHand);
}

void StepModel::back()
{
    if (!canGoBack())
        return;
    const auto command = m_workspace.store().undoable(m_workspace.id());
    const QString last = command && command.value() ? command.value()->label.code : QString();
    // Only work can have been done and spoiled; any other change is simply taken back.
    m_asking = last == QStringLiteral("done");
    if (!m_asking)
        (void)m_workspace.undo();
    emit changed();
}

void StepModel::answerUndo(const QString &answer)
{
    m_asking = false;
    if (answer == QStringLiteral("mistake")) {
        (void)m_workspace.undo();
    } else if (answer == QStringLiteral("spoiled")) {
        spoilLast();
    }
    emit changed();
}

void StepModel::spoilLast()
{
    // The last thing done was spoiled: it stays on record and is to be made again.
    const std::vector<Step> all = m_workspace.steps();
    const std::string id = m_workspace.lastAbout();
    const auto last = std::find_if(all.begin(), all.end(), [&](const Step &step) { return step.id == id; });
    if (last != all.end())
        (void)m_workspace.commit("spoiled", withLastSpoiled(m_workspace.project(), all, *last), id);
}

void StepModel::goTo(int row)
{
    m_chosen = m_steps.stepAt(row);
    refresh();
}

void StepModel::putOffTrial()
{
    Project next = m_workspace.project();
    next.made.trialPutOff = true;
    (void)m_workspace.commit("put-off", next);
}

void StepModel::takeTrialBack()
{
    Project next = m_workspace.project();
    next.made.trialPutOff = false;
    (void)m_workspace.commit("take-trial-back", next);
}

void StepModel::askAboutLast()
{
    // A trial is finished by its measures, not by a yes.
    m_resuming = current() != nullptr && m_workspace.project().made.started() && trialKind().isEmpty();
    emit changed();
}

QString StepModel::resumeLast() const
{
    const Step *step = current();
    return step ? tr("You were at: %1").arg(title()) : QString();
}

QString StepModel::resumeNext() const
{
    const Step *step = current();
    return step ? tr("%1 Did you finish this?").arg(matside::doesText(*step, m_workspace.project()))
                : QString();
}

void StepModel::answerResume(bool finished)
{
    m_resuming = false;
    if (finished)
        next();
    emit changed();
}

} // namespace matside
