// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** Beside what shows of the table at the ends or the sides: the way to let the piece hang over there, or to take it back onto the wood. */
Pressable {
    id: root

    /** "hangs-along" or "hangs-across". */
    property string key

    signal picked(string key, var value)

    readonly property var hangs: {
        for (let i = 0; key !== "" && i < WouldFit.wishes.length; ++i)
            if (WouldFit.wishes[i].key === key)
                return WouldFit.wishes[i];
        return null;
    }
    /** The other of its two. */
    readonly property var other: hangs ? hangs.choices[hangs.value ? 0 : 1] : null
    readonly property color ink: pressed ? Theme.colors.raised : Theme.colors.ink

    visible: hangs !== null
    implicitWidth: sketch.width + natural.implicitWidth + Theme.mm(7)
    implicitHeight: Math.max(Theme.control, words.implicitHeight + Theme.mm(2))
    accessibleName: other?.says ?? ""
    accessibleDescription: hangs?.says ?? ""
    onClicked: root.picked(root.key, root.other.value)

    CutShape {
        anchors.fill: parent
        fill: root.pressed ? Theme.colors.ink : Theme.colors.raised
        stroke: Theme.colors.ink
        strokeWidth: Theme.mm(0.5) * Theme.colors.lineScale
    }
    ChoiceSketch {
        id: sketch
        x: Theme.mm(2)
        y: Theme.mm(1)
        width: Math.round(Theme.mm(13))
        height: Math.round(Math.max(Theme.mm(4), parent.height - Theme.mm(2)))
        scene: root.hangs === null ? "" : (root.key.endsWith("along") ? "ends" : "sides") + (root.hangs.value ? "-shows" : "-hangs")
    }
    Word {
        id: words
        x: sketch.x + sketch.width + Theme.mm(2)
        anchors.verticalCenter: parent.verticalCenter
        width: Math.max(1, root.width - x - Theme.mm(1))
        color: root.ink
        text: root.other?.says ?? ""
        Accessible.ignored: true
    }
    Word {
        id: natural
        visible: false
        wrapMode: Text.NoWrap
        text: words.text
    }
    FocusOutline { visible: root.keyboardFocus }
}
