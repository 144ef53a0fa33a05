// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** One of the trial's readings, large, with what steps it; read as it is shown or otherwise, the next one follows. */
ReadingHeld {
    id: root

    signal enter(string name, string title, string text)

    readings: StepModel.trialFields
    stepHeight: Theme.small ? Theme.step : Theme.mm(16)
    asks: true
    note: unread ? qsTr("not yet read") : ""
    onNudged: (at, by) => StepModel.nudgeTrial(at, by)
    onFigurePressed: root.enter(reading?.name ?? "", label, unread ? "" : figureText)

    CutButton {
        // Two edges that lie over each other have less than no gap.
        visible: root.reading?.turns ?? false
        width: parent.width
        height: Theme.control
        inList: true
        text: root.reading?.overlap ? qsTr("It is a gap") : qsTr("It is an overlap")
        onClicked: StepModel.turnTrial(root.held)
    }
}
