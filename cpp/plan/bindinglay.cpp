// SPDX-License-Identifier: MIT
#include "plan/bindinglay.h"

#include "plan/curves.h"

#include <algorithm>
#include <array>

namespace matside {

namespace {

constexpr std::size_t mostStarts = 2000;
constexpr std::int64_t mostStrips = 2000;

/// A stretch of the walk, from ≤ to, in ticks.
struct Stretch {
    std::int64_t from;
    std::int64_t to;
};

std::int64_t arcOf(const EdgeWalk &walk)
{
    return roundEdge(walk.radius).scaled(1, 2).count();
}

/// Straight lengths of the four sides in the order of the walk.
std::array<std::int64_t, 4> sidesOf(const EdgeWalk &walk)
{
    const std::int64_t along = (walk.size.along - walk.radius * 2).count();
    const std::int64_t across = (walk.size.across - walk.radius * 2).count();
    return {along, across, along, across};
}

/// Where each side begins in the walk.
std::array<std::int64_t, 4> beginsOf(const EdgeWalk &walk)
{
    const auto sides = sidesOf(walk);
    const std::int64_t arc = arcOf(walk);
    std::array<std::int64_t, 4> begins{};
    for (std::size_t i = 1; i < 4; ++i)
        begins[i] = begins[i - 1] + sides[i - 1] + arc;
    return begins;
}

bool runsBack(std::size_t side)
{
    return side >= 2; // the bottom is walked from the right, the left from below
}

/// The stretches where a join's middle may lie, `reach` away from what is kept clear of; in order.
std::vector<Stretch> clearStretches(const EdgeWalk &walk, std::int64_t reach, bool sashings)
{
    std::vector<Stretch> clear;
    const auto sides = sidesOf(walk);
    const auto begins = beginsOf(walk);
    for (std::size_t side = 0; side < 4; ++side) {
        std::vector<Stretch> blocked{{0, 0}, {sides[side], sides[side]}};
        if (sashings)
            for (const EdgeWalk::Span &span : side % 2 == 0 ? walk.along : walk.across) {
                const std::int64_t from = (span.from - walk.radius).count();
                const std::int64_t to = (span.to - walk.radius).count();
                blocked.push_back(runsBack(side) ? Stretch{sides[side] - to, sides[side] - from}
                                                 : Stretch{from, to});
            }
        std::sort(blocked.begin(), blocked.end(),
                  [](const Stretch &a, const Stretch &b) { return a.from < b.from; });
        std::int64_t last = 0;
        for (const Stretch &next : blocked) {
            const Stretch free{std::max<std::int64_t>(last, 0) + reach,
                               std::min(next.from, sides[side]) - reach};
            if (free.from <= free.to)
                clear.push_back({begins[side] + free.from, begins[side] + free.to});
            last = std::max(last, next.to);
        }
    }
    return clear;
}

/// One way to lay the strips: everything in ticks, positions from the walk's start and never taken round.
class Laying {
public:
    Laying(const EdgeWalk &walk, const BindingStrips &strips, std::int64_t count, std::int64_t extra,
           std::vector<Stretch> clear)
        : m_around(walk.around().count()), m_cut(strips.cut.count()), m_usable(strips.usable.count()),
          m_slack(strips.slack.count()), m_count(count), m_apart(m_cut + extra), m_clear(std::move(clear))
    {
    }

    /// The largest clear place that is no more than `at`; −1 where there is none at or above `least`.
    std::int64_t lastClear(std::int64_t at, std::int64_t least) const
    {
        const std::int64_t rounds = at / m_around;
        for (std::int64_t round = rounds; round >= 0 && round >= rounds - 1; --round) {
            const std::int64_t here = at - round * m_around;
            const auto past = std::upper_bound(m_clear.begin(), m_clear.end(), here,
                                               [](std::int64_t a, const Stretch &b) { return a < b.from; });
            if (past == m_clear.begin())
                continue;
            const std::int64_t found = std::min((past - 1)->to, here) + round * m_around;
            return found >= least ? found : -1;
        }
        return -1;
    }

