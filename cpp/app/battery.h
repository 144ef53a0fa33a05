// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <optional>

namespace matside {

/// How full the tablet's battery is and whether it is on the mains.
struct Charge {
    double percent = 100; ///< 0…100
    bool plugged = true;
    friend bool operator==(const Charge &, const Charge &) = default;
};

/// Where Linux shows power supplies, a folder each. Files and their words: the kernel's own
/// Documentation/ABI/testing/sysfs-class-power.
inline constexpr QLatin1String powerSupplies{"/sys/class/power_supply"};

/// Reads the charge of the machine's own batteries together, weighed by what each holds where it says so;
/// those of a mouse or a pen do not count. Nothing where there is no battery, or none that can be read.
[[nodiscard]] std::optional<Charge> chargeIn(const QString &folder);

} // namespace matside
