// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
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
        color: Theme.colors.raised
    }
    Word {
        id: head
        x: Theme.margin
        y: Theme.margin
        width: parent.width - 2 * Theme.margin
        cap: Theme.capHead
        bold: true
        text: root.notes.length > 0 ? qsTr("Block %1").arg(root.block) : qsTr("Nothing is noted of block %1 yet").arg(root.block)
    }
    ListView {
        id: list
        x: Theme.margin
        y: head.y + head.height + Theme.gap
        width: parent.width - 2 * Theme.margin
        height: close.y - y - Theme.gap
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        spacing: Theme.gap
        model: root.notes
        delegate: Column {
            id: note
            required property var modelData
            width: list.width
            spacing: Theme.mm(1.5)
            KeyLine { width: parent.width }
            InlineLength {
                width: parent.width
                //: %1 is a block's name, %2 its measured size
                text: qsTr("%1: %2").arg(note.modelData.block).arg(note.modelData.sizeSays)
            }
            Word {
                visible: text !== ""
                width: parent.width
                color: Theme.colors.caution
                text: note.modelData.flagsSays
            }
            Word {
                visible: text !== ""
                width: parent.width
                text: note.modelData.words
            }
            Row {
                spacing: Theme.gap
                Repeater {
                    model: [note.modelData.front, note.modelData.back].filter(address => address.toString() !== "")
                    Image {
                        required property url modelData
                        width: (list.width - Theme.gap) / 2
                        height: Theme.mm(60)
                        source: modelData
                        sourceSize.width: width
                        asynchronous: true
                        autoTransform: true
                        cache: false
                        fillMode: Image.PreserveAspectFit
                    }
                }
            }
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
