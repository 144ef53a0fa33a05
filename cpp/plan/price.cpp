// SPDX-License-Identifier: MIT
#include "plan/price.h"

#include <algorithm>

namespace matside {

namespace {

__extension__ using Wide = __int128;

constexpr std::int64_t whole = 1'000'000;  // millionths
constexpr std::int64_t tenthsInHour = 600; // of a minute
constexpr std::int64_t mostMoney = 1'000'000'000'000;
constexpr std::int64_t mostTenths = 10'000'000'000;
constexpr std::int64_t mostShare = 10 * whole;
/// Longer than anything that is sewn; keeps the area within its type.
const Length mostSide = Length::mm(10'000'000);

/// num / den, half up; neither is negative.
std::int64_t halfUp(Wide num, Wide den)
{
    return static_cast<std::int64_t>((2 * num + den) / (2 * den));
}

std::int64_t clamped(Share share)
{
    return std::clamp<std::int64_t>(share.millionths, 0, mostShare);
}

} // namespace

std::optional<Price> priceOf(std::int64_t materials, std::int64_t minuteTenths, const PriceTerms &terms,
                             const Pair &finished, std::int64_t pieces, System system)
{
    materials = std::max<std::int64_t>(materials, 0);
    minuteTenths = std::max<std::int64_t>(minuteTenths, 0);
    const std::int64_t rate = std::max<std::int64_t>(terms.rate, 0);
    if (materials > mostMoney || minuteTenths > mostTenths || rate > mostMoney / 10'000)
        return std::nullopt;
    // Exact over one denominator: 600 for the hours, a million for each share.
    const Wide work = Wide{minuteTenths} * rate;
    const Wide direct = Wide{materials} * tenthsInHour + work;
    const Wide loaded = direct * (whole + clamped(terms.overhead));
    const Wide asked = loaded * (whole + clamped(terms.margin));
    Price price;
    price.materials = materials;
    price.work = halfUp(work, tenthsInHour);
    price.direct = halfUp(direct, tenthsInHour);
    price.withOverhead = halfUp(loaded, Wide{tenthsInHour} * whole);
    price.price = halfUp(asked, Wide{tenthsInHour} * whole * whole);
    const Length side = system == System::Inch ? Length::inches(1) : Length::mm(100);
    const Wide area =
        Wide{finished.along.count()} * finished.across.count() * std::max<std::int64_t>(pieces, 1);
    if (finished.along > Length() && finished.across > Length() && finished.along < mostSide &&
        finished.across < mostSide)
        price.perSquare = halfUp(Wide{price.price} * side.count() * side.count(), area);
    return price;
}

std::int64_t unpaidTenths(std::int64_t asked, std::int64_t materials, std::int64_t minuteTenths,
                          const PriceTerms &terms)
{
    const std::int64_t time = std::clamp<std::int64_t>(minuteTenths, 0, mostTenths);
    if (terms.rate <= 0 || asked > mostMoney || materials > mostMoney)
        return 0;
    // asked·10^12 / ((10^6 + o)(10^6 + m)) is what remains for materials and work.
    const Wide shares = Wide{whole + clamped(terms.overhead)} * (whole + clamped(terms.margin));
    const Wide forWork = Wide{std::max<std::int64_t>(asked, 0)} * whole * whole -
                         Wide{std::max<std::int64_t>(materials, 0)} * shares;
    if (forWork <= 0)
        return time;
    const Wide unpaid = Wide{time} * terms.rate * shares - forWork * tenthsInHour;
    return unpaid <= 0 ? 0 : halfUp(unpaid, Wide{terms.rate} * shares);
}

std::optional<std::int64_t> hundredthsIn(std::string_view text)
{
    std::int64_t value = 0;
    int decimals = -1; // none as yet
    bool digits = false;
    for (const char c : text) {
        if ((c == '.' || c == ',') && decimals < 0) {
            decimals = 0;
            continue;
        }
        if (c < '0' || c > '9' || value > mostMoney / 100 || decimals >= 2)
            return std::nullopt;
        value = value * 10 + (c - '0');
        digits = true;
        decimals += decimals >= 0 ? 1 : 0;
    }
    if (!digits)
        return std::nullopt;
    for (int i = std::max(decimals, 0); i < 2; ++i)
        value *= 10;
    return value;
}

} // namespace matside
