// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** One cloth of the piece: its letter on the scale, its own colour, its name and its step. Pressed it is given another. */
Pressable {
    id: root

    /** {id, letter, name, part, known, colour, step, says} */
    required property var modelData

    readonly property color ink: pressed ? Theme.colors.raised : Theme.colors.ink

    inList: true
    implicitHeight: Math.max(Theme.step, words.height + Theme.mm(3))
    height: implicitHeight
    accessibleName: modelData.name + ", " + modelData.says
    accessibleDescription: qsTr("gives the cloth its colour")

    Rectangle {
        anchors.fill: parent
        color: root.pressed ? Theme.colors.ink : Theme.colors.raised
    }
    KeyLine { width: parent.width }
    Word {
        id: letter
        x: Theme.margin
        width: Theme.mm(6.5)
        anchors.verticalCenter: parent.verticalCenter
        bold: true
        color: root.ink
        text: root.modelData.letter
        Accessible.ignored: true
    }
    SwatchPinked {
        id: snip
        visible: root.modelData.known
        x: letter.x + letter.width
        anchors.verticalCenter: parent.verticalCenter
        width: Theme.mm(10)
        height: Theme.mm(8)
        colour: root.modelData.known ? root.modelData.colour : Theme.colors.raised
    }
    Column {
        id: words
        x: snip.x + snip.width + Theme.gap
        width: step.x - x - Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        Word {
            width: parent.width
            bold: true
            color: root.ink
            text: root.modelData.name
            Accessible.ignored: true
        }
        Word {
            width: parent.width
            color: root.pressed ? Theme.colors.raised : Theme.colors.inkSoft
            text: root.modelData.part
            Accessible.ignored: true
        }
    }
    Word {
        id: step
        x: parent.width - width - Theme.margin
        width: Math.min(implicitWidth, root.width * 0.34)
        anchors.verticalCenter: parent.verticalCenter
        horizontalAlignment: Text.AlignRight
        color: root.ink
        // A low screen has room for the step alone, as it stands on the scale above.
        text: Theme.small && root.modelData.known ? root.modelData.step : root.modelData.says
        Accessible.ignored: true
    }
    FocusOutline { visible: root.keyboardFocus }
}
