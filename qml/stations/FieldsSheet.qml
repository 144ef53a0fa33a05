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

    /** Opens the field of the first thing that stands in the way. */
    function toMend() {
        for (let i = 0; i < hints.count; ++i) {
            const hint = hints.itemAt(i) as FieldsProblem;
            if (hint && !hint.caution) {
                lead(hint.at);
                return;
            }
        }
    }
    /** Opens the group a pointer of the project lies in, and the cloth or ruler. */
    function lead(at: string) {
        const row = leadsTo(at);
        if (!row)
            return;
        openGroup = row.group;
        if (row.item !== "")
            openItem = row.item;
        settled.bring(row.item !== "" ? "item" : "group");
    }
    function leadsTo(at: string): FieldRow {
        return rowWith(row => row.inUse && (row.pointer === at || row.pointer.startsWith(at + "/") || at.startsWith(row.pointer + "/")));
    }
    function rowWith(wanted: var): FieldRow {
        for (let i = 0; i < choices.count; ++i) {
            const row = choices.itemAt(i) as FieldRow;
            if (row && wanted(row))
                return row;
        }
        return null;
    }
    /** Where the head of what was opened stands in the list. */
    function headY(what: string): real {
        if (what === "figures" || what === "file")
            return what === "file" ? file.y : figures.y;
        const row = what === "item" ? rowWith(each => each.kind === "head" && each.item === openItem)
                                    : rowWith(each => each.firstOfGroup && each.group === openGroup);
        return !row ? contentY : row.y + (what === "item" ? row.bodyY : 0);
    }

    // What was opened must be laid out before its head can be brought to the top.
    Timer {
        id: settled
        property string what
        function bring(head: string) {
            what = head;
            restart();
        }
        interval: 30
        onTriggered: root.contentY = Math.max(0, Math.min(root.contentHeight - root.height, root.headY(what)))
    }

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
            id: hints
            model: FitModel.problems
            FieldsProblem {
                width: rows.width
                leads: root.leadsTo(at) !== null
                onLed: root.lead(at)
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
            id: figures
            visible: root.withFigures
            width: parent.width
            text: qsTr("What follows")
            pictogram: "figures"
            open: root.openGroup === "figures"
            onClicked: {
                root.openGroup = open ? "" : "figures";
                if (open)
                    settled.bring("figures");
            }
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
            id: choices
            model: FitModel.fields
            FieldRow {
                width: rows.width
                open: root.openGroup === group
                openItem: root.openItem
                onTurned: {
                    root.openGroup = open ? "" : group;
                    if (open)
                        settled.bring("group");
                }
                onItemTurned: item => {
                    root.openItem = item;
                    if (item !== "")
                        settled.bring("item");
                }
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
            id: file
            width: parent.width
            text: qsTr("A file of this project")
            pictogram: "file"
            open: root.openGroup === "file"
            onClicked: {
                root.openGroup = open ? "" : "file";
                if (open)
                    settled.bring("file");
            }
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
