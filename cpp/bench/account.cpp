// SPDX-License-Identifier: MIT
#include "bench/account.h"

#include "bench/clothlay.h"
#include "bench/progress.h"
#include "bench/relay.h"

#include <algorithm>

namespace matside {

namespace {

/// Good and spoiled pieces of a step as they were counted, beyond what is asked for too.
struct Counted {
    std::int64_t good = 0;
    std::int64_t spoiled = 0;
};
Counted countedAt(const Project &project, const Step &step)
{
    Counted counted;
    const std::string does = progressName(step);
    for (const MadeCut &cut : project.made.cut) {
        if (cut.cloth != step.cloth || cut.does != does)
            continue;
        counted.good += cut.count - cut.spoiled;
        counted.spoiled += cut.spoiled;
    }
    counted.good = std::max(counted.good, step.done);
    return counted;
}

/// Rows of pieces that lie side by side, each so long.
std::int64_t rowsOf(std::int64_t pieces, Length usable, Length each)
{
    const std::int64_t across = each > Length() ? std::max<std::int64_t>(usable.floorDiv(each), 1) : 1;
    return (pieces + across - 1) / across;
}

Length measuredLength(const Project &project, const std::string &cloth, bool &known)
{
    for (const MadeCloth &made : project.made.cloths)
        if (made.cloth == cloth && made.length) {
            known = true;
            return *made.length;
        }
    return {};
}

/// The same account of a fixed layout, strip by strip; owned pieces are accounts of their own.
ClothAccount layoutAccount(const Project &project, const std::vector<Step> &steps, const MadeLayout &layout)
{
    ClothAccount account;
    account.cloth = layout.cloth;
    const LayoutState state = stateOf(project, steps, layout);
    account.used = cutOf(state.cut);
    // A strip along the selvage is lost with its share of the length they have in common.
    for (const LaidStrip &strip : state.cut)
        if (strip.spoiled && strip.owned == 0)
            account.spoiled +=
                strip.run > Length() && layout.usable > Length()
                    ? strip.run.scaled((strip.height * strip.repeats).count(), layout.usable.count())
                    : strip.height * strip.repeats;
    for (const MadeCut &cut : project.made.cut)
        for (const LaidStrip &strip : state.cut)
            if (cut.cloth == layout.cloth && cut.does == strip.does && strip.owned == 0 &&
                strip.pieces.size() == 1 && strip.pieces.front().count == 1 &&
                strip.pieces.front().does == strip.does) {
                account.spoiled += strip.height * cut.spoiled; // strips that are pieces themselves
                break;
            }
    account.spoiled = min(account.spoiled, account.used);
    account.used -= account.spoiled;
    account.toDo = cutOf(state.open);
    if (runOf(state.cut) > Length())
        account.toDo -= runOf(state.open); // that length is begun
    const Length once = straightening(project.system, Length());
    if (endSquared(steps, layout.cloth) || !state.cut.empty())
        account.used += once;
    else if (account.toDo > Length())
        account.toDo += once;
    bool known = false;
    const Length measured = measuredLength(project, layout.cloth, known);
    if (known || tickedAsBought(project, layout.cloth)) {
        account.owned = known ? measured : layout.bought;
        account.left = *account.owned - account.used - account.spoiled;
    }
    return account;
}

} // namespace

bool endSquared(const std::vector<Step> &steps, const std::string &cloth)
{
    return std::any_of(steps.begin(), steps.end(), [&](const Step &step) {
        return step.cloth == cloth && step.does == Does::Straighten && step.done > 0;
    });
}

bool anyCutBy(const std::vector<Piece> &pieces, Does does)
{
    return std::any_of(pieces.begin(), pieces.end(),
                       [&](const Piece &piece) { return piece.name.starts_with(nameOf(does)); });
}

bool outOfBands(const Step &step)
{
    return anyCutBy(step.takes, Does::CutBand) || outOfAlong(step);
}

bool outOfAlong(const Step &step)
{
    return anyCutBy(step.takes, Does::CutAlong);
}

Length straightening(System system, Length cut)
{
    const bool inch = system == System::Inch;
    const Length once = inch ? Length::inches(2) : Length::mm(50);
    const Length stretch = inch ? Length::inches(108) : Length::mm(2750);
    return once + once * cut.floorDiv(stretch);
}

Length takenBy(const Step &step, const Plan &plan, std::int64_t pieces, Length usable)
{
    if (!step.size || pieces <= 0)
        return {};
    if (usable <= Length())
        usable = plan.strip.usable;
    switch (step.does) {
    case Does::CutStrip:
    case Does::CutFiller:
    case Does::CutSashingFiller:
        if (outOfBands(step))
            return {};
        // On a wide roll they lie side by side.
        return step.size->across * rowsOf(pieces, usable, step.size->along);
    case Does::CutBand:
    case Does::CutBinding:
    case Does::CutFrame:
        if (outOfAlong(step))
            return {};
        return step.size->across * pieces;
    case Does::CutBias:
    case Does::CutBacking: {
        if (usable <= Length() || outOfBands(step))
            return {};
        const Length along = step.size->along;
        const Length across = step.size->across;
        // Whole if it can be, the way that takes less; else in panels sewn side by side.
        if (min(along, across) <= usable)
            return (max(along, across) <= usable ? min(along, across) : max(along, across)) * pieces;
        return min(across * along.ceilDiv(usable), along * across.ceilDiv(usable)) * pieces;
    }
    case Does::CutPatch: {
        if (outOfBands(step))
            return {};
        // Patches side by side across the cloth, row by row.
        return step.size->across * rowsOf(pieces, usable, step.size->along);
    }
    default:
        return {};
    }
}

ClothAccount clothAccount(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                          const std::string &cloth)
{
    if (const MadeLayout *layout = project.made.layoutOf(cloth))
        return layoutAccount(project, steps, *layout);
    ClothAccount account;
    account.cloth = cloth;
    for (const Step &step : steps) {
        if (step.cloth != cloth || step.station != Station::Cut)
            continue;
        const Counted counted = countedAt(project, step);
        const Length good = takenBy(step, plan, counted.good);
        account.used += good;
        // Patches share rows, so the spoiled ones are what the whole takes beyond the good ones.
        account.spoiled += takenBy(step, plan, counted.good + counted.spoiled) - good;
        account.toDo += takenBy(step, plan, step.count - step.done);
    }
    const Length once = straightening(project.system, Length());
    if (endSquared(steps, cloth) || account.used + account.spoiled > Length())
        account.used += once;
    else if (account.toDo > Length())
        account.toDo += once;
    bool known = false;
    const Length owned = measuredLength(project, cloth, known);
    if (known) {
        account.owned = owned;
        account.left = owned - account.used - account.spoiled;
    }
    return account;
}

std::vector<ClothAccount> clothAccounts(const Project &project, const Plan &plan,
                                        const std::vector<Step> &steps)
{
    std::vector<std::string> names;
    for (const Step &step : steps)
        if (step.station == Station::Cut && !step.cloth.empty() &&
            std::find(names.begin(), names.end(), step.cloth) == names.end())
            names.push_back(step.cloth);
    std::vector<ClothAccount> accounts;
    accounts.reserve(names.size());
    for (const std::string &name : names)
        accounts.push_back(clothAccount(project, plan, steps, name));
    return accounts;
}

} // namespace matside
