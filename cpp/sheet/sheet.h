// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"
#include "sheet/paper.h"

#include <QIODevice>

namespace matside {

struct SheetForm {
    PaperSize paper = PaperSize::A4;
    bool brief = false;    ///< the short form: one page
    bool forClass = false; ///< the class form: what all kits take, and a list for every student
};

/// Writes the sheet of a project that can be made (its plan has no problems) as a PDF in vectors, with the
/// lettering embedded. Gives the number of pages; 0 when the device takes no more.
[[nodiscard]] int writeSheet(QIODevice &to, const Project &project, const Plan &plan, SheetForm form);

} // namespace matside
