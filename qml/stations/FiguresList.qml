// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Every figure that follows, live; a press opens its sum. Problems and cautions stand on top. */
Item {
    id: root

    signal working(string key)

    ListView {
        id: problems
        width: parent.width
        height: Math.min(contentHeight, root.height * 0.5)
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: FitModel.problems
        delegate: ProblemRow {
            width: problems.width
        }
    }
    ListView {
        id: list
        y: problems.height + Theme.gap
        width: parent.width
        height: root.height - y
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: FitModel.figures
        delegate: Item {
            id: row
            required property string label
            required property var figure
            width: list.width
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
}
