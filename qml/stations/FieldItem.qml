// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * What belongs to a cloth or a ruler beside its lengths and choices: its head, to be opened; its name, price
 * and colour; the ways to add one and to take it away. A refusal stands beneath what was refused.
 */
Column {
    id: root

    property string pointer
    property string item
    property string kind
    property string label
    property string said
    property var value
    property var figure
    property var choices: []
    property bool open: false

    property string refused

    /** The value as text. What is typed breaks a binding on it; what is undone elsewhere is shown all the same. */
    readonly property string kept: typeof value === "string" ? value : ""

    signal turned()
    signal added(string item)
    signal ask()

    /** Says why something was refused. */
    function take(answer: var) {
        refused = answer.ok ? "" : answer.says;
    }
    function rename(text: string) {
        if (kind === "name" && text !== kept)
            take(FitModel.enter(pointer, text));
    }

    onKeptChanged: field.text = kept

    spacing: Theme.mm(1.5)

    ItemHead {
        visible: root.kind === "head"
        width: parent.width
        text: root.label
        said: root.said
        colour: root.kept
        cloth: root.item.startsWith("/cloths")
        open: root.open
        onClicked: root.turned()
    }
    Word {
        visible: root.kind === "name" || root.kind === "colour"
        width: parent.width
        //: %1 is what is decided, %2 the value it has
        text: root.said !== "" ? qsTr("%1: %2").arg(root.label).arg(root.said) : root.label
    }
    PlainField {
        id: field
        visible: root.kind === "name"
        width: parent.width
        enabled: !Session.readOnly
        accessibleName: root.label
        Component.onCompleted: text = root.kept
        onAccepted: text => root.rename(text)
        onActiveFocusChanged: {
            if (!activeFocus)
                root.rename(text);
        }
    }
    Tuner {
        visible: root.kind === "price"
        width: parent.width
        compact: true
        label: root.label
        //: a price nobody has entered
        figure: root.figure?.valid ? root.figure : ({ minus: false, whole: "–", num: "", den: "", unit: "", lean: "", text: qsTr("not said") })
        onAskKeypad: root.ask()
    }
    FieldSwatches {
        visible: root.kind === "colour"
        width: parent.width
        enabled: !Session.readOnly
        choices: root.choices
        value: root.kept
        onChosen: value => FitModel.choose(root.pointer, value)
    }
    HoldButton {
        visible: root.kind === "away"
        width: parent.width
        inList: true
        enabled: !Session.readOnly
        text: root.label
        onHeld: {
            // A name still being typed is taken first.
            forceActiveFocus();
            const answer = FitModel.takeItemAway(root.item);
            // What was taken away has taken this row with it.
            if (!answer.ok)
                root.refused = answer.says;
        }
    }
    CutButton {
        visible: root.kind === "more"
        width: parent.width
        height: Math.max(Theme.step, contentHeight)
        inList: true
        enabled: !Session.readOnly
        text: root.label
        onClicked: {
            const answer = FitModel.addItem(root.pointer);
            root.take(answer);
            if (answer.ok)
                root.added(answer.item);
        }
    }
    CautionLine {
        width: parent.width
        text: root.refused
    }
}
