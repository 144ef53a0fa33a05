// SPDX-License-Identifier: MIT
#include "length/scan.h"

#include <array>

namespace matside {

namespace {

struct Vulgar {
    std::string_view bytes;
    std::int64_t num;
    std::int64_t den;
};
constexpr std::array vulgars{
    Vulgar{"\u00BC", 1, 4}, Vulgar{"\u00BD", 1, 2},  Vulgar{"\u00BE", 3, 4}, Vulgar{"\u2153", 1, 3},
    Vulgar{"\u2154", 2, 3}, Vulgar{"\u2155", 1, 5},  Vulgar{"\u2156", 2, 5}, Vulgar{"\u2157", 3, 5},
    Vulgar{"\u2158", 4, 5}, Vulgar{"\u2159", 1, 6},  Vulgar{"\u215A", 5, 6}, Vulgar{"\u215B", 1, 8},
    Vulgar{"\u215C", 3, 8}, Vulgar{"\u215D", 5, 8},  Vulgar{"\u215E", 7, 8}, Vulgar{"\u2150", 1, 7},
    Vulgar{"\u2151", 1, 9}, Vulgar{"\u2152", 1, 10},
};

char lower(char c)
{
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}
bool isLetter(char c)
{
    return lower(c) >= 'a' && lower(c) <= 'z';
}

} // namespace

bool Scan::letter() const
{
    return !done() && isLetter(m_text[m_at]);
}

bool Scan::piece(std::string_view bytes)
{
    if (m_text.substr(m_at).substr(0, bytes.size()) != bytes)
        return false;
    m_at += bytes.size();
    return true;
}

bool Scan::blanks()
{
    const std::size_t from = m_at;
    while (piece(" ") || piece("\t") || piece("\n") || piece("\r") || piece("\u00A0") || piece("\u2007") ||
           piece("\u2009") || piece("\u202F"))
        ;
    return m_at != from;
}

bool Scan::minus()
{
    return piece("-") || piece("\u2212");
}

bool Scan::hyphen()
{
    return piece("-") || piece("\u2010") || piece("\u2013");
}

bool Scan::point()
{
    return piece(".") || piece(",");
}

bool Scan::slash()
{
    return piece("/") || piece("\u2044") || piece("\u2215");
}

bool Scan::word(std::string_view name)
{
    const std::string_view here = m_text.substr(m_at).substr(0, name.size());
    if (here.size() != name.size())
        return false;
    for (std::size_t i = 0; i < name.size(); ++i)
        if (lower(here[i]) != name[i])
            return false;
    const std::size_t after = m_at + name.size();
    if (isLetter(name.back()) && after < m_text.size() && isLetter(m_text[after]))
        return false;
    m_at = after;
    return true;
}

bool Scan::vulgar(std::int64_t &num, std::int64_t &den)
{
    for (const Vulgar &fraction : vulgars) {
        if (!piece(fraction.bytes))
            continue;
        num = fraction.num;
        den = fraction.den;
        return true;
    }
    return false;
}

} // namespace matside
