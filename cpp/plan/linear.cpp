// SPDX-License-Identifier: MIT
#include "plan/linear.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <string>

namespace matside {

namespace {

Ratio ratio(std::int64_t num, std::int64_t den)
{
    const std::int64_t common = std::max<std::int64_t>(std::gcd(num, den), 1) * (den < 0 ? -1 : 1);
    return {num / common, den / common};
}
Ratio operator*(Ratio a, Ratio b)
{
    return ratio(a.num * b.num, a.den * b.den);
}
Ratio operator+(Ratio a, Ratio b)
{
    return ratio(a.num * b.den + b.num * a.den, a.den * b.den);
}

/// A count, a sum of lengths, or an area of which a root may be drawn.
struct LinearValue {
    int power = 0;
    Ratio number;
    std::vector<LinearPart> parts;
    long double area = 0; ///< ticks by ticks
};

long double sizeOf(const LinearValue &value)
{
    long double all = 0;
    for (const LinearPart &part : value.parts)
        all += static_cast<long double>(part.length.count()) * static_cast<long double>(part.times.num) /
               static_cast<long double>(part.times.den);
    return all;
}

class LinearReader {
public:
    LinearReader(std::string_view text, const std::vector<Term> &terms) : m_text(text), m_terms(terms) {}

    std::optional<LinearValue> all()
    {
        LinearValue value = sum();
        return m_good && m_at == m_text.size() ? std::optional(value) : std::nullopt;
    }

private:
    char peek()
    {
        while (m_at < m_text.size() && m_text[m_at] == ' ')
            ++m_at;
        return m_at < m_text.size() ? m_text[m_at] : '\0';
    }
    bool take(char c)
    {
        if (peek() != c)
            return false;
        ++m_at;
        return true;
    }
    LinearValue sum()
    {
        LinearValue left = product();
        for (;;) {
            const bool more = take('+');
            if (!more && !take('-'))
                return left;
            add(left, product(), more ? 1 : -1);
        }
    }
    void add(LinearValue &to, const LinearValue &what, std::int64_t sign)
    {
        m_good = m_good && to.power == what.power;
        to.number = to.number + what.number * Ratio{sign, 1};
        to.area += static_cast<long double>(sign) * what.area;
        for (LinearPart part : what.parts) {
            part.times = part.times * Ratio{sign, 1};
            const auto same = std::find_if(to.parts.begin(), to.parts.end(), [&](const LinearPart &each) {
                return part.term && each.term == part.term;
            });
            if (same == to.parts.end())
                to.parts.push_back(part);
            else
                same->times = same->times + part.times;
        }
    }
    LinearValue product()
    {
        LinearValue left = atom();
        for (;;) {
            if (take('*'))
                left = times(left, atom());
            else if (take('/'))
                left = over(left, atom());
            else
                return left;
        }
    }
    LinearValue times(const LinearValue &a, const LinearValue &b)
    {
        if (a.power == 1 && b.power == 1)
            return {2, {0, 1}, {}, sizeOf(a) * sizeOf(b)};
        m_good = m_good && a.power + b.power < 2;
        LinearValue value = a.power >= b.power ? a : b;
        const Ratio by = a.power >= b.power ? b.number : a.number;
        value.number = a.number * b.number;
        for (LinearPart &part : value.parts)
            part.times = part.times * by;
        return value;
    }
    LinearValue over(const LinearValue &a, const LinearValue &b)
    {
        if (b.power != 0 || b.number.num == 0) {
            m_good = false;
            return a;
        }
        return times(a, {0, ratio(b.number.den, b.number.num), {}, 0});
    }
    LinearValue atom()
    {
        if (take('(')) {
            LinearValue inside = sum();
            m_good = take(')') && m_good;
            return inside;
        }
        peek();
        std::string word;
        while (m_at < m_text.size() && std::isalnum(static_cast<unsigned char>(m_text[m_at])) != 0)
            word += m_text[m_at++];
        if (word == "sqrt" && take('(')) {
            const LinearValue inside = sum();
            m_good = take(')') && m_good && inside.power == 2 && inside.area >= 0;
            return {1, {0, 1}, {{std::nullopt, rootOf(inside.area), {1, 1}}}, 0};
        }
        if (!word.empty() && word.find_first_not_of("0123456789") == std::string::npos)
            return {0, {std::stoll(word), 1}, {}, 0};
        return named(word);
    }
    static Length rootOf(long double area)
    {
        return Length::ticks(std::llround(std::sqrt(std::max(area, 0.0L))));
    }
    LinearValue named(const std::string &name)
    {
        for (std::size_t i = 0; i < m_terms.size(); ++i) {
            if (m_terms[i].name != name)
                continue;
            if (const Length *length = std::get_if<Length>(&m_terms[i].value))
                return {1, {0, 1}, {{i, *length, {1, 1}}}, 0};
            if (const std::int64_t *count = std::get_if<std::int64_t>(&m_terms[i].value))
                return {0, {*count, 1}, {}, 0};
            return {0, ratio(std::get<Share>(m_terms[i].value).millionths, 1'000'000), {}, 0};
        }
        m_good = false;
        return {};
    }

    std::string_view m_text;
    const std::vector<Term> &m_terms;
    std::size_t m_at = 0;
    bool m_good = true;
};

} // namespace

std::optional<std::vector<LinearPart>> linearOf(std::string_view formula, const std::vector<Term> &terms)
{
    auto value = LinearReader(formula, terms).all();
    if (!value || value->power != 1)
        return std::nullopt;
    std::erase_if(value->parts, [](const LinearPart &part) { return part.times.num == 0; });
    return value->parts;
}

} // namespace matside
