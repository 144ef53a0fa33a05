// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The three targets of a working screen: next as wide as the column, back, and something's wrong. */
Item {
    id: root

    /** All three beside each other, on a low screen. */
    property bool inRow: false
    /** The picture shows something else than what is in hand: both show that first, and the action says so. */
    property string showFirst

    signal handWanted()
    signal next()
    signal wrong()
    /** Trimming: the block is not to be cut as it is; what is to be done first ("measure", "others", "common"). */
    signal measure(way: string)

    readonly property bool finished: StepModel.finished
    /** What comes first is done at another station: the target leads there. */
    readonly property bool elsewhere: StepModel.waitsAt >= 0
    readonly property real air: Theme.small ? Theme.gap : Theme.gapTargets

    implicitHeight: (action.visible && !inRow ? action.height + air : 0) + Theme.target
    /** The row is narrow: this one takes what its longest word needs. */
    readonly property real wrongWidth: inRow ? Math.max(Theme.mm(24), Math.min(Theme.mm(36), amiss.leastWidth)) : Theme.mm(36)

    // The pedal presses the target itself, so that a bounce is not taken twice.
    function takeNext() {
        action.press();
    }
    function takeBack() {
        before.press();
    }

    CutButton {
        id: action
        objectName: "action"
        confirms: true
        visible: !root.finished
        x: root.inRow && !Theme.left ? before.width + root.wrongWidth + 2 * root.air : 0
        width: parent.width - (root.inRow ? before.width + root.wrongWidth + 2 * root.air : 0)
        height: Theme.target
        kind: root.showFirst === "" ? "action" : "outline"
        cap: root.inRow ? Theme.mm(4.4) : Theme.capAction
        enabled: StepModel.canGoNext || root.elsewhere
        text: root.showFirst !== "" ? root.showFirst : root.elsewhere ? StepModel.waiting : StepModel.sided ? TrimModel.actionText : StepModel.actionText
        reason: enabled ? "" : StepModel.waiting
        onClicked: {
            if (root.showFirst !== "") {
                root.handWanted();
                return;
            }
            if (root.elsewhere) {
                FitModel.sentToMend = StepModel.waitsAt === 0;
                Session.station = StepModel.waitsAt;
                return;
            }
            if (StepModel.sided && TrimModel.way !== "cut") {
                root.measure(TrimModel.way);
                return;
            }
            root.next();
            if (StepModel.sided)
                TrimModel.cut();
            else
                StepModel.next();
        }
    }
    CutButton {
        id: before
        objectName: "back"
        x: Theme.left ? parent.width - width : 0
        y: parent.height - height
        width: Theme.target
        height: Theme.target
        guardMs: 400
        enabled: StepModel.canGoBack
        text: qsTr("Back")
        onClicked: StepModel.back()
    }
    CutButton {
        id: amiss
        objectName: "wrong"
        x: root.inRow ? (Theme.left ? before.x - width - root.air : before.width + root.air)
           : Theme.left ? 0 : parent.width - width
        y: parent.height - height
        width: root.inRow ? root.wrongWidth : parent.width - Theme.target - Theme.gapTargets
        height: Theme.target
        visible: !root.finished
        kind: "stop"
        text: qsTr("Something’s wrong")
        onClicked: {
            if (root.showFirst !== "")
                root.handWanted();
            root.wrong();
        }
    }
}
