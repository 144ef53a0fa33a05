// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The three targets of a working screen: next as wide as the column, back, and something's wrong. */
Item {
    id: root

    signal next()
    signal wrong()

    readonly property bool finished: StepModel.finished
    readonly property real air: Theme.small ? Theme.gap : Theme.gapTargets

    implicitHeight: (action.visible ? action.height + air : 0) + Theme.target

    // The pedal presses the target itself, so that a bounce is not taken twice.
    function takeNext() {
        action.press();
    }
    function takeBack() {
        before.press();
    }

    CutButton {
        id: action
        visible: !root.finished
        width: parent.width
        height: Theme.target
        kind: "action"
        cap: Theme.capAction
        enabled: StepModel.canGoNext
        text: StepModel.actionText
        reason: Session.readOnly ? qsTr("Nothing can be changed now") : enabled ? "" : qsTr("First mend what Fit says")
        onClicked: {
            root.next();
            StepModel.next();
        }
    }
    CutButton {
        id: before
        x: Theme.left ? parent.width - width : 0
        y: parent.height - height
        width: Theme.target
        height: Theme.target
        visible: Session.station !== 1 // at Shop nothing is done
        guardMs: 400
        enabled: StepModel.canGoBack
        text: qsTr("Back")
        onClicked: StepModel.back()
    }
    CutButton {
        x: Theme.left ? 0 : parent.width - width
        y: parent.height - height
        width: parent.width - Theme.target - Theme.gapTargets
        height: Theme.target
        visible: !root.finished
        kind: "stop"
        text: qsTr("Something’s wrong")
        onClicked: root.wrong()
    }
}
