// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

namespace matside {

/// What is printed on the screen as German ("de"), French ("fr") or Spanish ("es") says it aloud: fractions,
/// units, "×" and "%" in words, "11 3/4 in" → "11 und 3 viertel Zoll", "11 pouces 3 quarts", "11 pulgadas y 3
/// cuartos". Whole and decimal numbers stay in digits, which a voice knows how to say in its language, but
/// where the word before a unit is another ("ein Zoll", "veintiuna pulgadas"). In any other language the text
/// stays as it is. Common practice of each language, no published source.
[[nodiscard]] QString inWordsOf(const QString &text, const QString &language);

} // namespace matside
