// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <QStringList>
#include <QVariantList>

#include <string_view>
#include <vector>

namespace matside {

/// One thing to do or to know, short enough to be read with full hands; lengths in braces.
struct Act {
    QString draws; ///< code of its vignette (qml/drawings/vignettes.js)
    QString says;
    QString minds = {};  ///< what can hurt here; empty where nothing does
    bool goesOn = false; ///< on paper it follows on the line of the one before
};
using Acts = std::vector<Act>;

/// An act by its code; `minds` is what mindsText() goes by.
[[nodiscard]] Act actOf(const char *draws, const QString &says, std::string_view minds = {},
                        bool goesOn = false);

/// The same in whole lines: what goes on stands on the line of the one before. What can hurt is not among
/// them, since on paper it stands with the step.
[[nodiscard]] QStringList linesOf(const Acts &acts);
/// All of it in one text, a line each, every caution behind its act.
[[nodiscard]] QString wholeOf(const Acts &acts);
/// {draws, says, minds} for QML.
[[nodiscard]] QVariantList listOf(const Acts &acts);
/// "ripper", or a caution of the steps: "blade", "iron", "needle"; nothing for an empty code.
[[nodiscard]] QString mindsText(std::string_view code);

} // namespace matside
