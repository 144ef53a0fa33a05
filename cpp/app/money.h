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

} // namespace matside
