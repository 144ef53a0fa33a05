// SPDX-License-Identifier: MIT
//
// Strips along the selvage. Cloth without a direction may lie a quarter turned under the cutter, so that what
// is a strip from selvage to selvage otherwise is cut beside the selvage; all else stays as it is.
#include "bench/alonglay.h"

#include "bench/account.h"
#include "cutting/solve.h"

#include <algorithm>

namespace matside {

namespace {

/// Nothing among it needs another grain.
bool mayAllRun(const std::vector<Wanted> &wanted)
{
    return std::all_of(wanted.begin(), wanted.end(),
                       [](const Wanted &want) { return want.count <= 0 || want.straightGrain; });
}

/// Everything at once, if it goes.
bool fillAtOnce(std::vector<LaidStrip> &strips, std::vector<Wanted> &wanted, Length run, Length width)
{
    cutting::Job job;
    job.usable = run.count();
    job.step = width.count();
    for (const Wanted &want : wanted)
        job.sizes.push_back(sizeOf(want));
    const auto answer = cutting::solve(job, {4'000, 1'000});
    if (!answer || answer.value().length > width.count())
        return false;
    strips = stripsOf(answer.value().plan, wanted, run);
    for (Wanted &want : wanted)
        want.count = std::min<std::int64_t>(want.count, 0);
    return true;
}

/// Strips of one want as long as the width lasts.
void fillWith(std::vector<LaidStrip> &strips, Wanted &want, Length run, Length &width)
{
    const std::int64_t each = want.across > Length() ? run.floorDiv(want.across) : 0;
    const auto row = [&](std::int64_t repeats, std::int64_t pieces) {
        if (repeats <= 0 || pieces <= 0)
            return;
        LaidStrip strip{alongName(want.along),
                        want.along,
                        repeats,
                        0,
                        false,
                        {{want.does, want.across, want.along, pieces, false, {}}},
                        {},
                        run};
        strips.push_back(std::move(strip));
        width -= want.along * repeats;
        want.count -= repeats * pieces;
    };
    if (each <= 0 || want.along <= Length() || want.count <= 0)
        return;
    row(std::min(want.count / each, width.floorDiv(want.along)), each);
    if (want.count > 0 && want.count < each && want.along <= width)
        row(1, want.count);
}

} // namespace

std::string alongName(Length width)
{
    return nameOf(Does::CutAlong) + '-' + std::to_string(width.count());
}

Length runOf(const std::vector<LaidStrip> &strips)
{
    Length run;
    for (const LaidStrip &strip : strips)
        if (strip.owned == 0)
            run = max(run, strip.run);
    return run;
}

Length besideOf(const std::vector<LaidStrip> &strips)
{
    Length beside;
    for (const LaidStrip &strip : strips)
        if (strip.owned == 0 && strip.run > Length())
            beside += strip.height * strip.repeats;
    return beside;
}

Length reachAlong(const Project &project, const std::string &cloth)
{
    const Cloth *listed = clothNamed(project, cloth);
    if (listed && listed->directional)
        return {};
    // Folded once, cut end to cut end, it is cut over half its length: what lies on a large mat, with the
    // ruler slid along once at the most (common practice, no published source).
    Length reach = project.system == System::Inch ? Length::inches(72) : Length::mm(1800);
    Length longest;
    for (const Ruler &ruler : project.rulers)
        longest = max(longest, max(ruler.length, ruler.width));
    return longest > Length() ? min(reach, longest * 4) : reach;
}

cutting::Size sizeOf(const Wanted &want)
{
    return {want.across.count(), want.along.count(),
            static_cast<int>(std::clamp<std::int64_t>(want.count, 0, cutting::limits::pieces + 1)),
            want.mayTurn};
}

std::vector<LaidStrip> fillStretch(std::vector<Wanted> &wanted, Length run, Length width)
{
    std::vector<LaidStrip> strips;
    if (run <= Length() || width <= Length() || !mayAllRun(wanted) || fillAtOnce(strips, wanted, run, width))
        return strips;
    std::vector<Wanted *> widest;
    widest.reserve(wanted.size());
    for (Wanted &want : wanted)
        widest.push_back(&want);
    std::stable_sort(widest.begin(), widest.end(),
                     [](const Wanted *a, const Wanted *b) { return a->along > b->along; });
    for (Wanted *want : widest)
        fillWith(strips, *want, run, width);
    return strips;
}

void offerAlong(ClothLay &lay, const std::vector<Wanted> &wanted, const Ground &ground)
{
    if (lay.bought <= ground.step || !mayAllRun(wanted))
        return;
    const Length squared = ground.straighten ? straightening(ground.system, Length()) : Length();
    cutting::Job job;
    job.usable = ground.usable.count();
    job.step = ground.step.count();
    job.squared = squared.count();
    job.reach = ground.reach.count();
    for (const Wanted &want : wanted) {
        job.sizes.push_back(sizeOf(want));
        std::swap(job.sizes.back().across, job.sizes.back().along);
    }
    // Fewer ruler settings would cost the width that is left beside the strips, and trimming.
    const auto way = cutting::solveLengthwise(job, lay.bought.count(), {ground.effort, 0});
    if (!way)
        return; // one of them is too wide for strips along the cloth
    const Length least = min(*lay.least, Length::ticks(way.value().least));
    if (way.value().found()) {
        const Length run = Length::ticks(way.value().bought) - squared;
        lay = laidAs(stripsOf(way.value().plan, wanted, run), ground);
    }
    lay.least = min(least, lay.bought);
}

} // namespace matside
