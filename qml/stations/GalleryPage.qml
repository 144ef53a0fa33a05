// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Every block in the order of the layout, with its picture; pressing one shows what was noted of it. */
Item {
    id: root

    /** The block whose notes lie open; "" none. */
    property string open

    signal closed()

    onVisibleChanged: Gallery.active = visible
    Component.onCompleted: Gallery.active = visible
    Component.onDestruction: Gallery.active = false

    function leave(): bool {
        const lay = root.open !== "";
        root.open = "";
        return lay;
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.colors.paper
    }
    Word {
        id: head
        x: Theme.margin
        y: Theme.margin
        width: parent.width - 2 * Theme.margin
        cap: Theme.capHead
        bold: true
        //: %1 of %2 blocks have a photograph
        text: qsTr("%1 of %2 blocks have a photograph").arg(Gallery.pictured).arg(Gallery.count)
    }
    GridView {
        id: grid
        visible: root.open === ""
        objectName: "grid"
        /** As many as the layout has where they stay wide enough for a knuckle; else as many as go. */
        readonly property int across: Math.max(1, Math.min(Gallery.columns, Math.floor(width / Theme.mm(23))))
        x: Theme.margin
        y: head.y + head.height + Theme.gap
        width: parent.width - 2 * Theme.margin
        height: foot.y - y - Theme.gap
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        cellWidth: Math.min(width / across, Theme.mm(56))
        cellHeight: cellWidth * 0.9 + Theme.mm(9)
        cacheBuffer: cellHeight
        reuseItems: true
        model: Gallery
        delegate: GalleryCell {
            width: grid.cellWidth
            height: grid.cellHeight
            view: HoopModel.view
            onChosen: block => root.open = block
        }
    }
    MoreBelow {
        over: grid
        ground: Theme.colors.paper
    }
    Rectangle {
        y: foot.y - Theme.gap
        width: parent.width
        height: parent.height - y
        color: Theme.colors.paper
    }
    CutButton {
        id: foot
        visible: root.open === ""
        objectName: "close"
        x: Theme.margin
        y: parent.height - height - Theme.margin
        width: parent.width - 2 * Theme.margin
        height: Theme.targetLeast
        kind: "action"
        text: qsTr("Back to the work")
        onClicked: root.closed()
    }
    GalleryNotes {
        objectName: "notes"
        visible: root.open !== ""
        anchors.fill: parent
        block: root.open
        onClosed: root.open = ""
    }
}
