// SPDX-License-Identifier: MIT
#pragma once

#include "length/length.h"

#include <QString>

namespace matside {
/// Lets a failing comparison say what the two lengths are.
inline char *toString(const Length &length)
{
    const QString words = QStringLiteral("%1 in (%2 mm, %3 ticks)")
                              .arg(length.asInches(), 0, 'f', 6)
                              .arg(length.asMm(), 0, 'f', 4)
                              .arg(length.count());
    return qstrdup(words.toUtf8().constData());
}
} // namespace matside
