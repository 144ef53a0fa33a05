// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The layout from the front, and from the back as it lies turned over; blocks change places before they are sewn. */
Item {
    id: root

    /** The place touched first. */
    property int picked: -1
    property string error

    function wrongIn(reply: var): string {
        return reply.ok ? "" : reply.says;
    }
    function pick(place: int) {
        if (picked >= 0 && picked !== place)
            error = wrongIn(JoinModel.swapPlaces(picked, place));
        picked = picked < 0 ? place : -1;
    }

    JoinMap {
        id: map
        width: parent.width
        height: parent.height - foot.height - Theme.gap
        columns: JoinModel.columns
        rows: JoinModel.rows
        blocks: JoinModel.blocks
        pickable: JoinModel.mayLay
        picked: root.picked
        accessibleName: qsTr("Layout of the blocks; next: %1").arg(JoinModel.title)
        onTouched: place => root.pick(place)
    }
    Column {
        id: foot
        anchors.bottom: parent.bottom
        width: parent.width
        spacing: Theme.gap
        Word {
            width: parent.width
            visible: text !== ""
            color: Theme.colors.stop
            text: root.error
        }
        InlineLength {
            width: parent.width
            // It keeps its place where the blocks are too small to be touched: whether they are hangs on the height
            // it leaves them, and must not hang on whether it is shown.
            visible: JoinModel.mayLay || JoinModel.swapSays !== ""
            opacity: map.canPick || JoinModel.swapSays !== "" ? 1 : 0
            text: JoinModel.swapSays !== "" ? JoinModel.swapSays
                  : root.picked < 0 ? qsTr("Touch two blocks to swap them; their labels stay with them.") : qsTr("Now the other one.")
        }
        Row {
            width: parent.width
            spacing: Theme.gapTargets
            CutButton {
                objectName: "swap"
                width: (parent.width - Theme.gapTargets) / 2
                height: Theme.targetLeast
                visible: JoinModel.swapSays !== ""
                text: qsTr("Swap them")
                onClicked: root.error = root.wrongIn(JoinModel.takeSwap())
            }
            CutButton {
                width: JoinModel.swapSays !== "" ? (parent.width - Theme.gapTargets) / 2 : parent.width
                height: Theme.targetLeast
                text: map.back ? qsTr("See the front") : qsTr("See the back")
                onClicked: map.back = !map.back
            }
        }
    }
}
