// SPDX-License-Identifier: MIT
#include "stage.h"

#include <QQmlEngine>
#include <QtQuickTest>

/// Gives each file a stage of its own before it is loaded.
class Setup : public QObject {
    Q_OBJECT

public slots:
    void qmlEngineAvailable(QQmlEngine *engine)
    {
        auto *stage = new Stage(engine);
        if (!stage->isSet())
            qFatal("no store for the tests");
        qmlRegisterSingletonInstance("Matside.Stage", 1, 0, "Stage", stage);
    }
};

QUICK_TEST_MAIN_WITH_SETUP(stations, Setup)

#include "main.moc"
