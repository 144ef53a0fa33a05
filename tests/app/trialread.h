// SPDX-License-Identifier: MIT
#pragma once

#include "app/stepmodel.h"

#include <QMap>

/// Reads all of a trial of this kind, typed where it is told and else just as it is shown, and takes it: what
/// taking it says. The first fault of a typed reading instead.
inline QVariantMap readTrial(matside::StepModel &steps, matside::Session &session,
                             const matside::Workspace &workspace, const QString &kind,
                             const QMap<QString, QString> &typed = {})
{
    using namespace matside;
    for (const Step &step : workspace.steps())
        if (QString::fromStdString(nameOf(step.does)) == kind)
            session.setStation(static_cast<int>(step.station));
    for (int row = 0; steps.trialKind() != kind && row < steps.steps()->count(); ++row)
        steps.goTo(row);
    const QVariantList fields = steps.trialFields();
    for (int at = 0; at < fields.size(); ++at) {
        const QString text = typed.value(fields.at(at).toMap().value(QStringLiteral("name")).toString());
        const QString wrong = text.isEmpty() ? QString() : steps.typeTrial(at, text);
        if (!wrong.isEmpty())
            return {{QStringLiteral("ok"), false}, {QStringLiteral("says"), wrong}};
        if (text.isEmpty())
            steps.nudgeTrial(at, 0);
    }
    return steps.takeTrial();
}
