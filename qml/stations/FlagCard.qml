// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** Something to remember of a block: a card cut from cloth with a picture of it, pinned when it is chosen. */
Pressable {
    id: root

    property string fault
    property string says
    property bool chosen: false
    /** Its words take so much height; of all cards alike, so that their pictures are. */
    property real wordsHeight: nameHeight

    readonly property real nameHeight: word.implicitHeight
    readonly property bool solid: chosen !== pressed
    readonly property real side: Math.round(Theme.mm(1.4))

    accessibleName: says
    Accessible.role: Accessible.CheckBox
    Accessible.checkable: true
    Accessible.checked: chosen

    PinkedShape {
        id: card
        anchors.fill: parent
        fill: root.solid ? Theme.colors.ink : Theme.colors.raised
        strokeWidth: root.chosen ? Theme.keyBold : Theme.keyThin
    }
    FaultSketch {
        objectName: "sketch"
        x: root.side
        y: card.tooth + root.side
        width: parent.width - 2 * x
        height: Math.max(0, Math.floor(parent.height - y - root.wordsHeight - Theme.mm(0.6) - card.tooth))
        fault: root.fault
    }
    Word {
        id: word
        x: root.side
        y: root.height - card.tooth - Theme.mm(0.4) - (root.wordsHeight + implicitHeight) / 2
        width: parent.width - 2 * x
        horizontalAlignment: Text.AlignHCenter
        bold: true
        color: root.solid ? Theme.colors.raised : Theme.colors.ink
        text: root.says
        Accessible.ignored: true
    }
    PinSketch {
        objectName: "pin"
        visible: root.chosen
        width: Theme.mm(5.4)
        height: Theme.mm(11)
        anchors.horizontalCenter: parent.horizontalCenter
        y: -Theme.mm(1.4)
    }
    FocusOutline { visible: root.keyboardFocus }
}
