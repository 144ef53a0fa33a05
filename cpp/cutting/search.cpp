// SPDX-License-Identifier: MIT
#include "cutting/search.h"

#include "cutting/whole.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace matside::cutting {
namespace {
constexpr std::int64_t endless = std::numeric_limits<std::int64_t>::max() / 4;
constexpr std::size_t fewStrips[] = {200, 1000}; ///< strips a plan is quickly found of, and somewhat slower
constexpr int fewRounds = 2;                     ///< of cuts, which prove more than they find
} // namespace

Search::Search(const Cloth &cloth, Ticks step, Work &work)
    : m_cloth(cloth), m_step(step), m_work(work), m_table(cloth, work), m_master(cloth, m_table, work),
      m_allowed(static_cast<std::size_t>(cloth.levels()), 1), m_length(endless), m_unknown(endless)
{
    m_root = m_master.save();
}

std::int64_t Search::steps(std::int64_t units) const
{
    return units >= endless ? endless : (units * m_cloth.unit + m_step - 1) / m_step;
}

/// The longest length bought as the same steps.
std::int64_t Search::goal(std::int64_t lower) const
{
    return steps(lower) * m_step / m_cloth.unit;
}

std::int64_t Search::useful() const
{
    return m_length >= endless ? endless : (steps(m_length) - 1) * m_step / m_cloth.unit;
}

void Search::propose(const std::vector<Cutting> &strips)
{
    Rest rest = restOf(m_cloth);
    for (const Cutting &c : strips) {
        m_master.propose(c.strip);
        cut(m_cloth, m_allowed, c.strip, c.times, rest);
    }
    fillAll(rest, endless);
}

void Search::offer(const Rest &rest)
{
    if (rest.spent < m_length) {
        m_length = rest.spent;
        m_best = rest.laid;
    }
}

void Search::fillAll(const Rest &from, std::int64_t enough)
{
    for (const Filling f : fillings) {
        Rest rest = from;
        if (fillGreedily(m_cloth, m_table, m_allowed, f, std::min(enough, m_length - 1), rest))
            offer(rest);
    }
}

void Search::run()
{
    const Rest all = restOf(m_cloth);
    if (all.done()) {
        m_length = 0;
        return;
    }
    fillAll(all, endless);
    for (const Cutting &c : m_best)
        m_master.propose(c.strip);
    const auto outcome = m_master.solve();
    if (m_master.proof().pieces.empty())
        return;
    m_nodes.push_back({-1, -1, 0, -1, -1, m_master.proof()});
    m_lower = m_certified = m_master.bound();
    m_root = m_master.save();
    if (outcome == Master::Outcome::Stopped || closed())
        return;
    branchOut();
}

/// The strips a plan of at most `longest` may hold: those that cost no more beyond their worth than the
/// prices leave in all.
std::vector<Strip> Search::cheapStrips(std::int64_t longest, const Prices &prices, std::size_t most)
{
    std::int64_t spare = prices.unit * longest;
    for (std::size_t i = 0; i < prices.pieces.size(); ++i)
        spare -= prices.pieces[i] * m_cloth.need[i];
    for (std::size_t o = 0; o < prices.owned.size(); ++o)
        spare += prices.owned[o] * m_cloth.sheets[o + 1].high;
    std::vector<Strip> strips;
    auto all = candidates(restOf(m_cloth), static_cast<double>(spare) + m_master.violation() + 1, -1, most);
    if (all.size() >= most)
        return std::vector<Strip>(most);
    for (Candidate &c : all) {
        const std::int64_t high = m_cloth.high(c.strip.level);
        std::int64_t over =
            high *
            (c.strip.sheet == 0 ? prices.unit : prices.owned[static_cast<std::size_t>(c.strip.sheet) - 1]);
        for (const Row &r : c.strip.rows)
            over -= prices.pieces[static_cast<std::size_t>(m_cloth.lie(r.lie).size)] * r.count;
        if (over <= spare)
            strips.push_back(std::move(c.strip));
    }
    return strips;
}

