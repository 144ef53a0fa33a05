// SPDX-License-Identifier: MIT
//
// What the test join taught, and the two ways to mend its gap.
#include "app/figures.h"
#include "app/joinmodel.h"
#include "app/joinwords.h"
#include "app/reply.h"
#include "app/wording.h"

#include <algorithm>

namespace matside {

namespace {

/// Strips that are cut stay as wide as they are.
bool bandsCut(const Project &project)
{
    return std::any_of(project.made.cut.begin(), project.made.cut.end(),
                       [](const MadeCut &cut) { return cut.does.starts_with("cut-band") && cut.count > 0; });
}

} // namespace

std::optional<JoinAnswer> JoinModel::answered() const
{
    const Project &project = m_workspace.project();
    if (!project.made.testJoin)
        return std::nullopt;
    const Plan &plan = m_workspace.plan();
    return answerOf(*project.made.testJoin, plan.basis, plan.sashing.cutFront,
                    usualTolerances(project.system), plan.sashing.filler.value_or(Length()));
}

bool JoinModel::byStrip() const
{
    const auto &join = m_workspace.project().made.testJoin;
    return join && join->mend == MendedBy::Strip;
}

bool JoinModel::tested() const
{
    return answered().has_value();
}

SectionView JoinModel::testSection() const
{
    SectionView view = section();
    const auto found = answered();
    if (!found)
        return view;
    const Plan &plan = m_workspace.plan();
    const Length seam = m_workspace.project().made.testJoin->seam.value_or(plan.basis.allowance);
    const Length filler = plan.sashing.filler.value_or(Length());
    view.tested = true;
    view.seamMm = seam.asMm();
    view.allowanceMm = view.seamMm;
    view.gapMm = found->gap.asMm();
    view.finishedMm = (seam * 2 + filler + found->gap).asMm();
    return view;
}

SectionView JoinModel::trialSection() const
{
    SectionView view = section();
    const Plan &plan = m_workspace.plan();
    const auto gap = m_steps.trialReading("gap");
    const Length seam = m_steps.trialReading("seam").value_or(plan.basis.seam);
    if (!gap)
        return view;
    view.tested = true;
    view.seamMm = view.allowanceMm = seam.asMm();
    view.gapMm = gap->asMm();
    view.finishedMm = (seam * 2 + plan.sashing.filler.value_or(Length()) + *gap).asMm();
    return view;
}

FigureView JoinModel::testSeam() const
{
    const Project &project = m_workspace.project();
    return project.made.testJoin && project.made.testJoin->seam
               ? figureOf(*project.made.testJoin->seam, project.marks(), Round::Fine)
               : seam();
}

FigureView JoinModel::testGap() const
{
    const auto found = answered();
    return found && found->gap != Length()
               ? figureOf(found->gap.magnitude(), m_workspace.project().marks(), Round::Fine)
               : FigureView();
}

QString JoinModel::testSays() const
{
    const auto found = answered();
    if (!found)
        return {};
    const QString by = braced(found->gap.magnitude(), m_workspace.project().marks(), Round::Fine);
    const bool filled = m_workspace.plan().sashing.filler.has_value();
    if (found->gap < Length() && filled)
        return tr("Test join: batting and allowances overlap by %1.").arg(by);
    if (found->gap < Length())
        //: the two allowances inside a sashing lie over each other
        return tr("Test join: the allowances overlap by %1.").arg(by);
    if (found->gap > Length())
        return tr("Test join: a gap of %1.").arg(by);
    return filled ? tr("Test join: batting and allowances meet.") : tr("Test join: the allowances meet.");
}

QString JoinModel::mendSays() const
{
    const auto found = answered();
    if (!found)
        return {};
    const Plan &plan = m_workspace.plan();
    const Marks marks = m_workspace.project().marks();
    const QString seam = braced(plan.basis.nextSeam, marks, Round::Fine);
    if (byStrip())
        return tr("Front strips are cut %1 wide, sewn with %2 as before.")
            .arg(laidByRuler(plan.sashing.cutFront, marks), seam);
    return found->good ? tr("That may stay. A seam of %1 would be just right; the plan goes by it.").arg(seam)
                       : tr("Sew a seam of %1 from here on; the plan goes by it.").arg(seam);
}

QStringList JoinModel::testLines() const
{
    const auto found = answered();
    QStringList lines;
    if (!found || byStrip())
        return lines;
    const Marks marks = m_workspace.project().marks();
    lines += tr("The sashing will be seen %1 wide.").arg(braced(found->visible, marks, Round::Fine));
    if (found->outlineShows > Length())
        //: outline: the block's outer stitched line
        lines +=
            tr("So scant a seam leaves the outline in view, %1 from the seam. To hide it, trim the blocks "
               "with the "
               "%2 line on the outline, and sew as planned.")
                .arg(braced(found->outlineShows, marks, Round::Fine), laidByRuler(found->trimInside, marks));
    if (found->pare > Length() && m_workspace.plan().sashing.filler)
        lines += tr("The test join itself needs no unpicking: cut %1 off its batting.")
                     .arg(laidByRuler(found->pare * 2, marks));
    else if (found->pare > Length())
        lines +=
            found->mayPare
                ? tr("The test join itself needs no unpicking: pare %1 off each allowance, which leaves %2.")
                      .arg(laidByRuler(found->pare, marks), braced(found->allowanceLeft, marks, Round::Fine))
                : tr("Do not pare the allowances of the test join: too little would hold it.");
    return lines;
}

std::optional<Length> JoinModel::otherStrip() const
{
    const auto found = answered();
    const Project &project = m_workspace.project();
    if (!found || byStrip() || bandsCut(project))
        return std::nullopt;
    const Plan &plan = m_workspace.plan();
    const Length strip = found->newStrip.nearestTo(stepOf(Round::Fine, project.marks()));
    if (strip == plan.sashing.cutFront || strip <= plan.basis.seam * 2)
        return std::nullopt;
    return strip;
}

QString JoinModel::otherSays() const
{
    const auto strip = otherStrip();
    return strip ? tr("Cut strips %1 instead").arg(figureText(*strip, m_workspace.project().marks()))
                 : QString();
}

QVariantMap JoinModel::useOther()
{
    const auto strip = otherStrip();
    if (!strip || m_session.readOnly())
        return answer(false, tr("There is no other way now."));
    Project next = m_workspace.project();
    const Length before = m_workspace.plan().sashing.cutFront;
    next.made.testJoin->mend = MendedBy::Strip;
    next.sashing.finished = m_workspace.plan().basis.finished + *strip - before;
    const Plan after = plan(next);
    if (!after.problems.empty() && m_workspace.plan().problems.empty())
        return answer(false, sentence(after.problems.front(), next.marks()));
    const bool saved = m_workspace.commit("test-join", next);
    return answer(saved, saved ? QString() : tr("That could not be saved."));
}

} // namespace matside
