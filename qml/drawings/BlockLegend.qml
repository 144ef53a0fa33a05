// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme
import "blocks.js" as Blocks

/** Under a measured block: what its beaded outline is, and how many times as far off it is drawn. */
Item {
    id: root

    property bool plannedShown: false
    property real times: 1
    /** There is height for one line only: then what is exaggerated is told first. */
    property bool low: false
    /** By what both take, seen or not: whether one is seen hangs on it. */
    readonly property bool fits: beads.width + plan.spacing + word.implicitWidth + lines.spacing + off.implicitWidth <= width

    implicitHeight: lines.height

    Grid {
        id: lines
        anchors.horizontalCenter: parent.horizontalCenter
        columns: root.fits ? 2 : 1
        columnSpacing: spacing
        rowSpacing: 0
        spacing: Theme.mm(5)
        horizontalItemAlignment: Grid.AlignHCenter

        Row {
            id: plan
            visible: root.plannedShown && (!root.low || root.times <= 1 || root.fits)
            spacing: Theme.mm(1.6)

            PrintCanvas {
                id: beads
                width: Theme.mm(12)
                height: word.height
                mirrored: false
                Accessible.ignored: true
                onPrinting: context => {
                    const y = height / 2, end = 6 * unit;
                    Blocks.beads(context, Theme.colors, { x: end, y: y }, { x: width - end, y: y }, unit);
                }
            }
            Word {
                id: word
                //: beside a beaded line: the block's outline as it should be
                text: qsTr("as planned")
                color: Theme.colors.inkSoft
            }
        }
        Word {
            id: off
            // On a line of its own it has all of it: its width does not hang on how it breaks.
            wrapMode: root.fits ? Text.NoWrap : Text.Wrap
            width: root.fits ? implicitWidth : root.width
            horizontalAlignment: Text.AlignHCenter
            visible: root.times > 1
            text: qsTr("drawn %1 times as far off").arg(root.times)
            color: Theme.colors.inkSoft
        }
    }
}
