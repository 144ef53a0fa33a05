// SPDX-License-Identifier: MIT
#include "cutting/solve.h"

#include "cutting/aims.h"
#include "cutting/certificate.h"
#include "cutting/cloth.h"
#include "cutting/search.h"

#include <algorithm>
#include <utility>

namespace matside::cutting {
namespace {

using Reason = Refusal::Reason;

Verdict refuse(Reason reason, int index = -1, Ticks allowed = 0)
{
    return {false, {reason, index, allowed}};
}

bool sensible(Ticks side)
{
    return side > 0 && side <= limits::length;
}

Verdict checkSizes(const Job &job)
{
    std::int64_t pieces = 0;
    for (int i = 0; i < static_cast<int>(job.sizes.size()); ++i) {
        const Size &s = job.sizes[static_cast<std::size_t>(i)];
        if (!sensible(s.across) || !sensible(s.along))
            return refuse(Reason::NoSize, i, limits::length);
        if (s.pieces < 0)
            return refuse(Reason::NegativeCount, i);
        if (s.pieces > 0 && s.across > job.usable && !(s.mayTurn && s.along <= job.usable))
            return refuse(Reason::WiderThanCloth, i, job.usable);
        pieces += s.pieces;
    }
    for (int i = 0; i < static_cast<int>(job.pieced.size()); ++i) {
        const PiecedStrip &s = job.pieced[static_cast<std::size_t>(i)];
        const int index = static_cast<int>(job.sizes.size()) + i;
        if (!sensible(s.height) || s.total <= 0 || s.loss < 0)
            return refuse(Reason::NoSize, index, limits::length);
        if (s.loss >= job.usable)
            return refuse(Reason::LossTooLarge, index, job.usable - 1);
        if (s.total > limits::length * limits::pieces)
            return refuse(Reason::TooManyPieces, index, limits::pieces);
        pieces += stripsFor(s, job.usable);
    }
    return pieces > limits::pieces ? refuse(Reason::TooManyPieces, -1, limits::pieces) : Verdict{};
}

/// The strips of an earlier plan as far as their sizes still are there and fit.
std::vector<Cutting> stripsOf(const Cloth &cloth, const Plan &plan)
{
    std::vector<Cutting> out;
    for (const StripLayout &s : plan.strips) {
        Strip strip{s.from + 1, -1, {}};
        if (strip.sheet > cloth.owned())
            continue;
        Ticks left = cloth.sheet(strip.sheet).width;
        for (const Laid &p : s.pieces) {
            if (p.size < 0 || p.size >= cloth.sizes())
                continue;
            for (const int j : cloth.liesOf[static_cast<std::size_t>(p.size)]) {
                const Lie &l = cloth.lie(j);
                const auto n = static_cast<int>(std::min<Ticks>(p.count, left / l.width));
                if (l.turned != p.turned || n <= 0)
                    continue;
                left -= n * l.width;
                strip.rows.push_back({j, n});
                strip.level = std::max(strip.level, l.level);
            }
        }
        std::sort(strip.rows.begin(), strip.rows.end(),
                  [](const Row &a, const Row &b) { return a.lie < b.lie; });
        if (strip.level >= 0)
            out.push_back({std::move(strip), s.repeats});
    }
    return out;
}

Ticks roundUp(Ticks length, Ticks step)
{
    return (length + step - 1) / step * step;
}

/// The least length the area of the pieces allows; pieced strips are left out when they run with the cloth.
Ticks byArea(const Job &job, const std::vector<Size> &sizes)
{
    __extension__ using Wide = __int128;
    Wide area = 0;
    for (const Size &s : sizes)
        area += Wide(s.across) * s.along * s.pieces;
    for (const Owned &o : job.owned)
        area -= Wide(o.across) * o.along;
    return area <= 0 ? 0 : static_cast<Ticks>((area + job.usable - 1) / job.usable);
}

/// Widths too fine for an exact table: the plan came from widths rounded up, the bound comes from widths
/// rounded down.
void boundRoughly(const Job &job, Work &work, Answer &answer)
{
    const Cloth cloth(job, Cloth::Rounding::Down);
    answer.leastLength = 0;
    answer.certificate = {};
    if (std::any_of(cloth.lies.begin(), cloth.lies.end(), [](const Lie &l) { return l.cells <= 0; }))
        return;
    Table table(cloth, work);
    Master master(cloth, table, work);
    master.solve();
    answer.leastLength = master.bound() * cloth.unit;
    if (master.proof().pieces.empty() || master.proof().ray)
        return;
    answer.certificate.nodes.push_back({-1, -1, 0, -1, -1, master.proof()});
}

/// Prices are by units of the cloth; the certificate's are by ticks.
void finish(const Cloth &cloth, Certificate &proof, Ticks least)
{
    proof.least = least;
    proof.heights.clear();
    for (const std::int64_t h : cloth.heights)
        proof.heights.push_back(h * cloth.unit);
    const auto rescale = [&](Prices &prices) {
        for (auto &p : prices.pieces)
            p *= cloth.unit;
        for (auto &p : prices.counts)
            p *= cloth.unit;
        for (auto &[cut, p] : prices.cuts)
            p *= cloth.unit;
    };
    for (Certificate::Node &node : proof.nodes)
        rescale(node.prices);
    for (Prices &prices : proof.limits)
        rescale(prices);
}

/// Strips across the cloth.
Answer across(const Job &job, Work &work, std::int64_t handwork, const Plan *previous)
{
    const Cloth cloth(job);
    Answer answer;
    Search search(cloth, job.step, work);
    if (previous != nullptr && !previous->lengthwise)
        search.propose(stripsOf(cloth, *previous));
    search.run();
    answer.stopped = work.spent();
    answer.length = search.length() * cloth.unit;
    answer.leastLength = search.lower() * cloth.unit;
    const bool settled = search.settled().least > search.certified();
    if (settled)
        answer.certificate = search.settled();
    else
        answer.certificate.nodes = search.nodes();
    if (cloth.rough)
        boundRoughly(job, work, answer);
    const Ticks certified =
        cloth.rough ? answer.leastLength : std::max(search.certified(), search.settled().least) * cloth.unit;
    answer.leastLength = std::max(answer.leastLength, std::min(answer.length, byArea(job, sizesOf(job))));
    answer.bought = roundUp(answer.length, job.step);
    answer.leastBought = std::min(answer.bought, roundUp(answer.leastLength, job.step));
    const bool whole = roundUp(certified, job.step) >= answer.bought;
    answer.proof = !answer.proved() ? Proof::None : whole ? Proof::Prices : Proof::Search;
    finish(cloth, answer.certificate, whole ? answer.bought - job.step + 1 : certified);
    const auto best = handwork > 0 ? fewerHeights(cloth, search, job, work, handwork) : search.best();
    answer.plan = cloth.planOf(best);
    answer.length = cloth.lengthOf(best) * cloth.unit;
    return answer;
}

/// The longest that may be bought for strips along the cloth, if it is to be less than `below`.
Ticks longestAlong(const Job &job, Ticks below)
{
    const Ticks most = below - job.step;
    return job.reach > 0 ? std::min(most, (job.reach + job.squared) / job.step * job.step) : most;
}

/// Fewer ruler settings over the same length, where the strips still lie side by side.
void spareSettings(const Job &job, Budget budget, Work &work, Lengthwise &found)
{
    work.extend(budget.bought);
    Answer fewer = across(turnedJob(job, found.bought), work, budget.handwork, nullptr);
    if (fewer.length <= job.usable)
        found.plan = std::move(fewer.plan);
}

/// More length never hurts, so the lengths are halved in on.
Lengthwise along(const Job &job, Ticks below, Budget budget, Work &work)
{
    Lengthwise found;
    found.bought = below;
    // Pieced strips are then cut to the length, whatever it is: they do not bound the area.
    Ticks least = std::max(job.step, roundUp(byArea(job, job.sizes) + job.squared, job.step));
    Ticks most = longestAlong(job, below), length = most;
    bool search = false;
    work.extend(budget.bought);
    while (least <= most) {
        const Job turned = turnedJob(job, length);
        const bool fits = check(turned).ok;
        Answer narrow = fits ? across(turned, work, 0, nullptr) : Answer{};
        if (fits && narrow.length <= job.usable) {
            found.plan = std::move(narrow.plan);
            found.bought = length;
            most = length - job.step;
        } else if (!fits || narrow.leastLength > job.usable) {
            least = length + job.step;
            found.certificate = std::move(narrow.certificate);
            search = search || narrow.proof == Proof::Search;
        } else {
            found.stopped = narrow.stopped;
            break;
        }
        length = least + (most - least) / job.step / 2 * job.step;
    }
    if (found.found() && budget.handwork > 0)
        spareSettings(job, budget, work, found);
    found.plan.lengthwise = found.found();
    const bool settled = least > most;
    found.least = settled ? found.bought : least;
    found.proof = !settled ? Proof::None : search ? Proof::Search : Proof::Prices;
    return found;
}

/// The way along is taken only where it buys less.
void offerAlong(const Job &job, Budget budget, Work &work, Answer &answer)
{
    Lengthwise way = along(job, answer.bought, budget, work);
    answer.stopped = answer.stopped || way.stopped;
    if (way.found()) {
        answer.plan = std::move(way.plan);
        answer.length = answer.bought = way.bought;
    }
    answer.lengthwise = std::move(way.certificate);
    answer.leastBought = std::min({answer.bought, answer.leastBought, way.least});
    answer.leastLength = std::min(answer.leastLength, way.least);
    if (!answer.proved())
        answer.proof = Proof::None;
    else if (way.proof == Proof::Search)
        answer.proof = Proof::Search;
    else if (answer.proof == Proof::None)
        answer.proof = Proof::Prices;
}

} // namespace

Verdict check(const Job &job)
{
    if (!sensible(job.usable))
        return refuse(Reason::NoWidth, -1, limits::length);
    if (!sensible(job.step))
        return refuse(Reason::NoStep, -1, limits::length);
    if (job.squared < 0 || job.reach < 0)
        return refuse(Reason::NoStep, -1, limits::length);
    if (job.sizes.size() + job.pieced.size() > static_cast<std::size_t>(limits::sizes))
        return refuse(Reason::TooManySizes, -1, limits::sizes);
    if (job.owned.size() > static_cast<std::size_t>(limits::owned))
        return refuse(Reason::TooManyOwned, -1, limits::owned);
    for (int o = 0; o < static_cast<int>(job.owned.size()); ++o)
        if (!sensible(job.owned[static_cast<std::size_t>(o)].across) ||
            !sensible(job.owned[static_cast<std::size_t>(o)].along))
            return refuse(Reason::NoSize, o, limits::length);
    return checkSizes(job);
}

Result<Answer, Refusal> solve(const Job &job, Budget budget, std::stop_token stop, const Answer *previous)
{
    const Verdict verdict = check(job);
    if (!verdict.ok)
        return verdict.refusal;
    Work work(budget.bought, std::move(stop));
    Answer answer = across(job, work, budget.handwork, previous == nullptr ? nullptr : &previous->plan);
    if (job.mayRunLengthwise)
        offerAlong(job, budget, work, answer);
    answer.handwork = handworkOf(job, answer.plan);
    answer.work = work.done();
    return answer;
}

Result<Lengthwise, Refusal> solveLengthwise(const Job &job, Ticks below, Budget budget, std::stop_token stop)
{
    const Verdict verdict = check(job);
    if (!verdict.ok)
        return verdict.refusal;
    Work work(0, std::move(stop));
    Lengthwise way = along(job, below, budget, work);
    way.handwork = handworkOf(job, way.plan);
    way.work = work.done();
    return way;
}

} // namespace matside::cutting
