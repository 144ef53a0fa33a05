// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** Plus or minus: one step a press; held half a second it goes on stepping, eight to the second. */
Pressable {
    id: root

    property string sign: "+"

    signal stepped()

    readonly property bool inverse: pressed && enabled
    readonly property color ink: !enabled ? Theme.colors.line : inverse ? Theme.colors.raised : Theme.colors.ink
    readonly property real arm: Theme.mm(4.8)
    readonly property real stem: Theme.mm(0.85)
    property bool ran: false

    implicitWidth: Theme.step
    implicitHeight: Theme.step
    accessibleName: sign === "+" ? qsTr("more") : qsTr("less")

    onClicked: {
        if (!ran)
            stepped();
        ran = false;
    }
    onPressedChanged: if (pressed) ran = false
    onEnabledChanged: if (!enabled) ran = false

    Timer {
        interval: 500
        running: root.pressed && root.enabled && !root.ran
        onTriggered: {
            root.ran = true;
            root.stepped();
        }
    }
    Timer {
        interval: 125
        repeat: true
        running: root.pressed && root.enabled && root.ran
        onTriggered: root.stepped()
    }

    CutShape {
        anchors.fill: parent
        fill: !root.enabled ? "transparent" : root.inverse ? Theme.colors.ink : Theme.colors.raised
        stroke: root.enabled ? Theme.colors.ink : Theme.colors.line
    }
    Rectangle {
        anchors.centerIn: parent
        width: root.arm
        height: root.stem
        color: root.ink
    }
    Rectangle {
        anchors.centerIn: parent
        visible: root.sign === "+"
        width: root.stem
        height: root.arm
        color: root.ink
    }
    FocusOutline { visible: root.keyboardFocus }
}
