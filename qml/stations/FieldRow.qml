// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** One thing she decides: a value to step, to drag, to type or to choose. */
Item {
    id: root

    required property string pointer
    required property string group
    required property string label
    required property string kind
    required property var figure
    required property var value
    required property var choices
    required property string choiceText
    required property string problem
    required property bool canLess
    required property bool canMore
    required property bool reckoned
    required property bool inUse
    required property bool firstOfGroup

    signal ask(string pointer, string label, string kind, string text)

    readonly property bool chosen: kind === "choice" || kind === "flag"

    readonly property real headroom: firstOfGroup ? heading.height + Theme.gapTargets + Theme.gap : 0

    enabled: inUse
    opacity: inUse ? 1 : 0.55
    implicitHeight: headroom + (chosen ? picker.height : stepper.height) + Theme.gap

    function turn(by: int) {
        if (root.kind === "flag") {
            FitModel.choose(root.pointer, !root.value);
            return;
        }
        let at = 0;
        for (let i = 0; i < root.choices.length; ++i)
            if (root.choices[i].value === root.value)
                at = i;
        const next = root.choices[(at + by + root.choices.length) % root.choices.length];
        FitModel.choose(root.pointer, next.value);
    }

    Word {
        id: heading
        visible: root.firstOfGroup
        y: Theme.gapTargets
        width: parent.width
        cap: Theme.capHead
        bold: true
        text: root.group
    }
    Stepper {
        id: stepper
        y: root.headroom
        visible: !root.chosen
        width: parent.width
        label: root.label
        figure: root.figure?.valid ? root.figure : null
        valueText: root.choiceText
        canLess: root.canLess
        canMore: root.canMore
        reckoned: root.reckoned
        problem: root.problem
        onLess: FitModel.nudge(root.pointer, -1)
        onMore: FitModel.nudge(root.pointer, 1)
        onAskKeypad: root.ask(root.pointer, root.label, root.kind, root.value ?? "")
    }
    ChoiceRow {
        id: picker
        y: root.headroom
        visible: root.chosen
        width: parent.width
        inList: true
        text: root.label
        detail: root.choiceText
        onClicked: root.turn(1)
    }
}
