// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** What is worth remembering of a block: one press each, and words for whoever has a hand free. */
Item {
    id: root

    signal closed()

    onVisibleChanged: if (visible) words.text = BlockLog.words

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
        text: qsTr("What to remember of block %1").arg(BlockLog.block)
    }
    GridView {
        id: list
        objectName: "flags"
        /** Beside each other as many as stay wide enough for two words on a line. */
        readonly property int across: Math.max(1, Math.floor(width / Theme.mm(46)))
        cellWidth: width / across
        cellHeight: Theme.mm(17) + Theme.gap
        x: Theme.margin
        y: head.y + head.height + Theme.margin
        width: parent.width - 2 * Theme.margin + Theme.gap
        height: words.y - y - Theme.gap
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: BlockLog.flags
        delegate: Item {
            id: cell
            required property var modelData
            width: list.cellWidth
            height: list.cellHeight
            CutButton {
                width: parent.width - Theme.gap
                height: parent.height - Theme.gap
                inList: true
                kind: cell.modelData.chosen ? "action" : "outline"
                cap: Theme.capWord
                text: cell.modelData.says
                Accessible.role: Accessible.CheckBox
                Accessible.checkable: true
                Accessible.checked: cell.modelData.chosen
                onClicked: BlockLog.toggleFlag(cell.modelData.code)
            }
        }
    }
    PlainField {
        id: words
        objectName: "words"
        x: Theme.margin
        y: close.y - height - Theme.gap
        width: parent.width - 2 * Theme.margin
        maximumLength: 400
        placeholder: qsTr("Words, if you like")
        onTextChanged: BlockLog.words = text
    }
    CutButton {
        id: close
        objectName: "flagged"
        x: Theme.margin
        y: parent.height - height - Theme.margin
        width: parent.width - 2 * Theme.margin
        height: Theme.target
        kind: "action"
        text: qsTr("Back to the block")
        onClicked: root.closed()
    }
}
