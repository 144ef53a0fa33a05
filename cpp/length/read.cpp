// SPDX-License-Identifier: MIT
#include "length/read.h"

#include "length/scan.h"

#include <array>
#include <optional>

namespace matside {

namespace {

__extension__ using Wide = __int128;
constexpr std::int64_t mostDigits = 1'000'000'000'000; // more than any length needs, far from overflow

struct Unit {
    std::string_view name;
    std::int64_t num; ///< ticks = number · num / den
    std::int64_t den;
};
constexpr std::int64_t inch = Length::ticksPerInch;
constexpr std::array units{
    Unit{"inches", inch, 1},      Unit{"inch", inch, 1},       Unit{"in.", inch, 1},
    Unit{"in", inch, 1},          Unit{"\"", inch, 1},         Unit{"\u2033", inch, 1},
    Unit{"\u201D", inch, 1},      Unit{"feet", inch * 12, 1},  Unit{"foot", inch * 12, 1},
    Unit{"ft", inch * 12, 1},     Unit{"'", inch * 12, 1},     Unit{"\u2019", inch * 12, 1},
    Unit{"\u2032", inch * 12, 1}, Unit{"yards", inch * 36, 1}, Unit{"yard", inch * 36, 1},
    Unit{"yd", inch * 36, 1},     Unit{"mm", 320, 1},          Unit{"cm", 3200, 1},
    Unit{"m", 320'000, 1},
};

/// A number as read: (num / den), never negative.
struct Number {
    std::int64_t num = 0;
    std::int64_t den = 1;
};

ReadError fault(ReadFault what, std::size_t at)
{
    return {what, at};
}

std::optional<std::int64_t> digitsOf(Scan &scan, std::size_t &count)
{
    std::int64_t value = 0;
    count = 0;
    while (scan.digit()) {
        if (value >= mostDigits)
            return std::nullopt;
        value = value * 10 + scan.take();
        ++count;
    }
    return value;
}

/// The decimals after a point or comma, appended to whole.
std::optional<ReadError> readDecimals(Scan &scan, Number &number)
{
    const std::size_t from = scan.at();
    std::size_t count = 0;
    while (scan.digit()) {
        if (number.den >= mostDigits || number.num >= mostDigits * 1000)
            return fault(ReadFault::TooFine, scan.at());
        number.num = number.num * 10 + scan.take();
        number.den *= 10;
        ++count;
    }
    if (count == 0)
        return fault(ReadFault::NotANumber, from);
    return std::nullopt;
}

/// `num / den` after its numerator, or a vulgar fraction character.
std::optional<ReadError> readBottom(Scan &scan, std::int64_t top, Number &fraction, bool afterWhole)
{
    scan.blanks();
    const std::size_t at = scan.at();
    std::size_t count = 0;
    const std::optional<std::int64_t> bottom = digitsOf(scan, count);
    if (!bottom)
        return fault(ReadFault::TooFine, at);
    if (count == 0 || *bottom == 0 || (afterWhole && top >= *bottom))
        return fault(ReadFault::BadFraction, at);
    fraction = {top, *bottom};
    return std::nullopt;
}

/// Fraction that may follow a whole number: ` 1/2`, `-1/2`, `½`, `-½`.
std::optional<ReadError> readTail(Scan &scan, Number &number)
{
    const Scan before = scan;
    const bool blank = scan.blanks();
    const std::size_t hyphenAt = scan.at();
    const bool hyphen = scan.hyphen();
    Number fraction;
    if (scan.vulgar(fraction.num, fraction.den)) {
        number = {number.num * fraction.den + fraction.num, fraction.den};
        return std::nullopt;
    }
    if ((!blank && !hyphen) || !scan.digit()) {
        scan = before;
        if (hyphen)
            return fault(ReadFault::BadFraction, hyphenAt);
        return std::nullopt;
    }
    std::size_t count = 0;
    const std::size_t at = scan.at();
    const std::optional<std::int64_t> top = digitsOf(scan, count);
    if (!top)
        return fault(ReadFault::TooFine, at);
    scan.blanks();
    if (!scan.slash())
        return fault(ReadFault::BadFraction, scan.at());
    if (const auto wrong = readBottom(scan, *top, fraction, true))
        return wrong;
    if (number.num > mostDigits || fraction.den > 1'000'000)
        return fault(ReadFault::TooFine, at);
    number = {number.num * fraction.den + fraction.num, fraction.den};
    return std::nullopt;
}

Result<Number, ReadError> readNumber(Scan &scan)
{
    Number number;
    if (scan.vulgar(number.num, number.den))
        return number;
    const std::size_t from = scan.at();
    std::size_t count = 0;
    const std::optional<std::int64_t> whole = digitsOf(scan, count);
    if (!whole)
        return fault(ReadFault::TooLong, from);
    number.num = *whole;
    if (scan.point()) {
        if (const auto wrong = readDecimals(scan, number))
            return *wrong;
        return number;
    }
    if (count == 0)
        return fault(scan.slash() ? ReadFault::BadFraction : ReadFault::NotANumber, from);
    Scan ahead = scan;
    ahead.blanks();
    if (ahead.slash()) {
        Number fraction;
        if (const auto wrong = readBottom(ahead, number.num, fraction, false))
            return *wrong;
        scan = ahead;
        return fraction;
    }
    if (const auto wrong = readTail(scan, number))
        return *wrong;
    return number;
}

const Unit *readUnit(Scan &scan)
{
    for (const Unit &unit : units)
        if (scan.word(unit.name))
            return &unit;
    return nullptr;
}

Result<Length, ReadError> measured(Number number, const Unit &unit, bool minus, std::size_t at)
{
    const Wide top = Wide(number.num) * unit.num;
    const Wide bottom = Wide(number.den) * unit.den;
    const Wide ticks = (top + bottom / 2) / bottom;
    if (ticks > longest().count())
        return fault(ReadFault::TooLong, at);
    const Length length = Length::ticks(static_cast<std::int64_t>(ticks));
    return minus ? -length : length;
}

} // namespace

Length longest()
{
    return Length::mm(10'000'000);
}

Result<Length, ReadError> readLength(std::string_view text, System system)
{
    Scan scan(text);
    scan.blanks();
    if (scan.done())
        return fault(ReadFault::Empty, 0);
    const bool minus = scan.minus();
    scan.blanks();
    const std::size_t numberAt = scan.at();
    Result<Number, ReadError> number = readNumber(scan);
    if (!number)
        return number.error();
    scan.blanks();
    const std::size_t unitAt = scan.at();
    const Unit *unit = readUnit(scan);
    scan.blanks();
    if (!scan.done()) {
        const std::size_t at = scan.at();
        if (unit)
            return fault(readUnit(scan) ? ReadFault::TwoUnits : ReadFault::NotANumber, at);
        return fault(scan.letter() ? ReadFault::UnknownUnit : ReadFault::NotANumber, unitAt);
    }
    const Unit bare = system == System::Inch ? Unit{"in", inch, 1} : Unit{"mm", 320, 1};
    return measured(number.value(), unit ? *unit : bare, minus, numberAt);
}

Result<Share, ReadError> readShare(std::string_view text)
{
    Scan scan(text);
    scan.blanks();
    if (scan.done())
        return fault(ReadFault::Empty, 0);
    const bool minus = scan.minus();
    const std::size_t at = scan.at();
    Result<Number, ReadError> number = readNumber(scan);
    if (!number)
        return number.error();
    scan.blanks();
    scan.word("%");
    scan.blanks();
    if (!scan.done())
        return fault(ReadFault::NotAPercent, scan.at());
    const Wide top = Wide(number.value().num) * 10'000;
    const Wide millionths = (top + number.value().den / 2) / number.value().den;
    if (millionths > Wide(mostDigits))
        return fault(ReadFault::TooLong, at);
    const auto held = static_cast<std::int64_t>(millionths);
    return Share{minus ? -held : held};
}

} // namespace matside
