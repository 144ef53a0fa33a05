// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** Square corners or rounded ones: the arc over the blocks, the bias it takes, and what it cuts into. */
Flickable {
    id: root

    signal enter(string name, string title, string text)

    /** What is wrong with a typed radius, or nothing. */
    function take(name: string, text: string): string {
        return EdgeModel.enterRadius(text);
    }

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: rows
        width: root.width
        spacing: Theme.gap

        Row {
            width: parent.width
            spacing: Theme.gap
            visible: EdgeModel.cornersFixed.length === 0
            Repeater {
                model: [[false, qsTr("square")], [true, qsTr("rounded")]]
                CutButton {
                    required property var modelData
                    width: (rows.width - Theme.gap) / 2
                    height: Theme.targetLeast
                    bold: EdgeModel.rounded === modelData[0]
                    text: EdgeModel.rounded === modelData[0] ? qsTr("%1 now").arg(modelData[1]) : modelData[1]
                    onClicked: EdgeModel.setRounded(modelData[0])
                }
            }
        }
        Word {
            width: parent.width
            visible: EdgeModel.cornersFixed.length > 0
            text: EdgeModel.cornersFixed
        }
        EdgeDrawing {
            width: parent.width
            height: Theme.mm(56)
            view: EdgeModel.view
            phase: "last"
            cornerMm: Math.max(EdgeModel.view.radiusMm * 1.4, EdgeModel.view.outsideMm * 5, 60)
            accessibleName: EdgeModel.cornerSays.replace(/[{}]/g, "")
        }
        Stepper {
            id: stepper
            // Cut shapes wholly outside the clip are drawn all the same without a graphics card: Qt 6.4.2.
            opacity: y < root.contentY + root.height && y + height > root.contentY ? 1 : 0
            visible: EdgeModel.rounded && EdgeModel.cornersFixed.length === 0
            height: visible ? implicitHeight : 0
            width: parent.width
            label: qsTr("radius")
            figure: EdgeModel.radius
            onLess: EdgeModel.nudgeRadius(-1)
            onMore: EdgeModel.nudgeRadius(1)
            onAskKeypad: root.enter("radius", qsTr("Radius of the corners"), "")
        }
        InlineLength {
            width: parent.width
            text: EdgeModel.cornerSays
        }
        CautionLine {
            width: parent.width
            visible: text !== ""
            text: EdgeModel.biteSays.replace(/[{}]/g, "")
        }
    }
}
