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

QVariantList StepModel::wrongAnswers() const
{
    QVariantList list;
    const Step *step = current();
    if (!step)
        return list;
    for (const Mishap mishap : mishapsAt(*step)) {
        const std::string name = nameOf(mishap);
        list.append(
            QVariantMap{{QStringLiteral("kind"), toQt(name)},
                        {QStringLiteral("says"), wordsOrCode(mishapWords(), name)},
                        {QStringLiteral("asks"),
                         asksOf(mishap) == Asks::Nothing ? QString() : wordsOrCode(askedWords(), name)}});
    }
    return list;
}

QVariantMap StepModel::wrong(const QString &kind, const QString &measure)
{
    const Step *step = current();
    const auto mishap = mishapNamed(kind.toStdString());
    if (!step || !mishap || m_session.readOnly())
        return answer(false, tr("That could not be recorded."));
    std::optional<Length> length;
    if (!measure.isEmpty()) {
        const System system = m_workspace.project().system;
        const auto read = readLength(measure.toStdString(), system);
        if (!read)
            return answer(false, sentence(read.error(), system));
        if (read.value() < Length())
            return answer(false, tr("That cannot be less than nothing."));
        length = read.value();
    }
    const Project before = m_workspace.project();
    const std::vector<Step> all = m_workspace.steps();
    const Answered told = answerTo(before, m_workspace.plan(), all, *step, *mishap, length, m_strip);
    if (told.changed &&
        !m_workspace.commit(*mishap == Mishap::DoneAlready ? "done" : "wrong", told.next, step->id))
        return answer(false, tr("That could not be recorded."));
    QStringList lines;
    for (const Said &line : told.says)
        lines.append(sentence(line, before, all));
    m_answer = lines.join(QStringLiteral("\n"));
    m_mayRemake = told.mayRemake;
    emit answered();
    emit changed();
    return answer(true, m_answer);
}

void StepModel::remake()
{
    if (m_mayRemake)
        (void)wrong(toQt(nameOf(Mishap::Spoiled)), QString());
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
