// SPDX-License-Identifier: MIT
#include "app/joinwords.h"

#include "app/joinmodel.h"
#include "app/trimmodel.h"
#include "app/wording.h"

namespace matside {

QString laidByRuler(Length length, Marks marks)
{
    const bool tells = show(length, marks).mark != Length();
    return braced(length, marks, tells ? Round::Nearest : Round::Fine);
}

QString stripsPressed(const Plan &plan)
{
    if (plan.fold && plan.fold->doubled)
        return JoinModel::tr(
            "Press the back strip double before it is sewn on. Then press the front strip open, "
            "away from the first block, and the back strip over.");
    return plan.fold ? JoinModel::tr(
                           "Press the front strip open, away from the first block; then the back strip over.")
                     : JoinModel::tr("Press the strip open, away from the first block.");
}

QString sashingsFilled(const Plan &plan, Marks marks)
{
    if (!plan.sashing.filler)
        return {};
    const QString width = laidByRuler(*plan.sashing.filler, marks);
    //: batting between the two blocks' allowances under a wide sashing
    return plan.fold ? JoinModel::tr("After the second seam, lay batting %1 wide between the two allowances, "
                                     "edge to edge, and cut it off at the sashing’s ends; then bring the "
                                     "back strip over it.")
                           .arg(width)
                     : JoinModel::tr("After the second seam, lay batting %1 wide between the two allowances, "
                                     "edge to edge, cut it off at the sashing’s ends, and tack it to them.")
                           .arg(width);
}

QString crossingsThinned(const Project &project, const Plan &plan)
{
    if (project.blocks.columns < 2)
        return {};
    // F12: 8 cloths and the batting at a crossing against 4 elsewhere; the clean back has no back strips.
    return plan.fold && !plan.fold->doubled
               ? JoinModel::tr("Each crossing holds 8 cloths and the batting, against 4: pare the batting "
                               "from the last %1 of "
                               "the short sashings, clip their folded part to a slant, press hard.")
                     .arg(project.system == System::Inch ? QStringLiteral("{1/2 in}")
                                                         : QStringLiteral("{12 mm}"))
               : JoinModel::tr("Crossings are thick: press hard and turn the wheel by hand over them.");
}

QString trimLineLies(int side)
{
    return side < 3    ? TrimModel::tr("on the outer stitches")
           : side == 3 ? TrimModel::tr("on cut side 1")
                       : TrimModel::tr("on cut side 2");
}

QString trimSecondLies(int side)
{
    return side >= 3 ? TrimModel::tr("on the outer stitches") : QString();
}

QString trimCheck(int side)
{
    switch (side) {
    case 1:
        return TrimModel::tr(
            "Measure from the outer line, not the echo line; a cross line on the outline’s corner.");
    case 2:
        return TrimModel::tr("Turn the block a quarter, never over. A cross line on side 1.");
    case 3:
        return TrimModel::tr("Turn it a quarter again. Both readings must agree.");
    default:
        return TrimModel::tr("Turn it once more. Both must agree, a cross line on side 1 or 3.");
    }
}

} // namespace matside
