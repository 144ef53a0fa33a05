// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>

#include <cstdint>

namespace matside {

/// Hundredths of her currency with two decimals, as her language writes them; no currency is named.
[[nodiscard]] inline QString moneyText(std::int64_t hundredths)
{
    return QLocale().toString(static_cast<double>(hundredths) / 100, 'f', 2);
}

/// "1 needle" or "4 needles": the words for one, and for any other number with %1 in them.
[[nodiscard]] inline QString counted(std::int64_t number, const QString &one, const QString &many)
{
    return number == 1 ? one : many.arg(number);
}

/// Hours with one decimal, half up, from tenths of a minute.
[[nodiscard]] inline QString hoursText(std::int64_t minuteTenths)
{
    const std::int64_t tenths = (minuteTenths + 30) / 60;
    return QLocale().toString(static_cast<double>(tenths) / 10, 'f', 1);
}

} // namespace matside
