// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Coming back after an interruption: the last thing done, the next, and one question. */
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
    CutButton {
        anchors.bottom: no.top
        anchors.bottomMargin: Theme.gapTargets
        width: parent.width
        height: Theme.target
        kind: "action"
        confirms: true
        text: qsTr("Yes, it is finished")
        onClicked: StepModel.answerResume(true)
    }
    CutButton {
        id: no
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.target
        kind: "outline"
        text: qsTr("Not yet")
        onClicked: StepModel.answerResume(false)
    }
}
