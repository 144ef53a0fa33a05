// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/**
 * For what destroys: it acts only after being held for `holdMs`, and fills visibly meanwhile.
 * A short press does nothing but say so.
 */
Pressable {
    id: root

    property string text
    property string kind: "stop"
    property int holdMs: 1000
    /** How far the hold has come, 0 to 1. */
    readonly property real progress: hold.progress

    signal held()

    readonly property color own: !enabled ? Theme.colors.inkSoft : kind === "stop" ? Theme.colors.stop : Theme.colors.ink

    implicitWidth: Math.max(Theme.target, words.implicitWidth + Theme.mm(5))
    implicitHeight: Math.max(Theme.targetLeast, column.height + Theme.mm(4))
    accessibleName: text
    //: how a button that destroys is pressed
    accessibleDescription: qsTr("hold for a second")

    QtObject {
        id: hold
        property real progress: 0
        property double since: 0
        property bool fired: false

        function advance() {
            progress = Math.min(1, (Date.now() - since) / root.holdMs);
            if (progress >= 1 && !fired) {
                fired = true;
                root.held();
            }
        }
    }
    onPressedChanged: {
        hold.fired = false;
        hold.progress = 0;
        hold.since = Date.now();
    }
    Timer {
        interval: 33
        repeat: true
        running: root.pressed && root.enabled && !hold.fired
        onTriggered: hold.advance()
    }

    CutShape {
        anchors.fill: parent
        fill: root.enabled ? Theme.colors.raised : "transparent"
        stroke: root.enabled ? root.own : Theme.colors.line
        strokeWidth: Theme.mm(0.5) * Theme.colors.lineScale
    }
    Word {
        id: words
        visible: false
        text: root.text
    }
    HoldLettering {
        id: column
        width: root.width - Theme.mm(4)
        text: root.text
        hint: root.accessibleDescription
        color: root.own
        anchors.centerIn: parent
    }
    Item {
        visible: hold.progress > 0 // an empty clip would clip nothing
        width: root.width * hold.progress
        height: root.height
        clip: true
        CutShape {
            width: root.width
            height: root.height
            fill: root.own
            stroke: root.own
        }
        HoldLettering {
            width: root.width - Theme.mm(4)
            text: root.text
            hint: root.accessibleDescription
            x: (root.width - width) / 2
            y: (root.height - height) / 2
            color: Theme.colors.raised
        }
    }
    FocusOutline { visible: root.keyboardFocus }
}
