// SPDX-License-Identifier: MIT
// matside-cuts FILE…: one line a file, `name length bought lower-bound proved|open milliseconds`. The
// length is in the file's own units, bought and bound in purchase steps, the time that of the solver.
//   --budget N   work units for the bought length (default: the room's own)
#include "bench/cutsread.h"
#include "cutting/solve.h"

#include <chrono>
#include <cstdio>
#include <cstring>

using namespace matside::cutting;

namespace {

bool answer(const std::string &file, const Budget &budget)
{
    const auto job = readJob(file);
    const std::string name = file.substr(file.find_last_of('/') + 1);
    if (!job) {
        std::fprintf(stderr, "%s: not a job file\n", file.c_str());
        return false;
    }
    const auto begin = std::chrono::steady_clock::now();
    const auto solved = solve(*job, budget);
    const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - begin;
    if (!solved) {
        std::fprintf(stderr, "%s: refused (reason %d, size %d)\n", name.c_str(),
                     static_cast<int>(solved.error().reason), solved.error().index);
        return false;
    }
    const Answer &a = solved.value();
    std::printf("%s %lld %lld %lld %s %.3f\n", name.c_str(), static_cast<long long>(a.length),
                static_cast<long long>(a.bought / job->step),
                static_cast<long long>(a.leastBought / job->step), a.proved() ? "proved" : "open",
                took.count());
    return true;
}

} // namespace

int main(int count, char **arguments)
{
    Budget budget{Budget{}.bought, 0};
    bool good = count > 1;
    for (int i = 1; i < count; ++i) {
        if (std::strcmp(arguments[i], "--budget") == 0 && i + 1 < count)
            budget.bought = std::strtoll(arguments[++i], nullptr, 10);
        else
            good = answer(arguments[i], budget) && good;
    }
    if (count < 2)
        std::fprintf(stderr, "usage: matside-cuts [--budget N] FILE...\n");
    return good ? 0 : 1;
}
