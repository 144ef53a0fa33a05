// SPDX-License-Identifier: MIT
#include "app/blockmeasure.h"

#include "app/figures.h"
#include "app/findings.h"
#include "app/readings.h"
#include "app/trimhold.h"
#include "bench/mishap.h"
#include "bench/sides.h"

#include <algorithm>
#include <iterator>

namespace matside {

namespace {

/// How many of the sentences are read at a glance; the first is told whatever its length.
qsizetype toldAtOnce(const QStringList &lines)
{
    constexpr qsizetype most = 100;
    qsizetype letters = 0, count = 0;
    for (const QString &line : lines) {
        letters += line.size() + 1;
        if (count > 0 && letters > most)
            break;
        ++count;
    }
    return count;
}

} // namespace

BlockMeasure::BlockMeasure(Workspace &workspace, Session &session, StepModel &steps)
    : m_workspace(workspace), m_session(session), m_steps(steps)
{
    connect(&m_steps, &StepModel::changed, this, [this] {
        if (m_inHand != m_steps.block())
            begin();
    });
}

void BlockMeasure::begin()
{
    beginWith(m_steps.block());
}

void BlockMeasure::beginOther()
{
    const std::string other = nextToMeasure(m_workspace.project(), m_steps.block().toStdString());
    beginWith(other.empty() ? m_steps.block() : toQt(other));
}

void BlockMeasure::beginWith(const QString &name)
{
    m_inHand = m_steps.block();
    m_touched = false;
    m_block = name;
    const Project &project = m_workspace.project();
    const MadeBlock *block = project.made.goodBlock(m_block.toStdString());
    m_readings = readingsOfRectangle(m_workspace.plan().block.outline);
    if (block && block->outline)
        m_readings = readingsOfRectangle({(*block->outline)[0], (*block->outline)[1]});
    // Readings stand on her ruler's marks: that is how they are read.
    Readings shown = onMarks(m_readings, project.finest);
    const auto before = block ? readingsOf(*block) : std::nullopt;
    m_readings = before ? onMarks(*before, project.finest) : shown;
    m_measured = before.has_value();
    // Of what was kept before, a reading that stands as it was shown may never have been taken. Readings that
    // disagree are kept only when all of them were; and where all six stand so, she said that they do.
    m_taken = allTaken;
    judgeIt();
    if (m_finding->kind == FindingKind::MeasureAgain || (before && m_readings == shown))
        return;
    for (int at = 0; at < readingCount; ++at)
        m_taken[static_cast<std::size_t>(at)] = readingAt(m_readings, at) != readingAt(shown, at);
    judgeIt();
}

void BlockMeasure::judgeIt()
{
    const Project &project = m_workspace.project();
    m_finding = judge(m_readings, Measured::Outline, targetOf(project, m_workspace.plan()),
                      usualTolerances(project.system), project.marks(), m_taken);
    m_finding =
        besideOthers(*m_finding, m_block.toStdString(), m_readings, common(), project, m_workspace.plan());
    emit changed();
}

void BlockMeasure::take(int reading)
{
    m_measured = m_touched = true;
    m_taken[static_cast<std::size_t>(reading)] = true;
    judgeIt();
}

QVariantList BlockMeasure::readings() const
{
    QVariantList list;
    for (int at = 0; at < readingCount; ++at) {
        QVariantMap view = readingView(m_readings, at, m_workspace.project().marks());
        view[QStringLiteral("taken")] = m_taken[static_cast<std::size_t>(at)];
        view[QStringLiteral("suspect")] =
            m_finding && m_finding->suspect && static_cast<int>(*m_finding->suspect) == at;
        list.append(view);
    }
    return list;
}

bool BlockMeasure::mayKeep() const
{
    return !m_finding || m_finding->does != Remedy::ReadTheRest;
}

QString BlockMeasure::asShownSays() const
{
    const auto left = std::count(m_taken.begin(), m_taken.end(), false);
    if (!m_measured || left == 0 || !mayKeep())
        return {};
    //: of the six readings of a block
    return tr("%1 of 6 not yet read").arg(left);
}

bool BlockMeasure::onlyIfAsShown() const
{
    return m_finding && m_finding->kind == FindingKind::Plain && !asShownSays().isEmpty();
}

QString BlockMeasure::kind() const
{
    return m_finding ? toQt(nameOf(m_finding->kind)) : QString();
}

QString BlockMeasure::verdict() const
{
    if (!m_finding || !m_measured)
        return {};
    if (onlyIfAsShown())
        return tr("Square enough, if the rest is as shown.");
    const Project &project = m_workspace.project();
    if (trimmedToCommon(*m_finding, project)) {
        const MadeBlock *block = project.made.goodBlock(m_block.toStdString());
        return trimmedToCommonSays(
            *m_finding, block ? stitchedFor(*block, m_workspace.plan(), project.marks()) : std::nullopt,
            project);
    }
    return verdictText(*m_finding, project.marks());
}

QString BlockMeasure::remedy() const
{
    if (!m_finding || !m_measured)
        return {};
    if (onlyIfAsShown())
        return tr("Measure the rest before you cut.");
    if (trimmedToCommon(*m_finding, m_workspace.project()))
        return trimmedToCommonDoes(m_workspace.plan(), m_workspace.project().marks());
    const auto size = common();
    if (asksCommon(size)) {
        const QStringList lines = commonTold(size);
        return lines.first(toldAtOnce(lines)).join(u' ');
    }
    return remedyBeside(*m_finding, size, m_workspace.project(), m_workspace.plan());
}

QVariantList BlockMeasure::corners() const
{
    return m_finding ? cornersOf(departingOf(*m_finding), times()) : QVariantList();
}

QVariantList BlockMeasure::planned() const
{
    return m_finding ? plannedCorners(departingOf(*m_finding)) : QVariantList();
}

void BlockMeasure::nudge(int reading, int marks)
{
    if (!nudgeReading(m_readings, reading, marks, m_workspace.project().finest))
        return;
    take(reading);
}

QString BlockMeasure::enter(int reading, const QString &text)
{
    QString wrong = typeReading(m_readings, reading, text, m_workspace.project().system);
    if (!wrong.isEmpty())
        return wrong;
    take(reading);
    return {};
}

bool BlockMeasure::save()
{
    Project next = m_workspace.project();
    MadeBlock *block = next.made.goodBlock(m_block.toStdString());
    if (!block || m_session.readOnly() || !mayKeep())
        return false;
    block->sides = m_readings.sides;
    block->diagonals = m_readings.diagonals;
    return m_workspace.commit("measured", next);
}

Project BlockMeasure::asRead() const
{
    Project project = m_workspace.project();
    MadeBlock *block = project.made.goodBlock(m_block.toStdString());
    if (block && m_touched && mayKeep()) {
        block->sides = m_readings.sides;
        block->diagonals = m_readings.diagonals;
    }
    return project;
}

std::optional<CommonSize> BlockMeasure::common() const
{
    return commonOf(asRead(), m_workspace.plan());
}

bool BlockMeasure::offersCommon(const std::optional<CommonSize> &size) const
{
    if (!size || size->outline == m_workspace.plan().block.outline)
        return false;
    // Of a block that is made again, or measured again, no size is taken with it: one thing at a time.
    return !m_measured || !m_finding ||
           (m_finding->kind != FindingKind::Remake && m_finding->kind != FindingKind::MeasureAgain);
}

bool BlockMeasure::mayTakeCommon() const
{
    return offersCommon(common()) && !m_session.readOnly();
}

int BlockMeasure::toRead() const
{
    if (!m_measured || !m_finding || m_finding->kind != FindingKind::MeasureAgain)
        return -1;
    if (m_finding->suspect)
        return static_cast<int>(*m_finding->suspect);
    return m_finding->missing.empty() ? -1 : static_cast<int>(m_finding->missing.front());
}

bool BlockMeasure::asksCommon(const std::optional<CommonSize> &size) const
{
    return m_measured && m_finding && m_finding->kind == FindingKind::CommonSize && offersCommon(size);
}

QStringList BlockMeasure::commonTold(const std::optional<CommonSize> &size) const
{
    QStringList lines;
    if (!size)
        return lines;
    if (offersCommon(size))
        lines += effectOf(*size);
    for (const std::string &name : size->outliers)
        lines.append(tr("%1 is too small for the others: make it again.").arg(toQt(name)));
    return lines;
}

QStringList BlockMeasure::commonLines() const
{
    const auto size = common();
    const QStringList lines = commonTold(size);
    return asksCommon(size) ? lines.mid(toldAtOnce(lines)) : lines;
}

QString BlockMeasure::commonSays() const
{
    return commonTold(common()).join(u' ');
}

QStringList BlockMeasure::effectOf(const CommonSize &common) const
{
    const Project &project = m_workspace.project();
    const Marks marks = project.marks();
    const Project with = withCommon(common);
    const Plan after = matside::plan(with);
    QStringList lines;
    lines.append(tr("Common size %1: trim to %2; the piece finishes %3 × %4.")
                     .arg(braced(common.outline.along, marks), braced(after.block.trimmed.along, marks),
                          braced(after.size.finished.along, marks),
                          braced(after.size.finished.across, marks)));
    const auto most = [&](Length Concerned::*way) {
        const auto found =
            std::max_element(common.concerned.begin(), common.concerned.end(),
                             [&](const Concerned &a, const Concerned &b) { return a.*way < b.*way; });
        return found != common.concerned.end() && (*found).*way > Length() ? &*found : nullptr;
    };
    if (after.table)
        //: table: %1 and %2 are what is left of the table at the sides and at the ends
        lines.append(
            tr("Of the table %1 and %2 stay clear.")
                .arg(braced(after.table->reveal.along, marks), braced(after.table->reveal.across, marks)));
    if (after.sashing.longs > 0)
        lines.append(tr("Long sashings %1.").arg(braced(after.sashing.longLength, marks)));
    if (const Concerned *block = most(&Concerned::shows))
        //: %1 is a block's name, "A2": at the common size its stitched line lies outside the seam by %2
        lines.append(tr("A stitched line will show then: that of %1, by %2.")
                         .arg(toQt(block->block), braced(block->shows, marks, Round::Fine)));
    if (const Concerned *block = most(&Concerned::loses))
        lines.append(tr("%1 loses %2 a side into the seams.")
                         .arg(toQt(block->block), braced(block->loses, marks, Round::Fine)));
    for (const std::string &name : common.becomeWrong)
        lines.append(tr("%1 is cut already for another size.").arg(toQt(name)));
    const std::vector<Step> all = m_workspace.steps();
    std::vector<Step> cut;
    std::copy_if(all.begin(), all.end(), std::back_inserter(cut),
                 [](const Step &step) { return step.station == Station::Cut; }); // the blocks are named above
    for (const std::string &id : madeToOldMeasure(cut, matside::steps(with, after), true))
        lines.append(sentence(Said{"becomes-wrong", {id}}, project, all));
    return lines;
}

Project BlockMeasure::withCommon(const CommonSize &common) const
{
    return withCommonSize(asRead(), common.outline);
}

void BlockMeasure::takeCommonSize()
{
    if (!mayTakeCommon())
        return;
    (void)m_workspace.commit("common-size", withCommon(*common()));
    judgeIt();
}

} // namespace matside
