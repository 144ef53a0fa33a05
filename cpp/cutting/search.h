// SPDX-License-Identifier: MIT
#pragma once

#include "cutting/answer.h"
#include "cutting/cloth.h"
#include "cutting/finder.h"
#include "cutting/master.h"
#include "cutting/rest.h"
#include "cutting/table.h"

#include <cstdint>
#include <set>
#include <stop_token>
#include <string>
#include <unordered_map>
#include <vector>

namespace matside::cutting {

/// Work done so far against a budget and a stop.
class Work : public Meter {
public:
    Work(std::int64_t budget, std::stop_token stop) : m_budget(budget), m_stop(std::move(stop)) {}
    void spend(std::int64_t units) override { m_done += units; }
    [[nodiscard]] bool spent() const override { return m_done >= m_budget || m_stop.stop_requested(); }
    [[nodiscard]] std::int64_t done() const { return m_done; }
    void extend(std::int64_t units) { m_budget = m_done + units; }

private:
    std::int64_t m_budget;
    std::int64_t m_done = 0;
    std::stop_token m_stop;
};

/// Looks for the least length of strips across one cloth, and proves it.
class Search {
public:
    Search(const Cloth &cloth, Ticks step, Work &work);

    /// Strips of an earlier plan: cut again as far as they serve, and first proposals.
    void propose(const std::vector<Cutting> &strips);
    /// Until proved, or the work is spent.
    void run();
    /// A plan no longer than `longest` with strips of the allowed levels only, if a short search finds one.
    bool within(std::int64_t longest, const std::vector<char> &levels);

    /// Greedy plans no longer than `longest` with strips of the allowed levels.
    std::vector<std::vector<Cutting>> filled(std::int64_t longest, const std::vector<char> &levels);

    [[nodiscard]] const std::vector<Cutting> &best() const { return m_best; }
    [[nodiscard]] std::int64_t length() const { return m_length; } ///< of the best plan, in units
    [[nodiscard]] std::int64_t lower() const { return m_lower; }   ///< no plan is shorter
    [[nodiscard]] bool closed() const { return steps(m_lower) >= steps(m_length); }
    [[nodiscard]] std::int64_t certified() const { return m_certified; } ///< what `nodes` prove
    [[nodiscard]] const std::vector<Certificate::Node> &nodes() const { return m_nodes; }
    [[nodiscard]] const Certificate &settled() const { return m_settled; } ///< `least` and prices in units

private:
    enum class Found { Yes, No, Unknown };
    struct Branch {
        std::vector<int> least, most;
        std::vector<double> counts;
        Master::State state;
        std::int64_t bound = 0;
        int node = 0, depth = 0;
    };
    [[nodiscard]] std::int64_t steps(std::int64_t units) const;
    [[nodiscard]] std::int64_t goal(std::int64_t lower) const;
    [[nodiscard]] std::int64_t useful() const; ///< the longest length that still saves a step
    void offer(const Rest &rest);
    void fillAll(const Rest &from, std::int64_t enough);

    bool dive(Rest rest, std::int64_t longest, int stray, int depth);
    void diveFrom(const Branch &branch, std::int64_t longest, int strayMost);
    void keepSome(const Branch &branch, std::int64_t longest, int keep, int tries);
    bool takeWhole(Rest rest, std::int64_t longest);
    [[nodiscard]] int tallestSize(const Rest &rest) const;
    Found mayFit(const Rest &rest, std::int64_t longest, const std::string &key);
    Found tryAll(const Rest &rest, std::int64_t longest);
    Found tryTail(const Rest &rest, std::int64_t longest, int nodes);
    std::vector<Candidate> candidates(const Rest &rest, double slack, int size, std::size_t most);
    [[nodiscard]] double slackOf(std::int64_t budget) const;
    std::vector<Strip> cheapStrips(std::int64_t longest, const Prices &prices, std::size_t most);
    bool settle(std::int64_t units);
    std::vector<Strip> cheapest(std::int64_t longest, std::size_t most);
    bool takePlan(const std::vector<Cutting> &plan, std::int64_t longest);
    void pickFew(std::int64_t units);
    bool takeFew(std::int64_t longest, std::int64_t units);
    [[nodiscard]] std::int64_t layered(const Rest &rest) const;
    [[nodiscard]] Master::Outcome relax(const Rest &rest, std::int64_t longest);

    void branchOut();
    void follow(const Branch &here, int popped, std::vector<Branch> &open);
    void lookFrom(const Branch &here, int popped, bool whole);
    void push(const Branch &from, int level, int value, bool fewer, std::vector<Branch> &open);
    void realise(const Branch &branch, std::vector<Branch> &open);
    void split(const Branch &branch, int level, int value, std::vector<Branch> &open);

    const Cloth &m_cloth;
    Ticks m_step;
    Work &m_work;
    Table m_table;
    Master m_master;
    std::vector<char> m_allowed;
    Master::State m_root;
    std::vector<Cutting> m_best;
    std::int64_t m_length, m_lower = 0, m_certified = 0, m_unknown;
    Certificate m_settled;   ///< by strips; `least` in units
    bool m_searched = false; ///< counts were refuted by search: the nodes prove no more than before
    std::vector<Certificate::Node> m_nodes;
    std::unordered_map<std::string, std::int64_t> m_refuted;
    std::set<std::vector<int>> m_tried; ///< counts of strips already looked for
    int m_tries = 0;                    ///< strips the exact search may still begin
    bool m_missed = false;              ///< it left something out
};

} // namespace matside::cutting
