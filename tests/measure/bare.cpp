// SPDX-License-Identifier: MIT
//
// matside-bare: a Qt Quick window with nothing in it, to hold the start and the memory of the program
// against.
#include <QGuiApplication>
#include <QQmlApplicationEngine>

int main(int argc, char **argv)
{
    const QGuiApplication app(argc, argv);
    QQmlApplicationEngine engine;
    engine.loadData("import QtQuick\nWindow { width: 1280; height: 800; visible: true }");
    return engine.rootObjects().isEmpty() ? 1 : QGuiApplication::exec();
}
