// SPDX-License-Identifier: MIT
#pragma once

#include <QQuickWindow>
#include <QStringList>

namespace matside {

/// The words of the window that cannot be read whole: they run off the sheet, out of the target they stand
/// on, off the foot of what does not roll, or over other words, are cut short, or, where `whole` asks for it,
/// broken inside a word. One line of text each; empty when all fit.
[[nodiscard]] QStringList wordsThatDoNotFit(QQuickWindow &window, bool whole);

} // namespace matside
