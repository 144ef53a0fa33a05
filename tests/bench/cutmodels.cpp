// SPDX-License-Identifier: MIT
// matside-cutmodels FILE FOLDER: writes the job as two integer programmes in LP format, for a general
// solver to solve beside the optimiser; the objective is the number of purchase steps.
//   FOLDER/levels.lp    strips opened by their tallest piece (Lodi, Martello & Vigo 2004)
//   FOLDER/layouts.lp   one count for every strip that nothing more fits into (Gilmore & Gomory 1961),
//                       left out beyond 20 000 of them
// Written apart from the optimiser, which it shares nothing with but the reading of job files.
#include "bench/cutsread.h"

#include <algorithm>
#include <cstdio>

using namespace matside::cutting;

namespace {

struct Laying {
    int size = 0;
    Ticks w = 0, h = 0;
};

/// Each size each way it may lie, rising in height.
std::vector<Laying> layings(const Job &job)
{
    std::vector<Laying> all;
    for (int i = 0; i < static_cast<int>(job.sizes.size()); ++i) {
        const Size &s = job.sizes[static_cast<std::size_t>(i)];
        if (s.across <= job.usable)
            all.push_back({i, s.across, s.along});
        if (s.mayTurn && s.across != s.along && s.along <= job.usable)
            all.push_back({i, s.along, s.across});
    }
    std::stable_sort(all.begin(), all.end(), [](const Laying &a, const Laying &b) { return a.h < b.h; });
    return all;
}

/// Linear forms are gathered row by row as text.
struct Model {
    std::string length;
    std::vector<std::string> demand;
    std::string rows, whole, binary;

    bool write(const std::string &path, const Job &job) const
    {
        std::ofstream out(path);
        out << "Minimize\n obj: B\nSubject To\n";
        for (std::size_t i = 0; i < demand.size(); ++i)
            if (job.sizes[i].pieces > 0)
                out << " d" << i << ':' << demand[i] << " >= " << job.sizes[i].pieces << '\n';
        out << rows << " buy: " << job.step << " B" << length << " >= 0\nGeneral\n B\n" << whole;
        if (!binary.empty())
            out << "Binary\n" << binary;
        out << "End\n";
        return out.good();
    }
};

std::string term(std::int64_t factor, const std::string &name)
{
    return (factor < 0 ? " - " : " + ") + std::to_string(factor < 0 ? -factor : factor) + ' ' + name + '\n';
}

Model levels(const Job &job)
{
    const auto all = layings(job);
    Model m;
    m.demand.resize(job.sizes.size());
    Ticks plain = 0; // one size to a strip: no plan need be longer
    for (const Size &s : job.sizes)
        plain += s.across <= job.usable
                     ? (s.pieces + job.usable / s.across - 1) / (job.usable / s.across) * s.along
                     : s.pieces * s.across;
    for (std::size_t j = 0; j < all.size(); ++j) {
        const int most = job.sizes[static_cast<std::size_t>(all[j].size)].pieces;
        const auto slots = std::min<Ticks>(most, plain / all[j].h);
        std::string before;
        for (Ticks t = 0; t < slots; ++t) {
            const std::string tag = std::to_string(j) + '_' + std::to_string(t), y = "y" + tag;
            m.binary += ' ' + y + '\n';
            m.length += term(-all[j].h, y);
            m.demand[static_cast<std::size_t>(all[j].size)] += term(1, y);
            std::string width;
            for (std::size_t i = 0; i <= j; ++i) {
                const std::string x = "x" + tag + '_' + std::to_string(i);
                width += term(all[i].w, x);
                m.demand[static_cast<std::size_t>(all[i].size)] += term(1, x);
                m.whole += ' ' + x + '\n';
            }
            m.rows += " w" + tag + ':' + width + term(all[j].w - job.usable, y) + " <= 0\n";
            if (!before.empty())
                m.rows += " o" + tag + ':' + term(1, before) + term(-1, y) + " >= 0\n";
            before = y;
        }
    }
    return m;
}

/// Every strip that nothing more fits into; false beyond the limit.
struct Layouts {
    const Job &job;
    std::vector<Laying> all = layings(job);
    std::vector<int> left = {};
    std::vector<int> counts = {};
    Model model = {};
    int found = 0;

    bool write()
    {
        model.demand.resize(job.sizes.size());
        for (const Size &s : job.sizes)
            left.push_back(s.pieces);
        counts.assign(job.sizes.size(), 0);
        for (std::size_t j = 0; j < all.size(); ++j)
            if (j + 1 == all.size() || all[j + 1].h > all[j].h)
                lay(j, all[j].h, job.usable, 0);
        return found <= 20'000;
    }

    void lay(std::size_t from, Ticks height, Ticks room, Ticks tallest)
    {
        if (found > 20'000)
            return;
        const auto size = static_cast<std::size_t>(all[from].size);
        for (auto n = static_cast<int>(std::min<Ticks>(left[size], room / all[from].w)); n >= 0; --n) {
            left[size] -= n;
            counts[size] += n;
            const Ticks top = n > 0 ? std::max(tallest, all[from].h) : tallest;
            if (from > 0)
                lay(from - 1, height, room - n * all[from].w, top);
            else if (top == height)
                take(height, room - n * all[from].w);
            left[size] += n;
            counts[size] -= n;
        }
    }

    void take(Ticks height, Ticks room)
    {
        for (const Laying &l : all)
            if (l.h <= height && l.w <= room && left[static_cast<std::size_t>(l.size)] > 0)
                return;
        const std::string x = "x" + std::to_string(found++);
        model.whole += ' ' + x + '\n';
        model.length += term(-height, x);
        for (std::size_t i = 0; i < counts.size(); ++i)
            if (counts[i] > 0)
                model.demand[i] += term(counts[i], x);
    }
};

} // namespace

int main(int count, char **arguments)
{
    if (count != 3) {
        std::fprintf(stderr, "usage: matside-cutmodels FILE FOLDER\n");
        return 2;
    }
    const auto job = readJob(arguments[1]);
    if (!job) {
        std::fprintf(stderr, "%s: not a job file\n", arguments[1]);
        return 1;
    }
    const std::string folder = arguments[2];
    bool good = levels(*job).write(folder + "/levels.lp", *job);
    Layouts layouts{*job};
    if (layouts.write())
        good = layouts.model.write(folder + "/layouts.lp", *job) && good;
    else
        std::remove((folder + "/layouts.lp").c_str());
    return good ? 0 : 1;
}
