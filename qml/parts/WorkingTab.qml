// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Theme

/** The tab with the equals sign: opens the working of a figure. */
Pressable {
    id: root

    property bool down: pressed

    readonly property bool inverse: down && enabled

    implicitWidth: Theme.step
    implicitHeight: Theme.control
    //: opens the sum behind a figure
    accessibleName: qsTr("show the working")

    CutShape {
        anchors.fill: parent
        fill: root.inverse ? Theme.colors.ink : Theme.colors.raised
        stroke: root.enabled ? Theme.colors.ink : Theme.colors.line
    }
    Repeater {
        model: 2
        Rectangle {
            required property int index
            x: (root.width - width) / 2
            y: root.height / 2 + (index === 0 ? -Theme.mm(1.7) : Theme.mm(0.78))
            width: Theme.mm(5.1)
            height: Theme.mm(0.92)
            color: root.inverse ? Theme.colors.raised : root.enabled ? Theme.colors.ink : Theme.colors.line
        }
    }
    FocusOutline { visible: root.keyboardFocus }
}
