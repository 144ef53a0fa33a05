// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * At most six large answers for this moment, over the whole page; the chosen one says at once what can be saved and
 * what comes next. Some act at once: where the finger still lies after "Something's wrong" stands what only closes.
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
    /** What went wrong, and what it means, are told in pictures: they take the whole page. */
    readonly property bool spread: !picking
    readonly property bool asks: !answered && !picking
    readonly property bool upright: height > width
    readonly property var answers: StepModel.sided ? afterMeasuring(StepModel.wrongAnswers) : StepModel.wrongAnswers
    property string error

    /** The answers, before them what only measures. */
    function afterMeasuring(answers: var): var {
        return [{ kind: "sides-disagree", says: qsTr("They disagree: measure the block") }, ...answers];
    }
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
        // The answers need the room on a low screen.
        cap: Theme.small && !root.picking ? Theme.capWord : Theme.capHead
        bold: true
        visible: !root.answered || root.picking
        text: root.picking ? qsTr("Which block?")
              //: %1 is a block's name, "B2": the one in hand
              : StepModel.block !== "" ? qsTr("%1: what went wrong?").arg(StepModel.block) : qsTr("What went wrong?")
    }
    InlineLength {
        id: answer
        visible: root.asks && root.error.length > 0
        y: head.height + Theme.gap
        width: parent.width
        text: root.error
    }
    Flickable {
        id: list
        visible: root.asks
        y: (answer.visible ? answer.y + answer.implicitHeight : head.height) + Theme.mm(Theme.small ? 1.2 : 3)
        width: parent.width
        // Far enough from the foot that none stands where a low screen's row of targets was.
        height: close.y - Theme.mm(Theme.small ? 4 : 6) - y
        contentHeight: cards.height
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        interactive: contentHeight > height + 1

        MishapCards {
            id: cards
            width: list.width
            height: implicitHeight
            room: list.height
            answers: root.answers
            columns: root.upright ? 2 : Math.max(2, Math.ceil(root.answers.length / 2))
            onChosen: answer => {
                if (answer.kind === "sides-disagree")
                    root.measure();
                else if (answer.block)
                    root.asking = answer.kind;
                else if (answer.asks.length > 0)
                    root.enter(answer.kind, answer.asks);
                else
                    root.settle(StepModel.wrong(answer.kind));
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

        BlockChoice {
            id: blocks
            width: choice.width
            made: root.picking ? StepModel.blocksMade : []
            places: root.picking ? JoinModel.blocks : []
            columns: JoinModel.columns
            onPicked: block => root.pick(block)
        }
        Word {
            width: parent.width
            visible: root.picking && StepModel.blocksMade.length === 0
            text: qsTr("No block is made yet.")
        }
    }
    MoreBelow { over: list }
    MoreBelow { over: choice }
    CutButton {
        id: close
        objectName: "close"
        visible: !root.answered || root.picking
        x: Theme.left ? 0 : parent.width - width
        y: parent.height - height
        // Over the whole page it stands where the column was.
        width: root.upright ? parent.width : Math.min(parent.width, Theme.column - 2 * Theme.margin)
        // What is drawn above needs the room.
        height: Theme.targetLeast
        guardShown: true
        text: root.picking ? qsTr("Back") : qsTr("Close")
        onClicked: {
            if (root.picking)
                root.asking = "";
            else
                root.closed();
        }
    }
    ActsPage {
        anchors.fill: parent
        visible: root.answered && !root.picking
        heading: qsTr("Here is what that means")
        acts: visible ? StepModel.lastActs : []

        CutButton {
            visible: StepModel.mayRemake
            width: parent.width
            height: Theme.targetLeast
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
            objectName: "close"
            width: parent.width
            height: Theme.target
            kind: "action"
            guardShown: true
            text: qsTr("On with the work")
            onClicked: root.closed()
        }
    }
}
