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
    readonly property real headHeight: Math.max(head.height, close.atHead ? close.height : 0)
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
        width: parent.width - (close.atHead ? close.width + Theme.gap : 0)
        cap: Theme.capHead
        bold: true
        text: root.answered ? qsTr("Here is what that means") : qsTr("What went wrong?")
    }
    InlineLength {
        id: answer
        visible: root.answered || root.error.length > 0
        y: root.headHeight + Theme.gap
        width: parent.width
        text: root.answered ? StepModel.lastAnswer : root.error
    }
    CutButton {
        id: disagree
        visible: !root.answered && Session.station === 4 && TrimModel.trimming
        y: (answer.visible ? answer.y + answer.implicitHeight : root.headHeight) + Theme.gap
        width: parent.width
        height: visible ? Theme.target : 0
        text: qsTr("They disagree: measure the block")
        onClicked: root.measure()
    }
    Flickable {
        id: list
        visible: !root.answered
        y: disagree.y + (disagree.visible ? disagree.height + Theme.gap : 0)
        width: parent.width
        height: parent.height - y
        contentHeight: answers.height
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        interactive: contentHeight > height + 1

        // Two beside each other: six are seen at once, on a low screen too.
        Grid {
            id: answers
            readonly property int lines: Math.ceil(StepModel.wrongAnswers.length / 2)
            readonly property real cell: Math.max(Theme.targetLeast, Math.min(Theme.mm(32), (list.height - (lines - 1) * Theme.gap) / lines))
            columns: 2
            spacing: Theme.gap
            Repeater {
                model: StepModel.wrongAnswers
                CutButton {
                    required property var modelData
                    width: (list.width - Theme.gap) / 2
                    height: Math.max(answers.cell, contentHeight - 2 * padding + Theme.mm(1))
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
        objectName: "close"
        readonly property bool atHead: !root.answered
        x: atHead ? parent.width - width : 0
        y: atHead ? 0 : parent.height - height
        width: atHead ? Math.max(Theme.mm(24), leastWidth) : parent.width
        height: atHead ? Theme.control : Theme.target
        kind: root.answered ? "action" : "outline"
        text: root.answered ? qsTr("On with the work") : qsTr("Close")
        onClicked: root.closed()
    }
}
