// SPDX-License-Identifier: MIT
//
// What went wrong at the blade: whether what is left of the cloth yields it once more, and what to buy if
// not.
#include "bench/mishapcase.h"

#include "bench/account.h"
#include "bench/relay.h"

#include <algorithm>

namespace matside {

namespace {

/// What is left of a cloth and what is wanted of it.
struct Rest {
    std::string cloth;
    Length toDo;
    std::optional<Length> left; ///< measured, or as bought; absent when nobody has told
    Length reckoned;            ///< what should be left
    Length buy;                 ///< the shortest thing to buy on top of it; zero where it yields all
    bool laid = false;          ///< reckoned from a layout: its bought length is known
    bool begun = false;         ///< some of it is still to be cut, out of strips begun
};

Rest restOf(const Project &project, const std::string &cloth)
{
    const Plan now = plan(project);
    const std::vector<Step> all = steps(project, now);
    const ClothAccount account = clothAccount(project, now, all, cloth);
    Rest rest{cloth, account.toDo, account.left, account.left.value_or(Length()), {}, false, false};
    rest.begun = std::any_of(all.begin(), all.end(), [&](const Step &step) {
        return step.station == Station::Cut && step.cloth == cloth && step.done < step.count &&
               step.does != Does::Straighten;
    });
    if (const MadeLayout *layout = project.made.layoutOf(cloth)) {
        rest.laid = true;
        rest.reckoned = account.left.value_or(layout->bought - account.used - account.spoiled);
        rest.buy = stillToBuy(project, all, *layout);
        return rest;
    }
    // A new length has its own end to square; what is left stays a remnant only when a whole strip fits it.
    const Length least = rest.toDo - max(rest.reckoned, Length());
    if (least > Length())
        rest.buy = least + straightening(project.system, least);
    return rest;
}

Said buying(const Project &project, const Rest &rest)
{
    const Cloth *sold = clothNamed(project, rest.cloth);
    const Length step = sold ? sold->soldStep : usualSoldStep(project.system);
    return {"buy", {rest.cloth, textSold(rest.buy, step, project.system)}};
}

} // namespace

void sayWhetherTheRestYields(const Case &at, const Project &changed, const std::string &cloth,
                             std::vector<Said> &says, bool squaring)
{
    const Project project = afterChange(at.project, changed); // as it will stand once this is saved
    const Rest rest = restOf(project, cloth);
    if (rest.toDo <= Length()) {
        says.push_back({rest.begun ? "strips-yield" : "nothing-more-needed", {cloth}});
        return;
    }
    says.push_back({"needs-cloth", {cloth, Told{rest.toDo, Round::UpQuarter}}});
    const auto thenSquare = [&] {
        if (squaring)
            says.push_back({"square-edge", {cloth}});
    };
    if (!rest.left && !rest.laid) {
        says.push_back({"measure-rest", {cloth}});
        return thenSquare();
    }
    const Told left{max(rest.reckoned, Length()), Round::Down};
    const Length slack = rest.reckoned - rest.toDo;
    const bool yields = rest.buy <= Length();
    const bool tight = squaring && slack < straightening(project.system, Length());
    if (!yields)
        says.push_back({rest.left ? "rest-short" : "rest-short-reckoned", {cloth, left}});
    else if (tight)
        says.push_back({"rest-yields-just", {cloth, left, Told{max(slack, Length()), Round::Down}}});
    else
        says.push_back({rest.left ? "rest-yields" : "rest-yields-reckoned", {cloth, left}});
    if (!yields)
        says.push_back(buying(project, rest));
    if (!rest.left && (tight || !yields))
        says.push_back({"measure-rest", {cloth}});
    thenSquare();
}

} // namespace matside
