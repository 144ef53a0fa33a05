// SPDX-License-Identifier: MIT
// The checker for proofs by strips: finds all strips for itself and adds up.
#include "cutting/certificateparts.h"

#include <algorithm>
#include <tuple>

namespace matside::cutting {
namespace {

constexpr int bits = 20;
constexpr std::int64_t one = std::int64_t(1) << bits;

/// A strip nothing more fits into.
struct Full {
    int from = -1; ///< −1 the bought cloth
    Ticks height = 0;
    std::vector<int> counts; ///< by size, lying as cut, then by size, turned
    std::int64_t most = 0;   ///< more of them would cut more of each of its sizes than is wanted
    std::vector<Wide> worth; ///< in each rounding cut
    [[nodiscard]] std::int64_t of(std::size_t size) const
    {
        return counts[size] + counts[size + counts.size() / 2];
    }
};

struct Lie {
    std::size_t size = 0, entry = 0;
    Ticks across = 0, along = 0;
};

/// All full strips of one sheet.
class Strips {
public:
    explicit Strips(const Job &job) : m_job(job)
    {
        for (std::size_t i = 0; i < job.sizes.size(); ++i) {
            const Size &s = job.sizes[i];
            m_left.push_back(s.pieces);
            m_lies.push_back({i, i, s.across, s.along});
            if (s.mayTurn && s.across != s.along)
                m_lies.push_back({i, i + job.sizes.size(), s.along, s.across});
        }
        std::stable_sort(m_lies.begin(), m_lies.end(), [](auto &a, auto &b) { return a.along < b.along; });
        m_now.counts.assign(2 * job.sizes.size(), 0);
    }

    std::vector<Full> all()
    {
        for (m_now.from = -1; m_now.from < static_cast<int>(m_job.owned.size()); ++m_now.from) {
            const auto o = static_cast<std::size_t>(std::max(0, m_now.from));
            const Ticks width = m_now.from < 0 ? m_job.usable : m_job.owned[o].across;
            for (std::size_t j = 0; j < m_lies.size(); ++j)
                if ((m_now.from < 0 || m_lies[j].along <= m_job.owned[o].along) &&
                    (j + 1 == m_lies.size() || m_lies[j + 1].along > m_lies[j].along)) {
                    m_now.height = m_lies[j].along;
                    lay(j + 1, width);
                }
        }
        return std::move(m_found);
    }

private:
    void lay(std::size_t next, Ticks room)
    {
        if (next == 0)
            return take(room);
        const Lie &l = m_lies[next - 1];
        int n = 0;
        for (; n <= m_left[l.size] && n * l.across <= room; ++n) {
            m_now.counts[l.entry] = n;
            m_left[l.size] -= n;
            lay(next - 1, room - n * l.across);
            m_left[l.size] += n;
        }
        m_now.counts[l.entry] = 0;
    }

    void take(Ticks room)
    {
        bool tall = false;
        std::int64_t most = 0;
        for (const Lie &l : m_lies) {
            const std::int64_t n = m_now.counts[l.entry];
            if (l.along <= m_now.height && l.across <= room && m_left[l.size] > 0)
                return;
            tall = tall || (n > 0 && l.along == m_now.height);
            if (n > 0)
                most = std::max(most, (m_job.sizes[l.size].pieces + n - 1) / n);
        }
        if (!tall)
            return;
        m_found.push_back(m_now);
        m_found.back().most = most;
    }

