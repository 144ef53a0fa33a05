// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "printing.js" as Printing

/** The layout of the blocks, front or back: what is joined, which two come now, and which way is up. */
Item {
    id: root

    property int columns: 1
    property int rows: 1
    /** [{block, up, joined, now}], row by row, front view. */
    property var blocks: []
    property bool back: false
    property string accessibleName
    /** Blocks may be touched, where they are large enough for a finger; -1: none was touched yet. */
    property bool pickable: false
    property int picked: -1
    readonly property bool canPick: pickable && cell >= Theme.control

    signal touched(int place)

    readonly property real air: Theme.mm(1.4)
    readonly property real cell: Math.max(1, Math.min((width - (columns + 1) * air) / Math.max(columns, 1),
                                                      (height - Theme.mm(9) - (rows + 1) * air) / Math.max(rows, 1)))
    readonly property real x0: (width - columns * (cell + air) + air) / 2
    readonly property real y0: Theme.mm(8)

    /** Where a block lies; turned over like a page, the columns run the other way. */
    function placeOf(place: int): point {
        const column = place % root.columns;
        return Qt.point(root.x0 + (root.back ? root.columns - 1 - column : column) * (root.cell + root.air),
                        root.y0 + Math.floor(place / root.columns) * (root.cell + root.air));
    }

    Accessible.role: Accessible.Graphic
    Accessible.name: accessibleName

    Word {
        x: root.x0
        y: Theme.mm(1)
        text: root.back ? qsTr("back, as it lies turned over") : qsTr("front")
    }
    PrintCanvas {
        anchors.fill: parent
        mirrored: false
        shows: [root.blocks, root.back, root.columns, root.rows]
        Accessible.ignored: true
        onPrinting: context => {
            const c = DyedColors.forWork, u = unit, s = root.cell, role = root.back ? "back" : "front";
            root.blocks.forEach((held, i) => {
                const { x, y } = root.placeOf(i);
                if (held.joined)
                    Printing.clothRect(context, c, role, x, y, s, s, u);
                if (!held.now && s > Theme.mm(6))
                    Printing.roleRect(context, held.joined ? "stitched" : "planned", x + s * 0.08, y + s * 0.08, s * 0.84, s * 0.84,
                                      held.joined ? c.stitched : c.inkSoft, 1.6 * u * c.lineScale);
            });
        }
    }
    Repeater {
        model: root.blocks.length
        Rectangle {
            id: block
            required property int index
            readonly property var held: root.blocks[index] ?? null
            readonly property point place: root.placeOf(index)
            readonly property bool now: held?.now ?? false
            readonly property bool joined: held?.joined ?? false
            x: place.x
            y: place.y
            width: root.cell
            height: root.cell
            color: now ? Theme.colors.ink : "transparent"
            border.color: Theme.colors.ink
            border.width: now ? Theme.keyBold : Theme.keyThin
            Pressable {
                anchors.fill: parent
                visible: root.canPick
                inList: true
                accessibleName: block.held?.block ?? ""
                onClicked: root.touched(block.index)
                Rectangle {
                    anchors.fill: parent
                    anchors.margins: Theme.mm(1)
                    visible: root.picked === block.index
                    color: "transparent"
                    border.color: Theme.colors.accent
                    border.width: Theme.keyBold
                }
                FocusOutline { visible: parent.keyboardFocus }
            }
            Word {
                visible: root.cell > Theme.mm(9)
                anchors.centerIn: parent
                bold: block.now
                color: block.now ? Theme.colors.raised : Theme.colors.ink
                text: block.held?.block ?? ""
                wrapMode: Text.NoWrap
            }
            Word {
                visible: root.cell > Theme.mm(17)
                anchors.horizontalCenter: parent.horizontalCenter
                y: Theme.mm(0.6)
                rotation: root.back ? -(block.held?.up ?? 0) : block.held?.up ?? 0
                color: block.now ? Theme.colors.raised : Theme.colors.ink
                text: "↑"
                Accessible.ignored: true
            }
        }
    }
}
