// SPDX-License-Identifier: MIT
//
// What the Edge station says of the frame, and of the piece when it is done.
#include "app/edgemodel.h"
#include "app/edgewords.h"
#include "app/wording.h"
#include "plan/curves.h"

namespace matside {

Acts frameActs(const Project &project, const Plan &plan)
{
    if (!plan.frame)
        return {};
    const FramePlan &frame = *plan.frame;
    const Marks marks = project.marks();
    const bool both = frame.backStrips > 0;
    const QString sides = braced(frame.sides, marks);
    const QString seam = braced(plan.basis.seam, marks, Round::Fine);
    Acts acts{
        actOf("frame-sides", both ? EdgeModel::tr("Left and right first: two of %1 each face.").arg(sides)
                                  : EdgeModel::tr("Left and right first: two of %1.").arg(sides)),
        actOf("frame-ends", EdgeModel::tr("Then top and bottom: two of %1.").arg(braced(frame.ends, marks)),
              {}, true),
        actOf("frame-flush",
              EdgeModel::tr("Cut them %1 longer and trim them flush.").arg(braced(frame.spare, marks)),
              "blade", true)};
    if (frame.joined)
        acts.push_back(actOf("strips-joined",
                             EdgeModel::tr("A piece is longer than the cloth is wide: sew strips end to end "
                                           "with straight seams, pressed open.")));
    if (both) {
        acts.push_back(actOf("frame-layers", EdgeModel::tr("Front strip right sides together with the front, "
                                                           "back strip with the back.")));
        acts.push_back(actOf("frame-seam",
                             EdgeModel::tr("All three raw edges level: one seam of %1.").arg(seam), "needle",
                             true));
    } else {
        acts.push_back(actOf("frame-layer", EdgeModel::tr("Strip right sides together with the front.")));
        acts.push_back(actOf("frame-seam-one", EdgeModel::tr("Raw edges level: a seam of %1.").arg(seam),
                             "needle", true));
    }
    acts.push_back(actOf("wheel", {}, "thick"));
    acts.push_back(actOf(both ? "frame-press" : "frame-press-one",
                         both ? EdgeModel::tr("Press both outward.") : EdgeModel::tr("Press it outward."),
                         "iron", true));
    acts.push_back(
        //: the block's own allowance lies under the frame; beyond it the frame would be hollow
        actOf("frame-batting",
              EdgeModel::tr("Lay batting %1 wide in beyond the block’s allowance, edge to edge.")
                  .arg(braced(frame.filler, marks))));
    acts.push_back(
        actOf("frame-baste",
              EdgeModel::tr("Baste the raw edges together: so the frame is filled, and the binding "
                            "too."),
              {}, true));
    return acts;
}

QStringList frameLines(const Project &project, const Plan &plan)
{
    return linesOf(frameActs(project, plan));
}

Acts careActs()
{
    return {{QStringLiteral("candle"), {}, wordsOrCode(guardWords(), "finished-use")},
            actOf("marks-out", EdgeModel::tr("Marks out with cold water before any heat.")),
            actOf("wash", EdgeModel::tr("Wash cool and gently, dry it flat or cool, press from the back."),
                  {}, true),
            {QStringLiteral("cot"),
             {},
             EdgeModel::tr("Small quilts and pillows do not go in a sleeping baby’s cot.")}};
}

QStringList careLines()
{
    Acts acts = careActs();
    for (Act &act : acts) // to one who is given the piece the warnings are lines among others
        if (act.says.isEmpty())
            act.says = act.minds;
    return linesOf(acts);
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

Acts useActs(const Project &project, const Plan &plan)
{
    const Marks marks = project.marks();
    const Pair &size = plan.size.finished;
    const Sleeve sleeve = hangingSleeve(size.along, project.system);
    Acts acts{
        actOf("label", EdgeModel::tr("Label: on the back, lower right. Title, maker, date, size, fibre, how "
                                     "to wash."))};
    if (sleeve.longLeast > Length())
        acts.push_back(actOf(
            "sleeve",
            project.build == Build::Reversible
                ? EdgeModel::tr(
                      "To hang it: a sleeve tacked on by hand, so that it comes off again, cut %1 to %2 "
                      "wide and "
                      "%3 to %4 long.")
                      .arg(braced(sleeve.wideLeast, marks), braced(sleeve.wideMost, marks),
                           braced(sleeve.longLeast, marks), braced(sleeve.longMost, marks))
                : EdgeModel::tr("To hang it: a sleeve on the back, cut %1 to %2 wide and %3 to %4 long.")
                      .arg(braced(sleeve.wideLeast, marks), braced(sleeve.wideMost, marks),
                           braced(sleeve.longLeast, marks), braced(sleeve.longMost, marks))));
    const Pillow pillow =
        envelopePillow(size, isBagged(project) ? plan.basis.allowance : Length(), project.system);
    acts.push_back(actOf("pillow", pillowSays(project, plan, pillow)));
    return acts;
}

QStringList useLines(const Project &project, const Plan &plan)
{
    return linesOf(useActs(project, plan));
}

QStringList EdgeModel::frameLines() const
{
    return matside::frameLines(m_workspace.project(), m_workspace.plan());
}

QVariantList EdgeModel::frameActs() const
{
    return listOf(matside::frameActs(m_workspace.project(), m_workspace.plan()));
}

QVariantList EdgeModel::careActs() const
{
    Acts acts = matside::careActs();
    for (Act &use : useActs(m_workspace.project(), m_workspace.plan()))
        acts.push_back(std::move(use));
    //: below the back of a pillow, of whose opening an arrow tells
    acts.push_back(actOf("pillow-in", tr("The pillow goes in between the two hems.")));
    acts.push_back(
        actOf("sell", tr("Before you sell it, look up the rules on labels and fillings where you live.")));
    return listOf(acts);
}

QVariantList EdgeModel::sewActs() const
{
    return listOf(bindingSewActs(m_workspace.project(), m_workspace.plan()));
}

QVariantList EdgeModel::layActs() const
{
    const auto &lay = reckoned().lay;
    return lay ? listOf(bindingLayActs(m_workspace.project(), m_workspace.plan(), *lay)) : QVariantList();
}

} // namespace matside
