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

    implicitHeight: size.height + steppers.height + Theme.gapTargets

    Row {
        id: size
        spacing: Theme.gap
        WorkedFigure {
            figure: FitModel.finishedAlong
            cap: Theme.capSecond
            width: Math.max(implicitWidth, Theme.targetLeast)
            showUnit: false
            onWorking: root.working("size.finished.along")
        }
        Word {
            cap: Theme.capThird
            text: "×"
        }
        WorkedFigure {
            figure: FitModel.finishedAcross
            cap: Theme.capSecond
            width: Math.max(implicitWidth, Theme.targetLeast)
            onWorking: root.working("size.finished.across")
        }
    }
    Row {
        id: steppers
        y: size.height + Theme.gapTargets
        width: parent.width
        spacing: Theme.gapTargets
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
