// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <QVariantMap>

namespace matside {

/// What QML is told of something it asked for: taken or not, and why not or what follows.
[[nodiscard]] inline QVariantMap answer(bool ok, const QString &says)
{
    return {{QStringLiteral("ok"), ok}, {QStringLiteral("says"), says}};
}

} // namespace matside
