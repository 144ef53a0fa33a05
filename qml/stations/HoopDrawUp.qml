// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The draw-up of the first blocks, drawn beside: it can be taken for those to come, and what is sent then follows. */
Flickable {
    id: root

    readonly property bool offered: HoopModel.drawUpSays.length > 0
    readonly property bool wanting: offered

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds
    interactive: contentHeight > height

    Column {
        id: rows
        width: root.width
        spacing: Theme.gap

        Word {
            width: parent.width
            cap: Theme.capHead
            bold: true
            //: draw-up: how much the stitching shrinks the block
            text: qsTr("Draw-up")
        }
        CutButton {
            width: parent.width
            height: Theme.targetLeast
            kind: "action"
            cap: Theme.capHead
            visible: root.offered
            text: qsTr("Take it for the blocks to come")
            accessibleDescription: HoopModel.drawUpSays
            onClicked: HoopModel.takeDrawUp()
        }
        Word {
            width: parent.width
            visible: !root.offered
            text: qsTr("Taken for the blocks to come.")
        }
        SentPlate {
            // What was sent until now is not what follows.
            visible: !root.offered
            width: parent.width
        }
    }
}
