// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The list to take to the shop, by itself: big rows, a box to tick in each, and nothing else. */
Rectangle {
    id: root
    objectName: "take-list"

    signal closed()

    /** A hand's width of list, in the middle of a wide screen. */
    readonly property real column: Math.min(width, Theme.mm(150))

    color: Theme.colors.paper

    Word {
        id: head
        x: list.x + Theme.margin
        y: Theme.margin
        width: back.x - x - Theme.gap
        cap: Theme.capHead
        bold: true
        text: qsTr("To take")
    }
    Word {
        id: toFind
        anchors.left: head.left
        anchors.top: head.bottom
        width: head.width
        text: TakeModel.leftSays
    }
    CutButton {
        id: back
        x: list.x + list.width - width - Theme.margin
        y: Theme.margin
        //: puts the list to take away again
        text: qsTr("Back")
        onClicked: root.closed()
    }
    ListView {
        id: list
        x: (root.width - width) / 2
        y: Math.max(back.y + back.height, toFind.y + toFind.height) + Theme.gap
        width: root.column
        height: parent.height - y
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: TakeModel
        delegate: Pressable {
            id: row
            required property int index
            required property string says
            required property string detail
            required property string colour
            required property bool ticked

            width: ListView.view?.width ?? 0
            height: Math.max(Theme.target, words.height + Theme.mm(6))
            inList: true
            accessibleName: row.says.replace("{", "").replace("}", "")
            accessibleDescription: row.ticked ? qsTr("in the basket") : qsTr("not in the basket yet")
            Accessible.role: Accessible.CheckBox
            Accessible.checkable: true
            Accessible.checked: row.ticked
            onClicked: TakeModel.tick(row.index)

            KeyLine { width: parent.width }
            Rectangle {
                id: box
                x: Theme.left ? row.width - width - Theme.margin : Theme.margin
                anchors.verticalCenter: parent.verticalCenter
                width: Theme.mm(12)
                height: width
                color: row.ticked ? Theme.colors.ink : Theme.colors.raised
                border.color: Theme.colors.ink
                border.width: Theme.key
                Pictogram {
                    visible: row.ticked
                    anchors.centerIn: parent
                    name: "tick"
                    width: Theme.mm(9)
                    ink: Theme.colors.raised
                    ground: Theme.colors.ink
                }
            }
            Column {
                id: words
                x: Theme.left ? Theme.margin : box.x + box.width + Theme.margin
                anchors.verticalCenter: parent.verticalCenter
                width: row.width - box.width - 3 * Theme.margin
                spacing: Theme.mm(1)
                Row {
                    spacing: Theme.gap
                    SwatchPinked {
                        id: swatch
                        visible: row.colour !== ""
                        width: Theme.mm(11)
                        height: Theme.mm(8)
                        colour: row.colour !== "" ? row.colour : "transparent"
                    }
                    InlineLength {
                        width: words.width - (swatch.visible ? swatch.width + Theme.gap : 0)
                        bold: true
                        lengthCap: Theme.mm(8)
                        text: row.says
                    }
                }
                InlineLength {
                    width: parent.width
                    text: row.detail
                }
            }
            FocusOutline { visible: row.keyboardFocus }
        }
    }
    MoreBelow {
        over: list
        ground: Theme.colors.paper
    }
}
