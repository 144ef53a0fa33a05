// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/**
 * What is worth remembering of a block: the block as it comes off the hoop, a card for each thing to press, and a
 * tag tied to it for the words of whoever has a hand free.
 */
Item {
    id: root

    readonly property bool upright: height > width
    readonly property bool low: !upright && height < Theme.mm(124)
    readonly property real footHeight: low ? Theme.mm(14) : Theme.targetLeast
    readonly property int columns: upright ? 2 : 3
    readonly property int rows: upright ? 3 : 2
    /** The block itself lies first in the lowest row, above its tag. */
    readonly property int blockAt: (rows - 1) * columns
    readonly property real cellWidth: Math.floor((width - 2 * Theme.margin - (columns - 1) * Theme.gap) / columns)
    readonly property real cellHeight: Math.floor((tag.y + tag.rise - Theme.gap - cards.from - (rows - 1) * Theme.gap) / rows)

    signal closed()

    function columnX(cell: int): real {
        return Theme.margin + (cell % columns) * (cellWidth + Theme.gap);
    }
    function rowY(cell: int): real {
        return cards.from + Math.floor(cell / columns) * (cellHeight + Theme.gap);
    }

    onVisibleChanged: if (visible) words.text = BlockLog.words

    Rectangle {
        anchors.fill: parent
        color: Theme.colors.paper
    }
    Word {
        id: head
        x: Theme.margin
        y: Theme.mm(root.low ? 2 : 3)
        width: parent.width - 2 * Theme.margin
        cap: Theme.capHead
        bold: true
        text: qsTr("What to remember of block %1").arg(BlockLog.block)
    }
    FaceSketch {
        id: block
        x: root.columnX(root.blockAt)
        y: root.rowY(root.blockAt)
        width: root.cellWidth
        height: root.cellHeight
        view: HoopModel.view
    }
    Repeater {
        id: cards
        objectName: "flags"
        readonly property real from: head.y + head.height + Theme.mm(root.low ? 1.4 : 2.4)
        property real tallest: 0

        /** The height of the name with the most lines. */
        function measure() {
            let most = 0;
            for (let i = 0; i < count; ++i)
                most = Math.max(most, (itemAt(i) as FlagCard)?.nameHeight ?? 0);
            tallest = most;
        }
        model: BlockLog.flags.length
        delegate: FlagCard {
            required property int index
            readonly property var flag: BlockLog.flags[index] ?? null
            readonly property int cell: index < root.blockAt ? index : index + 1
            x: root.columnX(cell)
            y: root.rowY(cell)
            width: root.cellWidth
            height: root.cellHeight
            fault: flag?.code ?? ""
            says: flag?.says ?? ""
            chosen: flag?.chosen ?? false
            wordsHeight: cards.tallest
            onNameHeightChanged: cards.measure()
            onClicked: BlockLog.toggleFlag(fault)
        }
        onItemAdded: measure()
    }
    PaperTag {
        id: tag
        x: Theme.margin
        y: (root.upright ? close.y - Theme.gap : root.height - Theme.margin) - height
        width: root.upright ? parent.width - 2 * Theme.margin : 2 * root.cellWidth + Theme.gap
        height: rise + root.footHeight
        rise: Theme.mm(11)
        knotX: Math.max(eye, block.width / 2 - Theme.mm(13))
    }
    PlainField {
        id: words
        objectName: "words"
        x: tag.x + tag.written
        y: tag.y + tag.height - height - (root.footHeight - height) * 0.5
        width: tag.width - tag.written - Theme.margin
        maximumLength: 400
        placeholder: qsTr("Words, if you like")
        onTextChanged: BlockLog.words = text
    }
    CutButton {
        id: close
        objectName: "flagged"
        x: root.upright ? Theme.margin : root.columnX(root.columns - 1)
        y: parent.height - height - Theme.margin
        width: root.upright ? parent.width - 2 * Theme.margin : root.cellWidth
        height: root.footHeight
        kind: "action"
        text: qsTr("Back to the block")
        onClicked: root.closed()
    }
}
