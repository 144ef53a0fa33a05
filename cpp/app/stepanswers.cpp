// SPDX-License-Identifier: MIT
//
// What a step answers: the trial's measures.
#include "app/figures.h"
#include "app/reply.h"
#include "app/stepmodel.h"
#include "app/wording.h"
#include "bench/sides.h"
#include "length/read.h"
#include "plan/plan.h"

namespace matside {

namespace {

/// A value of the trial: typed, or as it was planned.
struct Asked {
    const char *name;
    QString says;
    Length planned;
    bool negative = false;
};

std::vector<Asked> askedOf(const QString &kind, const Plan &plan)
{
    if (kind == QStringLiteral("measure-test"))
        return {{"sentAlong", StepModel::tr("sent, along"), plan.block.sent.along},
                {"sentAcross", StepModel::tr("sent, across"), plan.block.sent.across},
                {"outlineAlong", StepModel::tr("measured outline, along"), plan.block.outline.along},
                {"outlineAcross", StepModel::tr("measured outline, across"), plan.block.outline.across}};
    const bool filled = plan.sashing.filler.has_value();
    // A filled sashing has its batting in the gap: what is left beside it is the seam's doing.
    if (kind == QStringLiteral("test-join"))
        return {{"seam", StepModel::tr("seam, as sewn"), plan.basis.seam},
                {"gap",
                 //: beside the batting laid into the sashing of the test join, both sides added up
                 filled ? StepModel::tr("gap beside the batting, both sides together")
                        : StepModel::tr("gap between the allowances"),
                 filled ? Length() : plan.sashing.allowanceGap, true},
                {"between", StepModel::tr("distance between the seams, on the back"), plan.sashing.finished}};
    return {};
}

/// What the trial's measures change for what is cut and bought; empty when they change nothing of it.
QString changesOf(const Plan &before, const Plan &after)
{
    if (before.strip.strips == after.strip.strips && before.strip.perStrip == after.strip.perStrip)
        return {};
    return StepModel::tr(
               "By these measures: %1 hoop strips of %2 blocks, before %3 of %4. Look at Shop again.")
        .arg(after.strip.strips)
        .arg(after.strip.perStrip)
        .arg(before.strip.strips)
        .arg(before.strip.perStrip);
}

} // namespace

QVariantList StepModel::trialFields() const
{
    QVariantList list;
    const Marks marks = m_workspace.project().marks();
    for (const Asked &asked : askedOf(trialKind(), m_workspace.plan()))
        list.append(QVariantMap{{QStringLiteral("name"), QString::fromLatin1(asked.name)},
                                {QStringLiteral("says"), asked.says},
                                {QStringLiteral("text"), figureText(asked.planned, marks)},
                                {QStringLiteral("entry"), QString()}});
    return list;
}

QVariantMap StepModel::enterTrial(const QString &kind, const QVariantMap &values)
{
    const System system = m_workspace.project().system;
    std::vector<Length> read;
    for (const Asked &asked : askedOf(kind, m_workspace.plan())) {
        const QString text = values.value(QString::fromLatin1(asked.name)).toString();
        if (text.isEmpty()) {
            read.push_back(asked.planned);
            continue;
        }
        const auto length = readLength(text.toStdString(), system);
        if (!length)
            //: %1 is what was measured, %2 what is wrong with the entry
            return answer(false, tr("%1: %2").arg(asked.says, sentence(length.error(), system)));
        if (!asked.negative && length.value() <= Length())
            return answer(false, tr("%1 must be more than nothing.").arg(asked.says));
        read.push_back(length.value());
    }
    Project next = m_workspace.project();
    if (read.size() == 4)
        next.made.testBlock = TestBlock{{read[0], read[1]}, {read[2], read[3]}, {}};
    else if (read.size() == 3)
        next.made.testJoin = TestJoin{read[0], read[1], read[2], next.loft, {}};
    else
        return answer(false, tr("There is nothing to measure here."));
    const Plan after = matside::plan(next);
    for (const Problem &problem : after.problems)
        if (problem.at.starts_with("/made"))
            return answer(false, sentence(problem, next.marks()));
    const QString changes = changesOf(m_workspace.plan(), after);
    const bool saved = m_workspace.commit("trial", next);
    if (saved && !changes.isEmpty())
        m_session.tell(changes);
    return answer(saved, saved ? QString() : tr("That could not be saved."));
}

} // namespace matside
