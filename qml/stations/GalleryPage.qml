// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * The piece as it grows: every block lies on the table where it will lie in the piece, sashing between; pressing one
 * shows what was noted of it.
 */
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
    // Where a block has no room for the words, its sign stands for them.
    Flow {
        id: key
        visible: root.open === "" && grid.cellWidth < Theme.mm(23)
        x: Theme.margin
        y: head.y + head.height + Theme.mm(1)
        width: parent.width - 2 * Theme.margin
        spacing: Theme.gap
        Repeater {
            model: key.visible ? Gallery.tally : []
            Row {
                id: told
                required property var modelData
                spacing: Theme.mm(1.4)
                Pictogram {
                    visible: name !== ""
                    anchors.verticalCenter: parent.verticalCenter
                    name: ({ stitched: "Hoop", trimmed: "Trim", joined: "Join" })[told.modelData.state] ?? ""
                    width: Theme.mm(6)
                    ink: Theme.colors.ink
                }
                Word {
                    wrapMode: Text.NoWrap
                    text: told.modelData.says + " " + told.modelData.count
                }
            }
        }
    }
    // The table it all lies on.
    Rectangle {
        id: table
        visible: root.open === ""
        y: (key.visible ? key.y + key.height : head.y + head.height) + Theme.gap
        width: parent.width
        height: foot.y - y - Theme.gap
        color: Theme.colors.table
        clip: true

        Repeater {
            model: Math.ceil(table.height / Theme.mm(23))
            Rectangle {
                required property int index
                y: Theme.mm(23) * (index + 0.6)
                width: table.width
                height: Theme.keyThin
                color: Theme.colors.tableMark
            }
        }
        KeyLine { width: parent.width }
        KeyLine {
            y: parent.height - height
            width: parent.width
        }
    }
    GridView {
        id: grid
        visible: root.open === ""
        objectName: "grid"
        readonly property real room: root.width - 2 * Theme.margin
        /** More columns than there is room for lie as many to a row as go, in their order only. */
        readonly property bool whole: Gallery.columns * Theme.mm(14) <= room
        readonly property int across: whole ? Gallery.columns : Math.max(1, Math.floor(room / Theme.mm(23)))
        readonly property var piece: FitModel.drawing ?? null
        readonly property real blockAlong: Math.max(1, piece?.outlineAlongMm ?? 1)
        readonly property real blockAcross: Math.max(1, piece?.outlineAcrossMm ?? 1)
        readonly property real between: piece?.sashingMm ?? 0
        /** The sashing to scale, and never so narrow that it is not seen. */
        readonly property real sashing: Math.max(Theme.mm(1.4), cellWidth * between / (blockAlong + between))
        /** The piece's own places; what comes after them is spare. */
        readonly property int lines: whole ? piece?.rows ?? 0 : 0
        readonly property real air: Theme.mm(4)

        x: Math.floor((root.width - width) / 2)
        y: table.y + Theme.key
        width: across * cellWidth
        height: table.height - 2 * Theme.key
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        cellWidth: Math.floor(Math.min(room / across, Theme.mm(56)))
        cellHeight: Math.round(Math.max(Theme.mm(14), Math.min(cellWidth * 2, (cellWidth - sashing) * blockAcross / blockAlong + sashing)))
        topMargin: air
        bottomMargin: air
        cacheBuffer: cellHeight
        reuseItems: true
        model: Gallery
        delegate: GalleryCell {
            width: grid.cellWidth
            height: grid.cellHeight
            view: HoopModel.view
            sashing: grid.sashing
            onChosen: block => root.open = block
        }
        // The sashing to come, pale, in one piece beneath the blocks.
        Rectangle {
            parent: grid.contentItem
            z: -1
            visible: grid.lines > 0
            width: grid.across * grid.cellWidth
            height: grid.lines * grid.cellHeight
            color: Theme.colors.sashing
            opacity: 0.55
            border.width: Theme.key
            border.color: Theme.colors.ink
        }
    }
    MoreBelow {
        over: grid
        within: table
        ground: Theme.colors.table
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
