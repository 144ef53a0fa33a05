// SPDX-License-Identifier: MIT
#include "app/hoopmodel.h"

#include "app/figures.h"
#include "app/reply.h"
#include "app/wording.h"
#include "length/read.h"

#include <algorithm>

namespace matside {

namespace {

/// The bare number on its mark, for the narrow lines beside a strip whose unit is plain.
QString bare(Length length, Marks marks)
{
    Shown shown = show(length, marks);
    shown.lean = Lean::Exact;
    QString text = figureText(shown);
    text.truncate(text.lastIndexOf(u' '));
    return u'{' + text + u'}';
}

/// The figure behind the distance to the next outline: a margin, a gap, or a gap wide enough to yield
/// sashing.
const char *gapKey(const Plan &plan, const NextPlace &next)
{
    if (next.first)
        return "strip.end";
    return next.gap == plan.strip.gap ? "strip.gap" : "strip.wideGap";
}

} // namespace

HoopModel::HoopModel(Workspace &workspace, Session &session, StepModel &steps)
    : m_workspace(workspace), m_session(session), m_steps(steps)
{
    connect(&m_steps, &StepModel::changed, this, &HoopModel::refresh);
    connect(&m_workspace, &Workspace::opened, this, [this] { m_positions.clear(); });
    refresh();
}

void HoopModel::refresh()
{
    if (m_session.station() != static_cast<int>(Station::Hoop) || m_workspace.previewing())
        return;
    m_all = stripsInWork(m_workspace.project(), m_workspace.plan());
    m_forecast = forecastOf(m_workspace.project(), m_workspace.plan());
    m_gaps = gapsToYield();
    const MadeBlock *made = madeInHand();
    const std::int64_t wanted = made ? made->strip : m_steps.strip();
    const auto chosen =
        std::find_if(m_all.begin(), m_all.end(), [&](const StripWork &work) { return work.strip == wanted; });
    auto now = chosen;
    // While one is layered or marked, it is that one; while stitching, the chosen one or the first open.
    if (marking() && !m_steps.trial() && !m_all.empty())
        now = m_all.begin() + std::min<std::ptrdiff_t>(m_steps.done(), std::ssize(m_all) - 1);
    else if (now == m_all.end())
        now = std::find_if(m_all.begin(), m_all.end(),
                           [](const StripWork &work) { return work.next.has_value(); });
    if (now == m_all.end() || m_all.empty())
        m_work = m_all.empty() ? StripWork() : m_all.back();
    else
        m_work = *now;
    const auto stitched = static_cast<int>(m_workspace.project().made.blocks.size());
    if (stitched != m_stitched)
        m_positions.erase(m_work.strip); // the next block is what she wants to see now
    m_stitched = stitched;
    emit changed();
    emit positionChanged();
}

void HoopModel::setStrip(int strip)
{
    const bool known =
        std::any_of(m_all.begin(), m_all.end(), [&](const StripWork &work) { return work.strip == strip; });
    if (known && strip != this->strip())
        m_steps.setStrip(strip);
}

bool HoopModel::marking() const
{
    const QString doing = m_steps.doing();
    return doing == QStringLiteral("mark-strip") || doing == QStringLiteral("layer");
}

bool HoopModel::layering() const
{
    return m_steps.doing() == QStringLiteral("layer");
}

FigureView HoopModel::stripLength() const
{
    return m_all.empty() ? FigureView() : figureOf(m_work.usable, m_workspace.project().marks());
}

/// The stitched block that is trimmed of its patches, or pressed.
const MadeBlock *HoopModel::madeInHand() const
{
    const std::string name = m_steps.block().toStdString();
    if (name.empty() || m_steps.doing() == QStringLiteral("stitch-block"))
        return nullptr;
    return m_workspace.project().made.goodBlock(name);
}

int HoopModel::position() const
{
    const auto held = m_positions.find(m_work.strip);
    const int last = std::max(static_cast<int>(m_work.places.size()) - 1, 0);
    if (const MadeBlock *made = madeInHand(); made && made->strip == m_work.strip)
        return std::clamp(static_cast<int>(made->place) - 1, 0, last);
    if (held != m_positions.end())
        return std::clamp(held->second, 0, last);
    return marking() || !m_work.next ? 0 : std::clamp(static_cast<int>(m_work.next->place) - 1, 0, last);
}

void HoopModel::setPosition(int position)
{
    const int bounded = std::clamp(position, 0, std::max(static_cast<int>(m_work.places.size()) - 1, 0));
    if (bounded == this->position())
        return;
    m_positions[m_work.strip] = bounded;
    emit positionChanged();
}

const StripPlace *HoopModel::at() const
{
    const auto index = static_cast<std::size_t>(position());
    return index < m_work.places.size() ? &m_work.places[index] : nullptr;
}

bool HoopModel::atNext() const
{
    return at() && m_work.next && at()->place == m_work.next->place;
}

QString HoopModel::block() const
{
    return at() && !m_steps.trial() ? toQt(at()->block) : QString();
}

/// The strip that takes the next block.
const StripWork *HoopModel::stitchedNext() const
{
    return m_steps.doing() == QStringLiteral("stitch-block") ? openStrip(m_all, m_steps.strip()) : nullptr;
}

QString HoopModel::elsewhereSays() const
{
    const StripWork *hand = stitchedNext();
    if (!hand || (hand->strip == m_work.strip && atNext()))
        return {};
    //: on a button: the picture goes to that block; %1 is a block's name, "B2"
    return tr("Show block %1").arg(toQt(hand->next->block));
}

void HoopModel::showInHand()
{
    const StripWork *hand = stitchedNext();
    if (!hand)
        return;
    const auto strip = static_cast<int>(hand->strip);
    m_positions.erase(strip);
    setStrip(strip);
    emit positionChanged();
}

QString HoopModel::stripSays() const
{
    //: the strip of the trial, which is none of the piece's
    return m_steps.trial() ? tr("Trial strip") : tr("Strip %1 of %2").arg(strip()).arg(stripCount());
}

QString HoopModel::head() const
{
    QString number = stripSays();
    if (m_steps.trial() && !marking())
        return number; // the test block is told by itself
    return marking() ? tr("%1, flat cloth").arg(number)
                     //: the strip is shorter now: stitching has drawn the cloth in
                     : tr("%1, as drawn in by the stitching").arg(number);
}

FigureView HoopModel::figure() const
{
    const StripPlace *place = at();
    if (!place)
        return m_steps.figure();
    const std::string index = std::to_string(position());
    const Project &project = m_workspace.project();
    if (layering())
        return planFigure(project, m_workspace.plan(), "strip.width");
    if (marking())
        return planFigure(project, m_workspace.plan(), "strip.centres." + index);
    const QString doing = m_steps.doing();
    if (doing != QStringLiteral("stitch-block"))
        return m_steps.figure();
    if (atNext())
        return planFigure(project, m_workspace.plan(), gapKey(m_workspace.plan(), *m_work.next));
    const std::vector<Length> &planned = m_workspace.plan().strip.drawn;
    const auto number = static_cast<std::size_t>(position());
    if (number < planned.size() && planned[number] == place->drawn)
        return planFigure(project, m_workspace.plan(), "strip.drawn." + index);
    return figureOf(place->drawn, project.marks());
}

QString HoopModel::title() const
{
    const StripPlace *place = at();
    const bool stitching = m_steps.doing() == QStringLiteral("stitch-block");
    if (!place || (!marking() && !stitching) || layering())
        return m_steps.title();
    const QString block = m_steps.trial() ? QString() : toQt(place->block);
    if (marking())
        //: %1 is a block's name, "B2": the middle of the block, to be ticked on the strip
        return block.isEmpty() ? tr("Centre %1").arg(place->place) : tr("Centre of %1").arg(block);
    if (atNext())
        //: gap: cloth between two outlines on the strip
        return m_work.next->first ? tr("%1 starts").arg(block) : tr("Gap to %1").arg(block);
    return place->stitched ? tr("%1 started").arg(block) : tr("%1 starts").arg(block);
}

QString HoopModel::figureSays() const
{
    const bool stitching = m_steps.doing() == QStringLiteral("stitch-block");
    if (!at() || (!marking() && !stitching))
        return {};
    if (layering())
        //: how wide back, batting and front of a hoop strip are cut, beside the figure
        return tr("wide, each layer");
    if (stitching && atNext() && !m_work.next->first)
        return tr("from the last outline");
    //: zero end: the end of the strip everything is measured from
    return tr("from the zero end");
}

FigureView HoopModel::second() const
{
    const auto next = static_cast<std::size_t>(position()) + 1;
    if (!marking() || layering() || next >= m_work.places.size())
        return {};
    return figureOf(m_work.places[next].centre, m_workspace.project().marks());
}

QString HoopModel::centreSays() const
{
    if (layering())
        return {};
    const Marks marks = m_workspace.project().marks();
    if (marking()) {
        const auto next = static_cast<std::size_t>(position()) + 1;
        return next < m_work.places.size() ? tr("Next centre %1").arg(bare(m_work.places[next].centre, marks))
                                           : QString();
    }
    const bool stitching = m_steps.doing() == QStringLiteral("stitch-block");
    if (!stitching || !atNext())
        return {};
    const QString centre = bare(m_work.next->centre, marks);
    return marksOff().isEmpty()
               ? tr("Centre %1").arg(centre)
               //: the block's centre; the tick made for it on the strip before lies elsewhere
               : tr("Centre %1, not at its mark").arg(centre);
}

QStringList HoopModel::marksOff() const
{
    const auto &next = m_work.next;
    if (!next || next->first || (next->start - next->expected).magnitude() < m_workspace.project().finest)
        return {};
    const std::vector<Step> &all = m_workspace.steps();
    const bool marked = std::any_of(all.begin(), all.end(), [this](const Step &step) {
        return step.does == Does::MarkStrip && !step.trial && step.done >= m_work.strip;
    });
    QStringList blocks;
    for (const StripPlace &place : m_work.places)
        if (marked && !place.stitched && !place.block.empty())
            blocks.append(toQt(place.block));
    return blocks;
}

QString HoopModel::expectSays() const
{
    if (marking() || !m_work.next || m_work.next->first)
        return {};
    const Marks marks = m_workspace.project().marks();
    const QString expected = braced(m_work.next->expected, marks);
    if (m_work.next->start != m_work.next->expected) {
        QString starts = tr("The next outline starts at %1; the plan expected %2.")
                             .arg(braced(m_work.next->start, marks), expected);
        const QString off = marksOff().join(QStringLiteral(", "));
        if (off.isEmpty())
            return starts;
        //: %1 lists blocks, "A3, A4": the ticks made for their centres on the strip before
        return starts + u' ' +
               tr("The centres marked before do not hold any more: %1. Go by the gap from the last outline.")
                   .arg(off);
    }
    return tr("The plan expects the next outline to start at %1 on the drawn-in cloth.").arg(expected);
}

QString HoopModel::overSays() const
{
    // The strip before tells it until the one it is carried to has a block of its own.
    const StripWork *tooShort = m_work.over ? &m_work : nullptr;
    const bool begun = !m_work.places.empty() && m_work.places.front().stitched;
    for (const StripWork &work : m_all)
        if (!tooShort && !begun && work.over && work.strip == m_work.strip - 1)
            tooShort = &work;
    if (!tooShort)
        return {};
    const Marks marks = m_workspace.project().marks();
    const NextPlace &over = *tooShort->over;
    QString says =
        tr("Block %1 no longer fits: %2 short.").arg(toQt(over.block), braced(over.missing, marks));
    if (over.fitsWithTail)
        //: tail: a waste strip sewn to the end so that the frame has cloth to hold
        says += u' ' + tr("Sew a waste tail to the far end,");
    if (over.fitsWithGap)
        says += u' ' + tr("take a gap of %1,").arg(braced(*over.fitsWithGap, marks));
    return says + u' ' +
           (over.fitsWithTail || over.fitsWithGap ? tr("or carry it to the next strip.")
                                                  : tr("It is carried to the next strip."));
}

bool HoopModel::canReZero() const
{
    return !marking() && !m_work.places.empty() && m_work.places.front().stitched && !m_session.readOnly();
}

Length HoopModel::endNow() const
{
    return m_work.far;
}

FigureView HoopModel::lastEnd() const
{
    return canReZero() ? figureOf(endNow(), m_workspace.project().marks()) : FigureView();
}

QVariantMap HoopModel::commitEnd(Length end)
{
    if (end < m_workspace.plan().block.outline.along || end > m_work.usable)
        return answer(
            false, tr("The last outline ends between %1 and %2.")
                       .arg(figureText(m_workspace.plan().block.outline.along, m_workspace.project().marks()),
                            figureText(m_work.usable, m_workspace.project().marks())));
    Project next = m_workspace.project();
    next.made.recordOf(m_work.strip).ended = end;
    if (!m_workspace.commit("re-zero", next))
        return answer(false, tr("That could not be saved."));
    return answer(true, overSays());
}

QVariantMap HoopModel::reZero(const QString &text)
{
    const System system = m_workspace.project().system;
    const auto read = readLength(text.toStdString(), system);
    if (!read)
        return answer(false, sentence(read.error(), system));
    return commitEnd(read.value());
}

void HoopModel::nudgeEnd(int marks)
{
    if (canReZero())
        (void)commitEnd(endNow().nearestTo(m_workspace.project().finest) +
                        m_workspace.project().finest * marks);
}

} // namespace matside
