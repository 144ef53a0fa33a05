// SPDX-License-Identifier: MIT
#include "bench/account.h"
#include "bench/clothlay.h"
#include "bench/kits.h"
#include "bench/progress.h"

#include <algorithm>

namespace matside {

namespace {

using From = Wanted::From;

bool crossCut(const Step &step)
{
    return step.does == Does::CutShort || step.does == Does::CutLong || step.does == Does::CutLongPiece;
}

/// How a step takes its pieces from the cloth; nothing where it takes none.
std::optional<From> fromOf(const Step &step)
{
    switch (step.does) {
    case Does::CutStrip:
    case Does::CutBinding:
    case Does::CutFrame:
    case Does::CutFiller:
    case Does::CutSashingFiller:
        return From::Cloth;
    case Does::CutBand:
        return step.trial ? std::optional(From::Cloth) : std::nullopt;
    case Does::CutPatch:
        return From::Row;
    case Does::CutBacking:
    case Does::CutBias:
        return From::Whole;
    default:
        return crossCut(step) && !step.trial ? std::optional(From::Band) : std::nullopt;
    }
}

/// Strips that are pieces themselves, as many as are wanted and no more.
bool trimToWanted(std::vector<LaidStrip> &strips, const std::vector<Wanted> &wanted)
{
    for (const Wanted &want : wanted) {
        std::int64_t over = -want.count;
        for (const LaidStrip &strip : strips)
            for (const LaidPiece &piece : strip.pieces)
                over += piece.does == want.does ? piece.count * strip.repeats : 0;
        for (LaidStrip &strip : strips)
            if (over > 0 && strip.does == want.does && strip.pieces.front().count == 1) {
                const std::int64_t off = std::min(over, strip.repeats);
                strip.repeats -= off;
                over -= off;
            }
        if (over != 0)
            return false;
    }
    std::erase_if(strips, [](const LaidStrip &strip) { return strip.repeats == 0; });
    return true;
}

} // namespace

Length usableOf(const Project &project, const Plan &plan, const std::string &cloth)
{
    if (const auto measured = measuredUsable(project, cloth))
        return *measured;
    const Cloth *listed = clothNamed(project, cloth);
    return listed && listed->usable ? *listed->usable : plan.strip.usable;
}

bool isFiller(const Step &step)
{
    return step.does == Does::CutFiller || step.does == Does::CutSashingFiller;
}

bool stripsLieSideBySide(const Project &project, const Plan &plan, const std::string &cloth)
{
    const Length strip = plan.strip.usable;
    if (strip <= Length() || usableOf(project, plan, cloth) >= strip * 2)
        return strip > Length();
    const Cloth *listed = clothNamed(project, cloth);
    return listed && listed->role == ClothRole::Batting && !listed->packages.empty();
}

std::vector<Wanted> wantedOf(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                             const std::string &cloth)
{
    const Length usable = usableOf(project, plan, cloth);
    const Cloth *listed = clothNamed(project, cloth);
    const bool mayTurn = !(listed && listed->directional);
    std::vector<Wanted> wanted;
    for (const Step &step : steps) {
        const std::optional<From> from = fromOf(step);
        if (!from || step.cloth != cloth || step.station != Station::Cut || !step.size ||
            step.size->across <= Length())
            continue;
        Wanted want{progressName(step),
                    *from,
                    step.size->along,
                    step.size->across,
                    step.count - step.done,
                    false,
                    {},
                    false};
        const bool sideBySide =
            (step.does == Does::CutStrip || isFiller(step)) && stripsLieSideBySide(project, plan, cloth);
        if (sideBySide || (step.trial && isFiller(step))) { // the trial's is a piece only
            want.from = From::Row;
            want.ownStrip = true;
        }
        want.straightGrain = step.does != Does::CutBias;
        if (want.from == From::Cloth)
            want.across = usable;
        if ((want.from == From::Row && !want.ownStrip) || want.from == From::Whole)
            want.mayTurn = mayTurn || want.from == From::Whole;
        if (want.from == From::Whole) {
            Step alone = step;
            alone.takes.clear(); // as if it came from the cloth itself
            want.takes = takenBy(alone, plan, 1, usable);
        }
        wanted.push_back(std::move(want));
    }
    return wanted;
}

Ground groundOf(const Project &project, const Plan &plan, const std::string &cloth)
{
    Ground ground;
    ground.usable = usableOf(project, plan, cloth);
    ground.system = project.system;
    const Cloth *listed = clothNamed(project, cloth);
    ground.step = listed ? listed->soldStep : usualSoldStep(project.system);
    ground.reach = reachAlong(project, cloth);
    if (listed)
        for (const OwnedPiece &owned : listed->owned)
            ground.owned.push_back(
                {max(owned.length - straightening(project.system, Length()), Length()), owned.width});
    return ground;
}

ClothLay layKits(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                 const std::string &cloth, std::int64_t effort)
{
    Ground ground = groundOf(project, plan, cloth);
    ground.effort = effort;
    const std::vector<Wanted> wanted = wantedOf(project, plan, steps, cloth);
    ClothLay lay = layOut(wanted, ground);
    if (project.kits <= 1 || !ground.owned.empty())
        return lay;
    const Project one = oneKit(project);
    const Plan onePlan = matside::plan(one);
    Ground oneGround = groundOf(one, onePlan, cloth);
    oneGround.reach = Length(); // strips along the selvage lie side by side once only
    std::vector<LaidStrip> strips =
        layOut(wantedOf(one, onePlan, matside::steps(one, onePlan), cloth), oneGround).strips;
    for (LaidStrip &strip : strips)
        strip.repeats *= project.kits;
    if (!trimToWanted(strips, wanted))
        return lay;
    const bool along = runOf(lay.strips) > Length();
    if (along ? laidAs(strips, ground).bought > lay.bought : cutOf(strips) >= lay.cut)
        return lay;
    const std::optional<Length> least = lay.least;
    lay = laidAs(std::move(strips), ground);
    lay.least = least ? std::optional(min(*least, lay.bought)) : least;
    return lay;
}

} // namespace matside
