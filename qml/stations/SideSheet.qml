// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** What she opened beside the work of a wide station: one page at a time, over the column's place. */
SheetColumn {
    id: root

    /** The page shown; empty for none. A page may ask for the keypad (`enter`, `take`) and for another page (`opened`). */
    property string source
    property bool topLine: false
    /** The page itself, once it is made: its drawing may show what is in hand there. */
    readonly property Item shown: page.item as Item

    /** The page takes the whole page of the station, and closes itself. */
    readonly property bool spread: root.shown?.spread ?? false

    /** The height the page asks for upright, with what stands round it; 0 where it takes what there is. */
    readonly property real asked: (root.shown?.wanted ?? 0) > 0 ? root.shown.wanted + close.height + Theme.gap + 2 * Theme.margin : 0

    signal closed()
    signal opened(string side)
    signal enter(string name, string title, string text)

    /** A typed measure; gives what is wrong with it, or nothing. */
    function take(name: string, text: string): string {
        return page.item?.take(name, text) ?? "";
    }

    Rectangle {
        x: -Theme.margin
        y: -Theme.margin
        width: root.width
        height: root.height
        color: Theme.colors.raised
    }
    Loader {
        id: page
        width: parent.width
        height: root.spread ? parent.height : parent.height - close.height - Theme.gap
        source: root.source
    }
    MoreBelow {
        over: page.item as Flickable
        within: page
    }
    Connections {
        target: page.item
        ignoreUnknownSignals: true
        function onEnter(name: string, title: string, text: string) {
            root.enter(name, title, text);
        }
        function onOpened(side: string) {
            root.opened(side);
        }
        function onClosed() {
            root.closed();
        }
    }
    CutButton {
        id: close
        visible: !root.spread
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.target
        // While the page asks for more, that is the one thing to do.
        kind: root.shown?.wanting ?? false ? "outline" : "action"
        guardMs: 400
        text: qsTr("Back to the work")
        onClicked: root.closed()
    }
    KeyLine {
        visible: root.topLine
        x: -Theme.margin
        y: -Theme.margin
        width: root.width
    }
}
