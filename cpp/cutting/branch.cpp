// SPDX-License-Identifier: MIT
// Branching on N_k, how many strips are at least heights[k] high: once all are whole, the length is.
#include "cutting/search.h"

#include <algorithm>
#include <cmath>

namespace matside::cutting {
namespace {

constexpr int settleAt = 12; ///< nodes before the strips are first looked at one by one
constexpr std::int64_t settleWork = 12'000;
constexpr int pickAt = 6; ///< nodes before plans are first made of a few strips
constexpr std::int64_t pickWork = 2'200;
constexpr int rootTries = 100;

/// The most fractional count; −1 if all are whole.
int fractional(const std::vector<double> &counts)
{
    int found = -1;
    double most = 1e-6;
    for (std::size_t k = 0; k < counts.size(); ++k) {
        const double part = counts[k] - std::floor(counts[k]);
        if (std::min(part, 1 - part) > most) {
            most = std::min(part, 1 - part);
            found = static_cast<int>(k);
        }
    }
    return found;
}

} // namespace

/// Plans from a node: much is tried from the first, little from some of the later ones.
void Search::lookFrom(const Branch &here, int popped, bool whole)
{
    const auto longest = [&] { return std::min(m_length - 1, goal(here.bound)); };
    const auto open = [&] { return steps(here.bound) < steps(m_length); };
    if (popped == 1) {
        diveFrom(here, m_length - 1, 0);
        if (open())
            diveFrom(here, longest(), 0);
        for (int keep = 0; keep <= 1 && open(); ++keep)
            keepSome(here, longest(), keep, rootTries);
    } else if (open() && (whole || popped <= 3 || popped % 8 == 0)) {
        diveFrom(here, longest(), 1);
    }
}

/// Looks for plans from a node and splits it, unless it is closed by then.
void Search::follow(const Branch &here, int popped, std::vector<Branch> &open)
{
    const int level = fractional(here.counts);
    if (steps(here.bound) < steps(m_length))
        lookFrom(here, popped, level < 0);
    if (steps(here.bound) >= steps(m_length))
        return;
    if (level >= 0)
        split(here, level, static_cast<int>(std::floor(here.counts[static_cast<std::size_t>(level)])), open);
    else
        realise(here, open);
}

void Search::branchOut()
{
    const auto levels = static_cast<std::size_t>(m_cloth.levels());
    std::vector<Branch> open;
    open.push_back({std::vector<int>(levels, 0), std::vector<int>(levels, anyCount), m_master.counts(),
                    m_master.save(), m_lower, 0, 0});
    const auto later = [&](const Branch &a, const Branch &b) {
        const auto sa = steps(a.bound), sb = steps(b.bound);
        return sa != sb ? sa > sb : a.depth != b.depth ? a.depth < b.depth : a.bound > b.bound;
    };
    int nextPick = pickAt, nextSettle = settleAt;
    std::int64_t pickUnits = pickWork, settleUnits = settleWork;
    for (int popped = 1; !open.empty(); ++popped) {
        std::pop_heap(open.begin(), open.end(), later);
        const Branch here = std::move(open.back());
        open.pop_back();
        std::int64_t least = std::min(here.bound, m_unknown);
        for (const Branch &b : open)
            least = std::min(least, b.bound);
        m_lower = std::max(m_lower, std::min(least, m_length));
        if (!m_searched)
            m_certified = std::max(m_certified, std::min(least, m_length));
        if (popped == nextPick) {
            pickFew(pickUnits);
            nextPick *= 4;
            pickUnits *= 2;
        }
        if (popped == nextSettle) {
            settle(settleUnits);
            nextSettle *= 4;
            settleUnits *= 2;
        }
        if (closed() || m_work.spent())
            return;
        const std::size_t before = open.size();
        follow(here, popped, open);
        if (closed())
            return;
        for (std::size_t i = before; i < open.size(); ++i)
            std::push_heap(open.begin(), open.begin() + static_cast<std::ptrdiff_t>(i) + 1, later);
        if (m_work.spent())
            return;
    }
    m_lower = std::max(m_lower, std::min(m_unknown, m_length));
    if (!m_searched)
        m_certified = m_lower;
    while (!closed() && !m_work.spent() && settle(settleUnits))
        settleUnits *= 2;
}

void Search::split(const Branch &branch, int level, int value, std::vector<Branch> &open)
{
    const int first = static_cast<int>(m_nodes.size());
    // Both children rest on the parent's prices until they have better ones of their own.
    const Prices inherited = m_nodes[static_cast<std::size_t>(branch.node)].prices;
    m_nodes.push_back({-1, -1, 0, -1, -1, inherited});
    m_nodes.push_back({-1, -1, 0, -1, -1, inherited});
    Certificate::Node &parent = m_nodes[static_cast<std::size_t>(branch.node)];
    parent = {level, -1, value, first, first + 1, {}};
    push(branch, level, value, true, open);
    push(branch, level, value + 1, false, open);
}

/// One child: at most (`fewer`) or at least `value` strips of the level or higher.
void Search::push(const Branch &from, int level, int value, bool fewer, std::vector<Branch> &open)
{
    const Certificate::Node &parent = m_nodes[static_cast<std::size_t>(from.node)];
    Branch child = from;
    child.node = fewer ? parent.fewer : parent.more;
    ++child.depth;
    const auto k = static_cast<std::size_t>(level);
    if (fewer)
        child.most[k] = std::min(child.most[k], value);
    else
        child.least[k] = std::max(child.least[k], value);
    m_master.restore(from.state);
    m_master.setCounts(child.least, child.most);
    const auto outcome = m_master.solve(useful());
    Certificate::Node &leaf = m_nodes[static_cast<std::size_t>(child.node)];
    if (outcome == Master::Outcome::None) {
        leaf.prices = m_master.proof();
        return;
    }
    if (m_master.bound() > from.bound) {
        leaf.prices = m_master.proof();
        child.bound = m_master.bound();
    }
    if (outcome == Master::Outcome::Beyond || steps(child.bound) >= steps(m_length))
        return;
    if (outcome == Master::Outcome::Solved)
        child.counts = m_master.counts();
    child.state = m_master.save();
    open.push_back(std::move(child));
}

/// All counts are whole: looks for strips with exactly these counts; found, refuted or not, they are then
/// split off.
void Search::realise(const Branch &branch, std::vector<Branch> &open)
{
    std::vector<int> whole;
    for (const double n : branch.counts)
        whole.push_back(static_cast<int>(std::lround(n)));
    std::int64_t length = 0, below = 0;
    for (std::size_t k = 0; k < whole.size(); ++k) {
        length += (m_cloth.heights[k] - below) * whole[k];
        below = m_cloth.heights[k];
    }
    if (m_tried.insert(whole).second) {
        Rest rest = restOf(m_cloth);
        rest.most = whole;
        m_master.restore(branch.state);
        if (tryTail(rest, length, 300) == Found::Unknown)
            m_unknown = std::min(m_unknown, length);
        if (steps(branch.bound) >= steps(m_length))
            return;
    }
    int level = -1;
    for (std::size_t k = 0; k < whole.size(); ++k)
        if (branch.least[k] < branch.most[k])
            level = static_cast<int>(k);
    if (level < 0) {
        m_searched = true;
        return;
    }
    const auto k = static_cast<std::size_t>(level);
    std::vector<Branch> halves;
    split(branch, level, whole[k] - 1, halves);
    for (Branch &b : halves)
        if (b.least[k] >= whole[k] && b.most[k] > whole[k])
            split(b, level, whole[k], open);
        else
            open.push_back(std::move(b));
}

} // namespace matside::cutting
