// SPDX-License-Identifier: MIT
//
// What the Edge station says of the frame, and of the piece when it is done.
#include "app/edgemodel.h"
#include "app/edgewords.h"
#include "app/wording.h"
#include "plan/curves.h"

namespace matside {

QStringList frameLines(const Project &project, const Plan &plan)
{
    if (!plan.frame)
        return {};
    const FramePlan &frame = *plan.frame;
    const Marks marks = project.marks();
    const bool both = frame.backStrips > 0;
    QStringList lines;
    lines += EdgeModel::tr(
                 "Left and right first: two of %1 each face, then top and bottom: two of %2. Cut them %3 "
                 "longer and trim them flush.")
                 .arg(braced(frame.sides, marks), braced(frame.ends, marks), braced(frame.spare, marks));
    if (!both)
        lines.back() =
            EdgeModel::tr("Left and right first: two of %1, then top and bottom: two of %2. Cut them %3 "
                          "longer and trim them flush.")
                .arg(braced(frame.sides, marks), braced(frame.ends, marks), braced(frame.spare, marks));
    if (frame.joined)
        lines += EdgeModel::tr(
            "A piece is longer than the cloth is wide: sew strips end to end with straight seams, "
            "pressed open.");
    lines +=
        both ? EdgeModel::tr("Front strip right sides together with the front, back strip with the back, all "
                             "three raw edges level: one seam of %1. Press both outward.")
                   .arg(braced(plan.basis.seam, marks, Round::Fine))
             : EdgeModel::tr(
                   "Strip right sides together with the front, raw edges level: a seam of %1. Press it "
                   "outward.")
                   .arg(braced(plan.basis.seam, marks, Round::Fine));
    //: the block's own allowance lies under the frame; beyond it the frame would be hollow
    lines += EdgeModel::tr(
                 "Lay batting %1 wide in beyond the block’s allowance, edge to edge, and baste the raw edges "
                 "together: so the frame is filled, and the binding too.")
                 .arg(braced(frame.filler, marks));
    return lines;
}

QStringList careLines()
{
    return {wordsOrCode(guardWords(), "finished-use"),
            EdgeModel::tr("Marks out with cold water before any heat. Wash cool and gently, dry it flat or "
                          "cool, press from "
                          "the back."),
            EdgeModel::tr("Small quilts and pillows do not go in a sleeping baby’s cot.")};
}

namespace {

QString pillowSays(const Project &project, const Plan &plan, const Pillow &pillow)
{
    const Marks marks = project.marks();
    const QString along = braced(pillow.form.along, marks);
    const QString across = braced(pillow.form.across, marks);
    const QString back = EdgeModel::tr("%1 × %2").arg(braced(pillow.back.along, marks, Round::UpQuarter),
                                                      braced(pillow.back.across, marks));
    const CornerKind corner = plan.binding ? project.edge.corner.kind : CornerKind::Square;
    if (corner == CornerKind::Square)
        //: envelope back: two pieces that overlap, between which the pillow is put in
        return EdgeModel::tr("As a pillow: for a form of %1 × %2, with an envelope back of two pieces %3.")
            .arg(along, across, back);
    if (corner == CornerKind::Scalloped)
        return EdgeModel::tr(
                   "As a pillow: for a form of %1 × %2 inside the scallops. Cut two back pieces %3, lay them "
                   "over each other, and cut them along the front’s scallops.")
            .arg(braced(pillow.form.along - plan.basis.scallopDepth * 2, marks),
                 braced(pillow.form.across - plan.basis.scallopDepth * 2, marks), back);
    if (corner == CornerKind::Round && plan.size.finished.along == plan.size.finished.across)
        return EdgeModel::
            tr("As a pillow: for a round form %1 across. Cut two back pieces %2, lay them over each other, "
               "and cut them round with the front as the pattern.")
                .arg(along, back);
    return EdgeModel::tr(
               "As a pillow: for a form of %1 × %2 with the same round corners. Cut two back pieces %3, lay "
               "them over each other, and cut their corners with the front as the pattern.")
        .arg(along, across, back);
}

} // namespace

QStringList useLines(const Project &project, const Plan &plan)
{
    const Marks marks = project.marks();
    const Pair &size = plan.size.finished;
    const Sleeve sleeve = hangingSleeve(size.along, project.system);
    QStringList lines{
        EdgeModel::tr("Label: on the back, lower right. Title, maker, date, size, fibre, how to wash.")};
    if (sleeve.longLeast > Length())
        lines += project.build == Build::Reversible
                     ? EdgeModel::tr(
                           "To hang it: a sleeve tacked on by hand, so that it comes off again, cut %1 to %2 "
                           "wide and "
                           "%3 to %4 long.")
                           .arg(braced(sleeve.wideLeast, marks), braced(sleeve.wideMost, marks),
                                braced(sleeve.longLeast, marks), braced(sleeve.longMost, marks))
                     : EdgeModel::tr("To hang it: a sleeve on the back, cut %1 to %2 wide and %3 to %4 long.")
                           .arg(braced(sleeve.wideLeast, marks), braced(sleeve.wideMost, marks),
                                braced(sleeve.longLeast, marks), braced(sleeve.longMost, marks));
    const Pillow pillow =
        envelopePillow(size, isBagged(project) ? plan.basis.allowance : Length(), project.system);
    lines += pillowSays(project, plan, pillow);
    return lines;
}

QStringList EdgeModel::frameLines() const
{
    return matside::frameLines(m_workspace.project(), m_workspace.plan());
}

} // namespace matside
