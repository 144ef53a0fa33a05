// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * Coming back after an interruption: the step she was at, and one question. Both answers weigh the same and say what
 * follows; neither is taken while the hand that woke the screen still lies on it.
 */
Item {
    id: root

    Rectangle {
        anchors.fill: parent
        color: Theme.colors.raised
    }
    Word {
        id: last
        width: parent.width
        cap: Theme.capHead
        bold: true
        text: StepModel.resumeLast
    }
    Word {
        id: next
        y: last.height + Theme.gapTargets
        width: parent.width
        text: StepModel.resumeNext
    }
    component Answer: CutButton {
        width: root.width
        height: Theme.target
        guardShown: true
    }
    Answer {
        objectName: "finished"
        anchors.bottom: no.top
        anchors.bottomMargin: Theme.gapTargets
        confirms: true
        //: on a button: what the step says was done before the program ended, and is counted now
        text: qsTr("Finished: count it as done")
        onClicked: StepModel.answerResume(true)
    }
    Answer {
        id: no
        objectName: "unfinished"
        anchors.bottom: parent.bottom
        //: on a button: the step goes on where it was
        text: qsTr("Not finished: still to do")
        onClicked: StepModel.answerResume(false)
    }
}
