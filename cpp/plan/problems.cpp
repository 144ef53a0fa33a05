// SPDX-License-Identifier: MIT
#include "plan/problems.h"

#include "plan/parts.h"
#include "plan/remarks.h"

namespace matside {

namespace {

constexpr std::int64_t millionth = 1'000'000;
constexpr Share mostDrawUp{150'000};

/// Largest outline whose sent size stays within a field, on a ruler's mark below.
Length largestOutline(Length field, Share drawUp, Marks marks)
{
    const Length exact = field.scaled(millionth - drawUp.millionths, millionth);
    const Length mark = show(exact, marks, Round::Down).mark;
    return sentFor(mark, drawUp) <= field ? mark : mark - marks.finest;
}

/// The needle keeps inside the hoop.
void fieldInHoop(const Project &project, const Basis &basis, std::vector<Problem> &found)
{
    const char *const at[] = {project.hoop.field ? "/hoop/field/0" : "/hoop/opening/0",
                              project.hoop.field ? "/hoop/field/1" : "/hoop/opening/1"};
    const Pair inside = project.hoop.field ? *project.hoop.field : *project.hoop.opening;
    const auto check = [&](Length field, Length outside, const char *side) {
        if (field <= outside)
            return;
        Problem problem{side, "field-over-hoop", {told(field), told(outside)}, {}};
        problem.offers.push_back(offer("set-length", side, outside));
        found.push_back(std::move(problem));
    };
    check(inside.along, basis.hoopOutside.along, at[0]);
    check(inside.across, basis.hoopOutside.across, at[1]);
}

void checkField(const Project &project, const Plan &plan, std::vector<Problem> &found)
{
    if (!project.hoop.outside || (!project.hoop.field && !project.hoop.opening)) {
        found.push_back({project.hoop.outside ? "/hoop/field" : "/hoop/outside", "hoop-unknown", {}, {}});
        return;
    }
    fieldInHoop(project, plan.basis, found);
    const Basis &basis = plan.basis;
    // A block that is square stays so: what is offered holds for both its sides.
    const bool square = project.blocks.width == project.blocks.height;
    const auto most = [&](Length spare) {
        const Length along = largestOutline(basis.field.along - spare, basis.drawAlong, project.marks());
        const Length across = largestOutline(basis.field.across - spare, basis.drawAcross, project.marks());
        return square ? Pair{min(along, across), min(along, across)} : Pair{along, across};
    };
    const Pair largest = most({}), comfortable = most(project.strip.placing * 2);
    const auto check = [&](Length Pair::*side, const char *at, const char *other) {
        const Length sent = plan.block.sent.*side, field = basis.field.*side;
        if (sent <= field || (square && !found.empty() && found.back().code == "sent-over-field"))
            return;
        Problem problem{at, "sent-over-field", {told(sent), told(field, Round::Down)}, {}};
        const auto propose = [&](Length block) {
            problem.offers.push_back(offer("set-block", at, block));
            if (square)
                problem.offers.back().also.push_back({other, block});
        };
        if (largest.*side > Length())
            propose(largest.*side);
        if (comfortable.*side > Length() && comfortable.*side < largest.*side)
            propose(comfortable.*side);
        found.push_back(std::move(problem));
    };
    check(&Pair::along, "/blocks/width", "/blocks/height");
    check(&Pair::across, "/blocks/height", "/blocks/width");
}

void checkDrawUp(const Project &project, const Plan &plan, std::vector<Problem> &found)
{
    for (const auto &[at, share] : {std::pair{"/drawUp/along", plan.basis.drawAlong},
                                    std::pair{"/drawUp/across", plan.basis.drawAcross}}) {
        if (share >= Share{} && share <= mostDrawUp)
            continue;
        const char *where = project.made.testBlock ? "/made/testBlock" : at;
        Problem problem{where, "draw-up-out-of-range", {share, mostDrawUp}, {}};
        if (project.made.testBlock)
            problem.offers.push_back(offer("forget-test-block", where, Remove{}));
        else
            problem.offers.push_back({"set-draw-up",
                                      at,
                                      share < Share{} ? Share{} : mostDrawUp,
                                      {share < Share{} ? Share{} : mostDrawUp},
                                      {}});
        found.push_back(std::move(problem));
        return;
    }
}

void checkSashing(const Project &project, const Plan &plan, const Measures &m, std::vector<Problem> &found)
{
    const Basis &basis = plan.basis;
    const Length both = basis.allowance * 2;
    const Length least = leastAllowance(basis.seam, m);
    if (basis.allowance < basis.seam && basis.allowance < least) {
        Problem problem{
            "/sashing/allowance", "allowance-pared-too-far", {told(basis.allowance), told(least)}, {}};
        problem.offers.push_back(offer("set-allowance", problem.at, min(least, basis.seam)));
        found.push_back(std::move(problem));
    }
    if (basis.finished < both) {
        Problem problem{
            "/sashing/finished", "sashing-under-allowances", {told(basis.finished), told(both)}, {}};
        problem.offers.push_back(offer("set-finished", problem.at, both));
        const Length half = show(basis.finished.scaled(1, 2), project.marks(), Round::Down).mark;
        if (half > Length() && !project.sashing.allowance)
            problem.offers.push_back(offer("set-seam", "/seam", half));
        if (half >= least)
            problem.offers.push_back(offer("set-allowance", "/sashing/allowance", half));
        found.push_back(std::move(problem));
    }
    if (basis.outside > basis.allowance && project.edge.kind != EdgeKind::Framed && !isBagged(project)) {
        Problem problem{
            "/edge/outside", "outside-over-allowance", {told(basis.outside), told(basis.allowance)}, {}};
        problem.offers.push_back(offer("set-outside", problem.at, basis.allowance));
        Offer frame = offer("choose-framed", "/edge/kind", std::string("framed"));
        frame.also.push_back({"/edge/outside", Remove{}});
        problem.offers.push_back(std::move(frame));
        found.push_back(std::move(problem));
    }
    const Length under = max(basis.allowance, basis.edgeSeam);
    if (plan.frame && basis.outside <= under) {
        Problem problem{"/edge/outside", "frame-too-narrow", {told(basis.outside), told(under)}, {}};
        problem.offers.push_back(offer("set-outside", problem.at, under + basis.finished));
        found.push_back(std::move(problem));
    }
}

void checkGap(const Project &project, const Plan &plan, const Measures &m, std::vector<Problem> &found)
{
    const bool ring = project.hoop.kind == HoopKind::Ring;
    const Length seams = plan.basis.seam * 2;
    const auto repair = [&](Problem problem, Length least) {
        problem.offers.push_back(offer("set-gap", problem.at, least));
        problem.offers.push_back(offer("reckon-gap", problem.at, Remove{}));
        found.push_back(std::move(problem));
    };
    if (project.strip.gap && *project.strip.gap < seams)
        repair({"/strip/gap", "gap-under-seams", {told(*project.strip.gap), told(seams)}, {}},
               seams.upTo(m.eighth));
    if (ring && project.strip.frameMayOverlap)
        found.push_back({"/strip/frameMayOverlap",
                         "frame-may-overlap-ring",
                         {},
                         {offer("frame-clear", "/strip/frameMayOverlap", false)}});
    if (ring && plan.strip.gap < plan.strip.reach && project.strip.gap)
        repair({"/strip/gap", "gap-under-reach", {told(*project.strip.gap), told(plan.strip.reach)}, {}},
               plan.strip.reach.upTo(m.eighth));
}

/// Largest outline that gives one place on the strip, stepping down the ruler's marks.
Length outlineThatFits(const Project &project)
{
    Project tried = project;
    const Length finest = project.finest;
    Length low;
    Length high = show(project.blocks.width, project.marks(), Round::Down).mark;
    while (finest > Length() && high - low > finest) {
        const Length middle = show((low + high).scaled(1, 2), project.marks(), Round::Down).mark;
        if (middle <= low)
            break;
        tried.blocks.width = middle;
        (planFigures(tried).strip.perStrip > 0 ? low : high) = middle;
    }
    return low;
}

void checkStrip(const Project &project, const Plan &plan, const Measures &m, std::vector<Problem> &found)
{
    if (plan.strip.perStrip > 0 || !project.hoop.outside)
        return;
    const auto needed = [&](bool tails) {
        return plan.block.sent.along + endMargin(project, plan.basis, plan.strip.reach, tails, m) * 2;
    };
    const Length missing = needed(project.strip.tails) - plan.strip.usable;
    const Length missingWithTails = max(needed(true) - plan.strip.usable, Length());
    Problem problem{"/strip",
                    "no-block-on-strip",
                    {told(missing, Round::UpEighth), told(missingWithTails, Round::UpEighth)},
                    {}};
    if (!project.strip.tails)
        problem.offers.push_back(offer("sew-tails", "/strip/tails", true));
    if (const Length smaller = outlineThatFits(project); smaller > Length())
        problem.offers.push_back(offer("set-block", "/blocks/width", smaller));
    problem.offers.push_back(
        offer("set-usable", "/strip/usable", needed(project.strip.tails).upTo(m.eighth)));
    found.push_back(std::move(problem));
}

void checkFold(const Project &project, const Plan &plan, const Measures &m, std::vector<Problem> &found)
{
    const Length foldCatch = project.fold.fold_catch;
    const bool folded = plan.fold.has_value();
    if (folded && plan.fold->doubled && plan.fold->catchShown < m.leastCatch) {
        Problem problem{"/sashing/cutBack",
                        "doubled-too-narrow",
                        {told(plan.fold->catchShown, Round::Fine), told(m.leastCatch, Round::Fine)},
                        {}};
        const Length wider = *plan.sashing.cutBack + (m.leastCatch - plan.fold->catchShown) * 2;
        problem.offers.push_back(offer("set-cut-back", problem.at, wider.upTo(m.cutStep)));
        problem.offers.push_back(offer("reckon-cut-back", problem.at, Remove{}));
        found.push_back(std::move(problem));
    }
    if (folded && (foldCatch < m.leastCatch || foldCatch > m.mostCatch)) {
        Problem problem{
            "/fold/catch",
            "catch-out-of-range",
            {told(foldCatch, Round::Fine), told(m.leastCatch, Round::Fine), told(m.mostCatch, Round::Fine)},
            {}};
        problem.offers.push_back(
            offer("set-catch", problem.at, foldCatch < m.leastCatch ? m.leastCatch : m.mostCatch));
        problem.offers.push_back(offer("set-catch", problem.at, m.usualCatch));
        found.push_back(std::move(problem));
    }
    if (!folded || plan.fold->under >= plan.fold->leastFold)
        return;
    Problem problem{"/sashing/cutBack",
                    "fold-too-small",
                    {told(plan.fold->under, Round::Down), told(plan.fold->leastFold)},
                    {}};
    const Length wider = *plan.sashing.cutBack + (plan.fold->leastFold - plan.fold->under);
    problem.offers.push_back(offer("set-cut-back", problem.at, wider.upTo(m.cutStep)));
    problem.offers.push_back(offer("reckon-cut-back", problem.at, Remove{}));
    problem.offers.push_back(offer("set-catch", "/fold/catch", m.leastCatch));
    found.push_back(std::move(problem));
}

void checkBands(const Project &project, const Plan &plan, const Measures &m, std::vector<Problem> &found)
{
    const auto check = [&](ClothRole role, Length usable, const LongPieces &pieces) {
        const std::string at = usablePointer(project, role);
        const Length cutShort = plan.sashing.shortLength + plan.sashing.shortSpare;
        if (plan.sashing.shorts > 0 && cutShort > usable)
            found.push_back({at,
                             "short-longer-than-cloth",
                             {told(cutShort), told(usable)},
                             {offer("set-usable", at, cutShort.upTo(m.eighth))}});
        const bool whole = plan.sashing.longLength + plan.sashing.longSpare <= usable;
        if (plan.sashing.longs > 0 && !whole && pieces.pieces.empty()) {
            const Length least =
                plan.block.trimmed.along + plan.sashing.finished + m.joinSeam * 2 + m.longSpare;
            found.push_back({at,
                             "long-cannot-be-joined",
                             {told(usable), told(least)},
                             {offer("set-usable", at, least.upTo(m.eighth))}});
        }
    };
    check(ClothRole::SashingFront, plan.basis.usableSashFront, plan.sashing.front);
    if (plan.sashing.cutBack)
        check(ClothRole::SashingBack, plan.basis.usableSashBack, plan.sashing.back);
}

void checkBinding(const Project &project, const Plan &plan, const Measures &m, std::vector<Problem> &found)
{
    if (!plan.binding || plan.binding->cut < plan.basis.usableBinding)
        return;
    Problem problem{"/edge/seam",
                    "binding-wider-than-cloth",
                    {told(plan.binding->cut), told(plan.basis.usableBinding)},
                    {}};
    const std::int64_t folds = project.edge.binding == Binding::Double ? 6 : 4;
    const Length rest = plan.binding->width - plan.basis.edgeSeam * folds;
    const Length room = plan.basis.usableBinding - rest - m.bindingStep;
    const Length largest = show(room.scaled(1, folds), project.marks(), Round::Down).mark;
    if (largest > Length())
        problem.offers.push_back(offer("set-binding-seam", problem.at, largest));
    problem.offers.push_back(offer("set-binding-seam", problem.at, m.leastFold));
    problem.offers.push_back(offer("set-usable", usablePointer(project, ClothRole::Binding),
                                   (plan.binding->cut * 2).upTo(m.eighth)));
    found.push_back(std::move(problem));
}

/// The deepest scallop that is still an arc: half its chord, which grows shorter as it grows deeper.
Length deepestScallop(const Plan &plan, const ScallopPlan &scallops)
{
    return min(plan.size.finished.along.scaled(1, 2 * (scallops.along + 1)),
               plan.size.finished.across.scaled(1, 2 * (scallops.across + 1)));
}

void checkScallops(const Project &project, const Plan &plan, std::vector<Problem> &found)
{
    if (!plan.binding->bias->scallops || plan.binding->bias->scallops->arc.along > Length())
        return;
    const ScallopPlan &scallops = *plan.binding->bias->scallops;
    const std::string at = "/edge/corner/depth";
    const Length deepest = show(deepestScallop(plan, scallops), project.marks(), Round::Down).mark;
    Problem problem{at, "scallop-too-deep", {told(scallops.depth), told(deepest)}, {}};
    if (deepest > Length())
        problem.offers.push_back(offer("set-depth", at, deepest));
    problem.offers.push_back(offer("square-corners", "/edge/corner", Remove{}));
    found.push_back(std::move(problem));
}

void checkCorners(const Project &project, const Plan &plan, const Measures &m, std::vector<Problem> &found)
{
    if (!plan.binding || !plan.binding->bias)
        return;
    checkScallops(project, plan, found);
    const std::string at = "/edge/corner/radius";
    const Offer square = offer("square-corners", "/edge/corner", Remove{});
    const Length most = show(min(plan.size.finished.along, plan.size.finished.across).scaled(1, 2),
                             project.marks(), Round::Down)
                            .mark;
    if (project.edge.corner.kind == CornerKind::Rounded && plan.basis.cornerRadius > most)
        found.push_back({at,
                         "corner-too-round",
                         {told(plan.basis.cornerRadius), told(most)},
                         {offer("set-radius", at, most), square}});
    if (plan.binding->bias->square > plan.basis.usableBinding)
        found.push_back({"/edge/corner",
                         "bias-wider-than-cloth",
                         {told(plan.binding->bias->square), told(plan.basis.usableBinding)},
                         {square, offer("set-usable", usablePointer(project, ClothRole::Binding),
                                        plan.binding->bias->square.upTo(m.eighth))}});
}

} // namespace

std::string usablePointer(const Project &project, ClothRole role)
{
    for (std::size_t i = 0; i < project.cloths.size(); ++i)
        if (project.cloths[i].role == role)
            return "/cloths/" + std::to_string(i) + "/usable";
    return "/strip/usable";
}

std::vector<Problem> remarkProblems(const Project &project, const Plan &plan)
{
    const Measures m = measures(project.system);
    std::vector<Problem> found;
    checkDrawUp(project, plan, found);
    checkField(project, plan, found);
    checkSashing(project, plan, m, found);
    checkGap(project, plan, m, found);
    checkStrip(project, plan, m, found);
    checkFold(project, plan, m, found);
    checkBands(project, plan, m, found);
    checkBinding(project, plan, m, found);
    checkCorners(project, plan, m, found);
    return found;
}

std::vector<Problem> problemsOf(const Project &project, const Plan &plan)
{
    std::vector<Problem> found = remarkProblems(project, plan);
    keepWorkingOffers(project, found, false);
    return found;
}

} // namespace matside
