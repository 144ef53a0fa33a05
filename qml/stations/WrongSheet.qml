// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** At most six large answers for this moment; the chosen one says at once what can be saved and what comes next. */
Item {
    id: root

    signal closed()
    /** Asks for the keypad: an answer that needs a measure first. */
    signal enter(string name, string title)
    /** Trimming: the two readings disagree, so the block is measured. */
    signal measure()

    property bool answered: false
    property string error

    /** The measure an answer asked for. */
    function take(kind: string, text: string) {
        settle(StepModel.wrong(kind, text));
    }
    function settle(reply: var) {
        answered = reply.ok;
        error = reply.ok ? "" : reply.says;
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.colors.raised
    }
    Word {
        id: head
        width: parent.width
        cap: Theme.capHead
        bold: true
        text: root.answered ? qsTr("Here is what that means") : qsTr("What went wrong?")
    }
    InlineLength {
        id: answer
        visible: root.answered || root.error.length > 0
        y: head.height + Theme.gapTargets
        width: parent.width
        text: root.answered ? StepModel.lastAnswer : root.error
    }
    CutButton {
        id: disagree
        visible: !root.answered && Session.station === 4 && TrimModel.trimming
        y: (answer.visible ? answer.y + answer.implicitHeight : head.height) + Theme.gap
        width: parent.width
        height: visible ? Theme.target : 0
        text: qsTr("They disagree: measure the block")
        onClicked: root.measure()
    }
    ListView {
        id: list
        visible: !root.answered
        y: disagree.y + (disagree.visible ? disagree.height + Theme.gap : 0)
        width: parent.width
        height: parent.height - y - close.height - Theme.gapTargets
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        spacing: Theme.gap
        model: StepModel.wrongAnswers
        delegate: CutButton {
            required property var modelData
            width: list.width
            height: Theme.targetLeast
            kind: "outline"
            text: modelData.says
            onClicked: {
                if (modelData.asks.length > 0)
                    root.enter(modelData.kind, modelData.asks);
                else
                    root.settle(StepModel.wrong(modelData.kind));
            }
        }
    }
    CutButton {
        anchors.bottom: close.top
        anchors.bottomMargin: Theme.gapTargets
        visible: root.answered && StepModel.mayRemake
        width: parent.width
        height: Theme.target
        kind: "stop"
        text: qsTr("Make it again")
        onClicked: StepModel.remake()
    }
    CutButton {
        id: close
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.target
        kind: root.answered ? "action" : "outline"
        text: root.answered ? qsTr("On with the work") : qsTr("I changed my mind")
        onClicked: root.closed()
    }
}
