// SPDX-License-Identifier: MIT
// matside-cuts FILE…: one line a file, `name length bought lower-bound proved|open milliseconds`. The
// length is in the file's own units, bought and bound in purchase steps, the time what the solver takes of
// one processor.
//   --budget N                  work units for the bought length (default: the room's own)
//   --random KIND FIRST LAST    random jobs in place of files; KIND: inch, metric, inch-turn, metric-turn
//   --write FOLDER              the jobs are written there as job files, too
// After more than one job the shares proved within 4, 16 and 100 ms follow, and the longest time.
#include "bench/cutsrandom.h"
#include "bench/cutsread.h"
#include "cutting/certificate.h"
#include "cutting/plancheck.h"
#include "cutting/solve.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>

using namespace matside::cutting;

namespace {

struct Bench {
    Budget budget{Budget{}.bought, 0};
    std::string folder;
    std::vector<double> proved; ///< milliseconds
    int jobs = 0;
    int worstGap = 0; ///< steps
    int uncertified = 0;
    bool good = true;

    void run(const std::string &name, const Job &job);
    void file(const std::string &path);
    void random(const std::string &kind, std::uint64_t first, std::uint64_t last);
    void sum() const;
};

void write(const std::string &path, const Job &job)
{
    std::ofstream out(path);
    out << job.usable << ' ' << job.step << ' ' << job.sizes.size() << '\n';
    for (const Size &s : job.sizes)
        out << s.across << ' ' << s.along << ' ' << s.pieces << ' ' << s.mayTurn << '\n';
}

void Bench::run(const std::string &name, const Job &job)
{
    if (!folder.empty())
        write(folder + '/' + name + ".txt", job);
    const std::clock_t begin = std::clock();
    const auto solved = solve(job, budget);
    const double took = 1e3 * static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC;
    if (!solved) {
        std::fprintf(stderr, "%s: refused (reason %d, size %d)\n", name.c_str(),
                     static_cast<int>(solved.error().reason), solved.error().index);
        good = false;
        return;
    }
    const Answer &a = solved.value();
    std::printf("%s %lld %lld %lld %s %.3f\n", name.c_str(), static_cast<long long>(a.length),
                static_cast<long long>(a.bought / job.step), static_cast<long long>(a.leastBought / job.step),
                a.proved() ? "proved" : "open", took);
    if (const std::string fault = plancheck::fault(job, a); !fault.empty()) {
        std::fprintf(stderr, "%s: %s\n", name.c_str(), fault.c_str());
        good = false;
    }
    ++jobs;
    if (a.proved())
        proved.push_back(took);
    if (a.proof == Proof::Search)
        ++uncertified;
    else if (!a.certificate.nodes.empty() && !checkCertificate(job, a.certificate)) {
        std::fprintf(stderr, "%s: certificate refused\n", name.c_str());
        good = false;
    }
    worstGap = std::max(worstGap, static_cast<int>((a.bought - a.leastBought) / job.step));
}

void Bench::file(const std::string &path)
{
    const auto job = readJob(path);
    if (job)
        return run(path.substr(path.find_last_of('/') + 1), *job);
    std::fprintf(stderr, "%s: not a job file\n", path.c_str());
    good = false;
}

void Bench::random(const std::string &kind, std::uint64_t first, std::uint64_t last)
{
    RandomJobs jobsOf(kind.starts_with("inch"), kind.ends_with("-turn"));
    for (std::uint64_t seed = first; seed <= last; ++seed)
        run(kind + '-' + std::to_string(seed), jobsOf.job(seed));
}

void Bench::sum() const
{
    const auto within = [&](double limit) {
        const auto n = std::count_if(proved.begin(), proved.end(), [&](double t) { return t <= limit; });
        return 100.0 * static_cast<double>(n) / jobs;
    };
    std::printf(
        "# %d jobs, proved within 4 ms %.1f %%, 16 ms %.1f %%, 100 ms %.1f %%, in the budget %.1f %%; "
        "slowest proof %.1f ms, widest gap %d steps, %d proofs by search\n",
        jobs, within(4), within(16), within(100), within(1e9),
        proved.empty() ? 0.0 : *std::max_element(proved.begin(), proved.end()), worstGap, uncertified);
}

} // namespace

int main(int count, char **arguments)
{
    Bench bench;
    const std::vector<std::string> given(arguments + 1, arguments + count);
    for (std::size_t i = 0; i < given.size(); ++i) {
        const std::size_t left = given.size() - i - 1;
        if (given[i] == "--budget" && left >= 1) {
            bench.budget.bought = std::atoll(given[++i].c_str());
        } else if (given[i] == "--write" && left >= 1) {
            bench.folder = given[++i];
        } else if (given[i] == "--random" && left >= 3) {
            const auto first = std::strtoull(given[i + 2].c_str(), nullptr, 10);
            const auto last = std::strtoull(given[i + 3].c_str(), nullptr, 10);
            bench.random(given[i + 1], first, last);
            i += 3;
        } else {
            bench.file(given[i]);
        }
    }
    if (given.empty())
        std::fprintf(stderr, "usage: matside-cuts [--budget N] [--random KIND FIRST LAST] [FILE...]\n");
    if (bench.jobs > 1)
        bench.sum();
    return bench.good && !given.empty() ? 0 : 1;
}
