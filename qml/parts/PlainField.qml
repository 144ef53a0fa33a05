// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts // for Fingertip, which an implicit import does not bring
import Matside.Theme

/** A line to write a name on: large letters on a rule. Works with any keyboard of the system. */
FocusScope {
    id: root

    property alias text: input.text
    property alias maximumLength: input.maximumLength
    property string placeholder
    property string accessibleName: placeholder

    signal accepted(string text)

    function clear() {
        input.clear();
    }

    implicitWidth: Theme.mm(60)
    implicitHeight: Math.max(Theme.step, input.implicitHeight + Theme.mm(3))

    Fingertip {
        anchors.fill: parent
        // Over the letters until they are written on: they would set the mark among them at the first touch.
        z: input.activeFocus ? 0 : 1
        pushed: true
        onStruck: {
            // The first touch takes the whole name, to be written over; the next one sets the mark.
            const fresh = !input.activeFocus;
            input.forceActiveFocus(Qt.MouseFocusReason);
            if (fresh)
                input.selectAll();
        }
    }
    TextInput {
        id: input
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        focus: true
        activeFocusOnTab: true
        clip: true
        color: Theme.colors.ink
        selectionColor: Theme.colors.action
        selectedTextColor: Theme.colors.actionInk
        font.family: Theme.family
        font.bold: true
        font.pixelSize: Theme.fontSize(Theme.capHead)
        maximumLength: 80
        onAccepted: root.accepted(text)
        onActiveFocusChanged: {
            if (activeFocus)
                selectAll();
        }

        Accessible.role: Accessible.EditableText
        Accessible.name: root.accessibleName

        Word {
            visible: input.text === "" && !input.inputMethodComposing
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width
            wrapMode: Text.NoWrap
            text: root.placeholder
            color: Theme.colors.inkSoft
            Accessible.ignored: true
        }
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: input.activeFocus ? Theme.keyBold : Theme.key
        color: input.activeFocus ? Theme.colors.accent : Theme.colors.ink
    }
}
