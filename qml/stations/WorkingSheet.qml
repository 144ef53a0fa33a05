// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/**
 * The sum behind a figure, its lengths laid end to end over the tape of what they come to, down to what was entered;
 * counts and quotients in the trade's words. A figure in it opens its own sum.
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
        list.contentY = 0;
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
    readonly property var laid: figureKey.length > 0 ? StepModel.workingLaid(figureKey) : null
    /** Lengths end to end, shown to scale, need no sentence: their rows have the words. */
    readonly property bool plain: laid?.kind === "sum" || laid?.kind === "larger"

    InlineLength {
        id: sentence
        y: turn.height > 0 ? turn.height + Theme.gapTargets : 0
        width: parent.width
        lengthCap: Theme.capThird
        text: root.figureKey.length === 0 ? ""
              //: heads a sum: %1 is the figure's name, %2 the figure: "hoop strip, cut: 13 1/4 in"
              : root.plain ? qsTr("%1: {%2}").arg(root.laid.says).arg(root.laid.figure.text) : StepModel.workingSentence(root.figureKey)
    }
    DoubleRule {
        id: rule
        y: sentence.y + sentence.implicitHeight + Theme.mm(1)
        width: parent.width
        visible: sentence.text !== ""
    }
    Flickable {
        id: list
        y: rule.y + rule.height
        width: parent.width
        height: parent.height - y - close.height - Theme.gapTargets
        clip: true
        contentHeight: rows.height
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: rows
            width: list.width
            topPadding: Theme.mm(1.6)

            LaidLengths {
                objectName: "laid"
                visible: root.laid !== null && root.laid.kind !== "words"
                width: parent.width
                height: implicitHeight
                laid: visible ? root.laid : null
                metric: Session.units === "mm"
                accessibleName: visible ? StepModel.workingSentence(root.figureKey).replace(/[{}]/g, "") : ""
            }
            Word {
                visible: root.laid?.kind === "larger"
                width: parent.width
                bottomPadding: Theme.mm(1.6)
                color: Theme.colors.inkSoft
                //: of two or more rows of lengths laid end to end over the tape: the longest is the figure
                text: qsTr("The longest counts.")
            }
            Repeater {
                model: root.figureKey.length > 0 ? StepModel.workingFor(root.figureKey) : []
                TermRow {
                    width: rows.width
                    onClicked: root.open(modelData.figureKey, root.trail.concat([root.figureKey]))
                }
            }
            KeyLine { width: parent.width }
        }
    }
    MoreBelow { over: list }
    CutButton {
        id: close
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.targetLeast
        text: root.trail.length > 0 ? qsTr("Back to the sum before") : qsTr("Back to the work")
        onClicked: root.back()
    }
}
