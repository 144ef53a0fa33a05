// SPDX-License-Identifier: MIT
#pragma once

#include "sheet/sheet.h"

#include <QString>

namespace matside {

/// What `--sheet` came to: sentences for the error stream and the exit: 0 written, 3 the project cannot be
/// made as it stands and nothing was written, 2 not readable, or the sheet could not be written.
struct SheetAnswer {
    QString sentences;
    int exit = 0;
    int pages = 0;
};

/// Reads a project file and writes its sheet beside nothing else: the target is replaced whole or not at all.
[[nodiscard]] SheetAnswer sheetOf(const QString &project, const QString &target, SheetForm form);

/// Reads a project file and writes the drawings of its sheet to a folder as SVG; `pages` counts them.
[[nodiscard]] SheetAnswer diagramsOf(const QString &project, const QString &folder);

/// Writes the sheet of a project; what is wrong, in a sentence with its remedy, or nothing.
[[nodiscard]] QString saveSheet(const Project &project, const Plan &plan, const QString &target,
                                SheetForm form, int *pages = nullptr);

/// The sheet's paper by name ("a4", "letter", in any case); nothing for another.
[[nodiscard]] std::optional<PaperSize> paperNamed(const QString &name);
/// The form by name ("long", "short", "class", in any case) on A4; nothing for another.
[[nodiscard]] std::optional<SheetForm> formNamed(const QString &name);

} // namespace matside
