// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** Rows under each other of which none is ever cut through: as high as lets whole ones fill the place, and it moves by whole ones. */
Item {
    id: root

    property alias model: list.model
    property alias delegate: list.delegate
    property alias count: list.count
    property real leastRow: Theme.mm(24)
    property real mostRow: Theme.mm(60)
    property color ground: Theme.colors.paper

    readonly property real gap: Theme.gap
    readonly property int all: fitting(height)
    readonly property bool scrolls: count > all
    /** The wedge that says there is more stands under the last whole row. */
    readonly property real room: scrolls ? height - Theme.mm(7) : height
    readonly property int shown: scrolls ? fitting(room) : Math.max(1, count)
    readonly property real rowHeight: Math.max(1, Math.min(mostRow, Math.floor((room + gap) / shown) - gap))

    function fitting(high: real): int {
        return Math.max(1, Math.floor((high + gap) / (leastRow + gap)));
    }
    function show(row: int) {
        list.positionViewAtIndex(row, ListView.Contain);
    }

    ListView {
        id: list
        width: root.width
        height: root.shown * (root.rowHeight + root.gap) - root.gap
        y: root.scrolls ? 0 : Math.max(0, (root.height - height) / 2)
        clip: true
        spacing: root.gap
        cacheBuffer: Math.ceil(root.rowHeight + root.gap)
        snapMode: ListView.SnapToItem
        boundsBehavior: Flickable.StopAtBounds
        interactive: root.scrolls
    }
    MoreBelow {
        over: list
        within: root
        ground: root.ground
    }
}
