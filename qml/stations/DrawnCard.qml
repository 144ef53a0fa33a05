// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** One of a few things of which one is taken, drawn on a card cut from paper; the taken one is pinned. */
Pressable {
    id: root

    property bool chosen: false
    default property alias contents: inside.data
    readonly property color ink: pressed ? Theme.colors.raised : Theme.colors.ink
    readonly property color inkSoft: pressed ? Theme.colors.raised : Theme.colors.inkSoft
    /** Kept free of words at the near end of the first line: there the pin is. */
    readonly property real lead: Theme.mm(5)
    readonly property real innerWidth: inside.width
    readonly property real innerHeight: inside.height

    inList: true
    Accessible.role: Accessible.RadioButton
    Accessible.checkable: true
    Accessible.checked: chosen

    PinkedShape {
        anchors.fill: parent
        fill: root.pressed ? Theme.colors.ink : Theme.colors.raised
        strokeWidth: root.chosen ? Theme.keyBold : Theme.keyThin
    }
    Item {
        id: inside
        x: Theme.mm(2)
        y: Theme.mm(2.2)
        width: root.width - 2 * x
        height: root.height - 2 * y
    }
    PinSketch {
        objectName: "pin"
        visible: root.chosen
        x: Theme.left ? root.width - width - Theme.mm(1.6) : Theme.mm(1.6)
        y: Theme.mm(0.6)
    }
    FocusOutline { visible: root.keyboardFocus }
}
