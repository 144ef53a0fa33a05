// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** What was noted of one block and of those it took the place of, the newest first. */
Item {
    id: root

    property string block
    readonly property var notes: block !== "" ? Gallery.history(block) : []

    signal closed()

    Rectangle {
        anchors.fill: parent
        color: Theme.colors.paper
    }
    NotebookSheet {
        id: leaf
        x: Theme.gap
        y: Theme.gap
        width: parent.width - 2 * Theme.gap
        height: close.y - 2 * Theme.gap
    }
    Word {
        id: head
        x: leaf.x + (Theme.left ? Theme.margin : leaf.seam)
        y: leaf.y + Theme.mm(4)
        width: leaf.width - leaf.seam - Theme.margin
        cap: Theme.capHead
        bold: true
        text: root.notes.length > 0 ? qsTr("Block %1").arg(root.block) : qsTr("Nothing is noted of block %1 yet").arg(root.block)
    }
    ListView {
        id: list
        x: head.x
        y: head.y + head.height + Theme.gap
        width: head.width
        height: leaf.y + leaf.height - y - Theme.mm(4)
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        spacing: Theme.gap
        model: root.notes
        delegate: NoteEntry {
            id: entry
            width: list.width
            seen: list.height
            //: %1 is a block's name, %2 its measured size
            sizeSays: qsTr("%1: %2").arg(entry.modelData.block).arg(entry.modelData.sizeSays)
            frontSays: qsTr("Front")
            backSays: qsTr("Back face")
        }
    }
    CutButton {
        id: close
        x: Theme.margin
        y: parent.height - height - Theme.margin
        width: parent.width - 2 * Theme.margin
        height: Theme.targetLeast
        kind: "action"
        text: qsTr("Back to the gallery")
        onClicked: root.closed()
    }
}
