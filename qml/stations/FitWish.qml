// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** One thing she wants: an amount with a small sign of what it measures, or two pictures of which one is in force. */
Item {
    id: root

    /** As WouldFit tells it. */
    required property var wish
    /** The sign of an amount, or the picture of each choice. */
    property var scenes: []

    signal ask(string key, string label, string kind, string text)
    signal nudged(string key, int steps)
    signal picked(string key, var value)

    readonly property bool choice: wish.kind === "choice"
    /** Of these the pictures do not say by themselves what is chosen. */
    readonly property bool headed: choice && (wish.key === "fine" || wish.key === "widen" || wish.key === "leaf")
    readonly property bool signed: !choice && width > Theme.mm(84)
    readonly property real signRoom: signed ? sign.width + Theme.gap : 0
    readonly property var pictured: {
        const all = [];
        for (let i = 0; choice && i < (wish.choices?.length ?? 0); ++i)
            all.push({ value: wish.choices[i].value, says: wish.choices[i].says, scene: scenes[i] ?? "" });
        return all;
    }

    implicitHeight: choice ? tiles.y + tiles.implicitHeight : amount.implicitHeight
    height: implicitHeight

    ChoiceSketch {
        id: sign
        visible: root.signed
        x: Theme.left ? parent.width - width : 0
        anchors.verticalCenter: parent.verticalCenter
        width: Math.round(Theme.mm(17))
        height: Math.round(Theme.mm(14))
        scene: root.choice ? "" : root.scenes[0] ?? ""
    }
    AmountRow {
        id: amount
        visible: !root.choice
        x: Theme.left ? 0 : root.signRoom
        width: parent.width - root.signRoom
        height: implicitHeight
        amount: root.choice ? ({}) : root.wish
        onNudged: (key, steps) => root.nudged(key, steps)
        onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
    }
    Word {
        id: head
        visible: root.headed
        width: parent.width
        text: root.headed ? root.wish.says : ""
        Accessible.ignored: true
    }
    DrawnChoice {
        id: tiles
        visible: root.choice
        y: head.visible ? head.implicitHeight + Theme.mm(0.8) : 0
        width: parent.width
        height: implicitHeight
        beside: root.wish.key !== "set"
        pictureMost: beside ? 14.6 : 15
        accessibleName: root.wish.says ?? ""
        choices: root.pictured
        value: root.wish.value
        onChosen: value => root.picked(root.wish.key, value)
    }
}
