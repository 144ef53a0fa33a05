// SPDX-License-Identifier: MIT
#pragma once

#include "bench/step.h"

#include <QString>
#include <QStringList>

namespace matside {

/// A whole number in English words: 298 → "two hundred and ninety-eight". 0…999 999; anything else in digits.
[[nodiscard]] QString numberInWords(qint64 number);

/// What is printed on the screen as a person would say it: "11 3/4 in" → "eleven and three quarter inches",
/// "12 × 13 1/4 in" → "twelve by thirteen and a quarter inches", "8.5 mm" → "eight point five millimetres",
/// "2 of 3" → "two of three". Braces are dropped. A name with a digit in it ("A1") stays as it is. Other
/// languages are put into words by inWordsOf().
[[nodiscard]] QString inSpokenWords(const QString &printed, const QString &language = QStringLiteral("en"));

/// A step read out: where in the run, the figure, what to do, how many rulers and where they lie, and the
/// caution. One sentence an entry, ready to be spoken; `lines` are where the ruler lies, as printed.
struct SpokenStep {
    QString title;
    QString figure;
    QString does;
    bool twoRulers = false;
    QStringList lines;
    QString caution;
};
[[nodiscard]] QString readOut(const SpokenStep &step, const QString &language = QStringLiteral("en"));

/// Whether a blade is in the hand at this step: by itself nothing is read out there.
[[nodiscard]] bool takesABlade(const Step &step);

} // namespace matside