    /// The joins from this start, each as far on as its strip reaches; false when the binding does not close.
    bool from(std::int64_t start, std::vector<std::int64_t> &joins) const
    {
        joins.clear();
        const std::int64_t end = start + m_around; // the closing join again
        std::int64_t reached = start - m_slack / 2;
        for (std::int64_t join = 1; join < m_count; ++join) {
            const std::int64_t least = (joins.empty() ? start : joins.back()) + m_apart;
            const std::int64_t later = m_count - 1 - join;
            const std::int64_t most = std::min(reached + m_usable - m_cut, end - m_apart * (later + 1));
            const std::int64_t place = lastClear(most, least);
            if (place < 0)
                return false;
            joins.push_back(place);
            reached = place;
        }
        // Beyond its join the last strip still has its length less half its width.
        return reached + m_usable - m_cut / 2 >= end + (m_cut + 1) / 2 + (m_slack + 1) / 2;
    }

    /// Where to try beginning, those nearest to `wish` first.
    std::vector<std::int64_t> starts(std::int64_t wish) const
    {
        std::vector<std::int64_t> all;
        for (const Stretch &stretch : m_clear) {
            if (stretch.from <= wish && wish <= stretch.to)
                all.push_back(wish);
            all.push_back(stretch.from);
            all.push_back(stretch.to);
        }
        std::vector<std::int64_t> chained;
        const std::int64_t pitch = m_usable - m_cut;
        for (const Stretch &stretch : m_clear)
            for (std::int64_t join = 0; join + 1 < m_count && chained.size() < mostStarts * 4; ++join)
                for (const std::int64_t edge : {stretch.from, stretch.to}) {
                    const std::int64_t start = edge - pitch * (join + 1) + m_slack / 2;
                    chained.push_back(((start % m_around) + m_around) % m_around);
                }
        for (const std::int64_t start : chained)
            if (lastClear(start, start) == start)
                all.push_back(start);
        std::sort(all.begin(), all.end(), [wish](std::int64_t a, std::int64_t b) {
            return std::pair(std::abs(a - wish), a) < std::pair(std::abs(b - wish), b);
        });
        all.erase(std::unique(all.begin(), all.end()), all.end());
        if (all.size() > mostStarts)
            all.resize(mostStarts);
        return all;
    }

