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
        cellWidth: width > Theme.mm(120) ? width / 2 : width
        cellHeight: Theme.targetLeast
        y: head.y + head.height + Theme.gap
        width: parent.width
        height: words.y - y - Theme.gap
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: BlockLog.flags
        delegate: ChoiceRow {
            required property var modelData
            width: list.cellWidth
            height: list.cellHeight
            text: modelData.says
            chosen: modelData.chosen
            onClicked: BlockLog.toggleFlag(modelData.code)
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
