// SPDX-License-Identifier: MIT
#pragma once

#include "length/length.h"

#include <cstdint>
#include <string>

namespace matside {

/// How a number is brought to a ruler's mark (rule F0 of the trade notes).
enum class Round {
    Nearest,   ///< nearest mark, ties down; "a scant"/"a generous" when 1/256 in | 0.1 mm or more off
    Down,      ///< fold-under, largest block, true square: to the mark below
    UpEighth,  ///< gap and end margin: up to 1/8 in | 2 mm
    UpQuarter, ///< lengths with spare, binding length, backing: up to 1/4 in | 5 mm
    Fine       ///< seams and catches: nearest 1/32 in | 0.5 mm, ties down, scant/generous as Nearest
};

/// The marks of the finest ruler in use.
struct Marks {
    System system = System::Inch;
    Length finest = Length::ticks(508); ///< 1/16 in, or 1 mm in a metric project
};

enum class Lean { Exact, Scant, Generous };

/// A length on a ruler's mark, in parts for a stacked fraction.
struct Shown {
    Length mark;             ///< where on the ruler
    Lean lean = Lean::Exact; ///< the true length lies under (scant) or over (generous) it, 0 too
    System system = System::Inch;
    bool minus = false;
    std::int64_t whole = 0;
    std::int64_t num = 0; ///< 0 when there is no fraction; in metric 5 of 10 for a half
    std::int64_t den = 1;
    bool valid = true; ///< false for an overflowed length
};

[[nodiscard]] Shown show(Length length, Marks marks, Round round = Round::Nearest);

/// English with a decimal point: `7 1/8 in`, `a scant 21 3/16 in`, `−1/16 in`, `298 mm`, `8.5 mm`, `0 in`.
[[nodiscard]] std::string text(const Shown &shown);

/// The step a rule rounds to on these marks.
[[nodiscard]] Length stepOf(Round round, Marks marks);

/// Cloth as it is sold: up to 1/8 yd | 10 cm (`step` > 0), e.g. `1 1/8 yd`, `1.0 m`.
[[nodiscard]] std::string textSold(Length length, Length step, System system);

} // namespace matside
