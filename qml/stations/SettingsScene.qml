// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The place where the tablet stands: each thing that can be set is there as it is set, with its state in words; a touch takes it in hand. */
Item {
    id: root

    /** [{name, title, says, value, words}]; the last stands on the floor, the three before it lie on the table. */
    property var things: []
    /** The one in hand; none: -1. */
    property int held: -1

    /** From where to where something lies over it: what is covered takes no finger and no focus. */
    property real coverFrom: 0
    property real coverTo: 0

    signal taken(int thing)

    readonly property int columns: width > height * 1.25 ? 4 : 2
    readonly property int rows: Math.ceil(things.length / columns)
    readonly property real each: Math.floor(width / columns)
    readonly property real deep: Math.floor(height / rows)
    /** What the labels under the pictures take. */
    readonly property real label: Math.max(Theme.control, tallest + Theme.mm(2.4))
    /** Where they begin in their row. */
    readonly property real labelTop: deep - label - Theme.mm(1.5)
    property real tallest: 0
    readonly property real pad: Theme.mm(2)

    readonly property var boxes: {
        const all = [];
        for (let i = 0; i < things.length; ++i)
            all.push({ x: column(i) * each + pad, y: row(i) * deep + pad, w: each - 2 * pad, h: deep - label - 2 * pad });
        return all;
    }
    readonly property var shelves: {
        const all = [];
        for (let r = 0; r < tableRow; ++r)
            all.push(r * deep + deep - label - pad);
        return all;
    }
    /** The first row of the table. */
    readonly property int tableRow: Math.floor(4 / columns)
    readonly property var tables: {
        const all = [];
        for (let r = tableRow; r < rows; ++r)
            all.push({ x: Theme.mm(0.6), y: r === tableRow ? r * deep + pad * 0.4 : r * deep, h: deep - (r === rows - 1 ? pad * 0.4 : 0),
                       w: (r === rows - 1 ? columns - 1 : columns) * each - Theme.mm(1.2) });
        return all;
    }

    function column(thing: int): int {
        return thing % columns;
    }
    function row(thing: int): int {
        return Math.floor(thing / columns);
    }
    function measure() {
        let most = 0;
        for (let i = 0; i < labels.count; ++i)
            most = Math.max(most, labels.itemAt(i)?.wanted ?? 0);
        tallest = most;
    }

    Accessible.role: Accessible.Grouping
    Accessible.name: qsTr("The place at the mat")

    WorkPlace {
        anchors.fill: parent
        things: root.things
        boxes: root.boxes
        shelves: root.shelves
        tables: root.tables
        Accessible.ignored: true
    }
    Repeater {
        id: labels
        // By number: what was just pressed is not made anew by what it changed.
        model: root.things.length
        Pressable {
            id: thing
            required property int index
            readonly property var its: root.things[index] ?? ({})
            readonly property bool inHand: root.held === index
            readonly property bool solid: inHand !== pressed
            readonly property real wanted: words.implicitHeight

            x: root.column(index) * root.each + Theme.mm(1.5)
            y: root.row(index) * root.deep + Theme.mm(1)
            width: root.each - Theme.mm(3)
            height: root.deep - Theme.mm(3)
            enabled: y + height <= root.coverFrom || y >= root.coverTo
            //: what can be set, and how it is set: "Light: Day"
            accessibleName: (its.says ?? "") === "" ? its.title ?? "" : qsTr("%1: %2").arg(its.title).arg(its.says)
            Accessible.role: Accessible.RadioButton
            Accessible.checkable: true
            Accessible.checked: inHand
            onClicked: root.taken(index)
            onWantedChanged: root.measure()
            Component.onCompleted: root.measure()

            Rectangle {
                y: parent.height - height
                width: parent.width
                height: root.label - Theme.mm(1)
                color: thing.solid ? Theme.colors.ink : Theme.colors.raised
                border.color: Theme.colors.ink
                border.width: Theme.key
            }
            Word {
                id: words
                x: Theme.mm(0.8)
                y: parent.height - (root.label - Theme.mm(1) + height) / 2
                width: parent.width - 2 * x
                horizontalAlignment: Text.AlignHCenter
                bold: true
                color: thing.solid ? Theme.colors.raised : Theme.colors.ink
                text: thing.accessibleName
                Accessible.ignored: true
            }
            FocusOutline { visible: thing.keyboardFocus }
        }
    }
}
