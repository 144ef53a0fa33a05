// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme
import "printing.js" as Printing
import "strips.js" as Strips

/** A block in place of its picture: its place in dots while it is to do, cloth with its stitched line once it is made. */
Item {
    id: root

    property string block
    property bool made: false
    property bool lost: false
    /** What a stitched one looks like, as the strip's drawing has it. */
    property var view: null
    property color ink: Theme.colors.ink

    PrintCanvas {
        anchors.fill: parent
        mirrored: false
        shows: [root.made, root.lost, root.view]
        Accessible.ignored: true
        onPrinting: context => {
            const c = Theme.colors, u = unit, side = Math.min(width, height) - 4 * u;
            const x = (width - side) / 2, y = (height - side) / 2, inset = side * 0.11;
            if (root.made && (root.view?.blockAlongMm ?? 0) > 0) {
                Strips.block(context, dyedForWork(), root.view, width, height, false, u);
            } else {
                if (root.made)
                    Printing.clothRect(context, c, "front", x, y, side, side, u);
                Printing.roleRect(context, root.made ? "stitched" : "planned", x + inset, y + inset, side - 2 * inset, side - 2 * inset,
                                  root.made ? c.stitched : c.ink, (root.made ? 3 : 2.2) * u * c.lineScale);
            }
            if (root.lost)
                Printing.strokeLine(context, x, y + side, x + side, y, c.stop, 4 * u * c.lineScale);
        }
    }
    Rectangle {
        id: plate
        // In the corner of the cloth, as it is pinned there: what is stitched is seen.
        readonly property real corner: root.view ? Math.min(root.width, root.height) * 0.04 : 0
        x: root.view ? (root.width - Math.min(root.width, root.height)) / 2 + corner : (root.width - width) / 2
        y: root.view ? (root.height - Math.min(root.width, root.height)) / 2 + corner : (root.height - height) / 2
        visible: root.made
        width: name.width + Theme.mm(2)
        height: name.implicitHeight
        color: Theme.colors.raised
        border.width: Theme.keyThin
        border.color: Theme.colors.ink
    }
    Word {
        id: name
        x: root.made ? plate.x + (plate.width - width) / 2 : (root.width - width) / 2
        y: root.made ? plate.y + (plate.height - height) / 2 : (root.height - height) / 2
        width: Math.min(implicitWidth, root.width)
        // A name stays on one line, however narrow the cell.
        wrapMode: Text.NoWrap
        cap: Math.max(Theme.capWord, Math.min(Theme.capHead, root.width * 0.9 / Math.max(1, text.length)))
        bold: true
        text: root.block
        color: root.ink
        Accessible.ignored: true
    }
}
