// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * The finished size, large, down to its double rule, and the three values that are always at hand: with minus
 * and plus where the column is wide enough, else to be pressed for the keypad.
 */
Item {
    id: root

    signal working()
    signal ask(string pointer, string label, string kind, string text)

    implicitHeight: size.height + steppers.height + Theme.gap

    FinishedSize {
        id: size
        width: parent.width
        onClicked: root.working()
    }
    Row {
        id: steppers
        y: size.height + Theme.gap
        width: parent.width
        spacing: compact ? Theme.mm(2) : Math.max(Theme.gap, (width - 3 * full) / 2)
        readonly property real full: 2 * Theme.step + Theme.gap
        readonly property bool compact: width < 3 * full + 2 * Theme.gap
        readonly property real first: compact ? Math.min(Theme.mm(18), (width - 2 * spacing) / 3) : full
        /** What the two counts share, each by the width of its name. */
        readonly property real rest: width - 2 * spacing - first
        readonly property real second: compact ? across.nameWidth + (rest - across.nameWidth - down.nameWidth) / 2 : full
        readonly property real third: compact ? rest - second : full

        Tuner {
            width: steppers.first
            compact: steppers.compact
            label: qsTr("block")
            figure: FitModel.block
            onLess: FitModel.nudge("/blocks/width", -1)
            onMore: FitModel.nudge("/blocks/width", 1)
            onAskKeypad: root.ask("/blocks/width", label, "length", figure.text)
        }
        Tuner {
            id: across
            width: steppers.second
            compact: steppers.compact
            label: qsTr("columns")
            count: FitModel.drawing.columns
            canLess: FitModel.drawing.columns > 1
            onLess: FitModel.nudge("/blocks/columns", -1)
            onMore: FitModel.nudge("/blocks/columns", 1)
            onAskKeypad: root.ask("/blocks/columns", label, "count", figure.text)
        }
        Tuner {
            id: down
            width: steppers.third
            compact: steppers.compact
            label: qsTr("rows")
            count: FitModel.drawing.rows
            canLess: FitModel.drawing.rows > 1
            onLess: FitModel.nudge("/blocks/rows", -1)
            onMore: FitModel.nudge("/blocks/rows", 1)
            onAskKeypad: root.ask("/blocks/rows", label, "count", figure.text)
        }
    }
}
