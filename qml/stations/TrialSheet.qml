// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** What was measured on the trial, value by value on the keypad; then it is taken into the plan. */
Item {
    id: root

    /** {pointer-like name: text}, as entered so far; what is not there keeps the planned value. */
    property var values: ({})
    property string entering
    property string error

    function begin(name: string, text: string) {
        entering = name;
        keypad.start(text);
    }

    Word {
        id: head
        width: parent.width
        cap: Theme.capHead
        bold: true
        text: StepModel.doesText
    }
    ListView {
        id: list
        visible: root.entering.length === 0
        y: head.height + Theme.gap
        width: parent.width
        height: parent.height - y - take.height - off.height - 2 * Theme.gapTargets - (wrong.visible ? wrong.height + Theme.gap : 0)
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: StepModel.trialFields
        delegate: ChoiceRow {
            required property var modelData
            width: list.width
            inList: true
            text: modelData.says
            detail: root.values[modelData.name] ?? modelData.text
            onClicked: root.begin(modelData.name, root.values[modelData.name] ?? modelData.entry)
        }
    }
    Word {
        id: wrong
        visible: root.error.length > 0 && root.entering.length === 0
        anchors.bottom: off.top
        anchors.bottomMargin: Theme.gap
        width: parent.width
        color: Theme.colors.stop
        text: root.error
    }
    CutButton {
        id: off
        visible: root.entering.length === 0
        anchors.bottom: take.top
        anchors.bottomMargin: Theme.gapTargets
        width: parent.width
        height: Theme.targetLeast
        kind: "outline"
        text: qsTr("Put the trial off")
        onClicked: StepModel.putOffTrial()
    }
    CutButton {
        id: take
        visible: root.entering.length === 0
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.target
        kind: "action"
        text: qsTr("Take these measures")
        onClicked: {
            const answer = StepModel.enterTrial(StepModel.trialKind, root.values);
            root.error = answer.ok ? "" : answer.says;
        }
    }
    Keypad {
        id: keypad
        visible: root.entering.length > 0
        anchors.fill: parent
        title: StepModel.doesText
        unit: Session.units
        decimal: Session.units === "mm"
        marks: FitModel.marks("")
        onCancelled: root.entering = ""
        onDone: text => {
            const values = Object.assign({}, root.values);
            values[root.entering] = text;
            root.values = values;
            root.entering = "";
        }
    }
}
