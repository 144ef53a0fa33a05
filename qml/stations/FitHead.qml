// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The finished size, large, and the three steppers that are always at hand. */
Item {
    id: root

    signal working(string key)
    signal ask(string pointer, string label, string kind, string text)

    implicitHeight: size.height + steppers.height + Theme.gap

    Row {
        id: size
        spacing: Theme.gap
        WorkedFigure {
            figure: FitModel.finishedAlong
            cap: Theme.capSecond * 0.85
            width: Math.max(number.implicitWidth, Theme.mm(34))
            showUnit: false
            onWorking: root.working("size.finished.along")

            FigureText {
                id: number
                visible: false
                figure: FitModel.finishedAlong
                cap: Theme.capSecond * 0.85
                showUnit: false
                accessibleIgnored: true
            }
        }
        Word {
            cap: Theme.capThird * 0.8
            topPadding: Theme.mm(2)
            text: "×"
        }
        WorkedFigure {
            figure: FitModel.finishedAcross
            cap: Theme.capSecond * 0.85
            width: Math.max(other.implicitWidth, Theme.mm(42))
            onWorking: root.working("size.finished.across")

            FigureText {
                id: other
                visible: false
                figure: FitModel.finishedAcross
                cap: Theme.capSecond * 0.85
                accessibleIgnored: true
            }
        }
    }
    Row {
        id: steppers
        y: size.height + Theme.gap
        width: parent.width
        spacing: Theme.gap
        readonly property real each: (width - 2 * spacing) / 3

        Stepper {
            width: steppers.each
            label: qsTr("block")
            figure: FitModel.block
            onLess: FitModel.nudge("/blocks/width", -1)
            onMore: FitModel.nudge("/blocks/width", 1)
            onAskKeypad: root.ask("/blocks/width", label, "length", FitModel.block.text)
        }
        Stepper {
            width: steppers.each
            label: qsTr("columns")
            valueText: FitModel.drawing.columns
            canLess: FitModel.drawing.columns > 1
            onLess: FitModel.nudge("/blocks/columns", -1)
            onMore: FitModel.nudge("/blocks/columns", 1)
            onAskKeypad: root.ask("/blocks/columns", label, "count", valueText)
        }
        Stepper {
            width: steppers.each
            label: qsTr("rows")
            valueText: FitModel.drawing.rows
            canLess: FitModel.drawing.rows > 1
            onLess: FitModel.nudge("/blocks/rows", -1)
            onMore: FitModel.nudge("/blocks/rows", 1)
            onAskKeypad: root.ask("/blocks/rows", label, "count", valueText)
        }
    }
}
