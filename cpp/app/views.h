// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace matside {

/// A figure as QML shows it: a length on the ruler's mark in parts for a stacked fraction, a count or a
/// share. `mm` is for drawings only.
struct FigureView {
    Q_GADGET
    QML_VALUE_TYPE(figureView)
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(bool minus MEMBER minus)
    Q_PROPERTY(QString whole MEMBER whole)
    Q_PROPERTY(QString num MEMBER num)
    Q_PROPERTY(QString den MEMBER den)
    Q_PROPERTY(QString unit MEMBER unit)
    Q_PROPERTY(QString lean MEMBER lean)
    Q_PROPERTY(QString text MEMBER text)
    Q_PROPERTY(double mm MEMBER mm)
    Q_PROPERTY(bool untried MEMBER untried)
    Q_PROPERTY(bool hasWorking MEMBER hasWorking)
    Q_PROPERTY(bool valid MEMBER valid)
public:
    QString key;
    bool minus = false;
    QString whole;
    QString num;
    QString den;
    QString unit;
    QString lean;
    QString text;
    double mm = 0;
    bool untried = false;
    bool hasWorking = false;
    bool valid = false;
    friend bool operator==(const FigureView &, const FigureView &) = default;
};

/// The piece on its table, to scale.
struct TableView {
    Q_GADGET
    QML_VALUE_TYPE(tableView)
    Q_PROPERTY(QString shape MEMBER shape)
    Q_PROPERTY(double tableAlongMm MEMBER tableAlongMm)
    Q_PROPERTY(double tableAcrossMm MEMBER tableAcrossMm)
    Q_PROPERTY(double leafMm MEMBER leafMm)
    Q_PROPERTY(double finishedAlongMm MEMBER finishedAlongMm)
    Q_PROPERTY(double finishedAcrossMm MEMBER finishedAcrossMm)
    Q_PROPERTY(int columns MEMBER columns)
    Q_PROPERTY(int rows MEMBER rows)
    Q_PROPERTY(double trimmedAlongMm MEMBER trimmedAlongMm)
    Q_PROPERTY(double trimmedAcrossMm MEMBER trimmedAcrossMm)
    Q_PROPERTY(double outlineAlongMm MEMBER outlineAlongMm)
    Q_PROPERTY(double outlineAcrossMm MEMBER outlineAcrossMm)
    Q_PROPERTY(double sashingMm MEMBER sashingMm)
    Q_PROPERTY(double edgeMm MEMBER edgeMm)
    Q_PROPERTY(matside::FigureView revealAlong MEMBER revealAlong)
    Q_PROPERTY(matside::FigureView revealAcross MEMBER revealAcross)
    Q_PROPERTY(matside::FigureView corner MEMBER corner)
    Q_PROPERTY(bool reversible MEMBER reversible)
public:
    QString shape = QStringLiteral("none");
    double tableAlongMm = 0;
    double tableAcrossMm = 0;
    double leafMm = 0; ///< the leaf in the table's middle; 0 while it is out
    double finishedAlongMm = 0;
    double finishedAcrossMm = 0;
    int columns = 0;
    int rows = 0;
    double trimmedAlongMm = 0;
    double trimmedAcrossMm = 0;
    double outlineAlongMm = 0;
    double outlineAcrossMm = 0;
    double sashingMm = 0;
    double edgeMm = 0;
    FigureView revealAlong;
    FigureView revealAcross;
    FigureView corner;
    bool reversible = true;
    friend bool operator==(const TableView &, const TableView &) = default;
};

/// Where the ruler lies, in inches, for drawing only.
struct RulerView {
    Q_GADGET
    QML_VALUE_TYPE(rulerView)
    Q_PROPERTY(bool show MEMBER show)
    Q_PROPERTY(int layers MEMBER layers)
    Q_PROPERTY(QString firstName MEMBER firstName)
    Q_PROPERTY(double firstLengthIn MEMBER firstLengthIn)
    Q_PROPERTY(double firstWidthIn MEMBER firstWidthIn)
    Q_PROPERTY(double lineIn MEMBER lineIn)
    Q_PROPERTY(matside::FigureView lineFigure MEMBER lineFigure)
    Q_PROPERTY(QString on MEMBER on)
    Q_PROPERTY(QString secondName MEMBER secondName)
    Q_PROPERTY(double secondLengthIn MEMBER secondLengthIn)
    Q_PROPERTY(double secondWidthIn MEMBER secondWidthIn)
    Q_PROPERTY(matside::FigureView secondFigure MEMBER secondFigure)
    Q_PROPERTY(double keepIn MEMBER keepIn)
    Q_PROPERTY(double cutLengthIn MEMBER cutLengthIn)
    Q_PROPERTY(double clothLengthIn MEMBER clothLengthIn)
    Q_PROPERTY(QString fence MEMBER fence)
    Q_PROPERTY(bool along MEMBER along)
public:
    bool show = false;
    bool along = false; ///< the cut runs beside the selvage: a fold lies across the cloth
    int layers = 1;
    QString firstName;
    double firstLengthIn = 0;
    double firstWidthIn = 0;
    double lineIn = 0;
    FigureView lineFigure;
    QString on;
    QString secondName;
    double secondLengthIn = 0;
    double secondWidthIn = 0;
    FigureView secondFigure;
    double keepIn = 0;
    double cutLengthIn = 0;
    double clothLengthIn = 0;
    QString fence;
};

} // namespace matside
