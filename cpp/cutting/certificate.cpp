// SPDX-License-Identifier: MIT
#include "cutting/certificate.h"

#include "cutting/certificateparts.h"

#include <algorithm>
#include <numeric>

namespace matside::cutting {
namespace {

constexpr std::int64_t unbounded = 1 << 30;

struct Lying {
    Ticks across = 0, along = 0;
    Wide price = 0;
    std::int64_t copies = 0;
};

/// What a strip of each height may hold at most, set beside the best it can hold.
bool holds(const std::vector<Lying> &rising, Ticks width, Ticks gcd, Ticks tallest, auto &&allowed)
{
    std::vector<Wide> best(static_cast<std::size_t>(width / gcd) + 1, 0);
    for (std::size_t i = 0; i < rising.size() && rising[i].along <= tallest; ++i) {
        const auto w = static_cast<std::size_t>(rising[i].across / gcd);
        for (std::int64_t n = std::min(rising[i].copies, width / rising[i].across); n > 0; --n)
            for (std::size_t c = best.size() - 1; c >= w && c < best.size(); --c)
                best[c] = std::max(best[c], best[c - w] + rising[i].price);
        if (best.back() > allowed(rising[i].along))
            return false;
    }
    return true;
}

/// One leaf: its prices are allowed for every strip, and their sum is large enough.
bool proves(const Job &job, const Certificate &proof, const Prices &p, const Counts &least,
            const Counts &most)
{
    if (p.unit <= 0 || p.pieces.size() != job.sizes.size() || p.counts.size() != proof.heights.size() ||
        p.owned.size() != job.owned.size())
        return false;
    std::vector<Lying> lying;
    const Ticks grain = grainOf(job);
    Ticks gcd = 0; // of the widths
    Wide sum = 0;
    for (std::size_t i = 0; i < job.sizes.size(); ++i) {
        const Size &s = job.sizes[i];
        sum += Wide(p.pieces[i]) * s.pieces;
        lying.push_back({s.across, s.along, p.pieces[i], s.pieces});
        if (s.mayTurn && s.across != s.along)
            lying.push_back({s.along, s.across, p.pieces[i], s.pieces});
        gcd = std::gcd(std::gcd(gcd, s.across), s.mayTurn ? s.along : 0);
        if (p.pieces[i] < 0)
            return false;
    }
    std::sort(lying.begin(), lying.end(), [](auto &a, auto &b) { return a.along < b.along; });
    for (std::size_t k = 0; k < p.counts.size(); ++k) {
        const std::int64_t strips = p.counts[k] > 0 ? least[k] : most[k];
        if (p.counts[k] < 0 && strips >= unbounded)
            return false;
        sum += Wide(p.counts[k]) * strips;
    }
    const auto strip = [&](Ticks height) {
        Wide room = p.ray ? Wide(0) : Wide(p.unit) * height;
        for (std::size_t k = 0; k < proof.heights.size() && proof.heights[k] <= height; ++k)
            room -= p.counts[k];
        return room;
    };
    bool good = holds(lying, job.usable, gcd, limits::length, strip);
    for (std::size_t o = 0; o < p.owned.size() && good; ++o) {
        sum -= Wide(p.owned[o]) * (job.owned[o].along / grain) * grain;
        good = p.owned[o] >= 0 && holds(lying, job.owned[o].across, gcd, job.owned[o].along,
                                        [&](Ticks height) { return Wide(p.owned[o]) * height; });
    }
    return good && sum > (p.ray ? Wide(0) : Wide(p.unit) * ((proof.least - 1) / grain) * grain);
}

bool refutes(const Job &job, const Certificate &proof, std::size_t at, const Counts &least,
             const Counts &most)
{
    const Certificate::Node &node = proof.nodes[at];
    if (node.level < 0)
        return proves(job, proof, node.prices, least, most);
    const auto k = static_cast<std::size_t>(node.level);
    const int size = static_cast<int>(proof.nodes.size());
    // Children come after their parent, so that every descent ends.
    if (k >= proof.heights.size() || std::min(node.fewer, node.more) <= static_cast<int>(at) ||
        std::max(node.fewer, node.more) >= size)
        return false;
    Counts fewer = most, more = least;
    fewer[k] = std::min<std::int64_t>(fewer[k], node.value);
    more[k] = std::max<std::int64_t>(more[k], node.value + 1);
    return refutes(job, proof, static_cast<std::size_t>(node.fewer), least, fewer) &&
           refutes(job, proof, static_cast<std::size_t>(node.more), more, most);
}

} // namespace

Ticks grainOf(const Job &job)
{
    Ticks widest = job.usable, grain = 0;
    for (const Owned &o : job.owned)
        widest = std::max(widest, o.across);
    for (const Size &s : job.sizes) {
        if (s.pieces > 0 && s.across <= widest)
            grain = std::gcd(grain, s.along);
        if (s.pieces > 0 && s.mayTurn && s.along <= widest)
            grain = std::gcd(grain, s.across);
    }
    return std::max<Ticks>(1, grain);
}

bool checkCertificate(const Job &job, const Certificate &certificate)
{
    if (certificate.least <= 0)
        return true; // nothing is claimed
    Job whole = job;
    whole.pieced.clear();
    for (const PiecedStrip &s : job.pieced) {
        const Ticks each = job.usable - s.loss;
        whole.sizes.push_back(
            {job.usable, s.height, static_cast<int>((s.total - s.loss + each - 1) / each), false});
    }
    if (whole.sizes.empty())
        return false;
    const std::size_t levels = certificate.heights.size();
    if (certificate.nodes.empty() || !std::is_sorted(certificate.heights.begin(), certificate.heights.end()))
        return false;
    return certificate.byStrips
               ? checkByStrips(whole, certificate)
               : refutes(whole, certificate, 0, Counts(levels, 0), Counts(levels, unbounded));
}

Job turnedJob(const Job &job, Ticks length)
{
    Job turned = job;
    turned.usable = length - job.squared;
    turned.step = job.usable;
    turned.mayRunLengthwise = false;
    turned.squared = turned.reach = 0;
    for (Size &s : turned.sizes)
        std::swap(s.across, s.along);
    for (Owned &o : turned.owned)
        std::swap(o.across, o.along);
    return turned;
}

} // namespace matside::cutting