    const Job &m_job;
    std::vector<Lie> m_lies;
    std::vector<int> m_left;
    Full m_now;
    std::vector<Full> m_found;
};

/// Everything a leaf is checked against.
struct Case {
    const Job &job;
    const Certificate &proof;
    Ticks grain = 0;          ///< every height is a multiple of it
    std::int64_t longest = 0; ///< what must be ruled out: plans of at most this length
    Counts most;              ///< strips at least so high: so many alone would be as long
    std::vector<Full> strips;
    std::vector<Wide> least; ///< of each rounding cut
};

Wide roundUp(Wide z, Wide part)
{
    const Wide frac = z & ((Wide(1) << (2 * bits)) - 1);
    return (z >> (2 * bits)) * one + (frac == 0 ? Wide(0) : std::min<Wide>(one, frac / (part >> bits) + 1));
}

/// The worth of every strip in every rounding cut, and what all strips must come to.
bool fillIn(Case &c)
{
    for (const RoundingCut &cut : c.proof.cuts) {
        Wide need = 0;
        if (cut.sizes.size() != c.job.sizes.size())
            return false;
        for (std::size_t i = 0; i < cut.sizes.size(); ++i) {
            if (cut.sizes[i] < 0)
                return false;
            need += Wide(cut.sizes[i]) * c.job.sizes[i].pieces * one;
        }
        for (const auto &[earlier, m] : cut.cuts) {
            if (earlier < 0 || static_cast<std::size_t>(earlier) >= c.least.size())
                return false;
            need += m * c.least[static_cast<std::size_t>(earlier)];
        }
        const Wide part = need & ((Wide(1) << (2 * bits)) - 1);
        if (part < one)
            return false;
        const auto weight = [&](std::int64_t m) {
            return m < 0 ? Wide(-m) * one / (part >> bits) + 1 : Wide(0);
        };
        Wide least = ((need >> (2 * bits)) + 1) * one;
        for (const auto &[earlier, m] : cut.cuts)
            least += weight(m) * c.least[static_cast<std::size_t>(earlier)] >> bits;
        for (Full &s : c.strips) {
            Wide z = 0, own = 0;
            for (std::size_t i = 0; i < cut.sizes.size(); ++i)
                z += Wide(cut.sizes[i]) * s.of(i) * one;
            for (const auto &[earlier, m] : cut.cuts) {
                const Wide worth = s.worth[static_cast<std::size_t>(earlier)];
                z += m * worth;
                own += m < 0 ? (weight(m) * worth >> bits) + 1 : Wide(0);
            }
            s.worth.push_back(roundUp(z, part) + own);
        }
        c.least.push_back(least);
    }
    return true;
}

/// What a strip costs beyond its worth; `cuts` as well when there are any.
Wide over(const Case &c, const Prices &p, const Full &s)
{
    const auto o = static_cast<std::size_t>(std::max(0, s.from));
    Wide rest = s.from >= 0 ? Wide(p.owned[o]) * s.height : p.ray ? Wide(0) : Wide(p.unit) * s.height;
    for (std::size_t i = 0; i < p.pieces.size(); ++i)
        rest -= Wide(p.pieces[i]) * s.of(i);
    for (std::size_t k = 0; s.from < 0 && k < p.counts.size() && c.proof.heights[k] <= s.height; ++k)
        rest -= p.counts[k];
    rest *= one;
    for (const auto &[cut, price] : p.cuts)
        rest -= price * s.worth[static_cast<std::size_t>(cut)];
    return rest;
}

bool shaped(const Case &c, const Prices &p)
{
    return p.unit > 0 && p.pieces.size() == c.job.sizes.size() && p.counts.size() == c.proof.heights.size() &&
           p.owned.size() == c.job.owned.size() && std::all_of(p.cuts.begin(), p.cuts.end(), [&](auto &cut) {
               return cut.first >= 0 && static_cast<std::size_t>(cut.first) < c.least.size() &&
                      cut.second >= 0;
           });
}

/// What the prices prove before any strip is looked at, for counts between the bounds.
Wide sumOf(const Case &c, const Prices &p, const Counts &least, const Counts &most)
{
    Wide sum = 0;
    for (std::size_t i = 0; i < p.pieces.size(); ++i)
        sum += Wide(std::max<std::int64_t>(0, p.pieces[i])) * c.job.sizes[i].pieces;
    for (std::size_t k = 0; k < p.counts.size(); ++k)
        sum += Wide(p.counts[k]) * (p.counts[k] > 0 ? least[k] : most[k]);
    for (std::size_t o = 0; o < p.owned.size(); ++o)
        sum -= Wide(std::max<std::int64_t>(0, p.owned[o])) * (c.job.owned[o].along / c.grain) * c.grain;
    sum *= one;
    for (const auto &[cut, price] : p.cuts)
        sum += price * c.least[static_cast<std::size_t>(cut)];
    return sum;
}

/// Leaves out the strips no plan short enough can hold by these prices.
bool leaveOut(Case &c, const Prices &limit, bool first)
{
    if (!shaped(c, limit) || limit.ray || (first && !limit.cuts.empty()) ||
        std::any_of(limit.pieces.begin(), limit.pieces.end(), [](auto n) { return n < 0; }))
        return false;
    Wide spare = Wide(limit.unit) * c.longest * one - sumOf(c, limit, Counts(c.most.size(), 0), c.most);
    for (const Full &s : c.strips)
        spare -= std::min<Wide>(0, over(c, limit, s)) * s.most;
    std::erase_if(c.strips, [&](const Full &s) { return over(c, limit, s) > spare; });
    return true;
}

struct Bounds {
    Counts least, most;                                        ///< strips at least so high
    std::vector<std::pair<std::int64_t, std::int64_t>> strips; ///< of each full strip
};

bool ruledOut(const Case &c, const Prices &p, const Bounds &b)
{
    if (!shaped(c, p) || std::any_of(p.pieces.begin(), p.pieces.end(), [](auto n) { return n < 0; }))
        return false;
    Wide sum = sumOf(c, p, b.least, b.most);
    for (std::size_t v = 0; v < c.strips.size(); ++v) {
        const Wide rest = over(c, p, c.strips[v]);
        sum += rest * (rest >= 0 ? b.strips[v].first : b.strips[v].second);
    }
    return sum > (p.ray ? Wide(0) : Wide(p.unit) * c.longest * one);
}

/// The full strip a branch is about.
std::size_t indexOf(const Case &c, const StripLayout &strip)
{
    std::vector<int> counts(2 * c.job.sizes.size(), 0);
    for (const Laid &l : strip.pieces)
        if (l.size >= 0 && static_cast<std::size_t>(l.size) < c.job.sizes.size())
            counts[static_cast<std::size_t>(l.size) + (l.turned ? c.job.sizes.size() : 0)] += l.count;
    const auto found = std::find_if(c.strips.begin(), c.strips.end(), [&](const Full &s) {
        return s.from == strip.from && s.height == strip.height && s.counts == counts;
    });
    return static_cast<std::size_t>(found - c.strips.begin());
}

bool refutes(const Case &c, std::size_t at, Bounds &b)
{
    const Certificate::Node &node = c.proof.nodes[at];
    if (node.level < 0 && node.strip < 0)
        return ruledOut(c, node.prices, b);
    const auto last = static_cast<int>(c.proof.nodes.size()) - 1;
    if (std::min(node.fewer, node.more) <= static_cast<int>(at) || std::max(node.fewer, node.more) > last)
        return false;
    std::int64_t *least = nullptr, *most = nullptr;
    if (node.strip >= 0) {
        if (static_cast<std::size_t>(node.strip) >= c.proof.strips.size())
            return false;
        const std::size_t v = indexOf(c, c.proof.strips[static_cast<std::size_t>(node.strip)]);
        if (v >= c.strips.size())
            return false;
        std::tie(least, most) = std::pair(&b.strips[v].first, &b.strips[v].second);
    } else {
        const auto k = static_cast<std::size_t>(node.level);
        if (k >= c.proof.heights.size())
            return false;
        std::tie(least, most) = std::pair(&b.least[k], &b.most[k]);
    }
    const std::int64_t leastWas = *least, mostWas = *most;
    *most = std::min<std::int64_t>(mostWas, node.value);
    bool good = *least > *most || refutes(c, static_cast<std::size_t>(node.fewer), b);
    *most = mostWas;
    *least = std::max<std::int64_t>(leastWas, node.value + 1);
    good = good && (*least > *most || refutes(c, static_cast<std::size_t>(node.more), b));
    *least = leastWas;
    return good;
}

} // namespace

bool checkByStrips(const Job &job, const Certificate &proof)
{
    Case c{job, proof, grainOf(job), 0, {}, Strips(job).all(), {}};
    c.longest = (proof.least - 1) / c.grain * c.grain;
    for (const Ticks h : proof.heights)
        c.most.push_back(h > 0 ? c.longest / h : 0);
    for (std::size_t i = 0; i < proof.limits.size(); ++i) {
        if (!leaveOut(c, proof.limits[i], i == 0) || (i == 0 && !fillIn(c)))
            return false;
    }
    if (proof.limits.empty() && !fillIn(c))
        return false;
    Bounds b;
    b.least.assign(proof.heights.size(), 0);
    b.most = c.most;
    for (const Full &s : c.strips)
        b.strips.emplace_back(0, s.most);
    return refutes(c, 0, b);
}

} // namespace matside::cutting
