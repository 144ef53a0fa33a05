// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme

/** Snips of the colours a cloth may be found by; the chosen one has a frame. Each is told by its name too. */
Flow {
    id: root

    /** List of {value, says}. */
    property var choices: []
    property string value
    /** The side of a cell, px. */
    property real cell: Theme.step

    signal chosen(string value)

    spacing: Theme.gap

    Repeater {
        model: root.choices
        Pressable {
            id: snip
            required property var modelData
            readonly property bool here: modelData.value === root.value

            width: root.cell
            height: root.cell
            inList: true
            accessibleName: modelData.says
            Accessible.role: Accessible.RadioButton
            Accessible.checkable: true
            Accessible.checked: here
            onClicked: root.chosen(modelData.value)

            CutShape {
                anchors.fill: parent
                fill: snip.pressed ? Theme.colors.ink : Theme.colors.raised
                stroke: snip.here ? Theme.colors.ink : Theme.colors.line
                strokeWidth: snip.here ? Theme.keyBold * 1.5 : Theme.keyThin
            }
            SwatchPinked {
                anchors.centerIn: parent
                width: parent.width - Theme.mm(4)
                height: parent.height - Theme.mm(4)
                colour: snip.modelData.value
            }
            FocusOutline { visible: snip.keyboardFocus }
        }
    }
}
