// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace matside {

/// A careful walk over typed text (UTF-8), byte by byte; it never runs past the end.
class Scan {
public:
    explicit Scan(std::string_view text) : m_text(text) {}

    [[nodiscard]] std::size_t at() const { return m_at; }
    [[nodiscard]] bool done() const { return m_at >= m_text.size(); }
    [[nodiscard]] bool digit() const { return !done() && m_text[m_at] >= '0' && m_text[m_at] <= '9'; }
    [[nodiscard]] bool letter() const;
    /// The digit here, as a number; only after digit().
    std::int64_t take() { return m_text[m_at++] - '0'; }

    /// Passes blanks (space, tab, line end, no-break and thin spaces); true when there were any.
    bool blanks();
    /// A minus sign before a number: ASCII or U+2212.
    bool minus();
    /// A hyphen between a whole number and its fraction: ASCII, U+2010 or U+2013.
    bool hyphen();
    /// A decimal point or comma.
    bool point();
    /// `/`, U+2044 or U+2215.
    bool slash();
    /// This very word (letters in either case), not followed by a further letter.
    bool word(std::string_view name);
    /// One character that is a whole fraction, as ½ or ⅜.
    bool vulgar(std::int64_t &num, std::int64_t &den);

private:
    bool piece(std::string_view bytes);

    std::string_view m_text;
    std::size_t m_at = 0;
};

} // namespace matside
