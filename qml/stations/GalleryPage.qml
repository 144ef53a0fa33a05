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
    // The table it all lies on.
    Rectangle {
        id: table
        visible: root.open === ""
        y: head.y + head.height + Theme.gap
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
    // A wide piece is rolled sideways too.
    Flickable {
        id: roll
        visible: root.open === ""
        x: Theme.margin
        y: table.y + Theme.key
        width: parent.width - 2 * Theme.margin
        height: table.height - 2 * Theme.key
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        flickableDirection: Flickable.HorizontalFlick
        interactive: contentWidth > width + 1
        contentWidth: Math.max(width, grid.width)

        GridView {
            id: grid
            objectName: "grid"
            readonly property real least: Theme.mm(23)
            /** So many columns as no table is wide: they lie as many to a row as go, in their order only. */
            readonly property bool whole: Gallery.columns <= 16
            readonly property int across: whole ? Gallery.columns : Math.max(1, Math.floor(roll.width / least))
            readonly property real blockAlong: Math.max(1, FitModel.drawing.outlineAlongMm)
            readonly property real blockAcross: Math.max(1, FitModel.drawing.outlineAcrossMm)
            /** The sashing to scale, and never so narrow that it is not seen. */
            readonly property real sashing: Math.max(Theme.mm(1.4), cellWidth * FitModel.drawing.sashingMm / (blockAlong + FitModel.drawing.sashingMm))
            /** The piece's own places; what comes after them is spare. */
            readonly property int lines: whole ? FitModel.drawing.rows : 0
            readonly property real air: Theme.mm(4)

            x: Math.max(0, Math.floor((roll.width - width) / 2))
            width: across * cellWidth
            height: roll.height
            boundsBehavior: Flickable.StopAtBounds
            cellWidth: Math.floor(Math.min(Math.max(roll.width / across, least), Theme.mm(56)))
            cellHeight: Math.round(Math.max(least, Math.min(cellWidth * 2, (cellWidth - sashing) * blockAcross / blockAlong + sashing)))
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
                onActiveFocusChanged: if (activeFocus) {
                    const left = grid.x + x;
                    roll.contentX = Math.max(0, Math.min(Math.max(roll.contentX, left + width - roll.width), left));
                }
            }
            // The sashing to come, pale, in one piece beneath the blocks.
            Rectangle {
                parent: grid.contentItem
                z: -1
                visible: grid.lines > 0
                x: -Math.round(grid.sashing / 2)
                y: x
                width: grid.across * grid.cellWidth - 2 * x
                height: grid.lines * grid.cellHeight - 2 * y
                color: Theme.colors.sashing
                opacity: 0.55
                border.width: Theme.key
                border.color: Theme.colors.ink
            }
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
