// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** One amount that is wanted, between minus and plus; of what shows of a table also the way to let the piece hang over there. */
Item {
    id: root

    /** As WouldFit tells it. */
    required property var wish
    /** The way to let it hang over stands elsewhere. */
    property bool alone: false

    signal ask(string key, string label, string kind, string text)
    signal nudged(string key, int steps)
    signal picked(string key, var value)

    implicitHeight: steps.implicitHeight + (turn.visible ? turn.height + Theme.gap : 0)

    DimensionSteps {
        id: steps
        x: (parent.width - width) / 2
        width: Math.min(parent.width, Theme.mm(86))
        height: implicitHeight
        amount: root.wish
        onNudged: (key, steps) => root.nudged(key, steps)
        onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
    }
    HangTurn {
        id: turn
        visible: !root.alone && hangs !== null
        key: root.wish.key?.startsWith("reveal") ? root.wish.key.replace("reveal", "hangs") : ""
        y: steps.height + Theme.gap
        x: (parent.width - width) / 2
        width: Math.min(parent.width, implicitWidth)
        height: implicitHeight
        onPicked: (key, value) => root.picked(key, value)
    }
}
