// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The strip in hand and what is sent to the machine for its blocks; the strips themselves, or what their gaps yield, are drawn beside. */
Flickable {
    id: root

    signal opened(string side)

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
            text: HoopModel.stripSays
        }
        SentPlate { width: parent.width }
        InlineLength {
            width: parent.width
            visible: HoopModel.overSays.length > 0
            color: Theme.colors.stop
            text: HoopModel.overSays
        }
        CutButton {
            width: parent.width
            height: Theme.targetLeast
            visible: HoopModel.drawUpSays.length > 0
            text: HoopModel.drawUpShort
            onClicked: root.opened("drawup")
        }
    }
}
