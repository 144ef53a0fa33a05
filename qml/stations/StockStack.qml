// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The cloths of the piece, folded and laid on each other; the one pinned and drawn out of the pile lies on the cutting table, where it is named. */
Item {
    id: root

    /** [{value, says, print, colour}] */
    property var cloths: []
    property var value
    property string accessibleName
    /** So high may a pile be; then there is another beside it. */
    property real room: 0

    signal chosen(var value)

    readonly property real each: Theme.mm(32)
    readonly property real deep: Math.max(Theme.control, Math.min(Theme.mm(16), Math.floor((room - board) / Math.max(1, perPile))))
    readonly property int perPile: Math.ceil(cloths.length / piles)
    readonly property int piles: Math.max(1, Math.ceil(cloths.length * Theme.control / Math.max(Theme.control, room - board)))
    readonly property real board: Theme.mm(2.6)

    implicitWidth: piles * each + (piles - 1) * Theme.gap
    width: implicitWidth
    implicitHeight: perPile * deep + board
    height: implicitHeight

    Accessible.role: Accessible.Grouping
    Accessible.name: accessibleName

    ClothFill {
        y: root.height - height
        width: parent.width
        height: root.board
        role: "table"
    }
    Repeater {
        model: root.cloths
        Pressable {
            id: cloth
            required property int index
            required property var modelData
            readonly property bool isChosen: modelData.value === root.value
            readonly property int pile: Math.floor(index / root.perPile)
            /** The last pile may be lower: it too lies on the board. */
            readonly property int missing: pile === root.piles - 1 ? root.perPile * root.piles - root.cloths.length : 0

            x: pile * (root.each + Theme.gap)
            y: (index % root.perPile + missing) * root.deep
            width: root.each
            height: root.deep
            inList: true
            accessibleName: modelData.says
            Accessible.role: Accessible.RadioButton
            Accessible.checkable: true
            Accessible.checked: isChosen
            onClicked: root.chosen(modelData.value)

            FoldedCloth {
                x: cloth.isChosen ? 0 : Theme.mm(4)
                width: parent.width - Theme.mm(4)
                height: parent.height
                clothRole: cloth.modelData.print ?? "front"
                colour: cloth.modelData.colour ?? ""
                layers: 2
                line: cloth.isChosen || cloth.pressed ? Theme.keyBold : Theme.mm(0.3) * Theme.colors.lineScale
            }
            PinSketch {
                objectName: "pin"
                visible: cloth.isChosen
                x: Theme.mm(5)
                y: (parent.height - height) / 2
            }
            FocusOutline { visible: cloth.keyboardFocus }
        }
    }
}
