// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/**
 * What stands in the way, said in full above the groups. A caution stops nothing: it takes two lines at most
 * until it is pressed, and the groups keep their place.
 */
Item {
    id: root

    required property int index
    required property string at
    required property string says
    required property bool caution
    required property var offers

    property bool open: false

    signal turned()

    readonly property real textX: mark.x + mark.width + Theme.gap

    implicitHeight: caution ? (open ? head.height + row.implicitHeight : head.height) : row.implicitHeight
    height: implicitHeight

    Pressable {
        id: head
        visible: root.caution
        width: parent.width
        height: Math.max(Theme.step, line.height + Theme.mm(1))
        inList: true
        accessibleName: root.says
        Accessible.role: Accessible.Button
        Accessible.checkable: true
        Accessible.checked: root.open
        onClicked: root.turned()

        Rectangle {
            anchors.fill: parent
            color: head.pressed ? Theme.colors.ink : Theme.colors.raised
        }
        KeyLine {
            width: parent.width
        }
        Pictogram {
            id: mark
            x: Theme.margin
            anchors.verticalCenter: parent.verticalCenter
            name: "warning"
            width: Theme.mm(6)
            ink: line.color
            ground: Theme.colors.raised
        }
        Word {
            id: line
            /** No more than the beginning of what a press shows whole. */
            readonly property bool preview: !root.open
            x: root.textX
            anchors.verticalCenter: parent.verticalCenter
            width: sign.x - x - Theme.gap
            bold: true
            maximumLineCount: 2
            elide: Text.ElideRight
            color: head.pressed ? Theme.colors.raised : Theme.colors.caution
            //: the head of a line that warns of something but stops nothing
            text: root.open ? qsTr("Look at this") : root.says
            Accessible.ignored: true
        }
        CoverSign {
            id: sign
            x: parent.width - width - Theme.margin
            anchors.verticalCenter: parent.verticalCenter
            open: root.open
            ink: line.color
            ground: head.pressed ? Theme.colors.ink : Theme.colors.raised
        }
        FocusOutline { visible: head.keyboardFocus }
    }
    ProblemRow {
        id: row
        visible: !root.caution || root.open
        x: Theme.margin
        y: root.caution ? head.height : 0
        width: parent.width - 2 * x
        index: root.index
        at: root.at
        says: root.says
        caution: root.caution
        offers: root.offers
    }
}
