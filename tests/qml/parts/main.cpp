// SPDX-License-Identifier: MIT
#include "hands.h"

#include <QQmlEngine>
#include <QtQuickTest>

/// Gives the tests their hands before the first file is loaded.
class Setup : public QObject {
    Q_OBJECT

public slots:
    void qmlEngineAvailable(QQmlEngine *engine)
    {
        qmlRegisterSingletonInstance("Matside.Hands", 1, 0, "Hands", new Hands(engine));
    }
};

QUICK_TEST_MAIN_WITH_SETUP(parts, Setup)

#include "main.moc"
