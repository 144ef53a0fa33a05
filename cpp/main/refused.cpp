// SPDX-License-Identifier: MIT
#include "main/refused.h"

#include "app/sharing.h"
#include "app/workspace.h"
#include "share/backup.h"

#include <QGuiApplication>
#include <QQmlApplicationEngine>

#include <cstdio>

namespace matside {

namespace {

constexpr int again = 2; // as Refused.qml ends

bool triedAgain(const QString &says, double pxPerMm)
{
    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral(":/qt/qml"));
    engine.setInitialProperties(
        {{QStringLiteral("says"), says}, {QStringLiteral("pxPerMm"), pxPerMm > 0 ? pxPerMm : 5.87}});
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Matside/Stations/Refused.qml")));
    return !engine.rootObjects().isEmpty() && QGuiApplication::exec() == again;
}

} // namespace

std::unique_ptr<Store> openedOrSaid(const QString &dir, bool inWindow, double pxPerMm)
{
    for (;;) {
        QString says;
        if (const auto restored = finishRestoring(dir); !restored) {
            says = shareSentence(restored.error());
        } else {
            auto store = openStore(dir);
            if (store)
                return std::move(store).value();
            says = storeSentence(store.error());
        }
        std::fprintf(stderr, "%s\n", qPrintable(says));
        if (!inWindow || !triedAgain(says, pxPerMm))
            return nullptr;
    }
}

} // namespace matside
