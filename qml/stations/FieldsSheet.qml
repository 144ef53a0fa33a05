// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

// A Loader of Qt 6.4 cannot make bound components, so what it makes reaches this file's ids unqualified.
// qmllint disable unqualified

/**
 * The chest of drawers under the table: everything she decides, group by group, and the figures that follow. A
 * press pulls a drawer out in its place. What stands in the way comes first, with its remedies, and what is made.
 */
Flickable {
    id: root

    /** The group that lies open, or "". */
    property string openGroup: ""
    /** The cloth or ruler that lies open in its group, or "". */
    property string openItem: ""

    signal ask(string pointer, string label, string kind, string text)
    signal working(string key)
    /** So many drawers stand side by side. */
    readonly property int perRow: Math.max(1, Math.floor(width / Math.max(Theme.mm(Theme.small ? 60 : 50), widest)))
    readonly property real frontWidth: width / perRow
    /** The height of the front that asks for most, and the least width of any. */
    property real tallest: Theme.step
    property real widest: 0
    /** Something is said above the drawers, and beside it there is room for the button. */
    readonly property bool said: hints.count > 0 || made.visible
    readonly property bool roomy: width > Theme.mm(120)
    readonly property bool beside: said && roomy
    /** While nothing lies open only the first caution is said, and how many more there are. */
    readonly property int folded: openGroup === "" ? cautions : 0
    property int cautions: 0
    /** Below the last whole row, where a sign says that there is more. */
    readonly property real foot: Theme.mm(5.6)
    /** On a small screen it stands on the seam of two drawers and takes no room. */
    readonly property bool seam: Theme.small && perRow === 2
    readonly property real rowFoot: seam ? 0 : foot
    /** The least the chest is seen of: a row of drawers, but on a small screen what is said may leave no room for one. */
    readonly property real leastChest: saidHeight + (Theme.small && made.visible && hints.count > 0 ? foot : tallest + rowFoot)

    /** How high what is said above the drawers stands. */
    readonly property real saidHeight: drawers.y

    /** The height, `most` at the most, at which no drawer is cut. */
    function wholeRows(most: real): real {
        if (contentHeight <= most)
            return contentHeight;
        const count = Math.floor((most - saidHeight - rowFoot + 0.5) / tallest);
        return count > 0 ? saidHeight + count * tallest + rowFoot : Math.min(most, saidHeight + foot);
    }
    /** The cautions after the first thing that is said. */
    function count() {
        let after = 0;
        for (let i = 1; i < hints.count; ++i)
            after += (hints.itemAt(i) as FieldsProblem)?.caution ? 1 : 0;
        cautions = after;
    }
    function measure() {
        let most = Math.max(Theme.step, figures.wanted, shade.wanted, file.wanted);
        let wide = Math.max(figures.leastWidth, shade.leastWidth, file.leastWidth);
        for (let i = 0; i < choices.count; ++i) {
            const row = choices.itemAt(i) as FieldRow;
            most = Math.max(most, row?.frontWanted ?? 0);
            wide = Math.max(wide, row?.frontLeastWidth ?? 0);
        }
        tallest = most;
        widest = wide;
    }
    onWidthChanged: measure()

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
            return drawers.y + (what === "file" ? file.y : figures.y);
        const row = what === "item" ? rowWith(each => each.kind === "head" && each.item === openItem)
                                    : rowWith(each => each.firstOfGroup && each.group === openGroup);
        return !row ? contentY : drawers.y + row.y + (what === "item" ? row.bodyY : 0);
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

        Item {
            width: parent.width
            height: root.beside ? told.height : told.height + order.height
            Column {
                id: told
                width: parent.width
                /** The first that is said stands beside the button. */
                readonly property real narrow: width - (root.beside ? order.width : 0)
                readonly property real least: root.beside ? order.height : 0
                FitMade {
                    id: made
                    x: root.beside && Theme.left ? order.width : 0
                    width: told.narrow
                    least: told.least
                    brief: Theme.small || root.cautions > 0
                }
                Repeater {
                    id: hints
                    model: FitModel.problems
                    onItemAdded: root.count()
                    onItemRemoved: root.count()
                    FieldsProblem {
                        onCautionChanged: root.count()
                        readonly property bool first: index === 0 && !made.visible
                        visible: index === 0 || !caution || root.openGroup !== ""
                        x: first && root.beside && Theme.left ? order.width : 0
                        width: first ? told.narrow : told.width
                        least: first ? told.least : 0
                        more: index === 0 ? root.folded : 0
                        leads: root.leadsTo(at) !== null
                        onLed: root.lead(at)
                        open: root.openGroup === "problem" + index
                        onTurned: root.openGroup = open ? "" : "problem" + index
                    }
                }
            }
            Item {
                id: order
                x: root.beside && !Theme.left ? told.narrow : 0
                y: root.beside ? 0 : told.height
                width: root.beside ? fits.implicitWidth + 2 * Theme.margin : parent.width
                height: fits.height + Theme.gap
                CutButton {
                    id: fits
                    x: Theme.margin
                    y: Theme.gap / 2
                    width: parent.width - 2 * Theme.margin
                    height: Theme.control
                    inList: true
                    text: qsTr("What would fit")
                    onClicked: root.layouts()
                }
            }
        }
        Flow {
            id: drawers
            width: parent.width

            DrawerFront {
                id: figures
                width: open ? root.width : root.frontWidth
                height: implicitHeight
                least: root.tallest
                text: qsTr("What follows")
                pictogram: "figures"
                open: root.openGroup === "figures"
                onWantedChanged: root.measure()
                onClicked: {
                    root.openGroup = open ? "" : "figures";
                    if (open)
                        settled.bring("figures");
                }
            }
            Loader {
                active: figures.open
                visible: active
                width: root.width
                sourceComponent: FiguresColumn {
                    onWorking: key => root.working(key)
                }
            }
            Repeater {
                id: choices
                model: FitModel.fields
                FieldRow {
                    width: open ? root.width : root.frontWidth
                    frontLeast: root.tallest
                    open: root.openGroup === group
                    openItem: root.openItem
                    onFrontWantedChanged: root.measure()
                    onFrontLeastWidthChanged: root.measure()
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
            DrawerFront {
                id: shade
                objectName: "fit-shades"
                width: root.frontWidth
                height: implicitHeight
                least: root.tallest
                //: the page on how light and how dark the cloths are
                text: qsTr("Light and dark")
                pictogram: "shade"
                onWantedChanged: root.measure()
                onClicked: root.shades()
            }
            DrawerFront {
                id: file
                width: open ? root.width : root.frontWidth
                height: implicitHeight
                least: root.tallest
                text: qsTr("A file of this project")
                pictogram: "file"
                open: root.openGroup === "file"
                onWantedChanged: root.measure()
                onClicked: {
                    root.openGroup = open ? "" : "file";
                    if (open)
                        settled.bring("file");
                }
            }
            Loader {
                active: file.open
                visible: active
                width: root.width
                source: "OpenExport.qml"
            }
        }
        KeyLine {
            width: parent.width
        }
    }
}
