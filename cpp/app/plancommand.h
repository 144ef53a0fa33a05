// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QString>

namespace matside {

/// What `matside --plan` answers: the plan file for standard output, plain sentences for standard error,
/// and how it exits.
struct PlanAnswer {
    QByteArray file;
    QString sentences;
    int exit = 0; ///< 0 planned; 3 read, but cannot be made as it stands; 2 not readable
};

/// Plans the text of a project file.
[[nodiscard]] PlanAnswer planText(const QByteArray &json);

/// Reads a file ("-": standard input), plans it, and prints. Needs only a QCoreApplication, no translation.
[[nodiscard]] int runPlanCommand(const QString &path);

} // namespace matside
