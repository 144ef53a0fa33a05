// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** What was measured on the trial, value by value on the keypad; then it is taken into the plan. */
Item {
    id: root

    /** {name: text} as entered so far; what is not there keeps the planned value. */
    property var values: ({})
    property bool overlap: false
    property string error

    signal enter(string name, string title, string text)

    function take(name: string, text: string) {
        const next = Object.assign({}, values);
        next[name] = text;
        values = next;
        error = "";
    }
    function sent(): var {
        const all = Object.assign({}, values);
        if (overlap && all.gap !== undefined)
            all.gap = "-" + all.gap;
        return all;
    }
    function shown(name: string, planned: string): string {
        const typed = values[name];
        return typed === undefined ? planned : typed + " " + Session.units;
    }

    StepHead {
        id: head
        width: parent.width
    }
    InlineLength {
        id: does
        y: head.implicitHeight + Theme.mm(1)
        width: parent.width
        text: StepModel.doesText
    }
    ListView {
        id: list
        y: does.y + does.implicitHeight + Theme.gap
        width: parent.width
        height: parent.height - y - take.height - Theme.gapTargets - (wrong.visible ? wrong.height + Theme.gap : 0)
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: StepModel.trialFields
        delegate: Column {
            id: field
            required property var modelData
            width: list.width
            ChoiceRow {
                width: parent.width
                text: field.modelData.says
                detail: "{" + root.shown(field.modelData.name, field.modelData.text) + "}"
                onClicked: root.enter(field.modelData.name, field.modelData.says, root.values[field.modelData.name] ?? field.modelData.entry)
            }
            ChoiceRow {
                // Two edges that lie over each other have less than no gap.
                visible: field.modelData.name === "gap"
                height: visible ? implicitHeight : 0
                width: parent.width
                chosen: root.overlap
                text: root.overlap ? qsTr("They overlap by that much") : qsTr("They do not overlap")
                onClicked: root.overlap = !root.overlap
            }
        }
    }
    MoreBelow { over: list }
    KeyLine {
        y: list.y + Math.min(list.height, list.contentHeight)
        width: parent.width
    }
    Word {
        id: wrong
        visible: text !== ""
        anchors.bottom: take.top
        anchors.bottomMargin: Theme.gap
        width: parent.width
        color: Theme.colors.stop
        text: root.error
    }
    CutButton {
        id: take
        objectName: "action"
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.target
        kind: "action"
        confirms: true
        // What the trial takes is made at another station first: the target leads there.
        readonly property bool elsewhere: StepModel.waitsAt >= 0
        enabled: StepModel.canGoNext || elsewhere
        reason: enabled ? "" : StepModel.waiting
        // Nothing is taken as measured that she has not said.
        text: elsewhere ? StepModel.waiting : Object.keys(root.values).length > 0 ? qsTr("Take these measures") : qsTr("All are as shown")
        onClicked: {
            if (elsewhere) {
                FitModel.sentToMend = StepModel.waitsAt === 0;
                Session.station = StepModel.waitsAt;
                return;
            }
            const answer = StepModel.enterTrial(StepModel.trialKind, root.sent());
            root.error = answer.ok ? "" : answer.says;
            if (answer.ok) {
                root.values = {};
                root.overlap = false;
            }
        }
    }
}
