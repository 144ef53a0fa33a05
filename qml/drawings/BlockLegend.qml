// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme
import "blocks.js" as Blocks

/** Under a measured block: what its beaded outline is, and how many times as far off it is drawn. */
Flow {
    id: root

    property bool plannedShown: false
    property real times: 1
    /** There is height for one line only: then what is exaggerated is told first. */
    property bool low: false
    readonly property real wanted: (plan.visible ? plan.width : 0) + (plan.visible && off.visible ? spacing : 0) + (off.visible ? off.implicitWidth : 0)

    spacing: Theme.mm(5)
    // In the middle where one line holds it.
    leftPadding: Math.max(0, (width - wanted) / 2)

    Row {
        id: plan
        visible: root.plannedShown && (!root.low || root.times <= 1 || width + root.spacing + off.implicitWidth <= root.width)
        spacing: Theme.mm(1.6)

        PrintCanvas {
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
        visible: root.times > 1
        text: qsTr("drawn %1 times as far off").arg(root.times)
        color: Theme.colors.inkSoft
    }
}
