// SPDX-License-Identifier: MIT
#include "plan/laidsum.h"

#include "plan/linear.h"

#include <algorithm>

namespace matside {

namespace {

/// So many pieces of one kind are drawn one by one; more lie as one.
constexpr std::int64_t mostDrawn = 40;

/// "name(a, b)" → a and b, where all of the text is that; nothing otherwise.
std::vector<std::string_view> insideOf(std::string_view text, std::string_view name)
{
    if (!text.starts_with(name) || text.size() <= name.size() || text[name.size()] != '(')
        return {};
    std::vector<std::string_view> all;
    int depth = 0;
    std::size_t from = name.size() + 1;
    for (std::size_t at = name.size(); at < text.size(); ++at) {
        depth += text[at] == '(' ? 1 : text[at] == ')' ? -1 : 0;
        if (depth == 0 && at + 1 < text.size())
            return {};
        if ((depth == 1 && text[at] == ',') || depth == 0) {
            all.push_back(text.substr(from, at - from));
            from = at + 2;
        }
    }
    return all;
}

/// "(a) / b" → a and b.
std::vector<std::string_view> quotientOf(std::string_view text)
{
    int depth = 0;
    for (std::size_t at = 0; at < text.size(); ++at) {
        depth += text[at] == '(' ? 1 : text[at] == ')' ? -1 : 0;
        if (depth == 0 && text.substr(at).starts_with(") / "))
            return text.front() == '(' ? std::vector{text.substr(1, at - 1), text.substr(at + 4)}
                                       : std::vector<std::string_view>();
        if (depth == 0 && text[at] == ')')
            return {};
    }
    return {};
}

class SumLaying {
public:
    explicit SumLaying(const Working &working) : m_working(working) {}

