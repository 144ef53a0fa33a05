// SPDX-License-Identifier: MIT
#pragma once

#include <QMap>
#include <QRegularExpression>
#include <QString>
#include <QStringList>

#include <vector>

namespace languages {

/// One trade word of translations/forms.txt.
struct TradeWord {
    QStringList english;              ///< the word and its forms, as whole words
    QMap<QString, QStringList> forms; ///< what stands for it, by the two letters of a language
    QRegularExpression whole;         ///< any of the English forms

    /// Whether a message of the source holds it.
    [[nodiscard]] bool in(const QString &source) const;
    /// Whether a translation holds one of its forms.
    [[nodiscard]] bool toldIn(const QString &told, const QString &language) const;
};

/// The lines of translations/forms.txt; a line that does not name all three languages comes with no forms.
[[nodiscard]] std::vector<TradeWord> tradeWordsOf(const QString &text);

/// One line of the table in translations/glossary.md: its seven cells.
[[nodiscard]] std::vector<QStringList> glossaryOf(const QString &page);

} // namespace languages
