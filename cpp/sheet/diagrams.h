// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"

#include <QIODevice>
#include <QString>
#include <QStringList>

namespace matside {

/// The drawings of a sheet by name: "piece", "strip", "strip-drawn-in", "trim", "map-front", "map-back",
/// "match-marks", "binding", "gauge". Those a project has no need of are left out.
[[nodiscard]] QStringList diagramsFor(const Project &project, const Plan &plan);

/// Writes one of them as SVG, drawn by the code of the printed sheet, in millimetres at its size on paper:
/// the gauge is at true size. Words stay words, in the lettering of the program where it is installed. False
/// when there is no such drawing or the device takes no more.
[[nodiscard]] bool writeDiagram(QIODevice &to, const QString &name, const Project &project, const Plan &plan);

/// Writes all of them to a folder, which is made, as NAME.svg; each file is replaced whole or not at all.
/// What is wrong, in a sentence with its remedy, or nothing.
[[nodiscard]] QString saveDiagrams(const Project &project, const Plan &plan, const QString &folder);

} // namespace matside
