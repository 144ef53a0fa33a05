// SPDX-License-Identifier: MIT
#include "optimiser.h"

#include "bench/cutsrandom.h"
#include "cutting/jobs.h"
#include "cutting/solve.h"

#include <algorithm>
#include <ctime>

namespace measure {

using namespace matside::cutting;

namespace {

struct Known {
    Job job;
    std::int64_t steps = 0; ///< the least that can be bought; 0: not known
};

void cut(const Known &known, int rounds, Cut &all, std::int64_t work = Budget{}.bought)
{
    const Budget bought{work, 0};
    std::vector<double> took;
    bool proved = false;
    for (int round = 0; round < rounds; ++round) {
        const std::clock_t begin = std::clock();
        const auto solved = solve(known.job, bought);
        const double seconds = static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC;
        took.push_back(1e3 * seconds);
        all.times.add(std::chrono::duration_cast<std::chrono::steady_clock::duration>(
            std::chrono::duration<double>(seconds)));
        if (!solved)
            continue;
        const Answer &answer = solved.value();
        proved = answer.proved();
        all.widest =
            std::max(all.widest, static_cast<int>((answer.bought - answer.leastBought) / known.job.step));
        if (round == 0 && known.steps > 0 && answer.bought != known.steps * known.job.step)
            ++all.differing;
    }
    std::sort(took.begin(), took.end());
    const double median = took[took.size() / 2];
    ++all.jobs;
    all.proved += proved ? 1 : 0;
    all.within += proved && median <= 16 ? 1 : 0;
    all.slowest = std::max(all.slowest, median);
}

} // namespace

Cut cutInvented(int rounds)
{
    Cut all;
    for (const Known &known :
         {Known{jobs::sampler(false), 23}, Known{jobs::sampler(true), 22}, Known{jobs::blocks(false), 82},
          Known{jobs::blocks(true), 81}, Known{jobs::metric(false), 53}, Known{jobs::metric(true), 52}})
        cut(known, rounds, all);
    return all;
}

Cut cutLarge(int rounds)
{
    Cut all;
    for (const Known &known : {Known{jobs::large(false), 107}, Known{jobs::large(true), 106}})
        cut(known, rounds, all, 100'000);
    return all;
}

Cut cutRandom(bool turn, int count)
{
    Cut all;
    for (int number = 0; number < count; ++number) {
        const Known one{RandomJobs(number % 2 == 0, turn).job(static_cast<std::uint64_t>(number / 2 + 1)), 0};
        const int proved = all.proved;
        cut(one, 1, all);
        if (all.proved > proved)
            continue;
        // What stands in the way is time, or the search itself: looked at with more work.
        Cut again;
        cut(one, 1, again, 400'000);
        all.later += again.proved;
        all.left = std::max(all.left, again.widest);
    }
    return all;
}

} // namespace measure
