// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * The sum behind a figure, in the trade's words, down to what was entered; a figure in it opens its own sum.
 * A size has two sums, along and across, and turns between them.
 */
Item {
    id: root

    /** The figures that were asked for; one of them is shown, or a further one reached from it. */
    property var keys: []
    property string figureKey
    property var trail: []

    signal closed()

    function show(asked: var) {
        keys = asked;
        open(asked[0], []);
    }
    function open(key: string, before: var) {
        trail = before;
        figureKey = key;
        list.positionViewAtBeginning();
    }
    function back() {
        if (trail.length === 0)
            closed();
        else
            open(trail[trail.length - 1], trail.slice(0, -1));
    }

    ChoiceCells {
        id: turn
        visible: root.keys.length > 1 && root.trail.length === 0
        width: parent.width
        height: visible ? implicitHeight : 0
        choices: [{ value: 0, says: qsTr("along") }, { value: 1, says: qsTr("across") }]
        value: root.keys.indexOf(root.figureKey)
        accessibleName: qsTr("Which way")
        onChosen: value => root.open(root.keys[value], [])
    }
    InlineLength {
        id: sentence
        y: turn.height > 0 ? turn.height + Theme.gapTargets : 0
        width: parent.width
        lengthCap: Theme.capThird
        text: root.figureKey.length > 0 ? StepModel.workingSentence(root.figureKey) : ""
    }
    DoubleRule {
        id: rule
        y: sentence.y + sentence.implicitHeight + Theme.mm(1)
        width: parent.width
        visible: sentence.text !== ""
    }
    ListView {
        id: list
        y: rule.y + rule.height + Theme.mm(1)
        width: parent.width
        height: parent.height - y - close.height - Theme.gapTargets
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: root.figureKey.length > 0 ? StepModel.workingFor(root.figureKey) : []
        delegate: TermRow {
            width: list.width
            onClicked: root.open(modelData.figureKey, root.trail.concat([root.figureKey]))
        }
    }
    MoreBelow { over: list }
    KeyLine {
        y: list.y + Math.min(list.height, list.contentHeight)
        width: parent.width
    }
    CutButton {
        id: close
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.targetLeast
        text: root.trail.length > 0 ? qsTr("Back to the sum before") : qsTr("Back to the work")
        onClicked: root.back()
    }
}
