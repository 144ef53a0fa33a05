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

    /** The longest of its words is not broken: the picture is smaller beside it, or gone. */
    readonly property real pictureRoom: Math.min(Theme.mm(13), width - longest - Theme.mm(5.8))
    readonly property real longest: letters.font.pixelSize > 0 ? Math.max(1, ...words.text.split(" ").map(word => letters.advanceWidth(word))) : 1

    visible: hangs !== null
    implicitWidth: Theme.mm(13) + natural.implicitWidth + Theme.mm(7)
    implicitHeight: Math.max(Theme.control, words.implicitHeight + Theme.mm(2))
    accessibleName: other?.says ?? ""
    accessibleDescription: hangs?.says ?? ""
    onClicked: root.picked(root.key, root.other.value)

    FontMetrics {
        id: letters
        font: words.font
    }
    CutShape {
        anchors.fill: parent
        fill: root.pressed ? Theme.colors.ink : Theme.colors.raised
        stroke: Theme.colors.ink
        strokeWidth: Theme.mm(0.5) * Theme.colors.lineScale
    }
    ChoiceSketch {
        id: sketch
        visible: root.pictureRoom > Theme.mm(6)
        x: Theme.mm(2)
        y: Theme.mm(1)
        width: visible ? Math.round(root.pictureRoom) : 0
        height: Math.round(Math.max(Theme.mm(4), parent.height - Theme.mm(2)))
        scene: root.hangs === null ? "" : (root.key.endsWith("along") ? "ends" : "sides") + (root.hangs.value ? "-shows" : "-hangs")
    }
    Word {
        id: words
        x: sketch.visible ? sketch.x + sketch.width + Theme.mm(2) : Theme.mm(2)
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
