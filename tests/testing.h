// SPDX-License-Identifier: MIT
// What the tests draw in of Qt: a third of the time of <QtTest>, which brings the whole of QtCore.
#pragma once

#include <QAbstractItemModelTester>
#include <QDir>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QFile>
#include <QFloat16>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLocale>
#include <QPointer>
#include <QProcess>
#include <QRegularExpression>
#include <QSemaphore>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
