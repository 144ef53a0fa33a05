// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * Taking back something done asks one thing: was it tapped by mistake, or is the piece spoiled? Where the finger
 * still lies after "Back" stands what changes nothing.
 */
Item {
    id: root

    component Answer: CutButton {
        property string answer
        anchors.left: parent?.left
        anchors.right: parent?.right
        height: Theme.target
        guardShown: true
        onClicked: StepModel.answerUndo(answer)
    }

    Word {
        width: parent.width
        cap: Theme.small ? Theme.capWord : Theme.capHead
        bold: true
        text: qsTr("Was it tapped by mistake, or is the piece spoiled?")
    }
    Answer {
        anchors.bottom: mistake.top
        anchors.bottomMargin: Theme.small ? Theme.gap : Theme.gapTargets
        text: qsTr("Done and spoiled")
        answer: "spoiled"
    }
    Answer {
        id: mistake
        anchors.bottom: leave.top
        anchors.bottomMargin: Theme.gapTargets
        kind: "action"
        text: qsTr("Tapped by mistake")
        answer: "mistake"
    }
    Answer {
        id: leave
        objectName: "close"
        anchors.bottom: parent.bottom
        text: qsTr("Leave it as it is")
        answer: ""
    }
}
