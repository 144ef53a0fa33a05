// SPDX-License-Identifier: MIT
#include "app/battery.h"

#include <QDir>
#include <QFile>

#include <algorithm>

namespace matside {

namespace {

QString wordIn(const QDir &supply, const char *name)
{
    QFile file(supply.filePath(QLatin1String(name)));
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.read(64)).trimmed() : QString();
}

std::optional<double> numberIn(const QDir &supply, const char *name)
{
    bool is = false;
    const double value = wordIn(supply, name).toDouble(&is);
    return is ? std::optional(value) : std::nullopt;
}

/// What a battery can hold, in whatever unit it tells; nothing when it does not.
double holds(const QDir &supply)
{
    const auto energy = numberIn(supply, "energy_full");
    const auto charge = energy ? energy : numberIn(supply, "charge_full");
    return charge.value_or(0);
}

} // namespace

std::optional<Charge> chargeIn(const QString &folder)
{
    const QDir supplies(folder);
    bool mains = false;
    bool drained = false;
    double even = 0;
    double weighed = 0;
    double weight = 0;
    int batteries = 0;
    bool allTell = true;
    for (const QString &name : supplies.entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
        const QDir supply(supplies.filePath(name));
        if (wordIn(supply, "scope") == QStringLiteral("Device"))
            continue;
        if (wordIn(supply, "type") != QStringLiteral("Battery")) {
            mains = mains || numberIn(supply, "online").value_or(0) > 0;
            continue;
        }
        const auto capacity = numberIn(supply, "capacity");
        if (!capacity)
            continue;
        const double percent = std::clamp(*capacity, 0.0, 100.0);
        const double size = holds(supply);
        ++batteries;
        even += percent;
        weighed += percent * size;
        weight += size;
        allTell = allTell && size > 0;
        drained = drained || wordIn(supply, "status") == QStringLiteral("Discharging");
    }
    if (batteries == 0)
        return std::nullopt;
    return Charge{allTell ? weighed / weight : even / batteries, mains || !drained};
}

} // namespace matside
