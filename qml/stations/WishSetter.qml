// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** One amount that is wanted, between minus and plus; of what shows of a table also the way to let the piece hang over there. */
Item {
    id: root

    /** As WouldFit tells it. */
    required property var wish
    readonly property bool framed: turn.visible
    readonly property real pad: framed ? Theme.mm(1.5) : 0
    /** The frame reaches out a little, so that the steps keep their width. */
    readonly property real out: Theme.mm(1.2)
    /** The way to let it hang over has room beside the steps. */
    readonly property bool beside: framed && width > Theme.mm(100)

    signal ask(string key, string label, string kind, string text)
    signal nudged(string key, int steps)
    signal picked(string key, var value)

    implicitHeight: 2 * pad + (beside ? Math.max(steps.implicitHeight, turn.height) : steps.implicitHeight + (framed ? turn.height + Theme.gap : 0))

    // Both belong to the same side of the table.
    Rectangle {
        visible: root.framed
        anchors.fill: parent
        anchors.leftMargin: -root.out
        anchors.rightMargin: -root.out
        color: "transparent"
        border.color: Theme.colors.ink
        border.width: Theme.keyThin
    }
    DimensionSteps {
        id: steps
        x: root.beside ? (Theme.left ? parent.width - width : 0) : (parent.width - width) / 2
        y: root.beside ? (parent.height - height) / 2 : root.pad
        width: root.beside ? Math.floor(parent.width * 0.55) : Math.min(parent.width, Theme.mm(86))
        height: implicitHeight
        air: Theme.mm(root.framed ? 1.2 : 0.6)
        narrow: root.framed && width < Theme.mm(46)
        amount: root.wish
        onNudged: (key, steps) => root.nudged(key, steps)
        onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
    }
    HangTurn {
        id: turn
        readonly property real room: root.beside ? parent.width - steps.width - Theme.gapTargets : parent.width
        visible: hangs !== null
        key: root.wish.key?.startsWith("reveal") ? root.wish.key.replace("reveal", "hangs") : ""
        y: root.beside ? (parent.height - height) / 2 : steps.y + steps.height + Theme.gap
        x: !root.beside ? (parent.width - width) / 2 : Theme.left ? 0 : parent.width - width
        width: Math.min(room, implicitWidth)
        height: implicitHeight
        onPicked: (key, value) => root.picked(key, value)
    }
}
