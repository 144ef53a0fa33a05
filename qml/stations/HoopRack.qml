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
    delegate: DrawnCard {
        id: card
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
        readonly property bool narrow: innerWidth < Theme.mm(90)
        readonly property real drawn: Math.min(innerHeight, innerWidth * (narrow ? 0.38 : 0.46))
        readonly property real words: innerWidth - lead - drawn - Theme.mm(6)

        width: root.width
        height: root.rowHeight
        chosen: isCurrent
        accessibleName: name
        accessibleDescription: (fitSays + " " + takesSays).replace(/[{}]/g, "")
        onClicked: HoopShelf.choose(index)

        HoopSketch {
            id: sketch
            x: Theme.left ? card.innerWidth - width - card.lead : card.lead
            y: (card.innerHeight - height) / 2
            width: card.drawn + Theme.mm(4)
            room: card.drawn
            height: card.drawn
            view: card.view
            largestMm: HoopShelf.largestMm
        }
        Column {
            id: says
            x: Theme.left ? 0 : card.innerWidth - width
            width: card.words
            Word {
                width: parent.width
                bold: true
                color: card.ink
                text: card.name
                Accessible.ignored: true
            }
            InlineLength {
                width: parent.width
                color: card.known && !card.fits && !card.pressed ? Theme.colors.stop : card.ink
                lengthColor: color
                text: !card.known ? card.fitSays
                    //: what the block leaves of the hoop's field
                    : card.fits ? qsTr("%1 to spare").arg(card.roomSays)
                    //: how much the block is over the hoop's field
                    : qsTr("%1 too large").arg(card.roomSays)
                Accessible.ignored: true
            }
            Word {
                width: parent.width
                visible: text !== "" && says.y + y + 2 * Theme.capWord < measures.y
                color: card.inkSoft
                text: card.takesShort
                Accessible.ignored: true
            }
        }
        CutButton {
            id: measures
            x: says.x
            y: card.innerHeight - height
            width: card.words
            height: Theme.control
            inList: true
            text: qsTr("Its measures")
            accessibleDescription: card.name
            onClicked: root.mended(card.index)
        }
    }
}
