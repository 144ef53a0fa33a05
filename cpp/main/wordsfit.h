// SPDX-License-Identifier: MIT
#pragma once

#include <QQuickWindow>
#include <QStringList>

namespace matside {

/// The words of the window that cannot be read whole: they run off the sheet, out of the target they stand
/// on, off the foot of what does not roll, or over other words. One line of text each; empty when all fit.
[[nodiscard]] QStringList wordsThatDoNotFit(QQuickWindow &window);

} // namespace matside
