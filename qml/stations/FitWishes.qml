// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Theme

/** What she wants the piece to come to, and what she will have; each of it drawn. */
Flickable {
    id: root

    /** The side of the table whose measure was set last: "along", "across" or "". */
    property string marked

    signal ask(string key, string label, string kind, string text)

    readonly property string shape: FitModel.drawing.shape === "round" ? "-round" : ""
    /** What is pictured, by the wish's key: a choice's two values, or an amount's sign. */
    readonly property var scenes: ({
        "set": ["set-piece" + shape, "set-mats" + shape],
        "hangs-along": ["ends-shows", "ends-hangs"],
        "hangs-across": ["sides-shows", "sides-hangs"],
        "mat-size": ["mat-small", "mat-large"],
        "mat-ends": ["mats-sides", "mats-ends"],
        "leaf": ["leaf-out", "leaf-in"],
        "fine": ["sizes-few", "sizes-all"],
        "widen": ["sashing-kept", "sashing-wider"],
        "reveal-along": ["sign-ends"],
        "reveal-across": ["sign-sides"],
        "size-along": ["sign-along"],
        "size-across": ["sign-across"],
        "mats": ["sign-mats"],
        "washing": ["sign-washing"],
        "least": ["sign-least"],
        "most": ["sign-most"],
        "blocks": ["sign-blocks"]
    })

    function noteSide(key: string) {
        marked = key.endsWith("-along") ? "along" : key.endsWith("-across") ? "across" : "";
    }

    onVisibleChanged: if (!visible) marked = ""

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    contentHeight: rows.y + rows.height

    Column {
        id: rows
        // A pin stands up out of the first row.
        y: Theme.mm(1.8)
        width: root.width
        spacing: Theme.mm(2)

        Repeater {
            // By number: a row that was just pressed is not made anew by what it changed.
            model: WouldFit.wishes.length
            FitWish {
                required property int index
                width: rows.width
                wish: WouldFit.wishes[index] ?? ({})
                scenes: root.scenes[wish.key ?? ""] ?? []
                onNudged: (key, steps) => {
                    root.noteSide(key);
                    WouldFit.nudge(key, steps);
                }
                onPicked: (key, value) => {
                    root.noteSide(key);
                    WouldFit.pick(key, value);
                }
                onAsk: (key, label, kind, text) => {
                    root.noteSide(key);
                    root.ask(key, label, kind, text);
                }
            }
        }
    }
}
