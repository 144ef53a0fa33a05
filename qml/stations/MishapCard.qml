// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** An answer to what went wrong: a swatch with the mishap drawn on it, its words below or beside the picture. */
Pressable {
    id: root

    /** The mishap as the model names it. */
    property string kind
    property string text
    /** The words stand beside the picture: a card as wide as the column. */
    property bool beside: false
    property real pictureHeight: Theme.mm(14)

    readonly property real tooth: Math.round(Theme.mm(1))
    readonly property real side: Math.round(Theme.mm(1.2))
    readonly property color ground: pressed ? Theme.colors.ink : Theme.colors.raised
    readonly property real wordsHeight: says.implicitHeight + Theme.mm(0.8)
    /** The height it needs besides the picture's, where the words stand below. */
    readonly property real besides: 2 * tooth + side + wordsHeight
    readonly property real leastHeight: beside ? 2 * tooth + side + Math.max(pictureHeight, wordsHeight) : pictureHeight + besides

    guardShown: true
    inList: true
    accessibleName: text

    PinkedShape {
        anchors.fill: parent
        tooth: root.tooth
        fill: root.ground
        strokeWidth: Theme.keyThin
    }
    Rectangle {
        anchors.fill: sketch
        color: Theme.colors.raised
    }
    MishapSketch {
        id: sketch
        x: root.beside && Theme.left ? parent.width - width - root.side : root.side
        y: root.beside ? (parent.height - height) / 2 : root.tooth + root.side / 2
        width: root.beside ? 2 * root.pictureHeight : parent.width - 2 * root.side
        height: root.pictureHeight
        kind: root.kind
    }
    Word {
        id: says
        readonly property real beneath: sketch.y + sketch.height
        x: !root.beside ? root.side / 2 : Theme.left ? root.side : sketch.x + sketch.width + Theme.mm(2)
        y: root.beside ? (parent.height - implicitHeight) / 2 : beneath + (parent.height - root.tooth - beneath - implicitHeight) / 2
        width: root.beside ? parent.width - sketch.width - 2 * root.side - Theme.mm(2) : parent.width - root.side
        horizontalAlignment: root.beside ? Text.AlignLeft : Text.AlignHCenter
        cap: Theme.mm(3.84)
        // Close together: below a picture every line counts.
        lineHeight: cap * 1.38
        color: root.pressed ? Theme.colors.raised : Theme.colors.ink
        text: root.text
        Accessible.ignored: true
    }
    FocusOutline { visible: root.keyboardFocus }
}
