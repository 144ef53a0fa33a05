// SPDX-License-Identifier: MIT
//
// What a step answers: the trial's measures, and the sum behind a figure.
#include "app/figures.h"
#include "app/reply.h"
#include "app/stepmodel.h"
#include "app/sumwords.h"
#include "app/wording.h"
#include "bench/sides.h"
#include "length/read.h"
#include "plan/working.h"
#include "project/preset.h"

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

/// A figure's name; one of a row of figures is told with its number.
QString nameOfFigure(const std::string &key)
{
    const auto end = key.find_last_of('.');
    const bool numbered = end != std::string::npos && end + 1 < key.size() &&
                          key.find_first_not_of("0123456789", end + 1) == std::string::npos;
    if (!numbered)
        return wordsOrCode(figureWords(), key);
    //: one of a row of figures: its name and its number, "centre on the strip, number 2"
    return StepModel::tr("%1, number %2")
        .arg(wordsOrCode(figureWords(), key.substr(0, end)))
        .arg(std::stoi(key.substr(end + 1)) + 1);
}

QString plainTerm(const Term &term, Marks marks)
{
    if (const Length *length = std::get_if<Length>(&term.value))
        return figureText(*length, marks);
    if (const std::int64_t *count = std::get_if<std::int64_t>(&term.value))
        return QString::number(*count);
    return toQt(writeShare(std::get<Share>(term.value)));
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

QVariantList StepModel::workingFor(const QString &key) const
{
    QVariantList list;
    const Project &project = m_workspace.project();
    const auto working = workingOf(project, m_workspace.plan(), key.toStdString());
    if (!working)
        return list;
    for (const Term &term : working->terms) {
        const bool deeper = !term.figure.empty() && workingOf(project, m_workspace.plan(), term.figure);
        // A size that off-size blocks have in common was never entered, though it stands where hers stood.
        const bool common =
            (term.entered == "/blocks/width" && takenAsCommon(project, project.blocks.width)) ||
            (term.entered == "/blocks/height" && takenAsCommon(project, project.blocks.height));
        const Whose whose = term.entered.empty() ? Whose::Reckoned : whoseIs(project, term.entered);
        list.append(QVariantMap{{QStringLiteral("name"), wordsOrCode(termWords(), term.name)},
                                {QStringLiteral("text"), plainTerm(term, project.marks())},
                                {QStringLiteral("figureKey"), deeper ? toQt(term.figure) : QString()},
                                {QStringLiteral("entered"), whose == Whose::Hers && !common},
                                {QStringLiteral("common"), whose == Whose::Hers && common},
                                {QStringLiteral("preset"), whose == Whose::Preset}});
    }
    return list;
}

QString StepModel::workingSentence(const QString &key) const
{
    const auto working = workingOf(m_workspace.project(), m_workspace.plan(), key.toStdString());
    if (!working)
        return {};
    const FigureView figure = planFigure(m_workspace.project(), m_workspace.plan(), key.toStdString());
    return QStringLiteral("%1: %2 = {%3}")
        .arg(nameOfFigure(working->figure), sumInWords(working->formula), figure.text);
}

} // namespace matside
