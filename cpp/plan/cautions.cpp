// SPDX-License-Identifier: MIT
#include "plan/curves.h"
#include "plan/parts.h"
#include "plan/problems.h"
#include "plan/remarks.h"

#include <algorithm>

namespace matside {

namespace {

void lookAtHoop(const Project &project, const Plan &plan, const Measures &m, std::vector<Problem> &found)
{
    if (!project.hoop.outside)
        return;
    const Length wanted = project.strip.placing * 2;
    const Length along = plan.basis.field.along - plan.block.sent.along;
    const Length across = plan.basis.field.across - plan.block.sent.across;
    const Length room = min(along, across);
    if (along >= Length() && across >= Length() && room < wanted) {
        Problem caution{along < wanted ? "/blocks/width" : "/blocks/height",
                        "hoop-is-close",
                        {told(room, Round::Down), told(wanted)},
                        {}};
        const auto outline = [&](Length field, Share drawUp) {
            const Length most = (field - wanted).scaled(1'000'000 - drawUp.millionths, 1'000'000);
            return show(most, project.marks(), Round::Down).mark;
        };
        const Length width = outline(plan.basis.field.along, plan.basis.drawAlong);
        const Length height = outline(plan.basis.field.across, plan.basis.drawAcross);
        if (width > Length() && height > Length()) {
            Offer smaller = along < wanted ? offer("set-block", "/blocks/width", width)
                                           : offer("set-block", "/blocks/height", height);
            if (along < wanted && across < wanted)
                smaller.also.push_back({"/blocks/height", height});
            caution.offers.push_back(std::move(smaller));
        }
        found.push_back(std::move(caution));
    }
    const Length least = project.hoop.kind == HoopKind::Ring ? m.ringMargin : m.magnetMargin;
    if (project.strip.margin < least)
        found.push_back({"/strip/margin",
                         "margin-is-small",
                         {told(project.strip.margin), told(least)},
                         {offer("set-margin", "/strip/margin", least)}});
}

void lookAtStrip(const Project &project, const Plan &plan, const Measures &m, std::vector<Problem> &found)
{
    const StripPlan &strip = plan.strip;
    if (strip.perStrip > 0 && strip.remainder < m.tight * strip.perStrip) {
        Problem caution{"/strip", "strip-is-tight", {told(strip.remainder), strip.perStrip}, {}};
        if (!project.strip.tails)
            caution.offers.push_back(offer("sew-tails", "/strip/tails", true));
        found.push_back(std::move(caution));
    }
    const Length both = plan.basis.allowance * 2;
    if (strip.gap < both && plan.basis.allowance > plan.basis.seam)
        found.push_back({"/strip/gap",
                         "gap-under-allowances",
                         {told(strip.gap), told(both)},
                         {offer("set-gap", "/strip/gap", (both + project.strip.sliver).upTo(m.eighth))}});
    if (project.hoop.outside && project.hoop.kind == HoopKind::Magnetic && strip.gap < strip.reach)
        found.push_back({"/strip/gap",
                         "frame-on-last-block",
                         {told(strip.reach - strip.gap)},
                         {offer("set-gap", "/strip/gap", strip.reach.upTo(m.eighth))}});
    if (!project.strip.harvest || plan.sashing.shorts == 0)
        return;
    const Length piece = strip.width - m.fray * 2;
    const Length wanted = plan.sashing.shortLength + plan.sashing.shortSpare;
    if (piece < wanted)
        found.push_back({"/strip/harvest",
                         "harvest-is-short",
                         {told(piece), told(wanted)},
                         {offer("set-margin", "/strip/margin",
                                project.strip.margin + (wanted - piece).scaled(1, 2).upTo(m.eighth))}});
}

void lookAtEdges(const Plan &plan, const Measures &m, std::vector<Problem> &found)
{
    if (plan.binding && plan.basis.edgeSeam > plan.basis.outside)
        found.push_back({"/edge/seam",
                         "edge-seam-over-outside",
                         {told(plan.basis.edgeSeam), told(plan.basis.outside)},
                         {offer("match-edge-seam", "/edge/seam", plan.basis.outside)}});
    if (plan.fold && plan.fold->catchShown > m.mostCatch) {
        Problem caution{"/fold",
                        "lip-is-wide",
                        {told(plan.fold->catchShown, Round::Fine), told(m.mostCatch, Round::Fine)},
                        {}};
        caution.offers.push_back(offer("set-catch", "/fold/catch", m.usualCatch));
        caution.offers.push_back(offer("reckon-cut-back", "/sashing/cutBack", Remove{}));
        found.push_back(std::move(caution));
    }
}

/// Scallops that cut into the quilting, or whose arcs are too tight for the folded edge (F16).
void lookAtScallops(const Project &project, const Plan &plan, std::vector<Problem> &found)
{
    const BiasPlan &bias = *plan.binding->bias;
    const ScallopPlan &scallops = *bias.scallops;
    const std::string at = "/edge/corner/depth";
    const Offer square = offer("square-corners", "/edge/corner", Remove{});
    if (scallops.border > plan.basis.outside) {
        Problem caution{at,
                        bias.bites > Length() ? "scallop-bites" : "scallop-near",
                        {told(scallops.depth), told(scallops.border), told(plan.basis.outside)},
                        {}};
        const Length spare = scallops.border - scallops.depth;
        const Length shallow = show(plan.basis.outside - spare, project.marks(), Round::Down).mark;
        if (shallow > Length())
            caution.offers.push_back(offer("set-depth", at, shallow));
        caution.offers.push_back(square);
        found.push_back(std::move(caution));
    }
    const Length tightest = min(scallops.radius.along, scallops.radius.across);
    if (tightest > Length() && tightest < bias.least)
        found.push_back({at, "scallop-too-tight", {told(tightest), told(bias.least)}, {square}});
}

/// An arc that cuts into the quilting, or is too tight for the folded edge to ease round (F16).
void lookAtCorners(const Project &project, const Plan &plan, std::vector<Problem> &found)
{
    if (!plan.binding || !plan.binding->bias)
        return;
    const BiasPlan &bias = *plan.binding->bias;
    if (bias.scallops) {
        lookAtScallops(project, plan, found);
        return;
    }
    // Ends as round as can be have no radius of their own to set: to be given one, they become corners.
    const bool given = project.edge.corner.kind == CornerKind::Rounded;
    const std::string at = given ? "/edge/corner/radius" : "/edge/corner/kind";
    const Offer square = offer("square-corners", "/edge/corner", Remove{});
    if (bias.bites > Length()) {
        Problem caution{at, "corner-bites", {told(bias.bites)}, {}};
        const Length clears = show(radiusThatClears(plan.basis.outside), project.marks(), Round::Down).mark;
        if (given && clears > Length())
            caution.offers.push_back(offer("set-radius", at, clears));
        caution.offers.push_back(square);
        found.push_back(std::move(caution));
    }
    if (plan.basis.cornerRadius < bias.least) {
        Problem caution{at, "corner-too-tight", {told(plan.basis.cornerRadius), told(bias.least)}, {}};
        if (given)
            caution.offers.push_back(offer("set-radius", at, bias.least.upTo(project.finest)));
        caution.offers.push_back(square);
        found.push_back(std::move(caution));
    }
}

void lookAtTable(const Plan &plan, const Measures &m, std::vector<Problem> &found)
{
    if (!plan.table)
        return;
    const auto sticksOut = [&](Length reveal) { return reveal < Length() && -reveal < m.stiffLip; };
    const Length along = plan.table->reveal.along;
    const Length across = plan.table->reveal.across;
    if (sticksOut(along) || sticksOut(across)) {
        const Length lip = sticksOut(along) ? -along : -across;
        found.push_back({"/table", "stiff-lip", {told(lip), told(m.stiffLip)}, {}});
    }
    if (plan.table->round && sticksOut(plan.table->corner))
        found.push_back({"/table", "corner-hangs", {told(-plan.table->corner), told(m.stiffLip)}, {}});
    if (!plan.table->other)
        return;
    // The ends with the leaf the other way; the sides are the same.
    const TableSeen &other = *plan.table->other;
    const Length lip = sticksOut(other.reveal.along)                  ? -other.reveal.along
                       : plan.table->round && sticksOut(other.corner) ? -other.corner
                                                                      : Length();
    if (lip > Length())
        found.push_back({"/table/leaf",
                         other.leafIn ? "leaf-in-lip" : "leaf-out-lip",
                         {told(lip), told(m.stiffLip)},
                         {}});
}

} // namespace

std::vector<Problem> remarkCautions(const Project &project, const Plan &plan)
{
    const Measures m = measures(project.system);
    std::vector<Problem> found;
    lookAtHoop(project, plan, m, found);
    lookAtStrip(project, plan, m, found);
    lookAtEdges(plan, m, found);
    lookAtCorners(project, plan, found);
    lookAtTable(plan, m, found);
    return found;
}

std::vector<Problem> cautionsOf(const Project &project, const Plan &plan)
{
    std::vector<Problem> found = remarkCautions(project, plan);
    keepWorkingOffers(project, found, true);
    return found;
}

} // namespace matside
