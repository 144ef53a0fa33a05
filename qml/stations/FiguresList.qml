// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Every figure that follows, live; a press opens its sum. Problems and cautions stand on top. */
ListView {
    id: root

    signal working(string key)

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    model: FitModel.figures
    header: Column {
        width: root.width
        spacing: Theme.gap
        bottomPadding: FitModel.problems.count > 0 ? Theme.gapTargets : 0
        Repeater {
            model: FitModel.problems
            ProblemRow { width: root.width }
        }
    }
    delegate: ChoiceRow {
        id: row
        required property var modelData
        required property var figure
        required property string label
        width: root.width
        inList: true
        text: label
        detail: figure.untried ? qsTr("not tried yet") : ""
        figure: row.figure
        enabled: row.figure.hasWorking
        onClicked: root.working(row.figure.key)
    }
}
