// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** What the piece takes with the hoop in hand; the hoops themselves are drawn beside, and the measures of each can be mended. */
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

    Flickable {
        visible: root.open < 0
        width: parent.width
        height: add.y - Theme.gap
        clip: true
        contentHeight: rows.height
        boundsBehavior: Flickable.StopAtBounds
        interactive: contentHeight > height
        Column {
            id: rows
            width: root.width
            spacing: Theme.gap
            Word {
                // On a low page the hoops beside say it.
                visible: root.height >= Theme.mm(76)
                width: parent.width
                cap: Theme.capHead
                bold: true
                text: qsTr("Hoops")
            }
            InlineLength {
                width: parent.width
                text: HoopShelf.takesSays
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
