// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The hoops she owns, each drawn over the block to one scale, with what the block leaves of its field; a touch takes one. */
WholeRows {
    id: root

    signal mended(int row)

    leastRow: Theme.mm(43)
    mostRow: Theme.mm(count < 2 ? 90 : 64)
    model: HoopShelf
    Component.onCompleted: show(Math.max(0, HoopShelf.current))
    delegate: Item {
        id: row
        required property int index
        required property string name
        required property string fitSays
        required property string takesSays
        required property string takesShort
        required property bool fits
        required property bool isCurrent
        required property var view
        required property var room
        readonly property bool known: room?.valid ?? false
        // "a scant {2 1/8 in}": a line may break between.
        readonly property string roomSays: known ? room.lean + " {" + room.text.replace(room.lean, "").trim() + "}" : ""

        width: root.width
        height: root.rowHeight

        DrawnCard {
            id: card
            readonly property bool narrow: innerWidth < Theme.mm(90)
            readonly property real below: narrow ? name.height + Theme.mm(1) : 0
            readonly property real drawn: Math.min(innerHeight - below, innerWidth * (narrow ? 0.3 : 0.46))
            readonly property real words: innerWidth - lead - drawn - Theme.mm(narrow ? 4 : 6)
            readonly property color tone: row.known && !row.fits && !pressed ? Theme.colors.stop : ink

            anchors.fill: parent
            chosen: row.isCurrent
            accessibleName: row.name
            accessibleDescription: (row.fitSays + " " + row.takesSays).replace(/[{}]/g, "")
            onClicked: HoopShelf.choose(row.index)

            HoopSketch {
                x: Theme.left ? card.innerWidth - width - card.lead : card.lead
                // Level with the words beside it.
                y: card.narrow ? card.below + Theme.mm(1) : card.below + (card.innerHeight - card.below - height) / 2
                width: card.drawn + Theme.mm(card.narrow ? 2.6 : 4)
                room: card.drawn
                height: card.drawn
                view: row.view
                largestMm: HoopShelf.largestMm
            }
            Word {
                id: name
                x: Theme.left ? 0 : card.innerWidth - width
                // Told without what hangs on its height.
                width: card.innerWidth - card.lead - (card.narrow ? 0 : Math.min(card.innerHeight, card.innerWidth * 0.46) + Theme.mm(6))
                horizontalAlignment: Theme.left && card.narrow ? Text.AlignRight : Text.AlignLeft
                bold: true
                color: card.ink
                text: row.name
                Accessible.ignored: true
            }
            Column {
                x: Theme.left ? 0 : card.innerWidth - width
                y: name.height + (card.narrow ? Theme.mm(1) : 0)
                width: card.words
                InlineLength {
                    width: parent.width
                    color: card.tone
                    text: !row.known ? row.fitSays
                        //: what the block leaves of the hoop's field
                        : row.fits ? qsTr("%1 to spare").arg(row.roomSays)
                        //: how much the block is over the hoop's field
                        : qsTr("%1 too large").arg(row.roomSays)
                    Accessible.ignored: true
                }
                Word {
                    width: parent.width
                    visible: text !== "" && parent.y + y + implicitHeight < card.innerHeight - measures.height
                    color: card.inkSoft
                    text: row.takesShort
                    Accessible.ignored: true
                }
            }
        }
        CutButton {
            id: measures
            x: Theme.left ? (card.width - card.innerWidth) / 2 : card.width - width - (card.width - card.innerWidth) / 2
            y: card.height - height - Theme.mm(2.2)
            width: card.words
            height: Math.max(Theme.control, contentHeight - Theme.mm(2))
            inList: true
            text: qsTr("Its measures")
            accessibleDescription: row.name
            onClicked: root.mended(row.index)
        }
    }
}
