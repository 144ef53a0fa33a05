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

    property bool answered: false

    Rectangle {
        anchors.fill: parent
        color: Theme.colors.raised
    }
    Word {
        id: head
        width: parent.width
        cap: Theme.capHead
        bold: true
        text: root.answered ? qsTr("Here is what that means") : qsTr("What went wrong?")
    }
    InlineLength {
        id: answer
        visible: root.answered
        y: head.height + Theme.gapTargets
        width: parent.width
        text: StepModel.lastAnswer
    }
    ListView {
        id: list
        visible: !root.answered
        y: head.height + Theme.gap
        width: parent.width
        height: parent.height - y - close.height - Theme.gapTargets
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        spacing: Theme.gap
        model: StepModel.wrongAnswers
        delegate: CutButton {
            required property var modelData
            width: list.width
            height: Theme.targetLeast
            kind: "outline"
            text: modelData.says
            onClicked: {
                StepModel.wrong(modelData.kind);
                root.answered = true;
            }
        }
    }
    CutButton {
        id: close
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.target
        kind: root.answered ? "action" : "outline"
        text: root.answered ? qsTr("On with the work") : qsTr("Nothing, go back")
        onClicked: root.closed()
    }
}
