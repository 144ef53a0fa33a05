// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * At most six large answers for this moment; the chosen one says at once what can be saved and what comes next.
 * Some act at once: where the finger still lies after "Something's wrong" stands what only closes.
 */
Item {
    id: root

    signal closed()
    /** Asks for the keypad: an answer that needs a measure first. */
    signal enter(string name, string title)
    /** Trimming: the two readings disagree, so the block is measured. */
    signal measure()

    property bool answered: false
    /** A mishap that asks which block it is; or "remake": the block is given up. */
    property string asking
    readonly property bool picking: asking.length > 0
    property string error

    /** Asks anew what went wrong. */
    function begin() {
        answered = false;
        error = "";
    }
    /** The measure an answer asked for. */
    function take(kind: string, text: string) {
        settle(StepModel.wrong(kind, text));
    }
    /** The block she touched. */
    function pick(block: string) {
        const kind = asking;
        asking = "";
        if (kind === "remake")
            StepModel.remake(block);
        else
            settle(StepModel.wrong(kind, block));
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
        // On a low screen the answers need the room.
        cap: Theme.small && !root.answered ? Theme.capWord : Theme.capHead
        bold: true
        text: root.picking ? qsTr("Which block?") : root.answered ? qsTr("Here is what that means")
              //: %1 is a block's name, "B2": the one in hand
              : StepModel.block !== "" ? qsTr("%1: what went wrong?").arg(StepModel.block) : qsTr("What went wrong?")
    }
    // A long answer is pushed on a low screen: none of it stands under the targets.
    Flickable {
        id: answer
        visible: !root.picking && (root.answered || root.error.length > 0)
        y: head.height + Theme.gap
        width: parent.width
        height: root.answered ? Math.max(0, (again.visible ? again.y : close.y) - Theme.gap - y) : told.implicitHeight
        contentHeight: told.implicitHeight
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        interactive: contentHeight > height + 1

        InlineLength {
            id: told
            width: answer.width
            text: root.answered ? StepModel.lastAnswer : root.error
        }
    }
    CutButton {
        id: disagree
        visible: !root.answered && !root.picking && StepModel.sided
        y: (answer.visible ? answer.y + told.implicitHeight : head.height) + Theme.gap
        width: parent.width
        height: !visible ? 0 : Theme.small ? Theme.mm(14) : Theme.target
        text: qsTr("They disagree: measure the block")
        onClicked: root.measure()
    }
    Flickable {
        id: list
        visible: !root.answered && !root.picking
        y: disagree.y + (disagree.visible ? disagree.height + Theme.gap : 0)
        width: parent.width
        // Far enough from the foot that none stands where a low screen's row of targets was.
        height: close.y - Theme.mm(Theme.small ? 4 : 6) - y
        contentHeight: answers.height
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        interactive: contentHeight > height + 1

        // Two beside each other: six are seen at once, on a low screen too.
        Grid {
            id: answers
            readonly property int lines: Math.ceil(StepModel.wrongAnswers.length / 2)
            readonly property real cell: Math.max(Theme.small ? Theme.control : Theme.targetLeast, Math.min(Theme.mm(32), (list.height - (lines - 1) * Theme.gap) / lines))
            columns: 2
            spacing: Theme.gap
            Repeater {
                model: StepModel.wrongAnswers
                CutButton {
                    required property var modelData
                    width: (list.width - Theme.gap) / 2
                    height: Math.max(answers.cell, contentHeight - 2 * padding + Theme.mm(1))
                    kind: "outline"
                    guardShown: true
                    text: modelData.says
                    onClicked: {
                        if (modelData.block)
                            root.asking = modelData.kind;
                        else if (modelData.asks.length > 0)
                            root.enter(modelData.kind, modelData.asks);
                        else
                            root.settle(StepModel.wrong(modelData.kind));
                    }
                }
            }
        }
    }
    Flickable {
        id: choice
        objectName: "blocks"
        visible: root.picking
        y: head.height + Theme.gap
        width: parent.width
        height: close.y - Theme.gapTargets - y
        contentHeight: blocks.height
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        interactive: contentHeight > height + 1

        Grid {
            id: blocks
            columns: Math.max(1, Math.floor((choice.width + Theme.gap) / (Theme.mm(24) + Theme.gap)))
            spacing: Theme.gap
            Repeater {
                model: root.picking ? StepModel.blocksMade : []
                CutButton {
                    required property string modelData
                    width: (choice.width - (blocks.columns - 1) * Theme.gap) / blocks.columns
                    height: Theme.targetLeast
                    kind: "outline"
                    guardShown: true
                    text: modelData
                    onClicked: root.pick(modelData)
                }
            }
        }
        Word {
            width: parent.width
            visible: root.picking && StepModel.blocksMade.length === 0
            text: qsTr("No block is made yet.")
        }
    }
    MoreBelow { over: answer }
    MoreBelow { over: list }
    MoreBelow { over: choice }
    CutButton {
        id: again
        anchors.bottom: close.top
        anchors.bottomMargin: Theme.gapTargets
        visible: root.answered && !root.picking && StepModel.mayRemake
        width: parent.width
        height: Theme.target
        kind: "stop"
        guardShown: true
        text: qsTr("Make it again")
        onClicked: {
            if (StepModel.asksBlock)
                root.asking = "remake";
            else
                StepModel.remake();
        }
    }
    CutButton {
        id: close
        objectName: "close"
        y: parent.height - height
        width: parent.width
        height: Theme.target
        kind: root.answered && !root.picking ? "action" : "outline"
        guardShown: true
        text: root.picking ? qsTr("Back") : root.answered ? qsTr("On with the work") : qsTr("Close")
        onClicked: {
            if (root.picking)
                root.asking = "";
            else
                root.closed();
        }
    }
}
