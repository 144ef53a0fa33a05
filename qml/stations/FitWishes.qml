// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Theme

/** What she wants the piece to come to, and what she will have. */
Flickable {
    id: root

    signal ask(string key, string label, string kind, string text)

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    contentHeight: rows.height

    Column {
        id: rows
        width: root.width
        spacing: Theme.gapTargets

        Repeater {
            // By number: a row that was just pressed is not made anew by what it changed.
            model: WouldFit.wishes.length
            AmountRow {
                required property int index
                width: rows.width
                height: implicitHeight
                amount: WouldFit.wishes[index] ?? ({})
                onNudged: (key, steps) => WouldFit.nudge(key, steps)
                onPicked: (key, value) => WouldFit.pick(key, value)
                onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
            }
        }
    }
}
