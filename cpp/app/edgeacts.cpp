// SPDX-License-Identifier: MIT
//
// How the binding is laid round and sewn, act by act.
#include "app/edgemodel.h"
#include "app/edgewords.h"
#include "app/wording.h"
#include "plan/formulas.h"
#include "plan/parts.h"

namespace matside {

Acts bindingLayActs(const Project &project, const Plan &plan, const BindingLay &lay)
{
    Acts acts;
    switch (lay.clears) {
    case JoinsClear::Both:
        acts.push_back(actOf("joins-clear", EdgeModel::tr("No join falls on a corner or a sashing end.")));
        break;
    case JoinsClear::Corners:
        //: so: with joins as wide as they are
        acts.push_back(
            actOf("joins-near",
                  EdgeModel::tr("Between the sashing ends there is no room for a join: the joins keep "
                                "clear of the corners alone. Narrower binding would fit.")));
        break;
    case JoinsClear::Nothing:
        acts.push_back(
            actOf("joins-near",
                  EdgeModel::tr("The sides are too short to keep the joins off the corners. Press every "
                                "join open, and grade it.")));
        break;
    }
    if (lay.oneMore)
        acts.push_back(
            actOf("strips", EdgeModel::tr("This takes one strip more, %1 in all.").arg(lay.strips)));
    if (onBias(plan))
        return acts;
    acts.push_back(actOf("lay-before", EdgeModel::tr("Lay the beginning %1 before the place it closes at.")
                                           .arg(braced(project.slack.scaled(1, 2), project.marks()))));
    acts.push_back(
        actOf("leave-open",
              EdgeModel::tr("Leave %1 to both sides of that place unsewn until the ends are joined.")
                  .arg(braced(measures(project.system).openClose, project.marks())),
              "needle"));
    return acts;
}

QString bindingLaySays(const Project &project, const Plan &plan, const BindingLay &lay)
{
    return linesOf(bindingLayActs(project, plan, lay)).join(u' ');
}

Acts bindingSewActs(const Project &project, const Plan &plan)
{
    if (!plan.binding)
        return {};
    const QString cross = braced(plan.binding->cut, project.marks());
    Acts acts;
    if (onBias(plan) && plan.binding->bias->scallops) {
        acts.push_back(
            actOf("crown", EdgeModel::tr("Begin on the crown of a scallop at the middle of the bottom.")));
        acts.push_back(
            actOf("ease-crown", EdgeModel::tr("Sew with the edge, easing the bias over each crown.")));
        acts.push_back(
            actOf("inside-point",
                  EdgeModel::tr("At an inside point leave the needle down, straighten the edge and "
                                "sew on."),
                  "needle"));
    } else if (onBias(plan)) {
        acts.push_back(actOf("ease-crown",
                             EdgeModel::tr("Sew with the edge, not stretching it: ease the bias round each "
                                           "corner."),
                             "needle"));
    } else {
        acts.push_back(actOf("corner-stop",
                             EdgeModel::tr("At a corner stop %1 from the edge.")
                                 .arg(braced(plan.basis.edgeSeam, project.marks(), Round::Fine)),
                             "needle"));
        acts.push_back(actOf("corner-up", EdgeModel::tr("Fold the strip up at 45°.")));
        acts.push_back(actOf("corner-down", EdgeModel::tr("Then fold it down, level with the edge.")));
    }
    acts.push_back(
        actOf("overlap",
              onBias(plan)
                  ? EdgeModel::tr("Close it with an overlap of %1, ends crossed at a right angle.").arg(cross)
                  : EdgeModel::tr("Close with an overlap of exactly %1, ends crossed at a right "
                                  "angle.")
                        .arg(cross)));
    acts.push_back(actOf("wheel", {}, "thick"));
    return acts;
}

QString bindingSewSays(const Project &project, const Plan &plan)
{
    return linesOf(bindingSewActs(project, plan)).join(u' ');
}

} // namespace matside
