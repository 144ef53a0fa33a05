// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** What the test join taught: the seam the plan goes by now, what that means, and the other way in one touch. */
Flickable {
    id: root

    property string error

    function wrongIn(reply: var): string {
        return reply.ok ? "" : reply.says;
    }

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: rows
        width: root.width
        spacing: Theme.gap

        InlineLength {
            width: parent.width
            bold: true
            cap: Theme.capHead
            text: JoinModel.testSays
        }
        InlineLength {
            width: parent.width
            text: JoinModel.mendSays
        }
        CutButton {
            objectName: "other-way"
            width: parent.width
            height: Theme.targetLeast
            visible: JoinModel.otherSays.length > 0
            text: JoinModel.otherSays
            onClicked: root.error = root.wrongIn(JoinModel.useOther())
        }
        Word {
            width: parent.width
            visible: text !== ""
            color: Theme.colors.stop
            text: root.error
        }
        Repeater {
            model: JoinModel.testLines
            Column {
                id: line
                required property string modelData
                width: rows.width
                spacing: Theme.mm(1.6)
                KeyLine { width: parent.width }
                InlineLength {
                    width: parent.width
                    text: line.modelData
                }
            }
        }
        Word {
            width: parent.width
            color: Theme.colors.inkSoft
            text: qsTr("The gap moves four times as fast as the seam.")
        }
    }
}
