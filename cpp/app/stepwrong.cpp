// SPDX-License-Identifier: MIT
//
// Something's wrong: what is offered at a step, and what each answer means.
#include "app/reply.h"
#include "app/stepmodel.h"
#include "app/wording.h"
#include "bench/mishap.h"
#include "bench/record.h"
#include "length/read.h"

namespace matside {

namespace {

/// What is measured is another thing at the edge, and for a row, than for a block.
std::string askedAt(const std::string &mishap, const Step &step)
{
    if (mishap == nameOf(Mishap::CutInto))
        return step.station == Station::Edge ? "cut-into-edge" : mishap;
    if (mishap == nameOf(Mishap::SizeOff))
        return step.does == Does::TrimBlock ? mishap : step.does == Does::JoinRow ? "row-off" : "piece-off";
    return mishap;
}

} // namespace

QVariantList StepModel::wrongAnswers() const
{
    QVariantList list;
    const Step *step = current();
    if (!step)
        return list;
    for (const Mishap mishap : mishapsAt(*step)) {
        const std::string name = nameOf(mishap);
        const Asks asks = asksOf(mishap);
        // A block that is in hand anyway need not be asked for.
        const bool block = asks == Asks::Block && !goesBlockByBlock(*step);
        const bool measure = asks != Asks::Nothing && asks != Asks::Block;
        list.append(QVariantMap{
            {QStringLiteral("kind"), toQt(name)},
            {QStringLiteral("says"), wordsOrCode(mishapWords(), name)},
            {QStringLiteral("block"), block},
            {QStringLiteral("asks"), measure ? wordsOrCode(askedWords(), askedAt(name, *step)) : QString()}});
    }
    return list;
}

QString StepModel::lastAnswer() const
{
    return wholeOf(m_answer);
}

QVariantList StepModel::lastActs() const
{
    return listOf(m_answer);
}

QStringList StepModel::blocksMade() const
{
    QStringList here;
    QStringList spares;
    for (const MadeBlock &block : m_workspace.project().made.blocks)
        if (block.good())
            (block.block.starts_with('+') ? spares : here).append(toQt(block.block));
    here.sort();
    return here + spares;
}

QVariantMap StepModel::wrong(const QString &kind, const QString &measure)
{
    const auto mishap = mishapNamed(kind.toStdString());
    if (!current() || !mishap || m_session.readOnly())
        return answer(false, tr("That could not be recorded."));
    if (asksOf(*mishap) == Asks::Block || measure.isEmpty())
        return answerMishap(*mishap, {}, measure);
    const System system = m_workspace.project().system;
    const auto read = readLength(measure.toStdString(), system);
    if (!read)
        return answer(false, sentence(read.error(), system));
    if (read.value() < Length())
        return answer(false, tr("That cannot be less than nothing."));
    return answerMishap(*mishap, read.value(), {});
}

QVariantMap StepModel::answerMishap(Mishap mishap, std::optional<Length> measure, const QString &block)
{
    const Step step = *current();
    const Project before = m_workspace.project();
    const std::vector<Step> all = m_workspace.steps();
    const Answered told =
        answerTo(before, m_workspace.plan(), all, step, mishap, measure, m_strip, block.toStdString());
    if (told.changed &&
        !m_workspace.commit(mishap == Mishap::DoneAlready ? "done" : "wrong", told.next, step.id))
        return answer(false, tr("That could not be recorded."));
    m_answer.clear();
    for (const Said &line : told.says)
        for (Act &act : actsOf(line, before, all))
            m_answer.push_back(std::move(act));
    m_mayRemake = told.mayRemake;
    m_asksBlock = told.asksBlock;
    emit answered();
    emit changed();
    return answer(true, lastAnswer());
}

void StepModel::remake(const QString &block)
{
    if (m_mayRemake && current() && !m_session.readOnly() && m_asksBlock != block.isEmpty())
        (void)answerMishap(Mishap::Spoiled, {}, block);
    m_mayRemake = false;
    emit answered();
}

void StepModel::newBobbin()
{
    (void)wrong(toQt(nameOf(Mishap::ThreadRanOut)), QString());
}

QString StepModel::block() const
{
    const Step *step = current();
    return step ? toQt(blockInHand(m_workspace.project(), m_workspace.plan(), *step, m_strip)) : QString();
}

void StepModel::setStrip(int strip)
{
    if (strip == m_strip)
        return;
    m_strip = strip;
    emit changed();
}

} // namespace matside
