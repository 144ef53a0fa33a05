// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Taking back something done asks one thing: was it tapped by mistake, or is the piece spoiled? */
Item {
    id: root

    Word {
        width: parent.width
        cap: Theme.capHead
        bold: true
        text: qsTr("Was it tapped by mistake, or is the piece spoiled?")
    }
    CutButton {
        anchors.bottom: spoiled.top
        anchors.bottomMargin: Theme.gapTargets
        width: parent.width
        height: Theme.target
        kind: "action"
        text: qsTr("Tapped by mistake")
        onClicked: StepModel.answerUndo("mistake")
    }
    CutButton {
        id: spoiled
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.target
        kind: "outline"
        text: qsTr("Done and spoiled")
        onClicked: StepModel.answerUndo("spoiled")
    }
}
