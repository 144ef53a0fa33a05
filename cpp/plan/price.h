// SPDX-License-Identifier: MIT
#pragma once

#include "project/project.h"

#include <cstdint>
#include <optional>
#include <string_view>

namespace matside {

/// What she reckons with. Money is in hundredths of her currency throughout.
struct PriceTerms {
    std::int64_t rate = 0;   ///< for an hour's work
    Share overhead{150'000}; ///< 15 % is usual (common practice, no published source)
    Share margin;
    friend bool operator==(const PriceTerms &, const PriceTerms &) = default;
};

/// F27: (materials used + hours × rate) × (1 + overhead) × (1 + margin). Each figure is rounded half up to a
/// hundredth once, from the exact value and never from a rounded one.
struct Price {
    std::int64_t materials = 0;
    std::int64_t work = 0;
    std::int64_t direct = 0;       ///< materials + work
    std::int64_t withOverhead = 0; ///< direct × (1 + overhead)
    std::int64_t price = 0;
    std::int64_t perSquare = 0; ///< for a square inch | a square decimetre of the finished piece
};
/// `minuteTenths` of work (F20); `finished` the piece's size, so many `pieces` of it. Amounts under nothing
/// count as nothing; nothing at all beyond 10^12 hundredths or 10^10 tenths of a minute.
[[nodiscard]] std::optional<Price> priceOf(std::int64_t materials, std::int64_t minuteTenths,
                                           const PriceTerms &terms, const Pair &finished, std::int64_t pieces,
                                           System system);

/// Time not paid for when she asks less than the price: what is left of the asked for after overhead, margin
/// and materials pays for hours at her rate, the rest of the time is given away. Tenths of a minute, half up.
[[nodiscard]] std::int64_t unpaidTenths(std::int64_t asked, std::int64_t materials, std::int64_t minuteTenths,
                                        const PriceTerms &terms);

/// "18", "18.5" or "18,50" in hundredths; nothing when it is no amount or has more than two decimals.
[[nodiscard]] std::optional<std::int64_t> hundredthsIn(std::string_view text);

} // namespace matside
