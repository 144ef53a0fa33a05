// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** All the words of the step at hand: what to do, where the ruler lies, what to mind, what to check. */
Item {
    id: root

    signal closed()

    Flickable {
        id: roll
        width: parent.width
        height: parent.height - close.height - Theme.gapTargets
        contentHeight: words.height
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: words
            width: roll.width
            spacing: Theme.gap
            InlineLength {
                width: parent.width
                cap: Theme.capHead
                bold: true
                text: StepModel.doesText
            }
            InlineLength {
                visible: text !== ""
                width: parent.width
                text: StepModel.figure.valid ? StepModel.spoken : ""
            }
            Word {
                visible: StepModel.notTried
                width: parent.width
                color: Theme.colors.caution
                text: qsTr("Not tried yet: the trial may change this figure.")
            }
            TrialSays {
                visible: StepModel.trial || StepModel.notTried
                width: parent.width
            }
            CutButton {
                objectName: "try-after-all"
                visible: StepModel.mayTryAfterAll
                height: visible ? Theme.targetLeast : 0
                width: parent.width
                text: qsTr("Make the trial after all")
                onClicked: {
                    StepModel.takeTrialBack();
                    root.closed();
                }
            }
            CautionLine {
                width: parent.width
                text: StepModel.caution
            }
            Word {
                visible: text !== ""
                width: parent.width
                text: StepModel.check
            }
        }
    }
    MoreBelow { over: roll }
    CutButton {
        id: close
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.target
        kind: "action"
        text: qsTr("On with the work")
        onClicked: root.closed()
    }
}
