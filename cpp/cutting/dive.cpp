// SPDX-License-Identifier: MIT
// Plans from the relaxation: take its whole strips, solve again for what is left, take one more, …
#include "cutting/search.h"

#include <algorithm>
#include <cmath>

namespace matside::cutting {
namespace {
constexpr std::int64_t tailPieces = 14;
constexpr int tailTries = 40;
} // namespace

/// The relaxation for what is left, if it can end within `longest`.
Master::Outcome Search::relax(const Rest &rest, std::int64_t longest)
{
    m_master.setNeed(rest.need);
    m_master.setLeft(rest.left);
    m_master.setCounts(std::vector<int>(rest.most.size(), 0), rest.most);
    return m_master.solve(longest - rest.spent);
}

/// From a node of the branching: dives that stray from the most likely strip ever more often.
void Search::diveFrom(const Branch &branch, std::int64_t longest, int strayMost)
{
    for (int stray = 0; stray <= strayMost; ++stray) {
        m_master.restore(branch.state);
        if (dive(restOf(m_cloth), longest, stray, 0) || m_work.spent())
            return;
    }
}

void Search::keepSome(const Branch &branch, std::int64_t longest, int keep, int tries)
{
    m_master.restore(branch.state);
    Rest rest = restOf(m_cloth);
    if (relax(rest, longest) != Master::Outcome::Solved)
        return;
    std::vector<Cutting> uses;
    for (const Master::Use &u : m_master.uses())
        uses.push_back({*u.strip, static_cast<int>(std::floor(u.times + 1e-7)) - keep});
    for (const Cutting &u : uses)
        if (u.times > 0)
            cut(m_cloth, m_allowed, u.strip, u.times, rest);
    tryTail(rest, longest, tries);
}

/// True if a plan of at most `longest` was found. `stray` is how far in all the choices may go down the
/// lists of likely strips.
bool Search::dive(Rest rest, std::int64_t longest, int stray, int depth)
{
    for (bool whole = true; whole;) {
        if (rest.done()) {
            offer(rest);
            return rest.spent <= longest;
        }
        if (rest.spent >= longest)
            return false;
        const auto outcome = relax(rest, longest);
        if (outcome == Master::Outcome::Stopped)
            fillAll(rest, m_length - 1);
        if (outcome != Master::Outcome::Solved)
            return false;
        if (depth > 0 && rest.pieces() <= tailPieces) {
            const Master::State state = m_master.save();
            if (tryTail(rest, longest, tailTries) == Found::Yes)
                return true;
            m_master.restore(state);
        }
        whole = false;
        std::vector<Cutting> uses;
        for (const Master::Use &u : m_master.uses())
            if (u.times > 1 - 1e-7)
                uses.push_back({*u.strip, static_cast<int>(std::floor(u.times + 1e-7))});
        for (const Cutting &u : uses)
            whole = cut(m_cloth, m_allowed, u.strip, u.times, rest) > 0 || whole;
        depth += whole;
    }
    std::vector<std::pair<double, Strip>> likely;
    for (const Master::Use &u : m_master.uses())
        likely.emplace_back(-u.times, *u.strip);
    std::stable_sort(likely.begin(), likely.end(),
                     [](const auto &a, const auto &b) { return a.first < b.first; });
    const Master::State state = m_master.save();
    for (int i = 0; i <= stray && i < static_cast<int>(likely.size()); ++i) {
        if (i > 0)
            m_master.restore(state);
        Rest next = rest;
        if (cut(m_cloth, m_allowed, likely[static_cast<std::size_t>(i)].second, 1, next) > 0 &&
            dive(std::move(next), longest, stray - i, depth + 1))
            return true;
        if (m_work.spent())
            return false;
    }
    return false;
}

} // namespace matside::cutting
