// SPDX-License-Identifier: MIT
#include "length/show.h"

#include <numeric>

namespace matside {

namespace {

Length brought(Length length, Round round, Length step)
{
    switch (round) {
    case Round::Down:
        return length.downTo(step);
    case Round::UpEighth:
    case Round::UpQuarter:
        return length.upTo(step);
    case Round::Nearest:
    case Round::Fine:
        break;
    }
    return length.nearestTo(step);
}

/// Which side of its mark a length lies on, by value: −0.07 in lies under −1/16 in and is a scant one, and
/// −0.02 in is a scant 0 in. Odd to the ear, but a bare "0 in" would promise an exact meeting.
Lean leanOf(Length length, Length mark, System system)
{
    // 1/256 in is 31.75 ticks and 0.1 mm is 32: a length at or past it is off its mark.
    const Length off = length - mark;
    const bool told = system == System::Inch ? off.magnitude() * 4 >= Length::ticks(127)
                                             : off.magnitude() >= Length::mmTenths(1);
    if (!told)
        return Lean::Exact;
    return off < Length() ? Lean::Scant : Lean::Generous;
}

void inInches(Shown &shown, Length size)
{
    // Marks of an inch ruler are 64ths or coarser; anything finer is told to the 64th below.
    const std::int64_t in64ths = size.floorDiv(Length::ticks(127));
    shown.whole = in64ths / 64;
    shown.num = in64ths % 64;
    shown.den = 64;
    const std::int64_t common = shown.num == 0 ? 64 : std::gcd(shown.num, shown.den);
    shown.num /= common;
    shown.den = shown.num == 0 ? 1 : shown.den / common;
}

void inMillimetres(Shown &shown, Length size)
{
    const std::int64_t tenths = size.floorDiv(Length::mmTenths(1));
    shown.whole = tenths / 10;
    shown.num = tenths % 10;
    shown.den = shown.num == 0 ? 1 : 10;
}

std::string digits(const Shown &shown)
{
    if (shown.system == System::Metric)
        return std::to_string(shown.whole) + (shown.num ? '.' + std::to_string(shown.num) : std::string());
    if (shown.num == 0)
        return std::to_string(shown.whole);
    const std::string fraction = std::to_string(shown.num) + '/' + std::to_string(shown.den);
    return shown.whole ? std::to_string(shown.whole) + ' ' + fraction : fraction;
}

} // namespace

Length stepOf(Round round, Marks marks)
{
    const bool inch = marks.system == System::Inch;
    switch (round) {
    case Round::UpEighth:
        return inch ? Length::inches(0, 1, 8) : Length::mm(2);
    case Round::UpQuarter:
        return inch ? Length::inches(0, 1, 4) : Length::mm(5);
    case Round::Fine:
        return inch ? Length::inches(0, 1, 32) : Length::mmTenths(5);
    case Round::Nearest:
    case Round::Down:
        break;
    }
    if (marks.finest > Length())
        return marks.finest;
    return inch ? Length::inches(0, 1, 16) : Length::mm(1);
}

Shown show(Length length, Marks marks, Round round)
{
    Shown shown;
    shown.system = marks.system;
    if (!length.valid()) {
        shown.valid = false;
        return shown;
    }
    shown.mark = brought(length, round, stepOf(round, marks));
    if (round == Round::Nearest || round == Round::Fine)
        shown.lean = leanOf(length, shown.mark, marks.system);
    shown.minus = shown.mark < Length();
    if (marks.system == System::Inch)
        inInches(shown, shown.mark.magnitude());
    else
        inMillimetres(shown, shown.mark.magnitude());
    return shown;
}

std::string text(const Shown &shown)
{
    if (!shown.valid)
        return "too long to tell";
    std::string words;
    if (shown.lean == Lean::Scant)
        words = "a scant ";
    else if (shown.lean == Lean::Generous)
        words = "a generous ";
    if (shown.minus)
        words += "\u2212";
    return words + digits(shown) + (shown.system == System::Inch ? " in" : " mm");
}

std::string textSold(Length length, Length step, System system)
{
    const Length bought = length.upTo(step);
    if (!bought.valid())
        return "too long to tell";
    if (system == System::Metric) {
        const std::int64_t centimetres = bought.ceilDiv(Length::mm(10));
        const std::int64_t rest = centimetres % 100;
        std::string decimals = rest % 10 == 0 ? std::to_string(rest / 10) : std::to_string(rest);
        if (rest % 10 != 0 && rest < 10)
            decimals.insert(0, "0");
        return std::to_string(centimetres / 100) + '.' + decimals + " m";
    }
    // A yard is 36 in; told to the eighth as it is sold.
    const std::int64_t eighths = bought.ceilDiv(Length::inches(4, 1, 2));
    const std::int64_t whole = eighths / 8;
    const std::int64_t num = eighths % 8;
    if (num == 0)
        return std::to_string(whole) + " yd";
    const std::int64_t common = std::gcd(num, std::int64_t(8));
    const std::string fraction = std::to_string(num / common) + '/' + std::to_string(8 / common);
    return (whole ? std::to_string(whole) + ' ' : std::string()) + fraction + " yd";
}

} // namespace matside