    LaidSum all()
    {
        std::string_view formula = m_working.formula;
        const auto rounded = insideOf(formula, "up");
        if (!rounded.empty())
            formula = rounded.front();
        if (const auto ways = insideOf(formula, "max"); !ways.empty())
            larger(ways);
        else if (!often(formula) && !part(formula))
            one(formula);
        if (const Length *value = std::get_if<Length>(&m_working.value); value && rounded.size() == 2)
            for (SumWay &way : m_laid.ways)
                if (way.counts)
                    roundUp(way, *value, rounded[1]);
        measure();
        return m_laid;
    }

private:
    void one(std::string_view formula)
    {
        if (const auto way = wayOf(formula)) {
            m_laid.kind = SumKind::Sum;
            m_laid.ways.push_back(*way);
        }
    }
    void larger(const std::vector<std::string_view> &formulas)
    {
        for (const std::string_view formula : formulas) {
            if (formula == "0")
                continue; // no count is less than none
            if (often(formula))
                return;
            const auto rounded = insideOf(formula, "up");
            auto way = wayOf(rounded.empty() ? formula : rounded.front());
            if (!way) {
                m_laid.ways.clear();
                return;
            }
            if (rounded.size() == 2)
                if (const auto step = lengthNamed(rounded[1]))
                    roundUp(*way, way->end.upTo(*step), rounded[1]);
            m_laid.ways.push_back(*way);
        }
        m_laid.kind = SumKind::Larger;
        const auto longest = std::max_element(m_laid.ways.begin(), m_laid.ways.end(),
                                              [](const SumWay &a, const SumWay &b) { return a.end < b.end; });
        for (auto way = m_laid.ways.begin(); way != m_laid.ways.end(); ++way)
            way->counts = way == longest;
    }
    /// How often one length lies in another.
    bool often(std::string_view formula)
    {
        for (const char *name : {"floor", "ceil"}) {
            const auto inside = insideOf(formula, name);
            const auto sides = inside.empty() ? inside : quotientOf(inside.front());
            if (sides.size() != 2)
                continue;
            const std::string_view by =
                sides[1].front() == '(' ? sides[1].substr(1, sides[1].size() - 2) : sides[1];
            const auto whole = wayOf(sides[0]);
            auto each = wayOf(by);
            const std::int64_t *times = std::get_if<std::int64_t>(&m_working.value);
            if (!whole || !each || !times)
                return false;
            each->times = *times;
            m_laid.kind = SumKind::Often;
            m_laid.ways = {*whole, *each};
            return true;
        }
        return false;
    }
    /// What is left, parted.
    bool part(std::string_view formula)
    {
        const auto sides = quotientOf(formula);
        if (sides.size() != 2 || sides[1].find_first_not_of("0123456789") != std::string_view::npos)
            return false;
        const auto way = wayOf(sides[0]);
        if (!way)
            return false;
        m_laid.kind = SumKind::Part;
        m_laid.ways.push_back(*way);
        m_laid.parts = std::stoll(std::string(sides[1]));
        return true;
    }
    [[nodiscard]] std::optional<std::size_t> termNamed(std::string_view name) const
    {
        for (std::size_t i = 0; i < m_working.terms.size(); ++i)
            if (m_working.terms[i].name == name)
                return i;
        return std::nullopt;
    }
    [[nodiscard]] std::optional<Length> lengthNamed(std::string_view name) const
    {
        const auto at = termNamed(name);
        const Length *length = at ? std::get_if<Length>(&m_working.terms[*at].value) : nullptr;
        return length ? std::optional(*length) : std::nullopt;
    }
    void roundUp(SumWay &way, Length to, std::string_view step) const
    {
        if (to <= way.end)
            return;
        way.pieces.push_back({termNamed(step), way.end, to - way.end, false, true});
        way.end = to;
    }
    /// A share of more than the whole is the whole and what the share adds to it.
    [[nodiscard]] std::optional<std::size_t> shareTerm() const
    {
        for (std::size_t i = 0; i < m_working.terms.size(); ++i)
            if (std::holds_alternative<Share>(m_working.terms[i].value))
                return i;
        return std::nullopt;
    }
    void lay(SumWay &way, const LinearPart &part, bool less) const
    {
        const std::int64_t num = less ? -part.times.num : part.times.num;
        const std::int64_t whole = num / part.times.den;
        const auto put = [&](std::optional<std::size_t> term, Length length) {
            if (length == Length())
                return;
            if (less)
                way.end -= length;
            way.pieces.push_back({term, way.end, length, less, false});
            if (!less)
                way.end += length;
        };
        if (whole > mostDrawn)
            put(part.term, part.length * whole);
        for (std::int64_t i = 0; i < whole && whole <= mostDrawn; ++i)
            put(part.term, part.length);
        const auto share = shareTerm();
        put(share && whole > 0 ? share : part.term, part.length.scaled(num % part.times.den, part.times.den));
    }
    [[nodiscard]] std::optional<SumWay> wayOf(std::string_view formula) const
    {
        const auto parts = linearOf(formula, m_working.terms);
        if (!parts)
            return std::nullopt;
        SumWay way;
        for (const bool less : {false, true})
            for (const LinearPart &part : *parts)
                if ((part.times.num < 0) == less)
                    lay(way, part, less);
        return way;
    }
    void measure()
    {
        if (m_laid.kind == SumKind::Words || m_laid.ways.empty()) {
            m_laid = {};
            return;
        }
        for (const SumWay &way : m_laid.ways) {
            m_laid.most = max(m_laid.most, way.end * way.times);
            for (const SumPiece &piece : way.pieces) {
                m_laid.least = min(m_laid.least, piece.from);
                m_laid.most = max(m_laid.most, piece.from + piece.length);
            }
        }
        if (m_laid.most <= m_laid.least)
            m_laid = {};
    }

    const Working &m_working;
    LaidSum m_laid;
};

} // namespace

LaidSum laidOf(const Working &working)
{
    return SumLaying(working).all();
}

} // namespace matside
