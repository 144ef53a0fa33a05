// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** What she opened beside the strip: where the last outline ended, the strips in work, the stops, the hoops. */
SheetColumn {
    id: root

    property string shows
    property bool topLine: false

    signal closed()
    signal opened(string side)
    signal enter(string name, string title, string text)

    /** A typed measure; gives what is wrong with it, or nothing. */
    function take(name: string, text: string): string {
        if (name === "end") {
            const reply = HoopModel.reZero(text);
            return reply.ok ? "" : reply.says;
        }
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
        height: parent.height - close.height - Theme.gap
        source: root.shows === "more" ? "HoopAside.qml" : root.shows === "zero" ? "HoopZero.qml" : root.shows === "strip" ? "HoopStrips.qml"
                : root.shows === "stops" ? "HoopStops.qml" : root.shows === "hoops" ? "HoopChoice.qml" : ""
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
    }
    CutButton {
        id: close
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.target
        kind: "action"
        text: qsTr("Back to the strip")
        onClicked: root.closed()
    }
    KeyLine {
        visible: root.topLine
        x: -Theme.margin
        y: -Theme.margin
        width: root.width
    }
}