    std::int64_t pitch() const { return m_usable - m_cut; }

private:
    std::int64_t m_around;
    std::int64_t m_cut;
    std::int64_t m_usable;
    std::int64_t m_slack;
    std::int64_t m_count;
    std::int64_t m_apart; ///< between two joins' middles, at least
    std::vector<Stretch> m_clear;
};

/// Tries one tier at one distance; fills in the lay when it works.
bool tryToLay(const EdgeWalk &walk, const BindingStrips &strips, std::int64_t count, Length extra,
              JoinsClear clears, BindingLay &lay)
{
    const std::int64_t reach = (strips.cut.count() + 1) / 2 + extra.count();
    const Laying laying(
        walk, strips, count, extra.count(),
        clearStretches(walk, clears == JoinsClear::Nothing ? 0 : reach, clears == JoinsClear::Both));
    // The middle of the bottom side is looked at least.
    const std::int64_t wish = beginsOf(walk)[2] + sidesOf(walk)[2] / 2;
    std::vector<std::int64_t> joins;
    for (const std::int64_t start : laying.starts(wish)) {
        if (!laying.from(start, joins))
            continue;
        lay.clears = clears;
        lay.clear = clears == JoinsClear::Nothing ? Length() : extra;
        lay.strips = count;
        lay.oneMore = count > strips.strips;
        lay.begin = walk.placeAt(Length::ticks(start));
        std::int64_t reached = start - strips.slack.count() / 2;
        for (const std::int64_t join : joins) {
            lay.shorten.push_back(Length::ticks(reached + laying.pitch() - join));
            lay.joins.push_back(walk.placeAt(Length::ticks(join)));
            reached = join;
        }
        return true;
    }
    return false;
}

std::vector<EdgeWalk::Span> sashingEnds(std::int64_t blocks, Length outside, Length block, Length sashing)
{
    std::vector<EdgeWalk::Span> spans;
    for (std::int64_t i = 1; i < blocks; ++i) {
        const Length from = outside + block * i + sashing * (i - 1);
        spans.push_back({from, from + sashing});
    }
    return spans;
}

} // namespace

Length EdgeWalk::around() const
{
    const auto sides = sidesOf(*this);
    return Length::ticks(2 * (sides[0] + sides[1]) + 4 * arcOf(*this));
}

EdgePlace EdgeWalk::placeAt(Length at) const
{
    const std::int64_t all = around().count();
    const std::int64_t walked = all > 0 ? ((at.count() % all) + all) % all : 0;
    const auto sides = sidesOf(*this);
    const auto begins = beginsOf(*this);
    const std::int64_t arc = arcOf(*this);
    for (std::size_t side = 0; side < 4; ++side) {
        std::int64_t in = walked - begins[side];
        if (in < 0 || in > sides[side] + arc)
            continue;
        const bool onNext = in > sides[side] + arc / 2;
        const std::size_t nearer = onNext ? (side + 1) % 4 : side;
        in = onNext ? 0 : std::min(in, sides[side]);
        const std::int64_t from = runsBack(nearer) ? sides[nearer] - in : in;
        return {static_cast<EdgeSide>(nearer), Length::ticks(from) + radius};
    }
    return {};
}

Length EdgeWalk::walkedTo(const EdgePlace &place) const
{
    const auto side = static_cast<std::size_t>(place.side);
    const std::int64_t in = (place.from - radius).count();
    return Length::ticks(beginsOf(*this)[side] + (runsBack(side) ? sidesOf(*this)[side] - in : in));
}

EdgeWalk edgeWalkOf(const Project &project, const Plan &plan)
{
    EdgeWalk walk;
    walk.size = plan.size.finished;
    walk.radius = plan.basis.cornerRadius;
    const Length outside = (walk.size.along - plan.size.outline.along).scaled(1, 2);
    if (plan.frame) { // the corners' own seams end on the left and the right, as deep in as the frame is wide
        const Length seam = plan.basis.seam;
        walk.across = {{outside - seam, outside},
                       {walk.size.across - outside, walk.size.across - outside + seam}};
        return walk;
    }
    walk.along = sashingEnds(project.blocks.columns, outside, plan.block.outline.along, plan.basis.finished);
    walk.across = sashingEnds(project.blocks.rows, outside, plan.block.outline.across, plan.basis.finished);
    return walk;
}

BindingLay layBinding(const EdgeWalk &walk, const BindingStrips &strips, System system)
{
    BindingLay lay;
    lay.strips = strips.strips;
    const auto sides = sidesOf(walk);
    const bool whole = strips.strips > 0 && strips.strips < mostStrips && sides[0] >= 0 && sides[1] >= 0 &&
                       strips.cut > Length() && strips.usable > strips.cut && walk.around() > Length() &&
                       walk.around().valid() && strips.slack >= Length();
    if (!whole)
        return lay;
    const bool inch = system == System::Inch;
    const std::array extras{inch ? Length::inches(1) : Length::mm(25),
                            inch ? Length::inches(0, 1, 2) : Length::mm(12),
                            inch ? Length::inches(0, 1, 4) : Length::mm(6), Length()};
    for (const JoinsClear clears : {JoinsClear::Both, JoinsClear::Corners, JoinsClear::Nothing})
        for (const std::int64_t count : {strips.strips, strips.strips + 1})
            for (const Length extra : extras)
                if (tryToLay(walk, strips, count, extra, clears, lay))
                    return lay;
    return lay;
}

std::optional<BindingLay> layBinding(const Project &project, const Plan &plan)
{
    if (!plan.binding || plan.binding->strips <= 0)
        return std::nullopt;
    const EdgeWalk walk = edgeWalkOf(project, plan);
    // Scallops and a circle have no straight side for a place to be counted on.
    const bool curved = walk.radius * 2 >= walk.size.along && walk.radius * 2 >= walk.size.across;
    if (curved || (plan.binding->bias && plan.binding->bias->scallops))
        return std::nullopt;
    BindingStrips strips{plan.binding->cut, plan.basis.usableBinding, project.slack, plan.binding->strips};
    if (plan.binding->bias) // one continuous strip, as long as it is needed; its arcs are rounded one by one
        strips.usable = plan.binding->length + Length::ticks(8);
    return layBinding(walk, strips, project.system);
}

} // namespace matside
