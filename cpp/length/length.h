// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <cstdint>
#include <limits>

namespace matside {

enum class System { Inch, Metric };

/// An exact length: a 64-bit count of 1/8128 inch.
///
/// 1/64 in = 127 ticks and 0.1 mm = 32 ticks, so both rulers are exact (1 in = 25.4 mm exactly,
/// NBS Circular 572, addendum of 1959). Sums, differences and whole multiples are exact; a quotient,
/// product or root is rounded to a tick once (half away from zero). Too large a result is the value
/// `Length::overflow()`, which every further operation keeps: it never wraps.
class Length {
public:
    static constexpr std::int64_t ticksPerInch = 8128;
    static constexpr std::int64_t ticksPerMm = 320;

    constexpr Length() = default;
    [[nodiscard]] static constexpr Length ticks(std::int64_t count) { return Length(count); }
    /// `whole num/den` inches; den divides 64.
    [[nodiscard]] static Length inches(std::int64_t whole, std::int64_t num = 0, std::int64_t den = 1);
    /// Tenths of a millimetre.
    [[nodiscard]] static Length mmTenths(std::int64_t tenths);
    /// Whole millimetres.
    [[nodiscard]] static Length mm(std::int64_t whole);
    [[nodiscard]] static constexpr Length overflow()
    {
        return Length(std::numeric_limits<std::int64_t>::min());
    }

    [[nodiscard]] constexpr std::int64_t count() const { return m_ticks; }
    [[nodiscard]] constexpr bool valid() const { return m_ticks != overflow().m_ticks; }
    /// Decimal inches and millimetres, for writing out and drawing only, never for arithmetic.
    [[nodiscard]] double asInches() const { return static_cast<double>(m_ticks) / ticksPerInch; }
    [[nodiscard]] double asMm() const { return static_cast<double>(m_ticks) / ticksPerMm; }

    friend Length operator+(Length a, Length b);
    friend Length operator-(Length a, Length b);
    friend Length operator-(Length a);
    friend Length operator*(Length a, std::int64_t n);
    friend Length operator*(std::int64_t n, Length a) { return a * n; }
    Length &operator+=(Length b) { return *this = *this + b; }
    Length &operator-=(Length b) { return *this = *this - b; }

    friend constexpr auto operator<=>(Length a, Length b) = default;

    /// this · num / den, rounded once to a tick, half away from zero; den > 0.
    [[nodiscard]] Length scaled(std::int64_t num, std::int64_t den) const;
    /// ⌊this / step⌋ as a count; step > 0. Overflow gives 0.
    [[nodiscard]] std::int64_t floorDiv(Length step) const;
    /// ⌈this / step⌉ as a count; step > 0. Overflow gives 0.
    [[nodiscard]] std::int64_t ceilDiv(Length step) const;
    /// Up, down, or to the nearest multiple of step (ties down), step > 0.
    [[nodiscard]] Length upTo(Length step) const;
    [[nodiscard]] Length downTo(Length step) const;
    [[nodiscard]] Length nearestTo(Length step) const;
    /// |this|
    [[nodiscard]] Length magnitude() const;

private:
    explicit constexpr Length(std::int64_t count) : m_ticks(count) {}
    std::int64_t m_ticks = 0;
};

[[nodiscard]] Length max(Length a, Length b);
[[nodiscard]] Length min(Length a, Length b);

/// A share of a whole (draw-up, shrinkage), exact to 1/10 000 of a percent: millionths.
struct Share {
    std::int64_t millionths = 0;
    friend constexpr auto operator<=>(Share, Share) = default;
};

} // namespace matside
