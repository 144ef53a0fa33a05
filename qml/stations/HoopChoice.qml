// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The hoops she owns beside the project at hand; a press takes one, the measures of each can be mended. */
Item {
    id: root

    /** The hoop whose measures are open, or −1. */
    property int open: -1

    signal enter(string name, string title, string text)

    function take(name: string, text: string): string {
        return wrongIn(HoopShelf.enter(open, name, text));
    }
    function wrongIn(reply: var): string {
        return reply.ok ? "" : reply.says;
    }

    ListView {
        id: list
        visible: root.open < 0
        anchors.fill: parent
        anchors.bottomMargin: add.height + Theme.gap
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: HoopShelf
        delegate: Item {
            id: row
            required property int index
            required property string name
            required property string fitSays
            required property string takesSays
            required property bool fits
            required property bool isCurrent
            width: list.width
            height: choice.implicitHeight + measures.height + Theme.gap
            ChoiceRow {
                id: choice
                width: parent.width
                text: row.name
                detail: row.fitSays + " " + row.takesSays
                chosen: row.isCurrent
                onClicked: HoopShelf.choose(row.index)
            }
            CutButton {
                id: measures
                y: choice.implicitHeight + Theme.mm(1)
                width: parent.width
                height: Theme.control
                inList: true
                text: qsTr("Its measures")
                onClicked: root.open = row.index
            }
        }
    }
    CutButton {
        id: add
        visible: root.open < 0
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.targetLeast
        text: qsTr("Another hoop")
        onClicked: {
            HoopShelf.add();
            root.open = HoopShelf.count - 1;
        }
    }
    HoopMeasure {
        visible: root.open >= 0
        anchors.fill: parent
        row: root.open
        onEnter: (name, title, text) => root.enter(name, title, text)
        onClosed: root.open = -1
    }
}