/// Looks for a plan that keeps to the goal among all strips cheap enough for it, if they are few.
/// False if more work would not help.
bool Search::settle(std::int64_t units)
{
    constexpr std::size_t mostStrips = 3000;
    const std::int64_t end = m_work.done() + units;
    while (!closed() && m_work.done() < end && !m_work.spent()) {
        const std::int64_t longest = goal(m_lower);
        m_master.restore(m_root);
        if (relax(restOf(m_cloth), longest) != Master::Outcome::Solved)
            return false;
        const Prices limit = m_master.proof();
        std::vector<Strip> strips = cheapStrips(longest, limit, mostStrips);
        if (strips.size() >= mostStrips)
            return false;
        Whole whole(m_cloth, std::move(strips), limit, m_work);
        const auto found = whole.within(longest, end - m_work.done());
        if (found == Whole::Found::Unknown)
            return true;
        if (found == Whole::Found::No) {
            m_lower = longest + 1;
            m_settled = whole.proof();
            m_settled.least = longest + 1;
            continue;
        }
        if (!takePlan(whole.plan(), longest))
            return false;
    }
    return true;
}

/// The plan, if it keeps to `longest`.
bool Search::takePlan(const std::vector<Cutting> &plan, std::int64_t longest)
{
    Rest rest = restOf(m_cloth);
    for (const Cutting &c : plan)
        cut(m_cloth, m_allowed, c.strip, c.times, rest);
    if (!rest.done() || rest.spent > longest)
        return false;
    offer(rest);
    return true;
}

/// Fewer than `most` strips, those that cost the least beyond their worth.
std::vector<Strip> Search::cheapest(std::int64_t longest, std::size_t most)
{
    double slack = slackOf(longest);
    std::vector<Candidate> found = candidates(restOf(m_cloth), slack, -1, most);
    while (found.size() >= most && slack >= 1) {
        slack /= 2;
        found = candidates(restOf(m_cloth), slack, -1, most);
    }
    std::vector<Strip> strips;
    strips.reserve(found.size());
    for (Candidate &c : found)
        strips.push_back(std::move(c.strip));
    return strips;
}

/// Looks for a plan of at most `longest` among the cheapest strips. Proves nothing.
bool Search::takeFew(std::int64_t longest, std::int64_t units)
{
    const std::int64_t end = m_work.done() + units;
    m_master.restore(m_root);
    if (relax(restOf(m_cloth), longest) != Master::Outcome::Solved)
        return false;
    const Prices limit = m_master.proof();
    for (const std::size_t most : fewStrips) {
        Whole whole(m_cloth, cheapest(longest, most), limit, m_work);
        const auto found = whole.within(longest, end - m_work.done(), fewRounds);
        if (found == Whole::Found::Yes)
            return takePlan(whole.plan(), longest);
        if (found == Whole::Found::Unknown)
            return false;
    }
    return false;
}

/// Plans of few strips: one as short as is proved so far, else ever shorter ones.
void Search::pickFew(std::int64_t units)
{
    if (closed() || takeFew(goal(m_lower), units))
        return;
    while (steps(m_length) > steps(m_lower) + 1 && takeFew(useful(), units)) {
    }
}

bool Search::within(std::int64_t longest, const std::vector<char> &levels)
{
    m_allowed = levels;
    m_length = longest + 1;
    m_master.restore(m_root);
    m_master.allow(levels);
    if (relax(restOf(m_cloth), longest) != Master::Outcome::Solved)
        return false;
    Branch root;
    root.state = m_master.save();
    fillAll(restOf(m_cloth), longest);
    if (m_length > longest)
        diveFrom(root, longest, 1);
    return m_length <= longest;
}

std::vector<std::vector<Cutting>> Search::filled(std::int64_t longest, const std::vector<char> &levels)
{
    std::vector<std::vector<Cutting>> plans;
    for (const Filling f : fillings) {
        Rest rest = restOf(m_cloth);
        if (fillGreedily(m_cloth, m_table, levels, f, longest, rest))
            plans.push_back(std::move(rest.laid));
    }
    return plans;
}

} // namespace matside::cutting
