// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** How the frame is cut to length, sewn on both faces and filled. */
Flickable {
    id: root

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: rows
        width: root.width
        spacing: Theme.gap

        Word {
            width: parent.width
            cap: Theme.capHead
            bold: true
            text: qsTr("The frame")
        }
        Repeater {
            model: EdgeModel.frameLines
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
        CautionLine {
            width: parent.width
            text: qsTr("Slow over the thick places; turn the wheel by hand. Pins out before the needle.")
        }
    }
}
