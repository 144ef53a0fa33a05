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
    delegate: Item {
        id: row
        required property string label
        required property var figure
        width: root.width
        implicitHeight: line.implicitHeight

        ChoiceRow {
            id: line
            width: parent.width
            inList: true
            text: row.label
            detail: row.figure.untried ? qsTr("not tried yet") : ""
            figure: row.figure
            enabled: row.figure.hasWorking
            onClicked: root.working(row.figure.key)
        }
    }
}
