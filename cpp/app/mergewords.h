// SPDX-License-Identifier: MIT
#pragma once

#include "project/merge.h"
#include "project/project.h"

#include <QString>
#include <QStringList>

namespace matside {

/// What a merge is about and between which values, in words: "seam", "Block A1, as measured".
[[nodiscard]] QString mergeLabel(const std::string &at, const Project &project);
/// A value of the project file as JSON, in words; empty: nothing is told there.
[[nodiscard]] QString mergeValue(const std::string &json, Marks marks);
/// What comes from the other tablet, a line each; `notes` and `photographs` that are not here yet.
[[nodiscard]] QStringList mergeLines(const Merged &merged, const Project &project, qint64 notes,
                                     qint64 photographs);
/// Why it cannot be put together, by the code of mergeProjects().
[[nodiscard]] QString mergeRefusal(const std::string &code);

} // namespace matside
