// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The list to take to the shop, by itself: slips of what is to be found, hung on a line, and nothing else. */
Rectangle {
    id: root
    objectName: "take-list"

    signal closed()

    color: Theme.colors.paper

    Word {
        id: head
        x: Theme.left ? back.x + back.width + Theme.gap : Theme.margin
        y: Theme.mm(3)
        width: parent.width - back.width - 2 * Theme.margin - Theme.gap
        cap: Theme.capHead
        bold: true
        text: qsTr("To take")
    }
    Word {
        id: toFind
        anchors.left: head.left
        anchors.top: head.bottom
        width: head.width
        text: TakeModel.leftSays
    }
    CutButton {
        id: back
        x: Theme.left ? Theme.margin : root.width - width - Theme.margin
        y: Theme.mm(3)
        height: Math.max(Theme.step, contentHeight)
        //: puts the list to take away again
        text: qsTr("Back")
        onClicked: root.closed()
    }
    GridView {
        id: list
        objectName: "take"
        /** As many beside each other as leave each its amount and its cloth on a line. */
        readonly property int across: Math.max(1, Math.floor(width / Theme.mm(56)))
        property real needed: 0

        /** All are as high as the one with the most to say. */
        function measure() {
            let most = 0;
            for (let i = 0; i < count; ++i)
                most = Math.max(most, (itemAtIndex(i) as TakeSlip)?.leastHeight ?? 0);
            needed = most;
        }
        x: Theme.mm(2)
        y: Math.max(back.y + back.height, toFind.y + toFind.height) + Theme.mm(1)
        width: root.width - 2 * x
        height: parent.height - y
        cellWidth: Math.floor(width / across)
        cellHeight: Math.max(Theme.mm(46), needed) + Theme.gap
        cacheBuffer: 4000
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: TakeModel
        onCountChanged: measure()
        delegate: TakeSlip {
            width: list.cellWidth
            height: list.cellHeight - Theme.gap
            onLeastHeightChanged: list.measure()
            Component.onCompleted: list.measure()
        }
    }
    MoreBelow {
        over: list
        ground: Theme.colors.paper
    }
}
