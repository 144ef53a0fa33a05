// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme

/** The plate on a tape with the figure read there; a touch takes that tape in hand. */
Pressable {
    id: root

    /** {says, figure} */
    property var reading: null
    property bool inHand: false
    /** Nobody read it yet: the figure is only the planned one, with a question mark and no plate of its own. */
    property bool unread: false
    /** Where plates stand close the dots alone say that: no question mark. */
    property bool brief: false
    /** The likeliest misread: it carries the warning sign. */
    property bool doubted: false

    readonly property bool solid: inHand !== pressed
    readonly property color lettering: solid ? Theme.colors.raised : unread ? Theme.colors.inkSoft : Theme.colors.ink

    implicitWidth: Math.max(Theme.step, row.width + Theme.mm(3))
    width: implicitWidth
    height: Theme.step
    accessibleName: (reading?.says ?? "") + " " + (reading?.figure?.text ?? "")
    //: of a reading of a block
    accessibleDescription: doubted ? qsTr("measure this one again first") : unread ? qsTr("not yet read") : ""
    Accessible.role: Accessible.RadioButton
    Accessible.checkable: true
    Accessible.checked: inHand

    Rectangle {
        id: plate
        anchors.centerIn: parent
        width: parent.width
        height: Math.min(parent.height, row.height + Theme.mm(2.4))
        color: root.solid ? Theme.colors.ink : root.unread ? Theme.colors.paper : Theme.colors.raised
        border.color: root.doubted && !root.solid ? Theme.colors.caution : Theme.colors.ink
        border.width: root.doubted ? Theme.keyBold : root.unread && !root.solid ? 0 : Theme.key
    }
    component Dots: DotLine {
        visible: root.unread && !root.solid
        x: plate.x
        width: plate.width
        height: dot
        dot: Theme.mm(0.7)
        step: Theme.mm(1.6)
        color: Theme.colors.ink
    }
    Dots { y: plate.y }
    Dots { y: plate.y + plate.height - dot }
    Row {
        id: row
        anchors.centerIn: parent
        height: length.implicitHeight
        spacing: Theme.mm(1)

        Pictogram {
            visible: root.doubted
            anchors.verticalCenter: parent.verticalCenter
            name: "warning"
            width: Theme.mm(6)
            ink: root.solid ? Theme.colors.raised : Theme.colors.caution
            ground: root.solid ? Theme.colors.ink : Theme.colors.raised
        }
        FigureText {
            id: length
            width: implicitWidth
            height: implicitHeight
            figure: root.reading?.figure ?? null
            cap: Theme.mm(root.inHand ? 6 : 5)
            color: root.lettering
            showUnit: false
            showLean: false
            accessibleIgnored: true
        }
        Word {
            visible: root.unread && !root.brief
            anchors.verticalCenter: parent.verticalCenter
            bold: true
            cap: length.cap
            text: "?"
            color: root.lettering
            Accessible.ignored: true
        }
    }
    FocusOutline { visible: root.keyboardFocus }
}
