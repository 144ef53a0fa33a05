// SPDX-License-Identifier: MIT
#include "length/read.h"

#include <array>
#include <numeric>

namespace matside {

namespace {

std::string withSign(std::int64_t ticks, const std::string &digits, const char *unit)
{
    return (ticks < 0 ? "-" : "") + digits + unit;
}

std::string padded(std::int64_t value, std::size_t width)
{
    std::string digits = std::to_string(value);
    digits.insert(0, width > digits.size() ? width - digits.size() : 0, '0');
    return digits;
}

/// Without the zeros that say nothing.
std::string trimmedZeros(std::string digits)
{
    while (digits.back() == '0')
        digits.pop_back();
    if (digits.back() == '.')
        digits.pop_back();
    return digits;
}

std::string fractionForm(std::int64_t size)
{
    const std::int64_t in64ths = size / 127;
    const std::int64_t whole = in64ths / 64;
    const std::int64_t num = in64ths % 64;
    if (num == 0)
        return std::to_string(whole);
    const std::int64_t common = std::gcd(num, std::int64_t(64));
    const std::string fraction = std::to_string(num / common) + '/' + std::to_string(64 / common);
    return whole ? std::to_string(whole) + ' ' + fraction : fraction;
}

std::string tenthsForm(std::int64_t size)
{
    const std::int64_t tenths = size / 32;
    return tenths % 10 == 0 ? std::to_string(tenths / 10)
                            : std::to_string(tenths / 10) + '.' + std::to_string(tenths % 10);
}

} // namespace

std::string writeLength(Length length, System system)
{
    if (!length.valid())
        return "too long to tell"; // no reader takes this for a length
    const std::int64_t ticks = length.count();
    const std::int64_t size = length.magnitude().count();
    const bool fraction = size % 127 == 0;
    const bool tenths = size % 32 == 0;
    if (fraction && (system == System::Inch || !tenths))
        return withSign(ticks, fractionForm(size), " in");
    if (tenths)
        return withSign(ticks, tenthsForm(size), " mm");
    // Six places of an inch tell any two ticks apart: a tick is 0.000123 in.
    const std::int64_t whole = size / Length::ticksPerInch;
    const std::int64_t millionths =
        (size % Length::ticksPerInch * 1'000'000 + Length::ticksPerInch / 2) / Length::ticksPerInch;
    return withSign(ticks, trimmedZeros(std::to_string(whole) + '.' + padded(millionths, 6)), " in");
}

std::string writeShare(Share share)
{
    const std::int64_t size = share.millionths < 0 ? -share.millionths : share.millionths;
    const std::string digits = std::to_string(size / 10'000) + '.' + padded(size % 10'000, 4);
    return withSign(share.millionths, trimmedZeros(digits), " %");
}

} // namespace matside
