// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** A cloth with a snip of its colour, or a ruler: its name, and what is said of it; a press opens it in its place. */
Pressable {
    id: root

    property string text
    property string said
    property string colour
    property bool cloth: false
    property bool open: false

    inList: true
    implicitHeight: Math.max(Theme.step, words.height + Theme.mm(2))
    accessibleName: text + ", " + said
    Accessible.role: Accessible.Button
    Accessible.checkable: true
    Accessible.checked: open

    readonly property color ink: pressed ? Theme.colors.raised : Theme.colors.ink

    Rectangle {
        anchors.fill: parent
        color: root.pressed ? Theme.colors.ink : Theme.colors.raised
    }
    SwatchPinked {
        id: snip
        visible: root.cloth
        anchors.verticalCenter: parent.verticalCenter
        colour: root.colour !== "" ? root.colour : Theme.colors.raised
    }
    Column {
        id: words
        x: root.cloth ? snip.width + Theme.gap : 0
        width: sign.x - x - Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        Word {
            width: parent.width
            bold: true
            color: root.ink
            text: root.text
            Accessible.ignored: true
        }
        Word {
            width: parent.width
            color: root.ink
            text: root.said
            Accessible.ignored: true
        }
    }
    CoverSign {
        id: sign
        x: parent.width - width
        anchors.verticalCenter: parent.verticalCenter
        open: root.open
        ink: root.ink
        ground: root.pressed ? Theme.colors.ink : Theme.colors.raised
    }
    FocusOutline { visible: root.keyboardFocus }
}
