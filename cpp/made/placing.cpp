// SPDX-License-Identifier: MIT
#include "made/placing.h"

#include <algorithm>
#include <map>
#include <set>

namespace matside {

namespace {

/// The layout as a grid of what lies there.
class Grid {
public:
    Grid(std::int64_t columns, std::int64_t rows, const std::vector<Laid> &laid, const Tolerances &tolerances)
        : m_columns(static_cast<std::size_t>(columns)), m_rows(static_cast<std::size_t>(rows)), m_laid(laid),
          m_tolerances(tolerances)
    {
        for (std::size_t place = 0; place < laid.size(); ++place) {
            if (!offSize(place))
                continue;
            ++m_offSize;
            m_atLeft += place % m_columns == 0 ? 1U : 0U;
            m_atRight += place % m_columns + 1 == m_columns ? 1U : 0U;
        }
    }

    [[nodiscard]] bool offSize(std::size_t place) const
    {
        return m_laid[place].measured && m_laid[place].off > m_tolerances.size;
    }
    /// Whether a place stands in a column the off-size blocks go to: one end where each row takes one, else
    /// both.
    [[nodiscard]] bool wanted(std::size_t place) const
    {
        const std::size_t column = place % m_columns;
        const bool left = column == 0;
        const bool right = column + 1 == m_columns;
        if (m_offSize <= 1 || m_offSize > m_rows)
            return left || right;
        return m_atLeft > m_atRight ? left : right;
    }

    /// The place for an off-size block that stands elsewhere: in its own row if it can be.
    [[nodiscard]] std::optional<std::size_t> endFor(std::size_t from) const
    {
        std::optional<std::size_t> best;
        const auto away = [&](std::size_t place) {
            const auto between = [](std::size_t a, std::size_t b) { return a > b ? a - b : b - a; };
            return std::pair(between(place / m_columns, from / m_columns),
                             between(place % m_columns, from % m_columns));
        };
        for (std::size_t place = 0; place < m_laid.size(); ++place)
            if (wanted(place) && !m_laid[place].fixed && !offSize(place) &&
                (!best || away(place) < away(*best)))
                best = place;
        return best;
    }

    [[nodiscard]] std::optional<Swap> toTheEnds() const
    {
        std::optional<std::size_t> worst;
        for (std::size_t place = 0; place < m_laid.size(); ++place)
            if (offSize(place) && !m_laid[place].fixed && !wanted(place) &&
                (!worst || m_laid[place].off > m_laid[*worst].off))
                worst = place;
        const auto end = worst ? endFor(*worst) : std::nullopt;
        if (!end)
            return std::nullopt;
        return Swap{m_offSize > 1 && m_offSize <= m_rows ? SwapFor::EndColumn : SwapFor::End, *worst, *end};
    }

    [[nodiscard]] std::optional<Swap> toTheCentre() const
    {
        const std::size_t centre = m_rows / 2 * m_columns + m_columns / 2;
        if (m_laid[centre].fixed || !m_laid[centre].measured)
            return std::nullopt;
        std::size_t best = centre;
        for (std::size_t place = 0; place < m_laid.size(); ++place)
            if (m_laid[place].measured && !m_laid[place].fixed && m_laid[place].off < m_laid[best].off)
                best = place;
        // An end that holds what should stand there keeps it.
        if (best == centre || (offSize(centre) && m_offSize > 1))
            return std::nullopt;
        return Swap{SwapFor::Centre, best, centre};
    }

private:
    std::size_t m_columns;
    std::size_t m_rows;
    const std::vector<Laid> &m_laid;
    const Tolerances &m_tolerances;
    std::size_t m_offSize = 0;
    std::size_t m_atLeft = 0; ///< of those, in the end columns
    std::size_t m_atRight = 0;
};

} // namespace

std::vector<std::string> laidOut(const Project &project, const std::vector<std::string> &places)
{
    const std::set<std::string> all(places.begin(), places.end());
    std::map<std::string, std::string> byPlace; // what is said
    std::set<std::string> laid;
    for (const MadeBlock &block : project.made.blocks) {
        const bool says = block.good() && all.contains(block.lies) && all.contains(block.block);
        if (says && !byPlace.contains(block.lies) && laid.insert(block.block).second)
            byPlace[block.lies] = block.block;
    }
    // The others lie at their own places, or where the one lay that was made again.
    std::vector<std::string> homeless;
    for (const std::string &block : places)
        if (!laid.contains(block) && !byPlace.try_emplace(block, block).second)
            homeless.push_back(block);
    std::vector<std::string> labels;
    auto next = homeless.begin();
    for (const std::string &place : places) {
        const auto held = byPlace.find(place);
        labels.push_back(held != byPlace.end() ? held->second : *next++);
    }
    return labels;
}

std::optional<Project> withSwapped(const Project &project, const std::vector<std::string> &places,
                                   std::size_t first, std::size_t second)
{
    if (first >= places.size() || second >= places.size() || first == second)
        return std::nullopt;
    const std::vector<std::string> labels = laidOut(project, places);
    Project next = project;
    MadeBlock *one = next.made.goodBlock(labels[first]);
    MadeBlock *other = next.made.goodBlock(labels[second]);
    if (!one || !other)
        return std::nullopt;
    const auto layAt = [](MadeBlock &block, const std::string &place) {
        block.lies = block.block == place ? std::string() : place;
    };
    layAt(*one, places[second]);
    layAt(*other, places[first]);
    return next;
}

std::optional<Swap> nextSwap(std::int64_t columns, std::int64_t rows, const std::vector<Laid> &laid,
                             const Tolerances &tolerances)
{
    if (columns < 1 || rows < 1 || laid.size() != static_cast<std::size_t>(columns * rows))
        return std::nullopt;
    const Grid grid(columns, rows, laid, tolerances);
    if (const auto end = grid.toTheEnds())
        return end;
    return grid.toTheCentre();
}

} // namespace matside
