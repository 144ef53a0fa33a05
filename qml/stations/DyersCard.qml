// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The dyes a cloth may be found by, as snips of that cloth strung on a card; the one in hand is lifted and pinned. Each is told by its name too. */
Item {
    id: root

    /** List of {value, says}. */
    property var choices: []
    property string value
    property string clothRole: "front"
    property int across: 7
    property real cellHeight: Theme.step

    signal chosen(string value)

    readonly property real cellWidth: (width - 2 * rows.rim) / across
    readonly property var colours: {
        const all = [];
        for (let i = 0; i < choices.length; ++i)
            all.push(choices[i].value);
        return all;
    }

    implicitHeight: Math.ceil(choices.length / across) * cellHeight + 2 * rows.rim

    DyedRows {
        id: rows
        anchors.fill: parent
        clothRole: root.clothRole
        colours: root.colours
        across: root.across
    }
    Repeater {
        model: root.choices
        Pressable {
            id: snip
            required property int index
            required property var modelData
            readonly property bool here: modelData.value === root.value
            readonly property real lift: Theme.mm(1.2)

            x: rows.rim + (index % root.across) * root.cellWidth
            y: rows.rim + Math.floor(index / root.across) * root.cellHeight
            z: here ? 1 : 0
            width: root.cellWidth
            height: root.cellHeight
            inList: true
            accessibleName: modelData.says
            Accessible.role: Accessible.RadioButton
            Accessible.checkable: true
            Accessible.checked: here
            onClicked: root.chosen(modelData.value)

            DyedCloth {
                visible: snip.here || snip.pressed
                x: -snip.lift
                y: -snip.lift
                width: parent.width + 2 * snip.lift
                height: parent.height + 2 * snip.lift
                clothRole: root.clothRole
                colour: snip.modelData.value
                line: Theme.keyBold
            }
            PinSketch {
                objectName: "pin"
                visible: snip.here
                x: (parent.width - width) / 2
                y: -Theme.mm(2.6)
            }
            FocusOutline { visible: snip.keyboardFocus }
        }
    }
}
