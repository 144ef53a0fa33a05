// SPDX-License-Identifier: MIT
#include "cutting/cloth.h"

#include "cutting/solve.h"

#include <algorithm>
#include <numeric>

namespace matside::cutting {
namespace {
constexpr Ticks mostCells = 2048;
constexpr std::size_t mostPlaces = 6000;
} // namespace

std::int64_t stripsFor(const PiecedStrip &strip, Ticks usable)
{
    const Ticks each = usable - strip.loss;
    return std::max<std::int64_t>(1, (strip.total - strip.loss + each - 1) / each);
}

std::vector<Size> sizesOf(const Job &job)
{
    std::vector<Size> all = job.sizes;
    for (const PiecedStrip &s : job.pieced)
        all.push_back({job.usable, s.height, static_cast<int>(stripsFor(s, job.usable)), false});
    return all;
}

Cloth::Cloth(const Job &job, Rounding rounding)
{
    sheets.push_back({job.usable, 0, 0});
    for (const Owned &o : job.owned)
        sheets.push_back({o.across, o.along, 0});
    layOut(job);
    findPlaces(rounding);
}

void Cloth::layOut(const Job &job)
{
    const auto all = sizesOf(job);
    Ticks common = 0, widest = 0;
    for (const Sheet &s : sheets)
        widest = std::max(widest, s.width);
    for (int i = 0; i < static_cast<int>(all.size()); ++i) {
        const Size &s = all[static_cast<std::size_t>(i)];
        need.push_back(s.pieces);
        if (s.pieces == 0)
            continue;
        if (s.across <= widest)
            lies.push_back({i, false, s.across, s.along, 0, 0});
        if (s.mayTurn && s.across != s.along && s.along <= widest)
            lies.push_back({i, true, s.along, s.across, 0, 0});
    }
    std::sort(lies.begin(), lies.end(), [](const Lie &a, const Lie &b) {
        return a.high != b.high ? a.high < b.high : a.width != b.width ? a.width > b.width : a.size < b.size;
    });
    for (const Lie &l : lies)
        common = std::gcd(common, l.high);
    unit = std::max<Ticks>(1, common);
    liesOf.resize(all.size());
    for (int j = 0; j < static_cast<int>(lies.size()); ++j) {
        Lie &l = lies[static_cast<std::size_t>(j)];
        l.high /= unit;
        if (heights.empty() || heights.back() != l.high) {
            heights.push_back(l.high);
            lieEnd.push_back(j);
        }
        l.level = levels() - 1;
        lieEnd.back() = j + 1;
        liesOf[static_cast<std::size_t>(l.size)].push_back(j);
    }
    for (std::size_t s = 1; s < sheets.size(); ++s)
        sheets[s].high /= unit;
}

/// Sums of widths that fit the widest sheet, each piece as often as it is wanted; empty if beyond `most`.
std::vector<Ticks> Cloth::reachable(std::size_t most) const
{
    Ticks widest = 0;
    for (const Sheet &s : sheets)
        widest = std::max(widest, s.width);
    std::vector<Ticks> sums{0};
    for (const Lie &l : lies) {
        const auto copies = std::min<Ticks>(need[static_cast<std::size_t>(l.size)], widest / l.width);
        const std::size_t before = sums.size();
        for (std::size_t i = 0; i < before && sums.size() < 64 * most; ++i)
            for (Ticks n = 1; n <= copies && sums[i] + n * l.width <= widest; ++n)
                sums.push_back(sums[i] + n * l.width);
        std::sort(sums.begin(), sums.end());
        sums.erase(std::unique(sums.begin(), sums.end()), sums.end());
        if (sums.size() > most)
            return {};
    }
    return sums;
}

void Cloth::findPlaces(Rounding rounding)
{
    Ticks common = 0, widest = 0;
    for (const Lie &l : lies)
        common = std::gcd(common, l.width);
    for (const Sheet &s : sheets)
        widest = std::max(widest, s.width);
    common = std::max<Ticks>(1, common);
    even = widest / common <= mostCells;
    std::vector<Ticks> sums;
    if (!even) {
        sums = reachable(mostPlaces);
        rough = sums.empty();
        if (rough) {
            common = (widest + mostCells - 1) / mostCells;
            even = true;
        }
    }
    if (even) {
        const bool more = rough && rounding == Rounding::Down;
        const auto cellsOf = [&](Ticks w) {
            return static_cast<int>((w + (more ? common - 1 : 0)) / common);
        };
        for (Lie &l : lies)
            l.cells = static_cast<int>((l.width + (rounding == Rounding::Up ? common - 1 : 0)) / common);
        for (Sheet &s : sheets)
            s.place = cellsOf(s.width);
        places = cellsOf(widest);
        return;
    }
    const auto placeOf = [&](Ticks width) {
        return static_cast<int>(std::upper_bound(sums.begin(), sums.end(), width) - sums.begin()) - 1;
    };
    for (Sheet &s : sheets)
        s.place = placeOf(s.width);
    places = static_cast<int>(sums.size()) - 1;
    for (const Lie &l : lies) {
        auto &before = back.emplace_back();
        for (const Ticks at : sums)
            before.push_back(placeOf(at - l.width));
    }
}

int Cloth::after(int lie, int place) const
{
    const auto l = static_cast<std::size_t>(lie);
    return even ? place - lies[l].cells : back[l][static_cast<std::size_t>(place)];
}

bool Cloth::fits(int j, int s) const
{
    return lie(j).width <= sheet(s).width && (s == 0 || lie(j).high <= sheet(s).high);
}

std::int64_t Cloth::lengthOf(const std::vector<Cutting> &plan) const
{
    std::int64_t sum = 0;
    for (const Cutting &c : plan)
        if (c.strip.sheet == 0)
            sum += heights[static_cast<std::size_t>(c.strip.level)] * c.times;
    return sum;
}

Plan Cloth::planOf(const std::vector<Cutting> &plan) const
{
    Plan out;
    for (const Cutting &c : plan) {
        StripLayout s{
            c.strip.sheet - 1, heights[static_cast<std::size_t>(c.strip.level)] * unit, c.times, {}};
        for (const Row &r : c.strip.rows) {
            const Lie &l = lies[static_cast<std::size_t>(r.lie)];
            s.pieces.push_back({l.size, l.turned, r.count});
        }
        // The tallest first, as they are cut from the squared end.
        std::reverse(s.pieces.begin(), s.pieces.end());
        const auto same = std::find_if(out.strips.begin(), out.strips.end(), [&](const StripLayout &o) {
            return o.from == s.from && o.height == s.height && o.pieces == s.pieces;
        });
        if (same != out.strips.end())
            same->repeats += s.repeats;
        else
            out.strips.push_back(std::move(s));
    }
    std::stable_sort(out.strips.begin(), out.strips.end(), [](const StripLayout &a, const StripLayout &b) {
        return (a.from < 0) != (b.from < 0) ? a.from >= 0
               : a.from != b.from           ? a.from < b.from
                                            : a.height > b.height;
    });
    return out;
}

} // namespace matside::cutting
