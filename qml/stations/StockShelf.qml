// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The cloth she has, folded on its shelf, each piece with its size under it; a piece is pressed to take it away. An empty shelf says what it is for. */
Column {
    id: root

    readonly property int count: StockModel.pieces.length
    readonly property int across: Math.max(1, Math.min(6, Math.floor(width / Theme.mm(36))))
    readonly property real each: Math.floor(width / across)
    readonly property real folded: Theme.mm(Theme.small ? 11 : 13)
    readonly property real board: Theme.mm(2.6)

    /** Beside few pieces there is room for the words on the shelf. */
    readonly property bool aside: count > 0 && (across - count) * each > Theme.mm(60)

    spacing: Theme.mm(1)

    Word {
        id: hint
        visible: root.count > 0 && !root.aside
        width: parent.width
        text: qsTr("These are cut up first. Press one to take it away.")
    }
    Repeater {
        model: Math.max(1, Math.ceil(root.count / root.across))
        Item {
            id: shelf
            required property int index
            /** From its top to the board. */
            readonly property real over: Math.max(root.folded, root.count === 0 ? empty.implicitHeight : root.aside ? inside.implicitHeight + Theme.mm(0.6) : 0)
            readonly property real figures: Math.max(Theme.mm(8), measured.deepest)
            width: root.width
            height: over + root.board + (root.count > 0 ? figures : 0)

            ClothFill {
                id: board
                y: shelf.over
                width: parent.width
                height: root.board
                role: "table"
            }
            FoldedCloth {
                visible: root.count === 0
                x: Theme.mm(4)
                y: board.y - height
                width: Theme.mm(24)
                height: root.folded - Theme.mm(2)
                planned: true
            }
            Word {
                id: inside
                visible: root.aside
                x: root.count * root.each + Theme.gap
                y: board.y - implicitHeight - Theme.mm(0.6)
                width: parent.width - x
                text: hint.text
            }
            Word {
                id: empty
                visible: root.count === 0
                x: Theme.mm(32)
                y: board.y - implicitHeight
                width: parent.width - x
                text: qsTr("What you have is cut up before anything is bought. Measure it without its selvages.")
            }
            Row {
                id: measured
                property real deepest: 0
                Repeater {
                    model: Math.min(root.across, Math.max(0, root.count - shelf.index * root.across))
                    Pressable {
                        id: owned
                        required property int index
                        readonly property int piece: shelf.index * root.across + index
                        readonly property var drawn: StockModel.drawn[piece] ?? null
                        width: root.each
                        height: shelf.height
                        inList: true
                        //: spoken name of a piece of cloth in the list: pressing it takes it away
                        accessibleName: qsTr("take away: %1").arg(StockModel.pieces[piece] ?? "")
                        onClicked: StockModel.takeAway(piece)
                        FoldedCloth {
                            // The longer of them the wider, down to half.
                            readonly property real share: 0.5 + 0.5 * (owned.drawn?.lengthMm ?? 0) / Math.max(1, StockModel.mostLengthMm)
                            x: (parent.width - width) / 2
                            y: shelf.over - height
                            width: Math.round((parent.width - Theme.mm(4)) * share)
                            height: root.folded - Theme.mm(1)
                            layers: 3
                            clothRole: owned.drawn?.print ?? "front"
                            colour: owned.drawn?.colour ?? ""
                        }
                        InlineLength {
                            y: shelf.over + root.board + Theme.mm(0.6)
                            width: parent.width
                            horizontalAlignment: Text.AlignHCenter
                            lengthCap: Theme.capWord
                            color: owned.pressed ? Theme.colors.accent : Theme.colors.ink
                            text: StockModel.figures[owned.piece] ?? ""
                            Accessible.ignored: true
                            onImplicitHeightChanged: measured.deepest = Math.max(measured.deepest, implicitHeight + Theme.mm(1))
                        }
                        FocusOutline { visible: owned.keyboardFocus }
                    }
                }
            }
        }
    }
}
