// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** One thing she wants of which there are two: pictures of both, the one in force pinned. */
Column {
    id: root

    /** As WouldFit tells it. */
    required property var wish
    /** The picture of each choice. */
    property var scenes: []

    /** How high a picture may be, mm. */
    property real pictureMost: 14.6

    signal picked(string key, var value)

    /** Of these the pictures do not say by themselves what is chosen. */
    readonly property bool headed: wish.key === "fine" || wish.key === "widen" || wish.key === "leaf"
    readonly property var pictured: {
        const all = [];
        for (let i = 0; i < (wish.choices?.length ?? 0); ++i)
            all.push({ value: wish.choices[i].value, says: sized(wish.choices[i].says), scene: scenes[i] ?? "" });
        return all;
    }

    /** A size stays on one line; where that takes its unit along, that is left to what is wanted, beside. */
    function sized(says: string): string {
        if (wish.key !== "mat-size")
            return says;
        return (width < Theme.mm(76) ? says.replace(/[ \u00a0](mm|in)$/, "") : says).replace(/ /g, "\u00a0");
    }

    // A pin stands up out of the pictures.
    spacing: Theme.mm(1.6)

    Word {
        visible: root.headed
        width: parent.width
        text: root.headed ? root.wish.says : ""
        Accessible.ignored: true
    }
    DrawnChoice {
        width: parent.width
        height: implicitHeight
        beside: true
        pictureMost: root.pictureMost
        accessibleName: root.wish.says ?? ""
        choices: root.pictured
        value: root.wish.value
        onChosen: value => root.picked(root.wish.key, value)
    }
}
