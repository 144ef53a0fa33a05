// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Theme

/** The tab with the equals sign and its word: opens the working of a figure. */
Pressable {
    id: root

    property bool down: pressed

    readonly property bool inverse: down && enabled

    implicitWidth: Math.max(Theme.step, word.implicitWidth + Theme.mm(3))
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
            y: Theme.mm(index === 0 ? 2.1 : 3.8)
            width: Theme.mm(5.1)
            height: Theme.mm(0.8)
            color: root.inverse ? Theme.colors.raised : root.enabled ? Theme.colors.ink : Theme.colors.line
        }
    }
    Word {
        id: word
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.mm(0.9)
        cap: Theme.mm(3.84)
        //: on a small tab, at most five letters: opens the sum behind a figure
        text: qsTr("sum")
        color: root.inverse ? Theme.colors.raised : root.enabled ? Theme.colors.ink : Theme.colors.line
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }
    FocusOutline { visible: root.keyboardFocus }
}
