// SPDX-License-Identifier: MIT
#pragma once

#include "length/length.h"
#include "length/result.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace matside {

/// Why a text is not a length, and where in it (byte offset) the reading stopped.
enum class ReadFault {
    Empty,       ///< nothing but blanks
    NotANumber,  ///< a character that belongs to no length
    BadFraction, ///< "1/0", "/2", "1 3/", a top as large as its bottom after a whole number
    UnknownUnit, ///< letters that are no unit of length
    TwoUnits,    ///< "3 in mm"
    TooLong,     ///< over `longest()`
    TooFine,     ///< more digits than a length can hold
    NotAPercent  ///< readShare only
};
struct ReadError {
    ReadFault fault = ReadFault::NotANumber;
    std::size_t at = 0;
    friend bool operator==(const ReadError &, const ReadError &) = default;
};

/// The longest length taken from a user or a file: 10 000 m.
[[nodiscard]] Length longest();

/// Reads what people type or paste: `7`, `7 1/2`, `7-1/2`, `7½`, `7.5`, `7,5`, `7 1/2"`, `7 1/2 in`,
/// `165 mm`, `165mm`, `16.5 cm`, `1 1/4 yd`, `1.2 m`, `2 ft`, a leading minus (ASCII or U+2212).
/// A bare number is in the unit of `system` (inches or millimetres). Decimals and odd fractions are
/// rounded once to a tick. Any common UTF-8 vulgar fraction, prime mark or no-break space is understood.
[[nodiscard]] Result<Length, ReadError> readLength(std::string_view text, System system);

/// Reads `2 %`, `2%`, `2.0833 %`, `2,5` as a share of 100.
[[nodiscard]] Result<Share, ReadError> readShare(std::string_view text);

/// The first of: fraction of an inch to 1/64, tenths of a millimetre, decimal inches with six places
/// that reads back to the same tick; an inch system tries the inch form first, metric the millimetres.
[[nodiscard]] std::string writeLength(Length length, System system);
/// `2 %`, `2.0833 %` (up to four places).
[[nodiscard]] std::string writeShare(Share share);

} // namespace matside
