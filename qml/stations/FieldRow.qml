// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

// A Loader of Qt 6.4 cannot make bound components, so what it makes reaches this file's ids unqualified.
// qmllint disable unqualified

/**
 * One thing she decides, in its group: a value to step, to drag, to type, or a choice. What stands in its
 * way is said beneath it, with the nearest values that work.
 */
Item {
    id: root

    required property string pointer
    required property string group
    /** The group's sign. */
    required property string groupSign
    required property string label
    required property string kind
    required property var figure
    required property var value
    required property var choices
    required property string choiceText
    required property string problem
    required property bool canLess
    required property bool canMore
    required property bool reckoned
    required property bool inUse
    required property bool firstOfGroup
    /** Pointer of the cloth or ruler it belongs to, or "". */
    required property string item

    property bool open: false
    /** The cloth or ruler that lies open, or "". */
    property string openItem: ""

    signal turned()
    signal itemTurned(string item)
    signal ask(string pointer, string label, string kind, string text)

    /** The height the fronts of the chest share, and what this one asks for. */
    property real frontLeast: 0
    property real frontWanted: 0
    property real frontLeastWidth: 0

    readonly property bool chosen: kind === "choice" || kind === "flag"
    readonly property bool plain: chosen || kind === "length" || kind === "count" || kind === "share"
    readonly property bool shown: open && inUse && (item === "" || kind === "head" || item === openItem)

    /** Where what lies beneath its group's head begins. */
    readonly property real bodyY: head.visible ? head.height : 0

    implicitHeight: (head.visible ? head.height : 0) + (shown ? body.height + Theme.gapTargets : 0)
    height: implicitHeight

    Loader {
        id: head
        active: root.firstOfGroup
        visible: active
        width: parent.width
        // Its width is the row's own: a loader that grows would hand its width down in the midst of a layout.
        sourceComponent: Item {
            implicitHeight: groupHead.height
            DrawerFront {
                id: groupHead
                least: root.frontLeast
                width: root.width
                height: implicitHeight
                text: root.group
                pictogram: root.groupSign
                summary: root.plain ? root.choiceText : ""
                figure: root.figure?.valid ? root.figure : null
                open: root.open
                onWantedChanged: root.frontWanted = wanted
                onLeastWidthChanged: root.frontLeastWidth = leastWidth
                onClicked: root.turned()
                Component.onCompleted: {
                    root.frontLeastWidth = leastWidth;
                    root.frontWanted = wanted;
                }
            }
        }
    }
    // The sides of the drawer that is pulled out.
    Repeater {
        model: root.shown ? 2 : 0
        Rectangle {
            required property int index
            x: index === 0 ? 0 : root.width - width
            y: root.bodyY
            width: Theme.mm(1.3)
            height: root.height - y
            color: Theme.colors.table
            border.width: Theme.keyThin
            border.color: Theme.colors.ink
        }
    }
    Loader {
        id: body
        active: root.shown
        visible: active
        x: Theme.margin
        y: (head.visible ? head.height : 0) + Theme.mm(1)
        width: parent.width - 2 * Theme.margin
        sourceComponent: root.chosen ? choice : root.plain ? amount : thing
    }
    Component {
        id: choice
        Column {
            spacing: Theme.mm(1.5)
            Word {
                width: parent.width
                text: root.label
            }
            ChoiceCells {
                enabled: !Session.readOnly
                width: parent.width
                inList: true
                accessibleName: root.label
                choices: root.kind === "flag" ? [{ value: false, says: qsTr("no") }, { value: true, says: qsTr("yes") }]
                                              : root.choices
                value: root.value
                perRow: choices.length > 4 ? 2 : Math.max(1, choices.length)
                onChosen: value => FitModel.choose(root.pointer, value)
            }
            FieldProblems {
                width: parent.width
                pointer: root.pointer
            }
        }
    }
    Component {
        id: amount
        Column {
            spacing: Theme.mm(1.5)
            FieldValue {
                width: parent.width
                pointer: root.pointer
                label: root.label
                kind: root.kind
                figure: root.figure
                canLess: root.canLess
                canMore: root.canMore
                reckoned: root.reckoned
                onAsk: root.ask(root.pointer, root.label, root.kind, root.figure?.valid ? root.figure.text : "")
            }
            FieldProblems {
                width: parent.width
                pointer: root.pointer
            }
        }
    }
    Component {
        id: thing
        FieldItem {
            pointer: root.pointer
            item: root.item
            kind: root.kind
            label: root.label
            said: root.choiceText
            value: root.value
            figure: root.figure
            choices: root.kind === "colour" ? root.choices : []
            open: root.item === root.openItem
            onTurned: root.itemTurned(open ? "" : root.item)
            onAdded: item => root.itemTurned(item)
            onAsk: root.ask(root.pointer, root.label, root.kind, root.figure?.valid ? root.figure.text : "")
        }
    }
}
