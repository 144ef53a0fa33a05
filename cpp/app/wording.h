// SPDX-License-Identifier: MIT
#pragma once

#include "app/acts.h"
#include "bench/mishap.h"
#include "bench/step.h"
#include "length/read.h"
#include "project/problem.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <span>
#include <string_view>

namespace matside {

/// A code of the Qt-free rooms and the English it is told with (translated in context "Words"). `%1` stands
/// for the first argument as it is, `%o1` for it as an ordinal word ("fourth").
struct Worded {
    std::string_view code;
    const char *text;
};

/// Every wording there is, by what it words; the tests walk through them.
[[nodiscard]] std::span<const Worded> problemWords();
[[nodiscard]] std::span<const Worded> cautionWords();
[[nodiscard]] std::span<const Worded> fileWords();
[[nodiscard]] std::span<const Worded> kindWords();
[[nodiscard]] std::span<const Worded> offerWords();
[[nodiscard]] std::span<const Worded> doesWords();
[[nodiscard]] std::span<const Worded> titleWords();
[[nodiscard]] std::span<const Worded> actionWords();
[[nodiscard]] std::span<const Worded> checkWords();
[[nodiscard]] std::span<const Worded> guardWords();
[[nodiscard]] std::span<const Worded> hazardWords();
[[nodiscard]] std::span<const Worded> termWords();
[[nodiscard]] std::span<const Worded> figureWords();
[[nodiscard]] std::span<const Worded> choiceWords();
[[nodiscard]] std::span<const Worded> fieldWords();
[[nodiscard]] std::span<const Worded> commandWords();
[[nodiscard]] std::span<const Worded> mishapWords();
/// What is asked before a mishap can be answered.
[[nodiscard]] std::span<const Worded> askedWords();
[[nodiscard]] std::span<const Worded> saidWords();

/// A text marked with QT_TRANSLATE_NOOP("Words", …), translated.
[[nodiscard]] QString inWords(const char *text);
/// The words for a code, translated; nothing when the code is unknown.
[[nodiscard]] std::optional<QString> wordsFor(std::span<const Worded> words, std::string_view code);
/// The same, or the code itself.
[[nodiscard]] QString wordsOrCode(std::span<const Worded> words, std::string_view code);

[[nodiscard]] QString toQt(std::string_view text);
/// A number as the rooms without wording write it, with the decimal sign of the reader's language.
[[nodiscard]] QString inSign(QString digits);
/// `a scant 21 3/16 in`, in the reader's language.
[[nodiscard]] QString figureText(const Shown &shown);
/// "a scant" or "a generous", translated, or nothing.
[[nodiscard]] QString leanText(Lean lean);
[[nodiscard]] QString figureText(Length length, Marks marks, Round round = Round::Nearest);
/// The same in the braces that set a length apart in a sentence on the screen.
[[nodiscard]] QString braced(Length length, Marks marks, Round round = Round::Nearest);
/// A plain sentence, without those braces.
[[nodiscard]] QString unbraced(QString text);
[[nodiscard]] QString argumentText(const Argument &argument, Marks marks);
[[nodiscard]] QString valueText(const OfferValue &value, Marks marks);
/// "first" … "twelfth", then "13th".
[[nodiscard]] QString ordinalText(std::int64_t place);

/// The sentence for a problem, a caution or a fault of the file, beginning with a capital.
[[nodiscard]] QString sentence(const Problem &problem, Marks marks);
[[nodiscard]] QString sentence(const Offer &offer, Marks marks);
/// Why a typed text is no length, with what would be understood.
[[nodiscard]] QString sentence(const ReadError &error, System system);

/// One line of the answer to a mishap; lengths in braces.
[[nodiscard]] QString sentence(const Said &line, const Project &project, const std::vector<Step> &steps);
/// The same act by act.
[[nodiscard]] Acts actsOf(const Said &line, const Project &project, const std::vector<Step> &steps);

/// What a step is for, in one line: "Cut a hoop strip of oat linen."
[[nodiscard]] QString doesText(const Step &step, const Project &project);
/// "Strip 2 of 5"; where the block in hand is given and more than its number is told of it, "Block B2,
/// pressing".
[[nodiscard]] QString titleText(const Step &step, std::int64_t repetition, const QString &block = {});
[[nodiscard]] QString actionText(const Step &step);
[[nodiscard]] QString stationText(Station station);
[[nodiscard]] QString clothText(const Project &project, std::string_view id);
/// The cut in plain words for the list on paper or the error stream.
[[nodiscard]] QString cutSentence(const Step &step, const Project &project);
/// Where the ruler lies, at most two lines.
[[nodiscard]] QStringList rulerLines(const RulerPlace &ruler, Marks marks);
/// What to look at; of a piece out of a band, which band it is, where that is not plain.
[[nodiscard]] QString checkText(const Step &step, Marks marks);
/// How many pieces come from bands of which width, and what is measured off along them; a line each way.
[[nodiscard]] QStringList bandLines(const Step &step, Marks marks);

} // namespace matside
