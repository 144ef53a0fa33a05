// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** Place in the run, the one figure, one line, one caution, three targets. */
Item {
    id: root

    signal working(string key)
    signal wrong()

    readonly property bool tight: height < Theme.mm(130)
    readonly property bool finished: StepModel.finished

    Word {
        id: title
        width: parent.width - (tally.visible ? tally.width + Theme.gap : 0)
        cap: Theme.capHead
        bold: true
        text: root.finished ? qsTr("Nothing left to cut here") : StepModel.title
    }
    Tally {
        id: tally
        visible: !root.finished && StepModel.count > 1
        x: parent.width - width
        y: title.height / 2 - height / 2
        total: StepModel.count
        done: StepModel.done
    }
    WorkedFigure {
        id: figure
        visible: !root.finished && StepModel.figure.valid
        y: title.height + Theme.mm(root.tight ? 1.5 : 3)
        width: parent.width
        height: visible ? implicitHeight : 0
        figure: StepModel.figure
        cap: Theme.capFigure
        onWorking: root.working(StepModel.figure.key)
    }
    Column {
        id: words
        y: figure.y + figure.height + Theme.mm(root.tight ? 1.5 : 3)
        width: parent.width
        height: Math.max(0, actions.y - y - Theme.gap)
        clip: true
        spacing: Theme.mm(2)

        Item {
            visible: StepModel.clothName.length > 0 && !root.finished
            width: parent.width
            height: visible ? Math.max(swatch.height, cloth.height) : 0
            SwatchPinked {
                id: swatch
                width: Theme.mm(9)
                height: Theme.mm(7)
                colour: StepModel.clothColour
            }
            Word {
                id: cloth
                x: swatch.width + Theme.gap
                width: parent.width - x
                text: StepModel.clothName
            }
        }
        InlineLength {
            visible: text.length > 0
            width: parent.width
            text: root.finished ? StepModel.elsewhereText
                                : StepModel.figure.valid && StepModel.firstLine.length > 0 ? StepModel.firstLine : StepModel.doesText
        }
        Word {
            visible: StepModel.notTried && !root.finished
            width: parent.width
            color: Theme.colors.caution
            text: qsTr("Not tried yet: the trial may change this figure.")
        }
        CautionLine {
            visible: text.length > 0 && !root.finished
            width: parent.width
            text: StepModel.caution
        }
        Word {
            visible: text.length > 0 && !root.finished && !root.tight
            width: parent.width
            color: Theme.colors.inkSoft
            text: StepModel.check
        }
    }
    Column {
        id: actions
        anchors.bottom: parent.bottom
        width: parent.width
        spacing: root.tight ? Theme.gap : Theme.gapTargets

        CutButton {
            visible: StepModel.trial && !root.finished && !root.tight
            width: parent.width
            height: Theme.targetLeast
            kind: "outline"
            text: qsTr("Put the trial off")
            onClicked: StepModel.putOffTrial()
        }
        CutButton {
            visible: !root.finished
            width: parent.width
            height: Theme.target
            kind: "action"
            cap: Theme.capAction
            enabled: StepModel.canGoNext
            text: StepModel.actionText
            onClicked: StepModel.next()
        }
        Row {
            spacing: Theme.gapTargets
            layoutDirection: Theme.left ? Qt.RightToLeft : Qt.LeftToRight
            CutButton {
                width: Theme.target
                height: Theme.target
                kind: "outline"
                enabled: StepModel.canGoBack
                text: qsTr("Back")
                onClicked: StepModel.back()
            }
            CutButton {
                width: actions.width - Theme.target - Theme.gapTargets
                height: Theme.target
                kind: "stop"
                text: qsTr("Something’s wrong")
                onClicked: root.wrong()
            }
        }
    }
}
