// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QString>

namespace languages {

/// The words of the source as a wordy language might say them: letters twice, the vowels first, until there
/// are 40 % more of them. That is what a short English label may grow by at least (common advice on room for
/// translations; no published standard). What is put in later ("%1") and what is set as a length ("{…}")
/// stay as they are.
[[nodiscard]] QString lengthened(const QString &source);

/// A translation file (.ts) with every message lengthened; empty when `untold` is not one.
[[nodiscard]] QByteArray lengthenedFile(const QByteArray &untold);

} // namespace languages
