// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

// A Loader of Qt 6.4 cannot make bound components, so what it makes reaches this file's ids unqualified.
// qmllint disable unqualified

/**
 * Everything she decides, group by group: a press opens a group in its place. What stands in the way comes
 * first, with its remedies; the figures that follow too, where they have no place of their own.
 */
Flickable {
    id: root

    property bool withFigures: false
    /** The group that lies open, or "". */
    property string openGroup: ""
    /** The cloth or ruler that lies open in its group, or "". */
    property string openItem: ""

    signal ask(string pointer, string label, string kind, string text)
    signal working(string key)
    /** Asks for the layouts that would fit. */
    signal layouts()
    /** Asks for light and dark of the cloths. */
    signal shades()

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    contentHeight: rows.height

    Connections {
        target: FitModel
        // Those after what was taken away have moved up: none of them lies open by mistake.
        function onItemTakenAway() {
            root.openItem = "";
        }
    }
    Column {
        id: rows
        width: root.width

        Repeater {
            model: FitModel.problems
            FieldsProblem {
                width: rows.width
                open: root.openGroup === "problem" + index
                onTurned: root.openGroup = open ? "" : "problem" + index
            }
        }
        Item {
            visible: !Theme.small
            width: parent.width
            height: fits.height + 2 * Theme.gap
            CutButton {
                id: fits
                x: Theme.margin
                y: Theme.gap
                width: parent.width - 2 * Theme.margin
                height: Theme.control
                inList: true
                text: qsTr("What would fit")
                onClicked: root.layouts()
            }
        }
        GroupHead {
            visible: root.withFigures
            width: parent.width
            text: qsTr("What follows")
            pictogram: "figures"
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
                openItem: root.openItem
                onTurned: root.openGroup = open ? "" : group
                onItemTurned: item => root.openItem = item
                onAsk: (pointer, label, kind, text) => root.ask(pointer, label, kind, text)
            }
        }
        Item {
            width: parent.width
            height: shade.height + 2 * Theme.gap
            KeyLine { width: parent.width }
            CutButton {
                id: shade
                objectName: "fit-shades"
                x: Theme.margin
                y: Theme.gap
                width: parent.width - 2 * Theme.margin
                height: Theme.control
                inList: true
                //: the page on how light and how dark the cloths are
                text: qsTr("Light and dark")
                onClicked: root.shades()
            }
        }
        GroupHead {
            width: parent.width
            text: qsTr("A file of this project")
            pictogram: "file"
            open: root.openGroup === "file"
            onClicked: root.openGroup = open ? "" : "file"
        }
        Loader {
            active: root.openGroup === "file"
            visible: active
            width: parent.width
            source: "OpenExport.qml"
        }
        KeyLine {
            width: parent.width
        }
    }
}
