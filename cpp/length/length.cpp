// SPDX-License-Identifier: MIT
#include "length/length.h"

namespace matside {

namespace {

__extension__ using Wide = __int128;

Length narrowed(Wide ticks)
{
    constexpr Wide most = std::numeric_limits<std::int64_t>::max();
    if (ticks > most || ticks < -most)
        return Length::overflow();
    return Length::ticks(static_cast<std::int64_t>(ticks));
}

/// num / den rounded to the nearest whole, half away from zero; den > 0.
Wide rounded(Wide num, Wide den)
{
    const Wide half = den / 2;
    return num >= 0 ? (num + half) / den : -((-num + half) / den);
}

Wide floored(Wide num, Wide den)
{
    const Wide quotient = num / den;
    return quotient * den > num ? quotient - 1 : quotient;
}

} // namespace

Length Length::inches(std::int64_t whole, std::int64_t num, std::int64_t den)
{
    if (den <= 0)
        return overflow();
    return narrowed(Wide(whole) * ticksPerInch + rounded(Wide(num) * ticksPerInch, den));
}

Length Length::mmTenths(std::int64_t tenths)
{
    return narrowed(Wide(tenths) * (ticksPerMm / 10));
}

Length Length::mm(std::int64_t whole)
{
    return narrowed(Wide(whole) * ticksPerMm);
}

Length operator+(Length a, Length b)
{
    std::int64_t sum = 0;
    if (!a.valid() || !b.valid() || __builtin_add_overflow(a.m_ticks, b.m_ticks, &sum))
        return Length::overflow();
    return Length::ticks(sum);
}

Length operator-(Length a, Length b)
{
    std::int64_t difference = 0;
    if (!a.valid() || !b.valid() || __builtin_sub_overflow(a.m_ticks, b.m_ticks, &difference))
        return Length::overflow();
    return Length::ticks(difference);
}

Length operator-(Length a)
{
    return a.valid() ? Length::ticks(-a.m_ticks) : a;
}

Length operator*(Length a, std::int64_t n)
{
    std::int64_t product = 0;
    if (!a.valid() || __builtin_mul_overflow(a.m_ticks, n, &product))
        return Length::overflow();
    return Length::ticks(product);
}

Length Length::scaled(std::int64_t num, std::int64_t den) const
{
    if (!valid() || den <= 0)
        return overflow();
    return narrowed(rounded(Wide(m_ticks) * num, den));
}

std::int64_t Length::floorDiv(Length step) const
{
    if (!valid() || !step.valid() || step.m_ticks <= 0)
        return 0;
    return static_cast<std::int64_t>(floored(m_ticks, step.m_ticks));
}

std::int64_t Length::ceilDiv(Length step) const
{
    if (!valid() || !step.valid() || step.m_ticks <= 0)
        return 0;
    return static_cast<std::int64_t>(-floored(-Wide(m_ticks), step.m_ticks));
}

Length Length::upTo(Length step) const
{
    return valid() ? step * ceilDiv(step) : overflow();
}

Length Length::downTo(Length step) const
{
    return valid() ? step * floorDiv(step) : overflow();
}

Length Length::nearestTo(Length step) const
{
    if (!valid() || step.m_ticks <= 0)
        return overflow();
    const Length below = downTo(step);
    const Length over = *this - below;
    return over > step - over ? below + step : below; // over * 2 could overflow where this cannot
}

Length Length::magnitude() const
{
    return m_ticks < 0 ? -*this : *this;
}

Length max(Length a, Length b)
{
    if (!a.valid() || !b.valid())
        return Length::overflow();
    return a < b ? b : a;
}

Length min(Length a, Length b)
{
    if (!a.valid() || !b.valid())
        return Length::overflow();
    return b < a ? b : a;
}

} // namespace matside
