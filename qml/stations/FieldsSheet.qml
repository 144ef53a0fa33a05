// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * Everything she decides, group by group: a press opens a group in its place. What stands in the way comes
 * first, with its remedies; the figures that follow too, where they have no place of their own.
 */
Flickable {
    id: root

    property bool withFigures: false
    /** The group that lies open, or "". */
    property string openGroup: ""

    signal ask(string pointer, string label, string kind, string text)
    signal working(string key)

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    contentHeight: rows.height

    Column {
        id: rows
        width: root.width

        Repeater {
            model: FitModel.problems
            ProblemRow {
                x: Theme.margin
                width: rows.width - 2 * x
            }
        }
        GroupHead {
            visible: root.withFigures
            width: parent.width
            text: qsTr("What follows")
            open: root.openGroup === "figures"
            onClicked: root.openGroup = open ? "" : "figures"
        }
        Loader {
            active: root.withFigures && root.openGroup === "figures"
            visible: active
            width: parent.width
            sourceComponent: FiguresColumn {
                onWorking: key => root.working(key)
            }
        }
        Repeater {
            model: FitModel.fields
            FieldRow {
                width: rows.width
                open: root.openGroup === group
                onTurned: root.openGroup = open ? "" : group
                onAsk: (pointer, label, kind, text) => root.ask(pointer, label, kind, text)
            }
        }
        KeyLine {
            width: parent.width
        }
    }
}
