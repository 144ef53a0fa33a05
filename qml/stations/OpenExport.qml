// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The present project as a file of its own in the documents, under a name that is not taken. */
Column {
    id: root

    property string said
    property bool refused: false

    spacing: Theme.gap
    topPadding: Theme.mm(1)
    bottomPadding: Theme.gapTargets

    Column {
        x: Theme.margin
        width: parent.width - 2 * x
        spacing: Theme.gap

        PlainField {
            id: name
            width: parent.width
            text: FitModel.files.nameForFile
            accessibleName: qsTr("Name of the file")
            onAccepted: root.write()
        }
        CutButton {
            width: Math.min(implicitWidth, parent.width)
            height: Math.max(Theme.step, contentHeight)
            inList: true
            text: qsTr("Write the file")
            onClicked: root.write()
        }
        Word {
            width: parent.width
            visible: text !== "" && !root.refused
            wrapMode: Text.Wrap
            text: root.said
        }
        CautionLine {
            width: parent.width
            text: root.refused ? root.said : ""
        }
    }

    function write() {
        tell(FitModel.files.write(name.text));
    }
    function tell(answer: var) {
        refused = !answer.ok;
        said = answer.says;
    }
}
