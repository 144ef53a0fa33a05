// SPDX-License-Identifier: MIT
#include "bench/mishapcase.h"

#include "bench/account.h"
#include "bench/progress.h"
#include "bench/record.h"
#include "bench/relay.h"
#include "plan/onstrip.h"

#include <algorithm>
#include <array>

namespace matside {

namespace {

constexpr std::array names{
    "too-narrow",    "spoiled",     "cloth-ran-out", "cloth-narrower", "done-already", "thread-ran-out",
    "pleat-or-hole", "patch-wrong", "power-failed",  "strip-torn",     "will-not-fit", "cut-into",
    "size-off",      "sewn-wrong",  "fold-missed",   "block-gone",     "changed-mind"};

} // namespace

Answered unchanged(const Case &at, std::vector<Said> says)
{
    return {std::move(says), at.project, false, false};
}

void nameWhatBecomesWrong(const Case &at, const Project &next, std::vector<Said> &says)
{
    const std::vector<std::string> old = madeToOldMeasure(at.steps, steps(next, plan(next)));
    for (const std::string &id : old)
        says.push_back({"becomes-wrong", {id}});
    if (old.empty())
        says.push_back({"nothing-wrong-with-the-rest", {}});
}

void sayOfStrips(const Case &at, const Project &next, std::vector<Said> &says)
{
    const Plan after = plan(next);
    const std::int64_t before = stripsNeeded(at.project, at.plan);
    const std::int64_t now = stripsNeeded(next, after);
    if (now > before)
        says.push_back({"more-strips", {now - before}});
}

Answered spoiled(const Case &at, bool narrow)
{
    if (!at.block.empty())
        return blockGone(at, BlockState::Spoiled);
    const bool sewn =
        !at.step.trial && (at.step.station == Station::Join || at.step.station == Station::Edge);
    if (sewn)
        return joinSpoiled(at);
    Answered answer;
    answer.next = withSpoiled(at.project, at.plan, at.steps, at.step, at.strip);
    answer.changed = true;
    const std::string block = blockInHand(at.project, at.plan, at.step, at.strip);
    if (block.empty()) {
        answer.says.push_back({"make-again", {std::int64_t{1}, at.step.id}});
        // What is cut right across is measured from the edge it leaves.
        const bool across = takenBy(at.step, at.plan, 1) > Length();
        if (at.step.station == Station::Cut && !at.step.cloth.empty())
            sayWhetherTheRestYields(at, answer.next, at.step.cloth, answer.says, across);
        if (narrow || at.step.station == Station::Cut)
            answer.says.push_back({"keep-for-narrower", {}});
        return answer;
    }
    const std::size_t before = blocksToStitch(at.project).size();
    const std::size_t now = blocksToStitch(answer.next).size();
    const bool wasOpen = at.step.does == Does::StitchBlock;
    const bool again = wasOpen ? now >= before : now > before;
    answer.says.push_back(again ? Said{"block-again", {block}} : Said{"spare-takes-it", {block}});
    sayOfStrips(at, answer.next, answer.says);
    return answer;
}

namespace {

Answered ranOut(const Case &at)
{
    Answered answer;
    answer.next = at.project;
    if (at.measure && !at.step.cloth.empty()) {
        const ClothAccount account = clothAccount(at.project, at.plan, at.steps, at.step.cloth);
        answer.next.made.recordOf(at.step.cloth).length = account.used + account.spoiled + *at.measure;
        answer.next.made.events.push_back(
            {"cloth-ran-out", progressName(at.step), at.step.cloth, "", 0, 0, *at.measure, {}});
        answer.changed = true;
    }
    sayWhetherTheRestYields(at, answer.next, at.step.cloth, answer.says);
    return answer;
}

/// Strips cut already keep their own length: the plan follows the narrower cloth only for what comes.
void keepStripsAsCut(const Case &at, Project &next)
{
    std::int64_t cut = at.plan.strip.strips;
    for (const Step &step : at.steps)
        if (step.does == Does::CutStrip && !step.trial)
            cut = std::min(cut, step.done);
    for (std::int64_t number = 1; number <= std::min<std::int64_t>(cut, 1000); ++number) {
        MadeStrip &record = next.made.recordOf(number);
        if (!record.usable)
            record.usable = at.plan.strip.usable;
    }
}

Answered narrower(const Case &at)
{
    if (!at.measure || at.step.cloth.empty())
        return unchanged(at, {{"nothing-to-record", {}}});
    Answered answer;
    answer.next = at.project;
    answer.next.made.recordOf(at.step.cloth).usable = *at.measure;
    keepStripsAsCut(at, answer.next);
    answer.next.made.events.push_back(
        {"cloth-narrower", progressName(at.step), at.step.cloth, "", 0, 0, *at.measure, {}});
    answer.changed = true;
    const Plan after = plan(answer.next);
    if (after.strip.perStrip != at.plan.strip.perStrip)
        answer.says.push_back({"fewer-per-strip", {after.strip.perStrip, at.plan.strip.perStrip}});
    sayOfStrips(at, answer.next, answer.says);
    nameWhatBecomesWrong(at, answer.next, answer.says);
    sayWhetherTheRestYields(at, answer.next, at.step.cloth, answer.says);
    return answer;
}

Answered doneAlready(const Case &at)
{
    return {{{"counted", {}}}, withDone(at.project, at.plan, at.step, at.strip), true, false};
}

Answered threadRanOut(const Case &at)
{
    Answered answer;
    answer.next = at.project;
    answer.next.made.events.push_back({"new-bobbin",
                                       progressName(at.step),
                                       "",
                                       blockInHand(at.project, at.plan, at.step, at.strip),
                                       0,
                                       static_cast<std::int64_t>(at.project.made.blocks.size()),
                                       {},
                                       {}});
    answer.changed = true;
    answer.says = {{"restart-thread", {}}, {"change-bobbin", {}}};
    return answer;
}

Answered patchWrong(const Case &at)
{
    Answered answer;
    answer.next = at.project;
    answer.mayRemake = true;
    answer.says.push_back({"patch-again", {}});
    for (const Step &step : at.steps)
        if (step.does == Does::CutPatch && step.done > 0) {
            sayWhetherTheRestYields(at, at.project, step.cloth, answer.says);
            break;
        }
    return answer;
}

Answered torn(const Case &at)
{
    const std::int64_t number = std::max<std::int64_t>(at.strip, 1);
    const StripWork work = stripWork(at.project, at.plan, number);
    if (!at.measure || *at.measure >= work.end)
        return unchanged(at, {{"nothing-to-record", {}}});
    Answered answer;
    answer.next = at.project;
    MadeStrip &record = answer.next.made.recordOf(number);
    // Measured on cloth that is drawn in already: the flat end lies as much farther.
    record.usable = *at.measure + (work.usable - work.end);
    std::int64_t lost = 0;
    for (MadeBlock &block : answer.next.made.blocks) {
        const auto place = static_cast<std::size_t>(std::max<std::int64_t>(block.place, 1) - 1);
        if (block.strip != number || place >= work.places.size() || block.state != BlockState::Stitched)
            continue;
        const Length allowance = at.plan.basis.allowance;
        if (work.places[place].drawn + work.places[place].along + allowance <= *at.measure)
            continue;
        block.state = BlockState::Spoiled;
        ++lost;
    }
    letASpareStandIn(answer.next);
    answer.next.made.events.push_back(
        {"strip-torn", progressName(at.step), "", "", number, lost, *at.measure, {}});
    answer.changed = true;
    answer.says.push_back(lost > 0 ? Said{"torn", {lost}} : Said{"torn-carries", {}});
    sayOfStrips(at, answer.next, answer.says);
    return answer;
}

Answered willNotFit(const Case &at)
{
    const std::int64_t number = std::max<std::int64_t>(at.strip, 1);
    const StripWork work = stripWork(at.project, at.plan, number);
    Answered answer;
    answer.next = at.project;
    answer.next.made.recordOf(number).closed = true;
    answer.next.made.events.push_back({"will-not-fit", progressName(at.step), "", "", number, 0, {}, {}});
    answer.changed = true;
    if (work.over && work.over->fitsWithTail)
        answer.says.push_back({"sew-a-tail", {}});
    if (work.over && work.over->fitsWithGap)
        answer.says.push_back({"smaller-gap", {Told{*work.over->fitsWithGap, Round::Nearest}}});
    std::int64_t moved = 0;
    for (const StripPlace &place : work.places)
        moved += !place.stitched && !place.block.empty() ? 1 : 0;
    answer.says.push_back({"carries-over", {moved}});
    sayOfStrips(at, answer.next, answer.says);
    return answer;
}

} // namespace

std::string nameOf(Mishap mishap)
{
    return names[static_cast<std::size_t>(mishap)];
}

std::optional<Mishap> mishapNamed(std::string_view name)
{
    for (std::size_t i = 0; i < names.size(); ++i)
        if (name == names[i])
            return static_cast<Mishap>(i);
    return std::nullopt;
}

std::vector<std::string> madeToOldMeasure(const std::vector<Step> &before, const std::vector<Step> &now,
                                          bool tooSmall)
{
    std::vector<std::string> old;
    for (const Step &step : before) {
        if (step.done == 0 || !step.size)
            continue;
        const auto same =
            std::find_if(now.begin(), now.end(), [&](const Step &s) { return s.id == step.id; });
        const bool there = same != now.end() && same->size;
        const bool changed = tooSmall ? there && (same->size->along > step.size->along ||
                                                  same->size->across > step.size->across)
                                      : !there || *same->size != *step.size;
        if (changed)
            old.push_back(step.id);
    }
    return old;
}

std::vector<Mishap> mishapsAt(const Step &step)
{
    using enum Mishap;
    if (step.station == Station::Cut && step.does != Does::Straighten)
        return {TooNarrow, Spoiled, ClothRanOut, ClothNarrower, DoneAlready, ChangedMind};
    if (step.does == Does::Straighten)
        return {ClothRanOut, ClothNarrower, DoneAlready, ChangedMind};
    if (step.does == Does::StitchBlock)
        return {ThreadRanOut, PleatOrHole, PatchWrong, PowerFailed, StripTorn, WillNotFit};
    if (step.does == Does::StitchTest)
        return {ThreadRanOut, PleatOrHole, PowerFailed, DoneAlready, ChangedMind};
    if (step.trial)
        return {Spoiled, DoneAlready, ChangedMind};
    switch (step.does) {
    case Does::RoughApart:
        return {CutInto, BlockGone, Spoiled, DoneAlready, ChangedMind};
    case Does::TrimBlock:
        return {CutInto, SizeOff, BlockGone, Spoiled, DoneAlready, ChangedMind};
    case Does::JoinShort:
    case Does::JoinLongRow:
        return {SewnWrong, FoldMissed, CutInto, BlockGone, Spoiled, DoneAlready};
    case Does::JoinRow:
        return {SizeOff, SewnWrong, FoldMissed, CutInto, BlockGone, DoneAlready};
    case Does::SquarePiece:
        return {CutInto, SizeOff, SewnWrong, FoldMissed, DoneAlready, ChangedMind};
    case Does::LayBacking:
    case Does::BagOut:
    case Does::SewFrame:
        return {SewnWrong, Spoiled, DoneAlready, ChangedMind};
    case Does::SewBinding:
        return {SewnWrong, FoldMissed, Spoiled, DoneAlready, ChangedMind};
    case Does::LastLook:
        return {FoldMissed, SewnWrong, DoneAlready, ChangedMind};
    default:
        return {Spoiled, DoneAlready, ChangedMind};
    }
}

Asks asksOf(Mishap mishap)
{
    switch (mishap) {
    case Mishap::ClothRanOut:
        return Asks::ClothLeft;
    case Mishap::ClothNarrower:
        return Asks::ClothWidth;
    case Mishap::StripTorn:
        return Asks::TornAt;
    case Mishap::CutInto:
        return Asks::LeftOutside;
    case Mishap::SizeOff:
        return Asks::SizeNow;
    case Mishap::BlockGone:
        return Asks::Block;
    default:
        return Asks::Nothing;
    }
}

Answered answerTo(const Project &project, const Plan &plan, const std::vector<Step> &steps, const Step &step,
                  Mishap mishap, std::optional<Length> measure, std::int64_t strip, const std::string &block)
{
    const Case at{project, plan, steps, step, measure, strip, block};
    switch (mishap) {
    case Mishap::TooNarrow:
        return spoiled(at, true);
    case Mishap::Spoiled:
        return spoiled(at, false);
    case Mishap::ClothRanOut:
        return ranOut(at);
    case Mishap::ClothNarrower:
        return narrower(at);
    case Mishap::DoneAlready:
        return doneAlready(at);
    case Mishap::ThreadRanOut:
        return threadRanOut(at);
    case Mishap::PleatOrHole: {
        const Length small = project.system == System::Inch ? Length::inches(0, 1, 2) : Length::mm(12);
        Answered answer = unchanged(at, {{"judge-pleat", {Told{small}}}, {"find-needle", {}}});
        answer.mayRemake = true;
        return answer;
    }
    case Mishap::PatchWrong:
        return patchWrong(at);
    case Mishap::PowerFailed:
        return unchanged(at, {{"power-again", {}}});
    case Mishap::StripTorn:
        return torn(at);
    case Mishap::WillNotFit:
        return willNotFit(at);
    case Mishap::CutInto:
        return cutInto(at);
    case Mishap::SizeOff:
        return sizeOff(at);
    case Mishap::SewnWrong:
        return sewnWrong(at);
    case Mishap::FoldMissed:
        return foldMissed(at);
    case Mishap::BlockGone:
        return blockGone(at, BlockState::Lost);
    case Mishap::ChangedMind:
        break;
    }
    return unchanged(at, {{"not-changed", {}}});
}

} // namespace matside
