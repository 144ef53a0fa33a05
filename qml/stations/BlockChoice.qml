// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/**
 * The blocks as they lie in the piece, cloth squares between their sashings: a touch names one. Where a row is too
 * wide for the finger it goes on in the next line. What is not made yet is an empty place; spares lie apart below.
 */
Item {
    id: root

    /** Names of the blocks that can be touched. */
    property var made: []
    /** [{block}], row by row, as they lie. */
    property var places: []
    property int columns: 1

    signal picked(string block)

    /** As wide as a sashing is drawn: what parts two places for the finger. */
    readonly property real between: Theme.gap
    readonly property int most: Math.max(1, Math.floor(width / (Theme.step + between)))
    readonly property int folds: Math.max(1, Math.ceil(columns / most))
    readonly property int across: Math.max(1, Math.ceil(columns / folds))
    /** A block with half a sashing all round. */
    readonly property real cell: Math.floor(Math.min(Theme.mm(26), width / across))
    readonly property real gapFolds: folds > 1 ? Theme.mm(1) : 0
    readonly property real gapRows: folds > 1 ? Theme.mm(5) : 0
    readonly property var cells: laid()

    implicitHeight: cells.length > 0 ? cells[cells.length - 1].y + cell : 0
    height: implicitHeight

    function laid(): var {
        const list = [], known = new Set(), pick = new Set();
        for (let i = 0; i < made.length; ++i)
            pick.add(made[i]);
        let foot = 0;
        for (let i = 0; i < places.length; ++i) {
            const row = Math.floor(i / columns), column = i % columns, fold = Math.floor(column / across);
            const y = row * (folds * (cell + gapFolds) + gapRows) + fold * (cell + gapFolds);
            known.add(places[i].block);
            foot = y + cell + Theme.mm(5);
            list.push({ block: places[i].block, x: (column % across) * cell, y: y, made: pick.has(places[i].block), sewn: true });
        }
        let loose = 0;
        for (let i = 0; i < made.length; ++i) {
            if (known.has(made[i]))
                continue;
            list.push({ block: made[i], x: (loose % across) * cell, y: foot + Math.floor(loose / across) * cell, made: true, sewn: false });
            ++loose;
        }
        return list;
    }

    Repeater {
        model: root.cells
        Item {
            id: place
            required property var modelData
            x: modelData.x
            y: modelData.y
            width: root.cell
            height: root.cell

            BlockSquare {
                anchors.fill: parent
                between: root.between
                made: place.modelData.made
                sewn: place.modelData.sewn
            }
            Pressable {
                id: touched
                x: root.between / 2
                y: x
                width: parent.width - root.between
                height: width
                enabled: place.modelData.made
                visible: enabled
                guardShown: true
                inList: true
                accessibleName: place.modelData.block
                onClicked: root.picked(place.modelData.block)
                Rectangle {
                    anchors.fill: parent
                    visible: touched.pressed
                    color: Theme.colors.ink
                }
                FocusOutline { visible: touched.keyboardFocus }
            }
            // The name on a label of its own: it is read on any print.
            Rectangle {
                anchors.centerIn: parent
                width: name.implicitWidth + Theme.mm(2)
                height: name.implicitHeight
                color: place.modelData.made ? Theme.colors.raised : "transparent"
                border.color: Theme.colors.ink
                border.width: place.modelData.made ? Theme.keyThin : 0
                Word {
                    id: name
                    anchors.centerIn: parent
                    bold: place.modelData.made
                    color: place.modelData.made ? Theme.colors.ink : Theme.colors.inkSoft
                    wrapMode: Text.NoWrap
                    text: place.modelData.block
                    Accessible.ignored: place.modelData.made
                }
            }
        }
    }
}
