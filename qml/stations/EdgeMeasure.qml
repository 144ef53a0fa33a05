// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The piece's four sides and two diagonals, each stepped or typed and kept at once, with what they say. */
Flickable {
    id: root

    signal enter(string name, string title, string text)

    /** What is wrong with a typed reading, or nothing. */
    function take(name: string, text: string): string {
        return EdgeModel.enter(parseInt(name), text);
    }

    /** Cut shapes that lie wholly outside the clip are drawn all the same without a graphics card: Qt 6.4.2. */
    function inSight(item: Item): bool {
        return item.y < contentY + height && item.y + item.height > contentY;
    }

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: rows
        width: root.width
        spacing: Theme.gap

        Word {
            width: parent.width
            visible: !EdgeModel.measured
            cap: Theme.capHead
            bold: true
            text: qsTr("Measure all six, raw edge to raw edge.")
        }
        InlineLength {
            width: parent.width
            visible: EdgeModel.measured
            bold: true
            cap: Theme.capHead
            text: EdgeModel.verdict
        }
        InlineLength {
            width: parent.width
            visible: EdgeModel.measured
            text: EdgeModel.remedy
        }
        InlineLength {
            width: parent.width
            visible: text !== ""
            text: EdgeModel.roundSays
        }
        KeyLine { width: parent.width }
        Repeater {
            model: 6
            Stepper {
                id: stepper
                required property int index
                readonly property var reading: EdgeModel.readings[index]
                width: rows.width
                opacity: root.inSight(stepper) ? 1 : 0
                label: reading.says
                figure: reading.figure
                onLess: EdgeModel.nudge(index, -1)
                onMore: EdgeModel.nudge(index, 1)
                onAskKeypad: root.enter(String(index), reading.says, spokenValue)
            }
        }
        Word {
            width: parent.width
            color: Theme.colors.inkSoft
            text: qsTr("What you do not change stands as planned. The limits are common practice; no published ones are known.")
        }
    }
}
